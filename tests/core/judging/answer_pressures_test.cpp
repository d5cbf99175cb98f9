// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/asked.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using asked::Sheet;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

/// A boiler at full rate on natural gas with everything burning. Invented.
Sheet pressuresAtHighLoad() {
    return {{Item::GasFamily, choice::kNaturalGas},
            {Item::MeterStandingPressure, "22.4"},
            {Item::MeterWorkingPressure, "20.8"},
            {Item::InletStanding, "22.4"},
            {Item::InletPressure, "20.1"},
            {Item::InletFullRate, choice::kYes},
            {Item::PressureSameGauge, choice::kYes},
            {Item::BurnerPressure, "12.0"},
            {Item::BurnerLeast, "11.5"},
            {Item::BurnerMost, "12.5"},
            {Item::PressureMakerSource, "page 14"},
            {Item::MeterAverage, "20.5"},
            {Item::MeterAverageTime, "6"},
            {Item::MeterLoad, choice::kLoadHigh}};
}

Answer pressuresOf(const Sheet& sheet) {
    return asked::answerTo(Question::Pressures, sheet);
}

TEST(PressuresAnswer, JudgesEachReadingThatWasTakenAndShowsTheDrop) {
    const auto got = pressuresOf(pressuresAtHighLoad());
    for (const auto kind :
         {FindingKind::StandingPressure, FindingKind::WorkingPressure, FindingKind::InletPressure,
          FindingKind::PressureDropMeasured, FindingKind::BurnerPressure, FindingKind::MeterAverage}) {
        EXPECT_EQ(asked::outcomeOf(got, kind), Outcome::Pass) << rulebook::kindText(kind);
    }
    EXPECT_NEAR(asked::valueOf(got, Derived::DropToAppliance), 0.7, 1e-9);
    EXPECT_EQ(asked::findingOf(got, FindingKind::BurnerPressure)->limits.front().source, "page 14");
}

TEST(PressuresAnswer, WhatWasNotReadIsNotJudged) {
    const auto got = pressuresOf({{Item::GasFamily, choice::kNaturalGas}, {Item::BurnerPressure, "12.0"}});
    ASSERT_EQ(got.findings.size(), 1U);
    EXPECT_EQ(asked::outcomeOf(got, FindingKind::BurnerPressure), Outcome::NoVerdict);
    EXPECT_TRUE(asked::saysOf(got, FindingKind::BurnerPressure, Say::BurnerPressureNoMaker));
}

// Source of the ranges: EN 437 for natural gas, 17 to 25 mbar, and the LPG code of practice for propane, 32
// to 42 mbar, both from memory.
TEST(PressuresAnswer, TheGasDecidesTheRangeAtTheInlet) {
    const auto inlet = [](std::string_view gas, std::string_view pressure) {
        return asked::outcomeOf(
            pressuresOf(
                {{Item::GasFamily, gas}, {Item::InletPressure, pressure}, {Item::InletFullRate, "yes"}}),
            FindingKind::InletPressure);
    };
    EXPECT_EQ(inlet(choice::kNaturalGas, "20.0"), Outcome::Pass);
    EXPECT_EQ(inlet(choice::kPropane, "20.0"), Outcome::Fail);
    EXPECT_EQ(inlet(choice::kPropane, "37.0"), Outcome::Pass);
    EXPECT_EQ(inlet(choice::kNaturalGas, "37.0"), Outcome::Fail);
    EXPECT_EQ(inlet(choice::kLpgAir, "20.0"), Outcome::NoVerdict);
}

TEST(PressuresAnswer, NothingPassesOrFailsByALimitOfTheGasWhileNoneWasSaid) {
    for (const auto* gas : {"", "x?"}) {
        for (const auto* pressure : {"20.1", "37.0"}) {
            auto sheet = asked::with(asked::without(pressuresAtHighLoad(), Item::BurnerPressure),
                                     {{Item::GasFamily, gas}, {Item::InletPressure, pressure}});
            const auto got = pressuresOf(sheet);
            for (const auto& judged : got.findings) {
                EXPECT_EQ(judged.finding.outcome, Outcome::LookAgain)
                    << rulebook::kindText(judged.finding.kind) << gas << pressure;
            }
            EXPECT_TRUE(asked::saysOf(got, FindingKind::InletPressure, Say::GasNotSaid));
        }
    }
    // The maker's range is the appliance's own, whatever the gas.
    const auto got = pressuresOf({{Item::InletPressure, "20.0"},
                                  {Item::InletFullRate, "yes"},
                                  {Item::InletLeast, "18"},
                                  {Item::InletMost, "22"}});
    EXPECT_EQ(asked::outcomeOf(got, FindingKind::InletPressure), Outcome::Pass);
}

TEST(PressuresAnswer, AMakersRangeThatIsNoneLeavesThePressureOpen) {
    const std::pair<const char*, const char*> kRanges[] = {
        {"18", ""}, {"", "22"}, {"x?", "22"}, {"18", "2o"}, {"22", "18"}};
    for (const auto& [least, most] : kRanges) {
        const auto got = pressuresOf(asked::with(pressuresAtHighLoad(), {{Item::InletLeast, least},
                                                                         {Item::InletMost, most},
                                                                         {Item::BurnerLeast, least},
                                                                         {Item::BurnerMost, most}}));
        for (const auto kind : {FindingKind::InletPressure, FindingKind::BurnerPressure}) {
            EXPECT_EQ(asked::outcomeOf(got, kind), Outcome::NoVerdict) << least << " to " << most;
            EXPECT_TRUE(asked::saysOf(got, kind, Say::MakersFigureUnclear)) << least << " to " << most;
        }
    }
}

TEST(PressuresAnswer, TheInletCountsAtFullRateOnly) {
    for (const auto* rate : {"", "no", "x?"}) {
        const auto got = pressuresOf(asked::with(pressuresAtHighLoad(), {{Item::InletFullRate, rate}}));
        EXPECT_EQ(asked::outcomeOf(got, FindingKind::InletPressure), Outcome::NoVerdict) << rate;
        EXPECT_EQ(asked::outcomeOf(got, FindingKind::PressureDropMeasured), Outcome::NoVerdict) << rate;
    }
}

// Source of the 1 mbar: gas register's magazine, July 2021; it is for the largest flow.
TEST(PressuresAnswer, ADropPassesAtHighLoadOnOneGaugeOnly) {
    const auto drop = [](const Sheet& change) {
        return asked::outcomeOf(pressuresOf(asked::with(pressuresAtHighLoad(), change)),
                                FindingKind::PressureDropMeasured);
    };
    EXPECT_EQ(drop({}), Outcome::Pass);
    EXPECT_EQ(drop({{Item::MeterLoad, ""}}), Outcome::NoVerdict);
    EXPECT_EQ(drop({{Item::MeterLoad, choice::kLoadLess}}), Outcome::LookAgain);
    EXPECT_EQ(drop({{Item::PressureSameGauge, ""}}), Outcome::LookAgain);
    EXPECT_EQ(drop({{Item::PressureSameGauge, "no"}}), Outcome::LookAgain);
    EXPECT_EQ(drop({{Item::InletPressure, "19.8"}}), Outcome::LookAgain) << "at the limit";
    EXPECT_EQ(drop({{Item::InletPressure, "18.4"}}), Outcome::Fail);
    EXPECT_EQ(drop({{Item::InletPressure, "18.4"}, {Item::MeterLoad, choice::kLoadLess}}), Outcome::Fail)
        << "more than 1 mbar at less than the largest flow is no better at it";
}

// Two gauges, each within 0.1 mbar: u = sqrt(2 ((0.05^2 + 0.1^2)/3)) = 0.0913, U = 0.183 mbar by hand.
// Source: JCGM 100:2008 4.3.7 and 5.1.2, from memory.
TEST(PressuresAnswer, TheGaugesAccuracyCountsWhereThereAreTwo) {
    const Sheet two{{Item::PressureSameGauge, "no"}, {Item::GaugeAccuracy, "0.1"}};
    const auto got = pressuresOf(asked::with(pressuresAtHighLoad(), two));
    EXPECT_EQ(asked::outcomeOf(got, FindingKind::PressureDropMeasured), Outcome::Pass);
    ASSERT_EQ(got.figures.size(), 1U);
    EXPECT_NEAR(got.figures.front().uncertainty->value.toDouble(), 0.18, 1e-9);
    const auto one = pressuresOf(pressuresAtHighLoad());
    EXPECT_NEAR(one.figures.front().uncertainty->value.toDouble(), 0.08, 1e-9);
    const auto unread = pressuresOf(asked::with(pressuresAtHighLoad(), {{Item::GaugeAccuracy, "-0.1"}}));
    EXPECT_EQ(unread.findings.back().finding.why.say, Say::ReadingUnusable);
}

// Source of six minutes and the load: a proposal of 2019 to IGEM/G/13, institution's magazine.
TEST(PressuresAnswer, TheAverageNeedsItsTimeAndLoad) {
    const auto average = [](const Sheet& change) {
        return asked::outcomeOf(pressuresOf(asked::with(pressuresAtHighLoad(), change)),
                                FindingKind::MeterAverage);
    };
    EXPECT_EQ(average({{Item::MeterAverageTime, "5"}}), Outcome::NoVerdict);
    EXPECT_EQ(average({{Item::MeterAverageTime, ""}}), Outcome::NoVerdict);
    EXPECT_EQ(average({{Item::MeterAverageTime, "x?"}}), Outcome::NoVerdict);
    EXPECT_EQ(average({{Item::MeterLoad, choice::kLoadLess}}), Outcome::NoVerdict);
    EXPECT_EQ(average({{Item::MeterAverage, ""}}), std::nullopt);
}

}  // namespace
}  // namespace hearth::judging
