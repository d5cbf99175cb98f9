// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/preparation.h"

#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Edition;
using rulebook::Outcome;
using rulebook::Say;

TEST(BeforeStarting, AnswersAreTheirOwnFindings) {
    EXPECT_EQ(safeToTouch(SafeToTouch::Safe).outcome, Outcome::Pass);
    EXPECT_EQ(safeToTouch(SafeToTouch::VoltageFound).outcome, Outcome::Fail);
    EXPECT_EQ(safeToTouch(SafeToTouch::NotDone).outcome, Outcome::NoVerdict);
    EXPECT_EQ(safeToTouch({}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(openEnds(OpenEnds::NoneSeen).outcome, Outcome::Pass);
    EXPECT_EQ(openEnds(OpenEnds::FoundSealed).outcome, Outcome::Pass);
    EXPECT_EQ(openEnds(OpenEnds::FoundOpen).outcome, Outcome::Fail);
    EXPECT_EQ(openEnds(OpenEnds::NotLooked).outcome, Outcome::NoVerdict);
    EXPECT_EQ(visualInspection({}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(visualInspection(Visual::Sound).outcome, Outcome::Pass);
    EXPECT_EQ(visualInspection(Visual::Defects).outcome, Outcome::LookAgain);
    EXPECT_EQ(visualInspection(Visual::NotDone).outcome, Outcome::NoVerdict);
    EXPECT_EQ(openEnds({}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(smellOnArrival(false).outcome, Outcome::Pass);
    EXPECT_EQ(smellOnArrival(true).outcome, Outcome::Fail);
    EXPECT_EQ(smellOnArrival({}).outcome, Outcome::NoVerdict);
}

struct EditionCase {
    const char* date;
    std::optional<Edition> said;
    std::optional<Edition> used;
    Say why;
};

// Gas register's bulletin on Communication 1903.
TEST(EditionFor, TakesWhatMayJudgeOnTheDay) {
    const EditionCase cases[] = {
        {"2026-02-10", {}, Edition::Up1bEd3, Say::EditionUsed},
        {"2026-02-10", Edition::Up1bEd4, {}, Say::EditionNotAllowed},
        {"2026-09-30", Edition::Up1bEd3, Edition::Up1bEd3, Say::EditionUsed},
        {"2026-09-30", Edition::Up1bEd4, Edition::Up1bEd4, Say::EditionUsed},
        {"2026-09-30", {}, {}, Say::EditionToChoose},
        {"2026-10-01", Edition::Up1bEd3, {}, Say::EditionNotAllowed},
        {"2026-10-01", {}, Edition::Up1bEd4, Say::EditionUsed},
    };
    for (const auto& c : cases) {
        const auto chosen = editionFor(c.said, *calendar::fromIso(c.date));
        EXPECT_EQ(chosen.edition, c.used) << c.date;
        EXPECT_EQ(chosen.finding.why.say, c.why) << c.date;
        EXPECT_EQ(chosen.finding.outcome, c.used ? Outcome::Pass : Outcome::NoVerdict) << c.date;
    }
}

TEST(Gauge, ZeroAndCalibration) {
    EXPECT_EQ(gaugeZero(true).outcome, Outcome::Pass);
    EXPECT_EQ(gaugeZero(false).outcome, Outcome::LookAgain);
    EXPECT_EQ(gaugeZero({}).outcome, Outcome::NoVerdict);

    EXPECT_EQ(gaugeCalibration({}, kNovember).outcome, Outcome::NoVerdict);
    EXPECT_EQ(gaugeCalibration(calendar::addDays(kNovember, -1), kNovember).outcome, Outcome::Fail);
    const auto today = gaugeCalibration(kNovember, kNovember);
    EXPECT_EQ(today.outcome, Outcome::Pass) << "on its last day it still holds";
    EXPECT_TRUE(says(today, Say::GaugeCalibrationSoon));
    EXPECT_FALSE(
        says(gaugeCalibration(calendar::addDays(kNovember, 31), kNovember), Say::GaugeCalibrationSoon));
}

// An exam revision page on Edition 2: accuracy 0.3 mbar or better.
TEST(Gauge, Accuracy) {
    const auto book = allConfirmed();
    EXPECT_EQ(gaugeAccuracy(millibar(0.3), book).outcome, Outcome::Pass);
    EXPECT_EQ(gaugeAccuracy(millibar(0.31), book).outcome, Outcome::Fail);
    EXPECT_EQ(gaugeAccuracy({}, book).why.say, Say::GaugeAccuracyUnknown);
    EXPECT_EQ(gaugeAccuracy(Given<quantity::PressureChange>::unusable(), book).why.say, Say::ReadingUnusable);
    EXPECT_EQ(gaugeAccuracy(millibar(0.2), rulebook::RuleBook::shipped()).outcome, Outcome::LookAgain);
    EXPECT_EQ(gaugeAccuracy(millibar(0.2), rulebook::RuleBook({})).why.say, Say::LimitMissing);
}

TEST(Displays, AgreeWithinOneDigit) {
    const Displays agreeing{reading(20.53), reading(20.49), reading(20.54), reading(20.49)};
    EXPECT_EQ(displaysAgree(agreeing, electronic()).outcome, Outcome::Pass);
    const Displays differing{reading(20.53), reading(20.49), reading(20.55), reading(20.49)};
    EXPECT_EQ(displaysAgree(differing, electronic()).outcome, Outcome::LookAgain);
    EXPECT_EQ(displaysAgree(differing, electronic()).why.say, Say::DisplaysDiffer);
    EXPECT_EQ(displaysAgree(differing, electronic(0.1)).outcome, Outcome::Pass);
}

TEST(Displays, OneReadingOfTheSecondIsEnough) {
    Displays once{reading(20.53), reading(20.49), {}, reading(20.50)};
    EXPECT_EQ(displaysAgree(once, electronic()).outcome, Outcome::Pass);
    once.firstEnd = {};
    EXPECT_EQ(displaysAgree(once, electronic()).why.say, Say::ReadingMissing);
    EXPECT_EQ(displaysAgree({reading(20.5), reading(20.5), {}, {}}, electronic()).why.say,
              Say::ReadingMissing);
    EXPECT_EQ(
        displaysAgree({reading(20.5), reading(20.5), Given<Reading>::unusable(), {}}, electronic()).why.say,
        Say::ReadingUnusable);
    EXPECT_EQ(displaysAgree({reading(20.5), reading(20.5), reading(20.5), {}}, std::nullopt).why.say,
              Say::GaugeNotChosen);
}

}  // namespace
}  // namespace hearth::tightness
