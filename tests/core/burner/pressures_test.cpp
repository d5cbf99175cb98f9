// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/pressures.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/burner/rate_samples.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

namespace rs = ratesamples;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::PressureChange;
using rulebook::Gas;
using rulebook::Given;
using rulebook::Outcome;
using rulebook::Say;

PressureRead readAt(double millibar, double digit = 0.01, double accuracy = 0.0) {
    return {GaugePressure(millibar, kMillibar), PressureChange(digit, kMillibar),
            PressureChange(accuracy, kMillibar)};
}

// GUM 4.3.7: half the digit and the accuracy, each over sqrt(3).
TEST(PressureUncertainty, OfAReadingAndOfADrop) {
    const auto reading = inMillibar(readAt(20.7, 0.1, 0.3));
    EXPECT_DOUBLE_EQ(reading.value, 20.7);
    EXPECT_NEAR(reading.u, std::hypot(0.05, 0.3) / std::sqrt(3.0), 1e-12);
    const auto one = pressureDrop(readAt(21, 0.1, 0.3), readAt(20.4, 0.1, 0.3), true);
    EXPECT_NEAR(one.value, 0.6, 1e-12);
    EXPECT_NEAR(one.u, 0.05 * std::sqrt(2.0 / 3.0), 1e-12) << "its accuracy cancels";
    const auto two = pressureDrop(readAt(21, 0.1, 0.3), readAt(20.4, 0.1, 0.3), false);
    EXPECT_NEAR(two.u, std::hypot(0.05, 0.3) * std::sqrt(2.0 / 3.0), 1e-12);
}

InletInput inletAt(double millibar, double digit = 0.01) {
    InletInput input;
    input.working = readAt(millibar, digit);
    input.atFullRate = true;
    return input;
}

struct InletPressureCase {
    Gas gas;
    double millibar;
    Outcome confirmed;
    Outcome shipped;
    Say why;
};

// From memory of EN 437 (G20 17-25, G31 25-45, G30 25-35 mbar) and of the LPG code of practice (37 +-5,
// 28 +-5): the stricter end of each.
TEST(InletPressure, ByGas) {
    const auto pass = Outcome::Pass;
    const auto fail = Outcome::Fail;
    const auto look = Outcome::LookAgain;
    const InletPressureCase cases[] = {
        {Gas::NaturalGas, 20, pass, look, Say::PressureGood},
        {Gas::NaturalGas, 17.0, look, look, Say::NearEndOfRange},
        {Gas::NaturalGas, 16.9, fail, fail, Say::PressureOutside},
        {Gas::NaturalGas, 24.9, pass, look, Say::PressureGood},
        {Gas::NaturalGas, 25.1, fail, fail, Say::PressureOutside},
        {Gas::Propane, 37, pass, look, Say::PressureGood},
        {Gas::Propane, 31.9, fail, fail, Say::PressureOutside},
        {Gas::Propane, 42.1, fail, fail, Say::PressureOutside},
        {Gas::Butane, 28, pass, look, Say::PressureGood},
        {Gas::Butane, 24.9, fail, fail, Say::PressureOutside},
        {Gas::Butane, 33.1, fail, fail, Say::PressureOutside},
        {Gas::LpgAir, 20, Outcome::NoVerdict, Outcome::NoVerdict, Say::LimitMissing},
    };
    const auto confirmed = rs::allConfirmed();
    const auto shipped = rulebook::RuleBook::shipped();
    for (const auto& c : cases) {
        const auto firm = inletPressure(inletAt(c.millibar), rs::on(confirmed, c.gas));
        EXPECT_EQ(firm.outcome, c.confirmed) << c.millibar;
        EXPECT_EQ(firm.why.say, c.why) << c.millibar;
        EXPECT_EQ(inletPressure(inletAt(c.millibar), rs::on(shipped, c.gas)).outcome, c.shipped)
            << c.millibar << ": nothing passes on memory";
    }
}

TEST(InletPressure, TheMakersRangeDecidesFirst) {
    const auto book = rulebook::RuleBook::shipped();
    auto input = inletAt(18.5);
    input.maker = MakersRange{GaugePressure(19, kMillibar), GaugePressure(21, kMillibar), "invented"};
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::Fail);
    input.working = readAt(20);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::Pass);
    EXPECT_EQ(inletPressure(input, rs::on(book, Gas::LpgAir)).outcome, Outcome::Pass);
}

TEST(InletPressure, CountsAtFullRateOnlyAndNotBelowStanding) {
    const auto book = rs::allConfirmed();
    auto input = inletAt(20);
    input.atFullRate = std::nullopt;
    EXPECT_EQ(inletPressure(input, rs::on(book)).why.say, Say::InletNotFull);
    input.atFullRate = false;
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::NoVerdict);
    input = inletAt(20);
    input.standing = readAt(19);
    EXPECT_EQ(inletPressure(input, rs::on(book)).why.say, Say::InletStandingBelow);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::LookAgain);
    input.standing = readAt(24);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::Pass);
    input.standing = readAt(19);
    input.working = readAt(26);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::Fail) << "stays a failure";
    EXPECT_EQ(inletPressure({}, rs::on(book)).why.say, Say::ReadingMissing);
}

TEST(InletPressure, ACoarseGaugeDoesNotPassAtTheEdge) {
    const auto book = rs::allConfirmed();
    auto input = inletAt(17.2);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::Pass);
    input.working = readAt(17.2, 0.5);
    EXPECT_EQ(inletPressure(input, rs::on(book)).outcome, Outcome::LookAgain);
}

TEST(BurnerPressure, OnlyTheMakerCanJudge) {
    EXPECT_EQ(burnerPressure(readAt(12), std::nullopt).why.say, Say::BurnerPressureNoMaker);
    EXPECT_EQ(burnerPressure({}, std::nullopt).why.say, Say::ReadingMissing);
    const MakersRange maker{GaugePressure(11.5, kMillibar), GaugePressure(12.5, kMillibar), "invented"};
    EXPECT_EQ(burnerPressure(readAt(12), maker).outcome, Outcome::Pass);
    EXPECT_EQ(burnerPressure(readAt(12.5), maker).outcome, Outcome::LookAgain);
    EXPECT_EQ(burnerPressure(readAt(13), maker).outcome, Outcome::Fail);
    EXPECT_EQ(burnerPressure(Given<PressureRead>::unusable(), maker).outcome, Outcome::NoVerdict);
}

MeterAverageInput averageOf(double millibar, double seconds) {
    return {readAt(millibar), rs::seconds(seconds), Load::High};
}

// Institution's magazine, August 2019: 18.5 to 22 mbar over six minutes at high operating load, a proposal.
TEST(MeterAverage, InformsAndDecidesNothingUntilConfirmed) {
    const auto shipped = rulebook::RuleBook::shipped();
    const auto confirmed = rs::allConfirmed();
    const auto inside = meterAverage(averageOf(20, 360), rs::on(shipped));
    EXPECT_EQ(inside.outcome, Outcome::LookAgain);
    EXPECT_TRUE(says(inside, Say::MeterAverageInside));
    EXPECT_TRUE(says(inside, Say::MeterAverageProposal));
    const auto outside = meterAverage(averageOf(18, 360), rs::on(shipped));
    EXPECT_EQ(outside.outcome, Outcome::LookAgain) << "a proposal fails nothing";
    EXPECT_TRUE(says(outside, Say::MeterAverageOutside));
    EXPECT_EQ(meterAverage(averageOf(20, 360), rs::on(confirmed)).outcome, Outcome::Pass);
    EXPECT_EQ(meterAverage(averageOf(18, 360), rs::on(confirmed)).outcome, Outcome::Fail);
    EXPECT_EQ(meterAverage(averageOf(20, 359), rs::on(confirmed)).why.say, Say::MeterAverageTooShort);
    auto unsaid = averageOf(20, 360);
    unsaid.load = std::nullopt;
    EXPECT_EQ(meterAverage(unsaid, rs::on(confirmed)).outcome, Outcome::NoVerdict);
    EXPECT_EQ(meterAverage({}, rs::on(confirmed)).why.say, Say::ReadingMissing);
    EXPECT_EQ(meterAverage(averageOf(37, 360), rs::on(confirmed, Gas::Propane)).why.say, Say::LimitMissing);
}

}  // namespace
}  // namespace hearth::burner
