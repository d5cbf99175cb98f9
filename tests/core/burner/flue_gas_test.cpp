// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_gas.h"

#include "tests/core/burner/flue_samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using flue::burning;
using flue::celsius;
using flue::percent;
using flue::ppm;
using quantity::kPercent;
using quantity::kPpm;
using quantity::Share;

struct ProductsRow {
    double oxygen;
    double methane;  // CO2, per cent
    double exact;
    double simple;
    double propane;
    double butane;  // 0: not in the table
};

// Stoichiometry by hand with 20.95 % oxygen in air; two decimals of CO2, three of lambda. The simple lambda
// is 20.9/(20.9 - O2), as its formula is published, divided by hand.
constexpr ProductsRow kProducts[] = {
    {0, 11.70, 1.000, 1.000, 13.72, 14.02}, {3, 10.03, 1.150, 1.168, 11.76, 12.01},
    {4, 9.47, 1.211, 1.237, 11.10, 0},      {5, 8.91, 1.281, 1.314, 10.45, 10.68},
    {6, 8.35, 1.359, 1.403, 9.79, 0},       {8, 7.23, 1.553, 1.620, 8.48, 0},
};

TEST(FlueGas, CarbonDioxideOfOxygenAgreesWithTheTable) {
    // 13.72 as printed is rounded before it is multiplied: 0.006 instead of half the last digit.
    testing::Agreement agreement("CO2 from O2, dry products", "derived: stoichiometry by hand", "%", 0.006);
    for (const auto& row : kProducts) {
        const auto of = [&](const char* code) {
            return carbonDioxideFromOxygen(percent(row.oxygen), burning(code).co2Max)->in(kPercent);
        };
        agreement.hold("methane", of("g20"), row.methane);
        agreement.hold("propane", of("g31"), row.propane);
        if (row.butane > 0) {
            agreement.hold("butane", of("g30"), row.butane);
        }
    }
}

TEST(FlueGas, LambdaAgreesWithTheTable) {
    testing::Agreement agreement("Air ratio of methane from O2, exact and simple",
                                 "derived: stoichiometry by hand; simple form textbook", "", 0.0006);
    for (const auto& row : kProducts) {
        agreement.hold("exact", *gas::lambdaAtOxygen(burning("g20"), percent(row.oxygen)), row.exact);
        agreement.hold("simple", *lambdaSimple(percent(row.oxygen)), row.simple);
    }
}

TEST(FlueGas, LambdaRisesWithOxygenAndTheSimpleOneOverstates) {
    double before = 0.0;
    double simpleBefore = 0.0;
    for (double oxygen = 0.0; oxygen < 20.9; oxygen += 0.1) {
        const double exact = *gas::lambdaAtOxygen(burning("g20"), percent(oxygen));
        const double simple = *lambdaSimple(percent(oxygen));
        EXPECT_GT(exact, before);
        EXPECT_GT(simple, simpleBefore);
        EXPECT_GE(simple, exact);
        before = exact;
        simpleBefore = simple;
    }
}

TEST(FlueGas, LambdaByCarbonDioxideIsOneAtTheMost) {
    const auto most = burning("g20").co2Max;
    EXPECT_DOUBLE_EQ(*lambdaByCarbonDioxide(most, most), 1.0);
    EXPECT_DOUBLE_EQ(*lambdaByCarbonDioxide(most / 2.0, most), 2.0);
    EXPECT_FALSE(lambdaByCarbonDioxide(most * 1.01, most));
    EXPECT_FALSE(lambdaByCarbonDioxide(percent(0), most));
}

TEST(FlueGas, ExcessAirIsWhatIsBeyondOne) {
    EXPECT_NEAR(excessAir(1.25)->in(kPercent), 25.0, 1e-12);
    EXPECT_FALSE(excessAir(0.99));
}

// Worked example: CO 80 ppm, O2 4.5 %: 80 x 20.9/16.4 and 80 x 17.9/16.4, printed without decimals.
TEST(FlueGas, CorrectionsAgreeWithTheWorkedExample) {
    testing::Agreement agreement("CO free of air and at 3 % O2, worked example",
                                 "derived by hand; formula: emission conversion page citing US EPA notes",
                                 "ppm", 0.5);
    agreement.hold("air-free", airFree(ppm(80), percent(4.5))->in(kPpm), 102);
    agreement.hold("at 3 % O2", atThreePercent(ppm(80), percent(4.5))->in(kPpm), 87);
    EXPECT_NEAR(atOxygen(ppm(80), percent(4.5), percent(4.5))->in(kPpm), 80, 1e-9);
}

TEST(FlueGas, AirFreeIsNotChangedByDilution) {
    const double undiluted = airFree(ppm(123), percent(4.2))->in(kPpm);
    for (const double air : {0.1, 0.5, 0.9}) {
        const auto thinned = ppm(123) * (1.0 - air);
        const auto oxygen = percent(4.2) * (1.0 - air) + kOxygenOnDisplay * air;
        EXPECT_NEAR(airFree(thinned, oxygen)->in(kPpm), undiluted, 1e-9);
        const auto most = burning("g20").co2Max;
        const auto carbonDioxide = *carbonDioxideFromOxygen(percent(4.2), most) * (1.0 - air);
        EXPECT_NEAR(
            airFreeByCarbonDioxide(thinned, carbonDioxide, most)->in(kPpm),
            airFreeByCarbonDioxide(ppm(123), *carbonDioxideFromOxygen(percent(4.2), most), most)->in(kPpm),
            1e-9);
    }
}

TEST(FlueGas, RatiosMeanSoMuchFreeOfAir) {
    testing::Agreement agreement("CO free of air that a ratio means, natural gas", "derived: ratio x 11.70 %",
                                 "ppm", 0.5);
    const auto most = burning("g20").co2Max;
    agreement.hold("0.004", airFreeOfRatio(0.004, most)->in(kPpm), 468);
    agreement.hold("0.008", airFreeOfRatio(0.008, most)->in(kPpm), 936);
    agreement.hold("0.02", airFreeOfRatio(0.02, most)->in(kPpm), 2340);
    EXPECT_FALSE(airFreeOfRatio(-0.001, most));
}

TEST(FlueGas, MilligramsPerCubicMetreAgreeWithPublishedFactors) {
    testing::Agreement agreement("CO, ppm to mg/m3 at 0 and 25 degrees C",
                                 "emission conversion page citing US EPA notes; page on CO levels", "mg/m3",
                                 0.0005);
    agreement.hold("0 degrees C", *milligramsPerCubicMetre(ppm(1), celsius(0)), 1.250);
    agreement.hold("25 degrees C", *milligramsPerCubicMetre(ppm(1), celsius(25)), 1.145);
    testing::Agreement derived("CO, ppm to mg/m3 at 15 and 20 degrees C", "derived: ideal gas law by hand",
                               "mg/m3", 0.0005);
    derived.hold("15 degrees C", *milligramsPerCubicMetre(ppm(1), celsius(15)), 1.185);
    derived.hold("20 degrees C", *milligramsPerCubicMetre(ppm(1), celsius(20)), 1.164);
}

double perKilowattHour(const char* code, double molarMass, double molarHeat) {
    constexpr double kKilojoules = 3600.0;
    return *milligramsPerKilowattHour(ppm(1), molarMass, burning(code).dryFlue, molarHeat / kKilojoules);
}

TEST(FlueGas, EmissionPerKilowattHourAgreesWithTheStandardsConstants) {
    // Three decimals, printed by standards that may take another molar volume: one in the last digit.
    testing::Agreement agreement("CO and NOx, ppm free of air to mg/kWh net, G20",
                                 "EN 15502 and EN 676 constants, from memory", "mg/kWh", 0.001);
    const auto methane = gas::properties(flue::named("g20"), gas::Iso6976::Y1995);
    agreement.hold("CO", perKilowattHour("g20", kMolarMassCarbonMonoxide, methane.netMolar), 1.074);
    agreement.hold("NOx", perKilowattHour("g20", kMolarMassNitrogenDioxide, methane.netMolar), 1.764);

    testing::Agreement derived("CO, ppm free of air to mg/kWh, other fuels and gross",
                               "derived by hand from ISO 6976 and stoichiometry", "mg/kWh", 0.001);
    const auto propane = gas::properties(flue::named("g31"), gas::Iso6976::Y1995);
    constexpr double kNormalButane = 2657.60;  // net, kJ/mol: ISO 6976:1995
    derived.hold("G31", perKilowattHour("g31", kMolarMassCarbonMonoxide, propane.netMolar), 1.079);
    derived.hold("n-butane", perKilowattHour("g30", kMolarMassCarbonMonoxide, kNormalButane), 1.082);
    derived.hold("G20 gross", perKilowattHour("g20", kMolarMassCarbonMonoxide, methane.grossMolar), 0.967);
}

TEST(FlueGas, WetBecomesDry) {
    // 19.0 % water at lambda 1 (methane): 9.5 % CO2 wet is 11.7 % dry (combustion tables, textbook).
    EXPECT_NEAR(dryFromWet(percent(9.5), percent(19.0))->in(kPercent), 11.73, 0.01);
    EXPECT_DOUBLE_EQ(dryFromWet(percent(9.5), percent(0))->in(kPercent), 9.5);
    EXPECT_FALSE(dryFromWet(percent(9.5), percent(100)));
    EXPECT_FALSE(dryFromWet(percent(-1), percent(10)));
}

TEST(FlueGas, OutsideItsValidityIsAnError) {
    const auto most = burning("g20").co2Max;
    EXPECT_FALSE(carbonDioxideFromOxygen(percent(21), most));
    EXPECT_FALSE(carbonDioxideFromOxygen(percent(-0.1), most));
    EXPECT_FALSE(lambdaSimple(percent(20.9)));
    EXPECT_FALSE(airFree(ppm(80), percent(20.9)));
    EXPECT_FALSE(airFree(ppm(-1), percent(4)));
    EXPECT_FALSE(atThreePercent(ppm(80), percent(21)));
    EXPECT_FALSE(atOxygen(ppm(80), percent(4), percent(20.9)));
    EXPECT_FALSE(airFreeByCarbonDioxide(ppm(-1), percent(9), most));
    EXPECT_FALSE(milligramsPerCubicMetre(ppm(-1), celsius(15)));
    EXPECT_FALSE(milligramsPerCubicMetre(ppm(1), celsius(-273.15)));
    EXPECT_FALSE(milligramsPerKilowattHour(ppm(-1), 28.01, 8.5, 0.22));
    EXPECT_FALSE(milligramsPerKilowattHour(ppm(1), 28.01, 8.5, 0));
    EXPECT_EQ(lambdaSimple(percent(20.9)).error().code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace hearth::burner
