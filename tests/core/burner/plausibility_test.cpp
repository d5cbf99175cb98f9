// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/plausibility.h"

#include "core/burner/flue_gas.h"
#include "core/rulebook/conclude.h"
#include "tests/core/burner/flue_samples.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using flue::percent;
using quantity::Decimal;
using quantity::kPercent;
using rulebook::Finding;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Say;

PlausibilityInput together(double oxygen, double carbonDioxide, Gas gas = Gas::NaturalGas) {
    return {flue::read(80, carbonDioxide, oxygen), {}, *usualFuelLine(gas), {}, {}};
}

Finding judgedTogether(const PlausibilityInput& input) {
    const auto book = flue::confirmed();
    return plausibility(input, flue::inForce(book));
}

const rulebook::Sentence* noteOf(const Finding& finding, Say say) {
    const auto found = std::find_if(finding.notes.begin(), finding.notes.end(),
                                    [&](const auto& note) { return note.say == say; });
    return found == finding.notes.end() ? nullptr : &*found;
}

// CO2 that goes with O2 in complete combustion (the table of flue_gas_test.cpp, by hand) is on the line.
TEST(OffLine, IsNoughtOnTheLine) {
    EXPECT_NEAR(offLine(percent(3), percent(10.03), percent(11.70))->in(kPercent), 0.0, 0.01);
    EXPECT_NEAR(offLine(percent(8), percent(8.48), percent(13.72))->in(kPercent), 0.0, 0.01);
    EXPECT_NEAR(offLine(percent(4.5), percent(10.0), percent(11.70))->in(kPercent), 0.81, 0.01);
    EXPECT_FALSE(offLine(percent(21), percent(0), percent(11.70)));
    EXPECT_FALSE(offLine(percent(5), percent(-1), percent(11.70)));
}

// CO2max of stoichiometry by hand: natural gas (handbook mix) 11.83, propane 13.72, butane 14.02.
TEST(UsualFuelLine, IsThatOfTheGas) {
    EXPECT_NEAR(usualFuelLine(Gas::NaturalGas)->co2Max.in(kPercent), 11.83, 0.17);  // 11.7 to 12.0
    EXPECT_NEAR(usualFuelLine(Gas::Propane)->co2Max.in(kPercent), 13.72, 0.005);
    EXPECT_NEAR(usualFuelLine(Gas::Butane)->co2Max.in(kPercent), 14.02, 0.005);
    EXPECT_FALSE(usualFuelLine(Gas::LpgAir));
}

TEST(Plausibility, FitsWhereTheReadingsBelongTogether) {
    const auto finding = judgedTogether(together(4.5, 9.2));
    EXPECT_EQ(finding.outcome, Outcome::Pass);
    EXPECT_EQ(finding.why.say, Say::PlausibleFits);
    EXPECT_EQ(judgedTogether(together(5.0, 10.4, Gas::Propane)).outcome, Outcome::Pass);
    // Until the firm confirms it the tolerance is common practice, which passes nothing.
    const auto shipped = rulebook::RuleBook::shipped();
    const auto habit = plausibility(together(4.5, 9.2), flue::inForce(shipped));
    EXPECT_EQ(habit.outcome, Outcome::LookAgain);
    EXPECT_EQ(habit.why.say, Say::LimitCommonPractice);
    EXPECT_TRUE(rulebook::says(habit, Say::PlausibleFits));
    EXPECT_TRUE(rulebook::says(habit, Say::PlausibleCannotSee));
    const auto impossible = plausibility(together(45, 9.2), flue::inForce(shipped));
    EXPECT_EQ(impossible.why.say, Say::PlausibleOxygenAboveAir);
    EXPECT_FALSE(rulebook::says(impossible, Say::PlausibleFits));
}

// What analysers show for a fuel, computed from O2 with 20.9 to 21 and CO2max 11.7 to 12.0, is never doubted.
TEST(Plausibility, TakesEveryUsualAnalysersFigureForNaturalGas) {
    for (const double most : {11.7, 11.8, 11.9, 12.0}) {
        for (const double air : {20.9, 21.0}) {
            for (double oxygen = 2.0; oxygen < 12.0; oxygen += 0.1) {
                const double shown = Decimal::rounded(most * (air - oxygen) / air, 1).toDouble();
                EXPECT_NE(judgedTogether(together(oxygen, shown)).why.say, Say::PlausibleGap)
                    << most << ' ' << air << ' ' << oxygen;
            }
        }
    }
}

TEST(Plausibility, NamesTheFuelThatTheAnalyserWasSetTo) {
    // Propane's CO2 for 4.5 % O2: 13.72 x 16.45/20.95 = 10.8.
    const auto finding = judgedTogether(together(4.5, 10.8));
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_EQ(finding.why.say, Say::PlausibleGap);
    const auto* note = noteOf(finding, Say::PlausibleOtherFuel);
    ASSERT_NE(note, nullptr);
    EXPECT_EQ(note->arguments.front(), rulebook::Argument(Gas::Propane));
    const auto other = judgedTogether(together(4.5, 9.2, Gas::Propane));
    EXPECT_EQ(noteOf(other, Say::PlausibleOtherFuel)->arguments.front(), rulebook::Argument(Gas::NaturalGas));
}

struct SlipCase {
    double oxygen;
    double carbonDioxide;
    Say why;
    Say cause;
};

TEST(Plausibility, NamesSlipsOfTyping) {
    const SlipCase cases[] = {
        {45, 9.2, Say::PlausibleOxygenAboveAir, Say::PlausibleSlipOxygen},
        {0.45, 9.2, Say::PlausibleGap, Say::PlausibleSlipOxygen},
        {4.5, 92, Say::PlausibleCarbonDioxideAbove, Say::PlausibleSlipCarbonDioxide},
        {4.5, 0.92, Say::PlausibleGap, Say::PlausibleSlipCarbonDioxide},
        {9.2, 4.5, Say::PlausibleGap, Say::PlausibleSwapped},
        {4.5, 7.8, Say::PlausibleGap, Say::PlausibleUnexplained},
    };
    for (const auto& c : cases) {
        const auto finding = judgedTogether(together(c.oxygen, c.carbonDioxide));
        EXPECT_EQ(finding.outcome, Outcome::LookAgain);
        EXPECT_EQ(finding.why.say, c.why) << c.oxygen << ' ' << c.carbonDioxide;
        EXPECT_NE(noteOf(finding, c.cause), nullptr) << c.oxygen << ' ' << c.carbonDioxide;
    }
    const auto slip = judgedTogether(together(4.5, 92));
    EXPECT_EQ(noteOf(slip, Say::PlausibleSlipCarbonDioxide)->arguments.back(),
              rulebook::Argument(quantity::Figure{Decimal(920, 2), quantity::UnitCode::Percent}));
}

// It can't, and says so: products thinned with air stay on the line.
TEST(Plausibility, DoesNotSeeDilutionAndSaysSo) {
    for (const double air : {0.2, 0.5, 0.8}) {
        const double oxygen = 4.5 * (1 - air) + 20.9 * air;
        const auto finding = judgedTogether(together(oxygen, 9.25 * (1 - air)));
        EXPECT_EQ(finding.outcome, Outcome::Pass);
        EXPECT_NE(noteOf(finding, Say::PlausibleCannotSee), nullptr);
    }
    auto computed = together(4.5, 9.2);
    computed.analyser.computesCarbonDioxide = true;
    EXPECT_NE(noteOf(judgedTogether(computed), Say::PlausibleComputed), nullptr);
}

TEST(Plausibility, IsNeverGraverThanLookAgain) {
    for (double oxygen = 0.0; oxygen < 30.0; oxygen += 0.7) {
        for (double carbonDioxide = 0.0; carbonDioxide < 30.0; carbonDioxide += 0.7) {
            const auto outcome = judgedTogether(together(oxygen, carbonDioxide)).outcome;
            EXPECT_TRUE(outcome == Outcome::Pass || outcome == Outcome::LookAgain);
        }
    }
    EXPECT_EQ(judgedTogether(together(-0.1, 9)).why.say, Say::CombustionBelowNought);
}

TEST(Plausibility, AFlueNoHotterThanTheAirIsLookedAt) {
    auto input = together(4.5, 9.2);
    input.flue = flue::celsius(18);
    input.air = flue::celsius(20);
    const auto finding = judgedTogether(input);
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_NE(noteOf(finding, Say::PlausibleFlueNotHotter), nullptr);
    input.flue = flue::celsius(60);
    EXPECT_EQ(judgedTogether(input).outcome, Outcome::Pass);
}

TEST(Plausibility, WithoutReadingsOrLimitThereIsNoVerdict) {
    auto input = together(4.5, 9.2);
    input.readings.oxygen = {};
    EXPECT_EQ(judgedTogether(input).why.say, Say::ReadingMissing);
    const rulebook::RuleBook none({});
    EXPECT_EQ(plausibility(together(4.5, 9.2), flue::inForce(none)).why.say, Say::LimitMissing);
}

struct PrintedCase {
    Decimal printed;
    double carbonMonoxide;
    double carbonDioxide;
    Outcome outcome;
    Say why;
};

// 80/92 000 = 0.00087; within half the last digits of all three.
TEST(RatioAgrees, ToRounding) {
    const PrintedCase cases[] = {
        {{9, 4}, 80, 9.2, Outcome::Pass, Say::PlausibleRatioAgrees},
        {{87, 5}, 80, 9.2, Outcome::Pass, Say::PlausibleRatioAgrees},
        {{8, 4}, 80, 9.2, Outcome::LookAgain, Say::PlausibleRatioDiffers},
        {{87, 4}, 80, 9.2, Outcome::LookAgain, Say::PlausibleRatioDiffers},
        {{0, 4}, 0, 9.2, Outcome::Pass, Say::PlausibleRatioAgrees},
        {{9, 4}, 80, 0.0, Outcome::NoVerdict, Say::CombustionNoFlueGas},
        {{9, 4}, -1, 9.2, Outcome::NoVerdict, Say::CombustionBelowNought},
    };
    for (const auto& c : cases) {
        const auto finding = ratioAgrees(c.printed, flue::read(c.carbonMonoxide, c.carbonDioxide), {});
        EXPECT_EQ(finding.outcome, c.outcome) << c.printed.text();
        EXPECT_EQ(finding.why.say, c.why) << c.printed.text();
    }
    EXPECT_EQ(ratioAgrees({}, flue::read(80, 9.2), {}).why.say, Say::ReadingMissing);
}

}  // namespace
}  // namespace hearth::burner
