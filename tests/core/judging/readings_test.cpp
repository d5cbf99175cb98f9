// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/readings.h"

#include "core/quantity/units.h"
#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using namespace scenario;
using quantity::kMillibar;
using reg::Item;

class ReadingsTest : public ::testing::Test {
  protected:
    reg::VisitFile m_file = commonPractice("2026-11-10", "ed4");

    [[nodiscard]] Readings readings() const { return {m_file, reg::subject(m_file.tests.front().id)}; }
};

TEST_F(ReadingsTest, PressureKeepsItsLastDigit) {
    enter(m_file, Item::TightStart, "20,70");
    const auto reading = readings().pressure(Item::TightStart);
    ASSERT_TRUE(reading);
    EXPECT_DOUBLE_EQ(reading->pressure.in(kMillibar), 20.70);
    EXPECT_DOUBLE_EQ(reading->digit.in(kMillibar), 0.01);
}

TEST_F(ReadingsTest, UnitsAreHonoured) {
    enter(m_file, Item::TightStart, "8.3");
    m_file.entries.back().unit = quantity::UnitCode::InchWater;
    const auto reading = readings().pressure(Item::TightStart);
    // Conventional inch of water, 2.4908891 mbar (from memory of the conventional definition).
    EXPECT_NEAR(reading->pressure.in(kMillibar), 8.3 * 2.4908891, 1e-6);
    EXPECT_NEAR(reading->digit.in(kMillibar), 0.24908891, 1e-9);
    m_file.entries.back().unit = quantity::UnitCode::Litre;
    EXPECT_TRUE(readings().pressure(Item::TightStart).unreadable) << "a unit of another family";
    m_file.entries.back().unit = quantity::UnitCode::None;
    EXPECT_NEAR(readings().pressure(Item::TightStart)->pressure.in(kMillibar), 8.3, 1e-12);
}

TEST_F(ReadingsTest, MissingAndUnreadableAreTold) {
    removeItem(m_file, Item::TightStart);
    EXPECT_FALSE(readings().pressure(Item::TightStart).isEntered());
    enter(m_file, Item::TightStart, "   ");
    EXPECT_FALSE(readings().pressure(Item::TightStart).isEntered());
    enter(m_file, Item::TightStart, "1,234.5");
    EXPECT_TRUE(readings().pressure(Item::TightStart).unreadable);
}

struct TimeCase {
    const char* from;
    const char* to;
    std::optional<double> seconds;
};

TEST_F(ReadingsTest, TimesOfDayGiveADuration) {
    const TimeCase cases[] = {
        {"09:43:10", "09:45:10", 120},
        {"09:43", "09:45", 120},
        {"9.43", "09:45:30", 150},
        {"23:59:00", "00:01:00", 120},
        {"09:45:10", "09:43:10", std::nullopt},
        {"09:43", "soon", std::nullopt},
        {"09:43", "09:43", 0},
    };
    for (const auto& c : cases) {
        enter(m_file, Item::TightStartedAt, c.from);
        enter(m_file, Item::TightEndedAt, c.to);
        const auto took = readings().between(Item::TightStartedAt, Item::TightEndedAt);
        EXPECT_EQ(took.unreadable, !c.seconds) << c.from << c.to;
        if (c.seconds) {
            ASSERT_TRUE(took) << c.from << c.to;
            EXPECT_DOUBLE_EQ(took->in(quantity::kSecond), *c.seconds);
        }
    }
    removeItem(m_file, Item::TightEndedAt);
    EXPECT_FALSE(readings().between(Item::TightStartedAt, Item::TightEndedAt).isEntered());
}

TEST_F(ReadingsTest, OtherSubjectsEntriesAreNotTaken) {
    const Readings ofVisit(m_file, reg::subject(m_file.visit.id));
    EXPECT_FALSE(ofVisit.isEntered(Item::TightStart));
    EXPECT_EQ(ofVisit.yesNo(Item::SmellOnArrival), false);
    EXPECT_FALSE(readings().isEntered(Item::SmellOnArrival));
}

TEST_F(ReadingsTest, TextIsMoreThanBlanks) {
    EXPECT_FALSE(readings().hasText(Item::LowPressureReason));
    enter(m_file, Item::LowPressureReason, " \t");
    EXPECT_FALSE(readings().hasText(Item::LowPressureReason));
    enter(m_file, Item::LowPressureReason, "low inlet pressure at the main");
    EXPECT_TRUE(readings().hasText(Item::LowPressureReason));
}

TEST(RegisterFields, AreReadLikeEntries) {
    EXPECT_FALSE(gaugePressureOf({}).isEntered());
    EXPECT_TRUE(gaugePressureOf({"about 21", quantity::UnitCode::Millibar}).unreadable);
    EXPECT_DOUBLE_EQ(gaugePressureOf({"2", quantity::UnitCode::Bar})->in(kMillibar), 2000);
    EXPECT_DOUBLE_EQ(lengthOf({"9", quantity::UnitCode::None})->in(quantity::kMetre), 9)
        << "the family's default";
    EXPECT_DOUBLE_EQ(volumeOf({"3", quantity::UnitCode::Litre})->in(quantity::kCubicMetre), 0.003);
    EXPECT_DOUBLE_EQ(pressureChangeOf({"0,2", quantity::UnitCode::Millibar})->in(kMillibar), 0.2);
}

}  // namespace
}  // namespace hearth::judging
