// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: CO-safety charity's page of February 2013 (350 ppm and 0.0040 for a condensing boiler
// without its maker's figures); regulation 26(9) of the Gas Safety (Installation and Use) Regulations 1998.
#include "core/judging/subjects.h"

#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;

struct ApplianceFindings : ::testing::Test {
    reg::VisitFile file = scenario::commonPractice("2026-11-10", "ed4");
    rulebook::RuleBook book = scenario::confirmedBook();
    reg::SubjectRef on;

    void SetUp() override {
        reg::Appliance boiler;
        boiler.id.bytes[15] = 77;
        boiler.kind = "condensing_boiler";
        file.appliances = {boiler};
        on = reg::subject(boiler.id);
    }
    void say(Item item, const std::string& text, quantity::UnitCode unit = quantity::UnitCode::None) {
        reg::Entry entry;
        entry.subject = on;
        entry.item = item;
        entry.text = text;
        entry.unit = unit;
        entry.canonical = reg::canonicalOf(item, text).value_or(std::string());
        file.entries.push_back(entry);
    }
    void readCombustion(const char* ppm, const char* percent) {
        say(Item::FlueCoHigh, ppm, quantity::UnitCode::Ppm);
        say(Item::FlueCo2High, percent, quantity::UnitCode::Percent);
    }
    std::optional<Outcome> found(FindingKind kind) const {
        for (const auto& judged : judge(file, book)) {
            if (judged.subject == on && judged.finding.kind == kind) {
                return judged.finding.outcome;
            }
        }
        return std::nullopt;
    }
};

TEST_F(ApplianceFindings, ThereAreNoneOfWhatWasNotTouched) {
    EXPECT_TRUE(judgeAppliance(file, file.appliances[0], book).empty());
    say(Item::ApplianceInspected, "visual_only");
    EXPECT_TRUE(judgeAppliance(file, file.appliances[0], book).empty());
}

TEST_F(ApplianceFindings, AnInspectedOneIsAskedForEveryMatterOfTheRegulation) {
    say(Item::ApplianceInspected, "inspected");
    EXPECT_EQ(found(FindingKind::Regulation26), Outcome::NoVerdict);
    say(Item::ExaminedFlue, "good");
    say(Item::ExaminedAir, "good");
    say(Item::ExaminedPressure, "in_order");
    EXPECT_EQ(found(FindingKind::Regulation26), Outcome::NoVerdict);
    say(Item::ExaminedOperation, "wrong");
    EXPECT_EQ(found(FindingKind::Regulation26), Outcome::Fail);
}

// 450 ppm over 9 % is a ratio of 0.005; 90 ppm over 9 % one of 0.001.
TEST_F(ApplianceFindings, ARatioBeyondThePublishedLimitFails) {
    readCombustion("450", "9");
    EXPECT_EQ(found(FindingKind::CombustionRatioMaximum), Outcome::Fail);
    EXPECT_EQ(found(FindingKind::CarbonMonoxideMaximum), Outcome::Fail);
}

TEST_F(ApplianceFindings, TheMakersFigureOfTheRegisterDecidesBeforeIt) {
    readCombustion("90", "9");
    EXPECT_EQ(found(FindingKind::CombustionRatioMaximum), Outcome::Pass);
    file.appliances[0].makerRatio = {"0.0005", quantity::UnitCode::None};
    file.appliances[0].makerSource = "manual";
    EXPECT_EQ(found(FindingKind::CombustionRatioMaximum), Outcome::Fail);
}

TEST_F(ApplianceFindings, TheVisitsOwnWordGoesBeforeTheRegisters) {
    readCombustion("90", "9");
    file.appliances[0].makerRatio = {"0.0005", quantity::UnitCode::None};
    file.appliances[0].makerSource = "manual";
    say(Item::MakerRatio, "0.004");
    EXPECT_EQ(found(FindingKind::CombustionRatioMaximum), Outcome::Pass);
}

TEST(LargerPipework, IsJudgedOnceItsTestWasBegun) {
    auto file = scenario::commonPractice("2026-11-10", "ed4");
    const auto book = scenario::confirmedBook();
    EXPECT_TRUE(judgeLarger(file, book).empty());
    reg::Entry entry;
    entry.subject = reg::subject(file.installation.id);
    entry.item = Item::LargerStart;
    entry.text = entry.canonical = "100";
    entry.unit = quantity::UnitCode::Millibar;
    file.entries.push_back(entry);
    const auto findings = judgeLarger(file, book);
    ASSERT_FALSE(findings.empty());
    for (const auto& judged : findings) {
        EXPECT_EQ(judged.subject, reg::subject(file.installation.id));
        EXPECT_NE(judged.finding.outcome, Outcome::Pass) << "nothing passes on a start alone";
    }
}

/// Readings as they stand in the investigation, each a subject of its own.
struct RoomCoFindings : ApplianceFindings {
    reg::SubjectRef read(const char* place, const char* minutes, const char* ppm) {
        reg::RoomId id;
        id.bytes[15] = static_cast<std::uint8_t>(100 + file.roomReadings().size());
        on = reg::subject(id);
        say(Item::RoomCoPlace, place);
        say(Item::RoomCoAt, minutes, quantity::UnitCode::Minute);
        say(Item::RoomCo, ppm, quantity::UnitCode::Ppm);
        return on;
    }
};

// HSE EH40/2005: 100 ppm over 15 minutes. A room beyond it warns; whose reading it is, the finding stands at.
TEST_F(RoomCoFindings, StandAtTheHighestReading) {
    EXPECT_TRUE(judgeRoomCo(file, book).empty());
    read("outdoors", "0", "0");
    const auto high = read("room", "5", "140");
    const auto low = read("room", "10", "130");
    on = high;
    EXPECT_EQ(found(FindingKind::RoomCoLevel), Outcome::Fail);
    on = low;
    EXPECT_EQ(found(FindingKind::RoomCoLevel), std::nullopt);
}

TEST_F(RoomCoFindings, AReadingThatCantBeReadPassesNothing) {
    read("room", "0", "about 9");
    for (const auto& judged : judgeRoomCo(file, book)) {
        EXPECT_NE(judged.finding.outcome, Outcome::Pass) << rulebook::kindText(judged.finding.kind);
    }
}

}  // namespace
}  // namespace hearth::judging
