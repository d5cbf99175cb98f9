// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/hot_water.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/rate_samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

namespace rs = ratesamples;
using quantity::Flow;
using quantity::HeatOutput;
using quantity::kKelvin;
using quantity::kKilowatt;
using quantity::kLitrePerHour;
using quantity::kLitrePerMinute;
using quantity::NetPower;
using quantity::TemperatureChange;
using rulebook::Outcome;
using rulebook::Say;

Measured<Flow> minutely(double litres, double u = 0.0) {
    return {Flow(litres, kLitrePerMinute), Flow(u, kLitrePerMinute)};
}

Measured<TemperatureChange> warmed(double kelvin, double u = 0.0) {
    return {TemperatureChange(kelvin, kKelvin), TemperatureChange(u, kKelvin)};
}

TEST(HotWaterAgainst, WorkedExample) {
    // The page reckons with 4.2 kJ/(kg K), we with 4.18: half a per cent apart.
    testing::Agreement example("Hot water output of 9 l/min from 10 to 60 °C",
                               "Consumer page on boiler flow rates (with 4.2 kJ/(kg K))", "%", 0.5);
    example.holdRelative("kW", waterOutput(minutely(9), warmed(50))->value.in(kKilowatt), 31.5);
}

struct WaterRow {
    double kilowatt;
    double kelvin;
    double litres;
    bool hourly;
};

// Arithmetic from 4.18 kJ/(kg K) by hand, no outside source.
TEST(HotWater, FlowsFromOutput) {
    const WaterRow rows[] = {{24, 35, 9.84, false},
                             {30, 35, 12.3, false},
                             {30, 30, 14.35, false},
                             {20, 20, 861, true},
                             {20, 11, 1566, true}};
    for (const auto& row : rows) {
        const auto flow =
            waterFlow(HeatOutput(row.kilowatt, kKilowatt), TemperatureChange(row.kelvin, kKelvin));
        ASSERT_TRUE(flow);
        EXPECT_NEAR(flow->in(row.hourly ? kLitrePerHour : kLitrePerMinute), row.litres,
                    row.hourly ? 0.5 : 0.06);
    }
}

TEST(HotWaterLaws, FlowAndOutputUndoEachOther) {
    for (double litres = 2; litres < 30; litres += 1.7) {
        for (double kelvin = 5; kelvin < 80; kelvin += 11) {
            const auto output = waterOutput(minutely(litres, 0.2), warmed(kelvin, 0.5));
            const auto back = waterFlow(output->value, TemperatureChange(kelvin, kKelvin));
            EXPECT_NEAR(back->in(kLitrePerMinute), litres, 1e-9);
            EXPECT_NEAR(output->u / output->value, std::hypot(0.2 / litres, 0.5 / kelvin), 1e-9);
        }
    }
}

TEST(HotWater, RefusesWhatCannotBe) {
    EXPECT_FALSE(waterOutput(minutely(-1), warmed(30)));
    EXPECT_FALSE(waterOutput(minutely(10), warmed(-5)));
    EXPECT_FALSE(waterOutput(minutely(10), warmed(101)));
    EXPECT_FALSE(waterFlow(HeatOutput(20, kKilowatt), {}));
    EXPECT_FALSE(waterFlow(HeatOutput(-1, kKilowatt), TemperatureChange(20, kKelvin)));
    EXPECT_FALSE(heatBalance({}, {}));
}

HotWaterInput tapped(double litres, double kelvin, double u = 0.0) {
    HotWaterInput input;
    input.flow = minutely(litres, u);
    input.rise = warmed(kelvin);
    input.atFullRate = true;
    input.makersSource = "invented brochure";
    return input;
}

TEST(HotWater, AgainstTheMakersFigureOnly) {
    auto input = tapped(9.84, 35);
    EXPECT_EQ(hotWater(input).why.say, Say::HotWaterNoMaker);
    EXPECT_EQ(hotWater(input).outcome, Outcome::NoVerdict);
    input.maker = HeatOutput(20, kKilowatt);
    EXPECT_EQ(hotWater(input).outcome, Outcome::Pass);
    input.maker = HeatOutput(28, kKilowatt);
    EXPECT_EQ(hotWater(input).outcome, Outcome::Fail);
    EXPECT_EQ(hotWater(input).why.say, Say::HotWaterLow);
    // The same water: 9.84 l/min at 35 K is 11.48 l/min at 30 K.
    input.maker = FlowAtRise{Flow(11.4, kLitrePerMinute), TemperatureChange(30, kKelvin)};
    EXPECT_EQ(hotWater(input).outcome, Outcome::Pass);
    input.maker = FlowAtRise{Flow(11.6, kLitrePerMinute), TemperatureChange(30, kKelvin)};
    EXPECT_EQ(hotWater(input).outcome, Outcome::Fail);
    input.flow = minutely(9.84, 0.3);
    EXPECT_EQ(hotWater(input).outcome, Outcome::LookAgain) << "within the uncertainty of the flow";
    EXPECT_TRUE(says(hotWater(input), Say::HotWaterGives));
}

TEST(HotWater, CountsWithTheBurnerAtItsMaximumOnly) {
    auto input = tapped(9.84, 35);
    input.maker = HeatOutput(20, kKilowatt);
    input.atFullRate = false;
    EXPECT_EQ(hotWater(input).why.say, Say::HotWaterNotFull);
    input.atFullRate = std::nullopt;
    EXPECT_EQ(hotWater(input).outcome, Outcome::NoVerdict);
    input.flow = {};
    EXPECT_EQ(hotWater(input).why.say, Say::ReadingMissing);
    input = tapped(9.84, 150);
    EXPECT_EQ(hotWater(input).why.say, Say::ReadingUnusable);
    input = tapped(9.84, 35);
    input.maker = FlowAtRise{Flow(11.4, kLitrePerMinute), {}};
    EXPECT_EQ(hotWater(input).outcome, Outcome::NoVerdict);
}

// Common practice, no source: 0.9 to 1.05. It advises and fails nothing.
TEST(HeatBalance, AdvisesOnly) {
    const auto book = rulebook::RuleBook::shipped();
    auto input = tapped(9.84, 35);  // 24.0 kW
    EXPECT_EQ(heatBalanceFinding(input, rs::on(book)).why.say, Say::ReadingMissing);
    const auto with = [&](double kilowatt) {
        input.heatInput = Measured<NetPower>{NetPower(kilowatt, kKilowatt), {}};
        return heatBalanceFinding(input, rs::on(book));
    };
    EXPECT_EQ(with(24.5).outcome, Outcome::LookAgain) << "a habit of the trade passes nothing";
    EXPECT_TRUE(rulebook::says(with(24.5), Say::BalanceGood));
    EXPECT_FALSE(rulebook::says(with(20), Say::BalanceGood));
    EXPECT_EQ(with(24.5).measured->value.text(), "0.98");
    EXPECT_EQ(with(20).outcome, Outcome::LookAgain) << "more out than in";
    EXPECT_EQ(with(20).why.say, Say::BalanceOutside);
    EXPECT_EQ(with(30).outcome, Outcome::LookAgain);
    EXPECT_EQ(with(0).why.say, Say::ReadingUnusable);
    input.atFullRate = std::nullopt;
    EXPECT_EQ(with(24.5).outcome, Outcome::NoVerdict);
    EXPECT_EQ(
        heatBalanceFinding(tapped(1, 1), rs::on(rs::without(book, rulebook::Rule::HeatBalance))).outcome,
        Outcome::NoVerdict);
}

}  // namespace
}  // namespace hearth::burner
