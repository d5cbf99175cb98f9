// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/room_co.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <utility>

namespace hearth::air {
namespace {

using quantity::kPpm;
using quantity::UnitCode;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RuleBook;
using rulebook::Say;
using samples::airRules;
using samples::bookWith;
using samples::confirmedBook;
using samples::findingOf;
using samples::minutes;
using samples::ppm;

/// Nought outdoors first, then the room's readings, minutes and ppm.
RoomCoInput roomRead(const std::vector<std::pair<double, double>>& room) {
    RoomCoInput input;
    input.series.digit = ppm(1);
    input.series.readings.push_back({minutes(0), ppm(0), CoPlace::Outside});
    for (const auto& [t, x] : room) {
        input.series.readings.push_back({minutes(t + 2), ppm(x), CoPlace::Room});
    }
    input.flueless = false;
    input.cooker = false;
    input.height = quantity::Length(2.0, quantity::kMetre);
    input.distance = quantity::Length(1.2, quantity::kMetre);
    return input;
}

std::vector<std::pair<double, double>> steadyAt(double level) {
    return {{0, level}, {5, level}, {10, level}, {15, level}, {16, level}};
}

/// What a firm may enter from its own copy.
RuleBook bookWithLevels() {
    auto book = bookWith(Rule::RoomCoNoActionMost, 10, UnitCode::Ppm);
    samples::enter(book, Rule::RoomCoLeaveFrom, 30, UnitCode::Ppm);
    samples::enter(book, Rule::RoomCoCookerPeakMost, 90, UnitCode::Ppm);
    samples::enter(book, Rule::RoomCoSampleHeight, 2, UnitCode::Metre);
    samples::enter(book, Rule::RoomCoSampleDistance, 1, UnitCode::Metre);
    samples::enter(book, Rule::RoomCoTimeFlued, 15, UnitCode::Minute);
    samples::enter(book, Rule::RoomCoTimeFlueless, 30, UnitCode::Minute);
    return book;
}

rulebook::Finding level(const RoomCoInput& input, const RuleBook& book) {
    return findingOf(roomCo(input, airRules(book)), FindingKind::RoomCoLevel);
}

TEST(RoomCo, WithoutActionLevelsThereIsNoVerdictButAWarning) {
    const auto book = RuleBook::shipped();
    struct Case {
        double level;
        Outcome outcome;
        Say say;
    };
    const Case cases[] = {
        {0, Outcome::NoVerdict, Say::CoLevelsMissing},
        {9, Outcome::NoVerdict, Say::CoLevelsMissing},
        {10, Outcome::NoVerdict, Say::CoRaised},
        {19, Outcome::NoVerdict, Say::CoRaised},
        {20, Outcome::Fail, Say::CoDanger},
        {300, Outcome::Fail, Say::CoDanger},
    };
    for (const auto& c : cases) {
        const auto finding = level(roomRead(steadyAt(c.level)), book);
        EXPECT_EQ(finding.outcome, c.outcome) << c.level;
        EXPECT_EQ(finding.why.say, c.say) << c.level;
    }
    EXPECT_TRUE(rulebook::says(level(roomRead(steadyAt(12)), book), Say::CoLevelsMissing));
    EXPECT_TRUE(rulebook::says(level(roomRead(steadyAt(60)), book), Say::CoAlarmWithin));
}

TEST(RoomCo, ByTheFirmsOwnLevels) {
    const auto book = bookWithLevels();
    const auto why = [&](const RoomCoInput& input) { return level(input, book).why.say; };
    EXPECT_EQ(level(roomRead(steadyAt(4)), book).outcome, Outcome::Pass);
    EXPECT_EQ(why(roomRead(steadyAt(4))), Say::CoNoAction);
    EXPECT_EQ(level(roomRead(steadyAt(15)), book).outcome, Outcome::Fail);
    EXPECT_EQ(why(roomRead(steadyAt(15))), Say::CoInvestigate);
    EXPECT_EQ(why(roomRead({{0, 2}, {5, 4}, {10, 6}, {15, 8}})), Say::CoStillRising);
    EXPECT_EQ(why(roomRead({{0, 2}, {5, 8}})), Say::CoTrendUnknown);
    EXPECT_EQ(level(roomRead({{0, 2}, {5, 8}}), book).outcome, Outcome::LookAgain);
    // At 10 ppm, with a digit of 1: too near to tell, and raised.
    EXPECT_EQ(why(roomRead(steadyAt(10))), Say::CoRaised);
    EXPECT_TRUE(rulebook::says(level(roomRead(steadyAt(10)), book), Say::CoNearAction));
    // A firm whose levels lie above the warnings is warned all the same.
    auto lax = bookWith(Rule::RoomCoNoActionMost, 50, UnitCode::Ppm);
    EXPECT_EQ(level(roomRead(steadyAt(15)), lax).outcome, Outcome::LookAgain);
    EXPECT_EQ(level(roomRead(steadyAt(25)), lax).why.say, Say::CoDanger);
    samples::enter(lax, Rule::RoomCoDangerFrom, 60, UnitCode::Ppm);
    samples::enter(lax, Rule::RoomCoLeaveFrom, 30, UnitCode::Ppm);
    EXPECT_EQ(level(roomRead(steadyAt(35)), lax).why.say, Say::CoLeave);
}

TEST(RoomCo, ACookersShortPeak) {
    auto book = bookWithLevels();
    samples::enter(book, Rule::RoomCoDangerFrom, 95, UnitCode::Ppm);
    auto input = roomRead({{0, 40}, {5, 30}, {10, 20}, {15, 10}, {20, 2}});
    EXPECT_EQ(level(input, book).why.say, Say::CoLeave);
    input.cooker = true;
    EXPECT_EQ(level(input, book).outcome, Outcome::LookAgain);
    EXPECT_TRUE(rulebook::says(level(input, book), Say::CoShortPeak));
    input.series.readings.back().level = ppm(14);
    EXPECT_EQ(level(input, book).why.say, Say::CoLeave);
}

TEST(RoomCo, NothingPassesOnWhatIsMissingOrCantBeRead) {
    const auto book = bookWithLevels();
    EXPECT_EQ(level({}, book).why.say, Say::CoRoomMissing);
    EXPECT_EQ(level(roomRead({}), book).outcome, Outcome::NoVerdict);
    auto input = roomRead(steadyAt(4));
    input.series.someUnreadable = true;
    EXPECT_EQ(level(input, book).outcome, Outcome::NoVerdict);
    EXPECT_TRUE(rulebook::says(level(input, book), Say::ReadingUnusable));
    input = roomRead(steadyAt(4));
    input.series.someMissing = true;
    EXPECT_EQ(level(input, book).outcome, Outcome::NoVerdict);
    EXPECT_TRUE(rulebook::says(level(input, book), Say::ReadingMissing));
    EXPECT_FALSE(rulebook::says(level(input, book), Say::ReadingUnusable));
    input = roomRead(steadyAt(40));
    input.series.someUnreadable = true;
    EXPECT_EQ(level(input, book).outcome, Outcome::Fail);
    const RuleBook empty(std::vector<rulebook::Entry>{});
    EXPECT_EQ(level(roomRead(steadyAt(20)), empty).why.say, Say::CoDanger);
    EXPECT_EQ(level(roomRead(steadyAt(4)), empty).outcome, Outcome::NoVerdict);
}

TEST(RoomCo, DangerWarnsAtAHundredWhateverIsEntered) {
    EXPECT_EQ(dangerFrom(airRules(RuleBook::shipped())), ppm(20));
    const auto lax = bookWith(Rule::RoomCoDangerFrom, 400, UnitCode::Ppm);
    EXPECT_EQ(dangerFrom(airRules(lax)), ppm(100));
    EXPECT_EQ(level(roomRead(steadyAt(100)), lax).why.say, Say::CoDanger);
    const auto strict = bookWith(Rule::RoomCoDangerFrom, 15, UnitCode::Ppm);
    EXPECT_NEAR(dangerFrom(airRules(strict)).in(kPpm), 15, 1e-9);
    // Wherever it was read.
    auto outside = roomRead({});
    outside.series.readings.front().level = ppm(30);
    EXPECT_EQ(level(outside, RuleBook::shipped()).why.say, Say::CoDanger);
    auto next = roomRead(steadyAt(1));
    next.series.readings.push_back({minutes(20), ppm(30), CoPlace::NextRoom});
    EXPECT_EQ(level(next, RuleBook::shipped()).why.say, Say::CoDanger);
}

TEST(RoomCo, Background) {
    const auto book = RuleBook::shipped();
    const auto background = [&](const RoomCoInput& input) {
        return findingOf(roomCo(input, airRules(book)), FindingKind::RoomCoBackground);
    };
    EXPECT_EQ(background(roomRead(steadyAt(2))).outcome, Outcome::Pass);
    auto input = roomRead(steadyAt(2));
    input.series.readings.front().level = ppm(4);
    EXPECT_EQ(background(input).why.say, Say::CoBackgroundRaised);
    input.series.accuracy = ppm(5);
    EXPECT_EQ(background(input).outcome, Outcome::Pass);
    input.series.readings.front().at = minutes(9);
    EXPECT_EQ(background(input).why.say, Say::CoBackgroundLate);
    input.series.readings.erase(input.series.readings.begin());
    EXPECT_EQ(background(input).outcome, Outcome::NoVerdict);
    EXPECT_EQ(background(input).why.say, Say::CoBackgroundMissing);
}

TEST(RoomCo, MeansAgainstTheLimitsAtWork) {
    const auto book = confirmedBook();
    const auto mean = [&](FindingKind kind, const std::vector<std::pair<double, double>>& room) {
        return findingOf(roomCo(roomRead(room), airRules(book)), kind);
    };
    const auto brief = FindingKind::RoomCoShortMean;
    const auto day = FindingKind::RoomCoLongMean;
    EXPECT_EQ(mean(brief, {{0, 50}, {8, 50}, {16, 50}}).why.say, Say::CoMeanWithin);
    EXPECT_EQ(mean(brief, {{0, 100}, {8, 100}, {16, 100}}).why.say, Say::CoMeanNear);
    EXPECT_EQ(mean(brief, {{0, 120}, {8, 120}, {16, 120}}).outcome, Outcome::Fail);
    EXPECT_EQ(mean(brief, {{0, 50}, {10, 50}}).why.say, Say::CoMeanPartial);
    EXPECT_EQ(mean(brief, {{0, 120}, {10, 120}}).why.say, Say::CoMeanPartialHigh);
    EXPECT_EQ(mean(brief, {{0, 160}, {10, 160}}).why.say, Say::CoMeanPartialSpent);
    EXPECT_EQ(mean(brief, {{0, 160}, {10, 160}}).outcome, Outcome::Fail);
    EXPECT_EQ(mean(day, {{0, 15}, {240, 15}, {500, 15}}).outcome, Outcome::Pass);
    EXPECT_EQ(mean(day, {{0, 25}, {240, 25}, {500, 25}}).outcome, Outcome::Fail);
    EXPECT_EQ(mean(day, {{0, 15}, {240, 15}}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(mean(day, {{0, 25}, {240, 25}}).why.say, Say::CoMeanPartialHigh);
    // Within a workplace's limit, yet above the guideline of 10 ppm for 8 hours.
    EXPECT_TRUE(rulebook::says(mean(day, {{0, 15}, {240, 15}, {500, 15}}), Say::CoGuidelineAbove));
    EXPECT_TRUE(rulebook::says(mean(brief, {{0, 50}, {8, 50}, {16, 50}}), Say::CoGuideline));
    EXPECT_TRUE(rulebook::says(mean(brief, {{0, 50}, {8, 50}, {16, 50}}), Say::CoGap));
    // Shipped, the limits are of secondary quality: nothing passes by them.
    const auto shipped = RuleBook::shipped();
    const auto held = roomCo(roomRead({{0, 5}, {8, 5}, {16, 5}}), airRules(shipped));
    EXPECT_EQ(findingOf(held, brief).outcome, Outcome::LookAgain);
    EXPECT_EQ(findingOf(held, brief).why.say, Say::LimitSecondary);
}

TEST(RoomCo, TheGravestPlaceGivesTheMean) {
    const auto book = confirmedBook();
    auto input = roomRead(steadyAt(5));
    for (const double t : {0.0, 8.0, 16.0}) {
        input.series.readings.push_back({minutes(t), ppm(200), CoPlace::AtAppliance});
    }
    // Blood by the linear law at 20 l/min: 0.8 + 3.317e-5 * 200^1.036 * 20 * 16 = 3.4 %.
    const auto findings = roomCo(input, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::RoomCoShortMean).outcome, Outcome::Fail);
    EXPECT_EQ(findingOf(findings, FindingKind::RoomCoBlood).outcome, Outcome::Fail);
}

TEST(RoomCo, HowTheRoomWasSampled) {
    const auto book = bookWithLevels();
    const auto sampling = [&](const RoomCoInput& input) {
        return findingOf(roomCo(input, airRules(book)), FindingKind::RoomCoSampling);
    };
    auto input = roomRead(steadyAt(3));
    EXPECT_EQ(sampling(input).outcome, Outcome::Pass);
    input.height = quantity::Length(1.5, quantity::kMetre);
    EXPECT_EQ(sampling(input).why.say, Say::CoSamplingHeight);
    input = roomRead(steadyAt(3));
    input.distance = quantity::Length(0.5, quantity::kMetre);
    EXPECT_EQ(sampling(input).why.say, Say::CoSamplingNearAppliance);
    input = roomRead({{0, 3}, {10, 3}});
    EXPECT_EQ(sampling(input).why.say, Say::CoSamplingShort);
    input = roomRead(steadyAt(3));
    input.flueless = true;
    EXPECT_EQ(sampling(input).why.say, Say::CoSamplingShort);
    input.flueless.reset();  // not said: the longer time
    EXPECT_EQ(sampling(input).why.say, Say::CoSamplingShort);
    input.height = {};
    EXPECT_EQ(sampling(input).why.say, Say::ReadingMissing);
    input.series.readAtDistance = true;
    EXPECT_TRUE(rulebook::says(sampling(input), Say::CoReadAtDistance));
    EXPECT_EQ(
        findingOf(roomCo(roomRead(steadyAt(3)), airRules(RuleBook::shipped())), FindingKind::RoomCoSampling)
            .why.say,
        Say::LimitMissing);
}

int severity(const rulebook::Finding& finding) {
    const auto warning = finding.why.say == Say::CoDanger         ? 2
                         : rulebook::says(finding, Say::CoRaised) ? 1
                                                                  : 0;
    return warning;
}

TEST(RoomCo, MoreIsNeverAMilderWarningAndNothingSaysSafe) {
    for (const auto& book : {RuleBook::shipped(), confirmedBook(), bookWithLevels()}) {
        const std::vector<std::vector<std::pair<double, double>>> shapes{
            {{0, 0}, {5, 0}, {10, 0}, {16, 0}},
            {{0, 0}, {5, 2}, {10, 4}, {16, 6}},
            {{0, 9}, {5, 6}, {10, 3}, {16, 0}},
            {{0, 1}, {5, 8}, {10, 0}, {16, 7}},
            {{0, 3}},
        };
        for (auto shape : shapes) {
            int warned = 0;
            int gravest = 0;
            const auto rank = [](Outcome outcome) {
                return outcome == Outcome::Fail ? 2 : outcome == Outcome::Pass ? 0 : 1;
            };
            for (int added = 0; added < 150; ++added) {
                const auto finding = level(roomRead(shape), book);
                EXPECT_GE(severity(finding), warned) << added;
                EXPECT_GE(rank(finding.outcome), gravest) << added;
                warned = severity(finding);
                gravest = rank(finding.outcome);
                for (auto& [t, x] : shape) {
                    x += 1;
                }
            }
            EXPECT_EQ(warned, 2);
        }
    }
}

TEST(RoomCo, TheTrendIsToldOfThePlaceWhereItRises) {
    const auto book = bookWithLevels();
    auto input = roomRead(steadyAt(4));
    EXPECT_EQ(roomTrend(input, airRules(book)).trend, Trend::Steady);
    for (const double t : {2.0, 7.0, 12.0, 17.0}) {
        input.series.readings.push_back({minutes(t), ppm(t), CoPlace::NextRoom});
    }
    const auto trend = roomTrend(input, airRules(book));
    EXPECT_EQ(trend.trend, Trend::Rising);
    EXPECT_NEAR(trend.change.in(kPpm), 15, 1e-6);
    EXPECT_EQ(roomTrend({}, airRules(book)).trend, Trend::Unknown);
}

}  // namespace
}  // namespace hearth::air
