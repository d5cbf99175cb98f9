// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/stoichiometry.h"

#include "core/gas/named_gases.h"
#include "core/quantity/units.h"
#include "tests/support/agreement.h"

#include <array>
#include <gtest/gtest.h>
#include <limits>
#include <string>

namespace hearth::gas {
namespace {

using quantity::kPercent;
using quantity::Share;
using testing::Agreement;

Stoichiometry burning(std::string_view code, double oxygenInAir = kOxygenInAir) {
    return stoichiometry(namedGas(code)->composition, oxygenInAir).value();
}

// By hand from x + y/4, with the figures that facts of the trade print: two decimals.
TEST(BurningByHand, OxygenAirAndFlueGas) {
    struct Row {
        const char* gas;
        double oxygen, air, dry, wet, co2Max, co2MaxAt21;
    };
    const Row rows[] = {{"g20", 2.0, 9.55, 8.55, 10.55, 11.70, 11.73},
                        {"propane", 5.0, 23.87, 21.87, 25.87, 13.72, 13.76},
                        {"butane", 6.5, 31.03, 28.53, 33.53, 14.02, 14.06},
                        {"natural_typical", 2.031, 9.69, 8.72, 10.72, 11.83, 11.86},
                        {"natural_rich_in_co2", 2.026, 9.67, 8.70, 10.70, 11.99, 12.02}};
    Agreement volumes("Air and flue gas per m3 of gas at lambda 1",
                      "hand stoichiometry (textbook: O2 = x + y/4)", "m3/m3", 0.0051);
    Agreement shares("Greatest CO2 of dry flue gas", "hand stoichiometry, oxygen in air 20.95 and 21 %", "%",
                     0.0051);
    for (const auto& row : rows) {
        const auto found = burning(row.gas);
        volumes.hold(std::string(row.gas) + " oxygen", found.oxygen, row.oxygen);
        volumes.hold(std::string(row.gas) + " air", found.air, row.air);
        volumes.hold(std::string(row.gas) + " dry", found.dryFlue, row.dry);
        volumes.hold(std::string(row.gas) + " wet", found.wetFlue, row.wet);
        shares.hold(row.gas, found.co2Max.in(kPercent), row.co2Max);
        shares.hold(row.gas, burning(row.gas, 0.21).co2Max.in(kPercent), row.co2MaxAt21);
    }
}

// A stoichiometry page (textbook): methane with just enough air gives about 9.5 % CO2 and 19.0 % water in the
// wet flue gas.
TEST(BurningByHand, TextbooksWetFlueGasOfMethane) {
    const auto found = burning("g20");
    Agreement agreement("Wet flue gas of methane at lambda 1", "combustion-product tables (textbook)", "%",
                        0.051);
    agreement.hold("CO2", 100.0 * found.carbonDioxide / found.wetFlue, 9.5);
    agreement.hold("water", 100.0 * found.water / found.wetFlue, 19.0);
}

// 8.55 / 9.55 and 21.87 / 23.87, by hand.
TEST(DryPerAir, IsTheFactorOfLambda) {
    EXPECT_NEAR(dryPerAir(burning("g20")), 0.895, 0.0006);
    EXPECT_NEAR(dryPerAir(burning("propane")), 0.916, 0.0006);
    EXPECT_DOUBLE_EQ(burning("g20").oxygenInAir(), kOxygenInAir);
    EXPECT_DOUBLE_EQ(burning("g20", 0.21).oxygenInAir(), 0.21);
}

// Backwards: burnt with lambda times the air, the dry flue gas holds a (lambda - 1) A of oxygen.
TEST(LambdaAtOxygen, GivesBackTheAirThatWasGiven) {
    for (const auto* gas : {"g20", "natural_typical", "propane", "butane"}) {
        const auto burnt = burning(gas);
        for (double lambda = 1.0; lambda < 12.0; lambda += 0.1) {
            const double spare = (lambda - 1.0) * burnt.air;
            const double oxygen = kOxygenInAir * spare / (burnt.dryFlue + spare);
            EXPECT_NEAR(lambdaAtOxygen(burnt, {oxygen, quantity::kOne}).value(), lambda, 1e-9) << gas;
        }
    }
}

TEST(LambdaAtOxygen, HasNoAnswerOutsideAir) {
    const auto burnt = burning("g20");
    for (const double percent : {-0.1, 20.95, 21.0, 100.0, std::numeric_limits<double>::quiet_NaN()}) {
        const auto found = lambdaAtOxygen(burnt, {percent, kPercent});
        ASSERT_FALSE(found) << percent;
        EXPECT_EQ(found.error().code, ErrorCode::OutOfRange);
    }
    EXPECT_DOUBLE_EQ(lambdaAtOxygen(burnt, {0.0, kPercent}).value(), 1.0);
}

TEST(Burning, NeedsAFuelAndAir) {
    EXPECT_FALSE(stoichiometry(compositionOf(std::array{Part{Component::N2, 1.0}}).value()));
    EXPECT_FALSE(stoichiometry(propaneAir({3.0, kPercent}).value())) << "brings more air than it needs";
    for (const double oxygen : {0.0, -0.2, 1.1, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_FALSE(stoichiometry(namedGas("g20")->composition, oxygen)) << oxygen;
    }
    // Hydrogen burns to water alone, carbon monoxide to CO2 alone.
    const auto hydrogen = stoichiometry(compositionOf(std::array{Part{Component::H2, 1.0}}).value()).value();
    EXPECT_DOUBLE_EQ(hydrogen.oxygen, 0.5);
    EXPECT_DOUBLE_EQ(hydrogen.water, 1.0);
    EXPECT_DOUBLE_EQ(hydrogen.co2Max.base(), 0.0);
    const auto monoxide = stoichiometry(compositionOf(std::array{Part{Component::CO, 1.0}}).value()).value();
    EXPECT_DOUBLE_EQ(monoxide.oxygen, 0.5);
    EXPECT_DOUBLE_EQ(monoxide.water, 0.0);
    EXPECT_DOUBLE_EQ(monoxide.carbonDioxide, 1.0);
}

}  // namespace
}  // namespace hearth::gas
