// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/asked.h"
#include "tests/support/agreement.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using asked::Sheet;
using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

constexpr auto kRateHeatUnit = UnitCode::KilowattHourPerCubicMetre;

/// 0.1 m3 in two minutes of a gas of 10.76 kWh/m3: 3 m3/h and 32.28 kW gross by hand.
Sheet rateTimed() {
    return {{Item::GasFamily, choice::kNaturalGas},
            {Item::GasHeatValue, "10.76", kRateHeatUnit},
            {Item::RateMeter, choice::kMetric},
            {Item::RateIndexStart, "1234.100"},
            {Item::RateIndexEnd, "1234.200"},
            {Item::RateTime, "120"},
            {Item::RateOthersOff, choice::kYes},
            {Item::RateFullRate, choice::kYes},
            {Item::RateWarm, choice::kYes},
            {Item::ApplianceInput, "32.0"},
            {Item::ApplianceInputBasis, choice::kGross}};
}

Answer rateOf(const Sheet& change) {
    return asked::answerTo(Question::GasRate, asked::with(rateTimed(), change));
}

Outcome heatOutcome(const Sheet& change) {
    return asked::outcomeOf(rateOf(change), FindingKind::HeatInput).value();
}

double uncertaintyOf(const Answer& answer, Derived what) {
    for (const auto& worked : answer.figures) {
        if (worked.what == what && worked.uncertainty) {
            return worked.uncertainty->value.toDouble();
        }
    }
    return std::nan("");
}

// Source: technical note "Gas rate and gas flow rate" by a UK gas installer: 0.088 m3 in 122 s, 10.76
// kWh/m3, 27.94 kW gross, 25.17 kW net by 1.11 (ours by the gas's own 1.109).
TEST(GasRateAnswer, IsTheWorkedExample) {
    const auto got = rateOf({{Item::RateIndexEnd, "1234.188"},
                             {Item::RateTime, "122"},
                             {Item::ApplianceInput, "24.49"},
                             {Item::ApplianceInputBasis, choice::kNet}});
    testing::Agreement agreement("Gas rate and heat input, from typed readings",
                                 "Technical note by a UK gas installer, worked example", "kW, m3/h", 0.05);
    agreement.hold("flow", asked::valueOf(got, Derived::GasFlow), 2.597);
    agreement.hold("gross", asked::valueOf(got, Derived::HeatInputGross), 27.94);
    agreement.hold("net", asked::valueOf(got, Derived::HeatInputNet), 25.17);
    EXPECT_NE(asked::outcomeOf(got, FindingKind::HeatInput), Outcome::Fail) << "2.8 % over the plate";
}

// Source: training-revision worked example: 1 ft3 in 80 s, 45 ft3/h = 1.274 m3/h.
TEST(GasRateAnswer, TakesATestDial) {
    const Sheet dial{{Item::RateMeter, choice::kImperial},
                     {Item::RateDial, choice::kDial1},
                     {Item::RateTurns, "1"},
                     {Item::RateTime, "80"}};
    const auto mark = rateOf(dial);
    EXPECT_NEAR(asked::valueOf(mark, Derived::GasFlow), 1.274, 0.001);
    // The stopwatch alone: (2 / 2 %) sqrt(2) x 0.5 s / sqrt(3) = 40.8 s by hand, to the next second.
    EXPECT_NEAR(asked::valueOf(mark, Derived::TimeForTwoPercent), 41.0, 1e-9);
    // Read to a tenth of a cubic foot, half of it being 4 s at this rate:
    // 100 sqrt(2) sqrt(4^2 + 0.5^2) / sqrt(3) = 329.1 s by hand.
    const auto read = rateOf(asked::with(dial, {{Item::RateDialDivision, "0.1", UnitCode::CubicFoot}}));
    EXPECT_NEAR(asked::valueOf(read, Derived::TimeForTwoPercent), 330.0, 1e-9);
    EXPECT_GT(uncertaintyOf(read, Derived::GasFlow), uncertaintyOf(mark, Derived::GasFlow));
    for (const auto* division : {"x?", "-0.1"}) {
        const auto got = rateOf(asked::with(dial, {{Item::RateDialDivision, division}}));
        EXPECT_EQ(asked::figureOf(got, Derived::GasFlow), std::nullopt) << division;
        EXPECT_TRUE(asked::saysOf(got, FindingKind::GasRate, Say::ReadingUnusable)) << division;
    }
}

TEST(GasRateAnswer, TakesAnIndexThatCameBackToNought) {
    const Sheet over{{Item::RateIndexStart, "9999.950"}, {Item::RateIndexEnd, "0.050"}};
    const auto unsaid = rateOf(over);
    EXPECT_TRUE(asked::saysOf(unsaid, FindingKind::GasRate, Say::RateIndexBackwards));
    EXPECT_EQ(asked::outcomeOf(unsaid, FindingKind::HeatInput), Outcome::NoVerdict);

    const auto said = rateOf(asked::with(over, {{Item::RateIndexWhole, "10000"}}));
    EXPECT_NEAR(asked::valueOf(said, Derived::GasFlow), 3.0, 1e-9);
    EXPECT_NEAR(asked::valueOf(said, Derived::HeatInputGross), 32.28, 1e-9);
    EXPECT_EQ(asked::outcomeOf(said, FindingKind::HeatInput), Outcome::Pass);

    const auto unreadable = rateOf(asked::with(over, {{Item::RateIndexWhole, "1oooo"}}));
    EXPECT_TRUE(asked::saysOf(unreadable, FindingKind::GasRate, Say::ReadingUnusable));
    // Said of an index that did not come back: more than half of it would have passed.
    const auto slip = rateOf({{Item::RateIndexWhole, "10000"}});
    EXPECT_TRUE(asked::saysOf(slip, FindingKind::GasRate, Say::RateAbsurd));
    EXPECT_EQ(asked::figureOf(slip, Derived::GasFlow), std::nullopt);
}

TEST(GasRateAnswer, TakesAVolumeWorkedOutByHand) {
    const Sheet hand{{Item::RateMeter, choice::kByHand},
                     {Item::RateIndexStart, ""},
                     {Item::RateIndexEnd, ""},
                     {Item::RatePassed, "0.100"}};
    EXPECT_NEAR(asked::valueOf(rateOf(hand), Derived::GasFlow), 3.0, 1e-9);
    EXPECT_EQ(heatOutcome(hand), Outcome::Pass);
    EXPECT_TRUE(asked::saysOf(rateOf(asked::with(hand, {{Item::RatePassed, ""}})), FindingKind::GasRate,
                              Say::ReadingMissing));
    EXPECT_TRUE(asked::saysOf(rateOf(asked::with(hand, {{Item::RatePassed, "o.1"}})), FindingKind::GasRate,
                              Say::ReadingUnusable));
    EXPECT_TRUE(asked::saysOf(rateOf(asked::with(hand, {{Item::RatePassed, "0"}})), FindingKind::GasRate,
                              Say::RateNothingPassed));
}

// Source: technical note by a UK gas installer: V x 30 x CV, 0.1 x 30 x 10.76 = 32.28 kW.
TEST(GasRateAnswer, ShowsTheShortcutAtTwoMinutesOnly) {
    const auto got = rateOf({});
    EXPECT_NEAR(asked::valueOf(got, Derived::TwoMinuteShortcut), 32.28, 1e-9);
    const auto over = rateOf(
        {{Item::RateIndexStart, "9999.950"}, {Item::RateIndexEnd, "0.050"}, {Item::RateIndexWhole, "10000"}});
    EXPECT_NEAR(asked::valueOf(over, Derived::TwoMinuteShortcut), 32.28, 1e-9);
    const auto dial = rateOf(
        {{Item::RateMeter, choice::kImperial}, {Item::RateDial, choice::kDial2}, {Item::RateTurns, "2"}});
    // 4 ft3 = 0.113267 m3.
    EXPECT_NEAR(asked::valueOf(dial, Derived::TwoMinuteShortcut), 0.113267 * 30.0 * 10.76, 0.005);
    EXPECT_EQ(asked::figureOf(rateOf({{Item::RateTime, "122"}}), Derived::TwoMinuteShortcut), std::nullopt);
}

// Half the last digit, 0.0005 m3, is 0.6 s at 3 m3/h: 100 sqrt(2) sqrt(0.6^2 + 0.5^2) / sqrt(3) = 63.8 s by
// hand.
TEST(GasRateAnswer, SaysHowLongToTimeForTwoPercent) {
    EXPECT_NEAR(asked::valueOf(rateOf({}), Derived::TimeForTwoPercent), 64.0, 1e-9);
}

TEST(GasRateAnswer, NeedsEachReadingAndCondition) {
    ASSERT_EQ(heatOutcome({}), Outcome::Pass);
    for (const auto item :
         {Item::RateIndexStart, Item::RateIndexEnd, Item::RateTime, Item::RateOthersOff, Item::RateFullRate,
          Item::RateWarm, Item::ApplianceInput, Item::ApplianceInputBasis}) {
        for (const auto* text : {"", "x?"}) {
            EXPECT_EQ(heatOutcome({{item, text}}), Outcome::NoVerdict) << reg::infoOf(item).code << text;
        }
    }
    for (const auto item :
         {Item::RateMeter, Item::RateIndexWhole, Item::GasHeatValue, Item::RateCorrection}) {
        EXPECT_EQ(heatOutcome({{item, "x?"}}), Outcome::NoVerdict) << reg::infoOf(item).code;
    }
    EXPECT_EQ(asked::outcomeOf(rateOf({{Item::RateMeterMost, "x?"}}), FindingKind::GasRate),
              Outcome::NoVerdict);
}

TEST(GasRateAnswer, SaysThatWithoutAMeterThereIsNoHeatInput) {
    const auto got = rateOf({{Item::RateMeter, choice::kNone}});
    EXPECT_EQ(asked::figureOf(got, Derived::HeatInputGross), std::nullopt);
    EXPECT_FALSE(asked::passes(got));
    EXPECT_TRUE(asked::saysOf(got, FindingKind::GasRate, Say::RateNoMeter));
}

// 32.28 kW is 7.6 % over 30 kW and 7.8 % under 35 kW.
TEST(GasRateAnswer, TheMakersToleranceMayDifferByTheSide) {
    const auto outcome = [](const char* plate, const char* over, const char* under) {
        return heatOutcome({{Item::ApplianceInput, plate},
                            {Item::ApplianceTolerance, over},
                            {Item::ApplianceToleranceUnder, under}});
    };
    EXPECT_EQ(outcome("30", "15", "2"), Outcome::Pass);
    EXPECT_EQ(outcome("30", "2", "15"), Outcome::Fail);
    EXPECT_EQ(outcome("35", "2", "15"), Outcome::Pass);
    EXPECT_EQ(outcome("35", "15", "2"), Outcome::Fail);
    EXPECT_EQ(outcome("35", "15", ""), Outcome::Pass);
    EXPECT_EQ(outcome("35", "2", ""), Outcome::Fail);
    const auto got = rateOf({{Item::ApplianceTolerance, "15"}, {Item::ApplianceToleranceSource, "page 9"}});
    const auto* finding = asked::findingOf(got, FindingKind::HeatInput);
    ASSERT_FALSE(finding->limits.empty());
    EXPECT_EQ(finding->limits.front().provenance, rulebook::Provenance::Maker);
    EXPECT_EQ(finding->limits.front().source, "page 9");
}

TEST(GasRateAnswer, AMakersToleranceThatIsNoneLeavesTheHeatInputOpen) {
    const std::pair<const char*, const char*> kUnclear[] = {
        {"x?", ""}, {"-5", ""}, {"", "5"}, {"5", "x?"}, {"5", "-5"}};
    for (const auto& [over, under] : kUnclear) {
        const auto got = rateOf({{Item::ApplianceTolerance, over}, {Item::ApplianceToleranceUnder, under}});
        EXPECT_EQ(asked::outcomeOf(got, FindingKind::HeatInput), Outcome::NoVerdict) << over << ' ' << under;
        EXPECT_TRUE(asked::saysOf(got, FindingKind::HeatInput, Say::MakersFigureUnclear));
    }
}

TEST(GasRateAnswer, NothingPassesByTheGasWhileNoneWasSaid) {
    const Sheet unsaid{{Item::GasFamily, ""}};
    EXPECT_EQ(heatOutcome(unsaid), Outcome::Pass) << "the heat value was typed, the plate is gross";
    for (const auto& more : {Sheet{{Item::GasHeatValue, ""}},
                             Sheet{{Item::ApplianceInput, "29.1"}, {Item::ApplianceInputBasis, choice::kNet}},
                             Sheet{{Item::RateCorrection, choice::kFixed}, {Item::ApplianceInput, "33"}}}) {
        const auto got = rateOf(asked::with(unsaid, more));
        EXPECT_EQ(asked::outcomeOf(got, FindingKind::HeatInput), Outcome::LookAgain);
        EXPECT_TRUE(asked::saysOf(got, FindingKind::HeatInput, Say::GasNotSaid));
        EXPECT_NE(heatOutcome(more), Outcome::LookAgain);
    }
}

// The statutory correction: (1013.25 + 21 - 0.120206 x 50)/1013.25 x 288.15/285.35 by hand.
// Source: Gas (Calculation of Thermal Energy) Regulations 1996, Schedule; form from memory.
TEST(GasRateAnswer, CorrectsByPressureTemperatureAndHeight) {
    const Sheet measured{{Item::RateCorrection, choice::kStatutory},
                         {Item::RateMeterPressure, "21"},
                         {Item::RateGasTemperature, "12.2"},
                         {Item::RateAltitude, "49"}};
    const double factor = (1013.25 + 21.0 - 6.010) / 1013.25 * 288.15 / 285.35;
    const auto got = rateOf(measured);
    EXPECT_NEAR(asked::valueOf(got, Derived::MeterCorrection), factor, 1e-5);
    EXPECT_NEAR(asked::valueOf(got, Derived::HeatInputGross), 32.28 * factor, 0.005);
    for (const auto item : {Item::RateMeterPressure, Item::RateGasTemperature, Item::RateAltitude}) {
        for (const auto* text : {"", "x?"}) {
            const auto less = rateOf(asked::with(measured, {{item, text}}));
            EXPECT_EQ(asked::outcomeOf(less, FindingKind::HeatInput), Outcome::NoVerdict);
            EXPECT_EQ(asked::figureOf(less, Derived::HeatInputGross), std::nullopt);
            EXPECT_NEAR(asked::valueOf(less, Derived::GasFlow), 3.0, 1e-9) << "the rate needs no correction";
        }
    }
    // Beyond where the regulations' table was read.
    const auto high = rateOf(asked::with(measured, {{Item::RateAltitude, "900"}}));
    EXPECT_EQ(asked::outcomeOf(high, FindingKind::HeatInput), Outcome::NoVerdict);
    EXPECT_EQ(high.errors.size(), 1U);
}

// Source: the factor of the bills, suppliers' help pages.
TEST(GasRateAnswer, CorrectsByTheFactorOfTheBills) {
    const auto got = rateOf({{Item::RateCorrection, choice::kFixed}});
    EXPECT_NEAR(asked::valueOf(got, Derived::MeterCorrection), 1.02264, 1e-9);
    EXPECT_NEAR(asked::valueOf(got, Derived::HeatInputGross), 32.28 * 1.02264, 0.005);
}

}  // namespace
}  // namespace hearth::judging
