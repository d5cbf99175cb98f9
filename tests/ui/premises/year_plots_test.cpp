// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/year_plots.h"

#include "core/rulebook/rule_book.h"

#include <gtest/gtest.h>

namespace hearth::ui::premises {
namespace {

using quantity::UnitCode;
using reg::Item;

/// One boiler, read on visits that a test makes up.
struct YearPlotsTest : ::testing::Test {
    reg::Appliance boiler;
    std::vector<reg::VisitFile> visits;
    rulebook::RuleBook book = rulebook::RuleBook::shipped();
    words::Words words;

    void SetUp() override {
        boiler.id.bytes[15] = 5;
        boiler.kind = std::string(reg::choice::kCondensingBoiler);
        boiler.makerBurnerLeast = {"9.5", UnitCode::Millibar};
        boiler.makerBurnerMost = {"11.5", UnitCode::Millibar};
    }
    void visitOn(const char* day) {
        visits.emplace_back();
        visits.back().visit.id.bytes[15] = static_cast<std::uint8_t>(100 + visits.size());
        visits.back().visit.date = *calendar::fromIso(day);
        visits.back().appliances = {boiler};
    }
    void read(Item item, const char* text, UnitCode unit) {
        reg::Entry entry;
        entry.subject = reg::subject(boiler.id);
        entry.item = item;
        entry.text = text;
        entry.unit = unit;
        entry.canonical = text;
        visits.back().entries.push_back(entry);
    }
    YearPlots made() const { return yearPlotsOf(visits, book, words, boiler); }
};

TEST_F(YearPlotsTest, oneReadingIsNoDriftAndThatIsSaid) {
    EXPECT_TRUE(made().plots.plots.empty());
    visitOn("2025-11-20");
    read(Item::BurnerPressure, "10.8", UnitCode::Millibar);
    const auto once = made();
    EXPECT_TRUE(once.plots.plots.empty());
    ASSERT_EQ(once.told.size(), 1);
    EXPECT_TRUE(once.told[0].contains(QStringLiteral("two visits"))) << once.told[0].toStdString();
}

TEST_F(YearPlotsTest, readingsStandByTheirDaysAgainstTheMakersRangeAndAreTold) {
    visitOn("2026-11-20");
    read(Item::BurnerPressure, "9.8", UnitCode::Millibar);
    visitOn("2024-11-20");
    read(Item::BurnerPressure, "10.8", UnitCode::Millibar);
    visitOn("2025-11-20");
    read(Item::BurnerPressure, "10.3", UnitCode::Millibar);
    const auto years = made();
    ASSERT_EQ(years.plots.plots.size(), 1U);
    const auto& plot = years.plots.plots[0];
    EXPECT_EQ(plot.title, "Burner pressure");
    ASSERT_EQ(plot.series.size(), 1U);
    ASSERT_EQ(plot.series[0].points.size(), 3U);
    EXPECT_EQ(plot.series[0].points[0].x.text(), "0");
    EXPECT_EQ(plot.series[0].points[1].x.text(),
              "365");  // days from 20 November 2024, none of them a leap day
    EXPECT_EQ(plot.series[0].points[2].x.text(), "730");
    EXPECT_EQ(plot.series[0].points[0].y->text(), "10.8");
    EXPECT_EQ(plot.series[0].points[2].y->text(), "9.8");
    ASSERT_EQ(plot.bands.size(), 1U);
    EXPECT_EQ(plot.bands[0].least.text(), "9.5");
    EXPECT_EQ(plot.bands[0].most.text(), "11.5");
    ASSERT_EQ(plot.x.ticks.size(), 3U);
    EXPECT_EQ(plot.x.ticks[0].text, "2024");
    ASSERT_EQ(years.told.size(), 1);
    EXPECT_TRUE(years.told[0].contains(QStringLiteral("10.3"))) << years.told[0].toStdString();
    EXPECT_TRUE(years.told[0].contains(QStringLiteral("1.0"))) << years.told[0].toStdString();
}

TEST_F(YearPlotsTest, whatStandsInAnotherUnitIsCountedAndNotCompared) {
    for (const char* day : {"2023-11-20", "2024-11-20", "2025-11-20"}) {
        visitOn(day);
        read(Item::GasRateRead, "2.6",
             visits.size() == 1 ? UnitCode::CubicFootPerHour : UnitCode::CubicMetrePerHour);
    }
    const auto years = made();
    ASSERT_EQ(years.plots.plots.size(), 1U);
    EXPECT_EQ(years.plots.plots[0].series[0].points.size(), 2U);
    ASSERT_EQ(years.told.size(), 2);
    EXPECT_TRUE(years.told[1].contains(QStringLiteral("another unit")));
}

// 90 ppm over 9 % is a ratio of 0.001, 180 ppm one of 0.002 (arithmetic).
TEST_F(YearPlotsTest, theRatioIsWorkedOutFromWhatEachVisitRead) {
    for (const char* co : {"90", "180"}) {
        visitOn(visits.empty() ? "2024-05-02" : "2025-05-02");
        read(Item::FlueCoHigh, co, UnitCode::Ppm);
        read(Item::FlueCo2High, "9", UnitCode::Percent);
    }
    const auto years = made();
    ASSERT_EQ(years.plots.plots.size(), 1U);
    const auto& points = years.plots.plots[0].series[0].points;
    ASSERT_EQ(points.size(), 2U);
    EXPECT_NEAR(points[0].y->toDouble(), 0.001, 0.00005);
    EXPECT_NEAR(points[1].y->toDouble(), 0.002, 0.00005);
}

TEST_F(YearPlotsTest, anotherApplianceOfTheVisitIsAnotherMatter) {
    for (const char* day : {"2024-11-20", "2025-11-20"}) {
        visitOn(day);
        read(Item::BurnerPressure, "10.8", UnitCode::Millibar);
    }
    boiler.id.bytes[15] = 6;
    EXPECT_TRUE(made().plots.plots.empty());
}

}  // namespace
}  // namespace hearth::ui::premises
