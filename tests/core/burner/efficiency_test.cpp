// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/efficiency.h"

#include "tests/core/burner/flue_samples.h"
#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using flue::celsius;
using flue::percent;
using flue::ppm;
using quantity::kPercent;
using rulebook::Gas;
using rulebook::Say;

TEST(Siegert, AgreesWithThePublishedExamples) {
    testing::Agreement agreement("Flue loss by the Siegert formula, worked examples",
                                 "burner maker's start-up page (formula of 1. BImSchV)", "%", 0.005);
    agreement.hold("natural gas",
                   siegertLossByCarbonDioxide(celsius(195), celsius(22), percent(10.8),
                                              siegertCoefficients(Gas::NaturalGas))
                       ->in(kPercent),
                   7.48);
    // Light oil with the coefficients that the page works with; the formula is the same.
    agreement.hold("light oil",
                   siegertLossByCarbonDioxide(celsius(195), celsius(22), percent(12.8), {0.49, 0.68, 0.007})
                       ->in(kPercent),
                   7.83);
}

// A2 = A1 x 21/CO2max by hand: 0.37 x 21/11.8 = 0.658; 0.42 x 21/13.9 = 0.635: two decimals are printed.
TEST(Siegert, CoefficientsBelongTogether) {
    testing::Agreement agreement("Siegert's A2 from A1 and CO2max", "derived by hand", "", 0.006);
    const auto gas = siegertCoefficients(Gas::NaturalGas);
    agreement.hold("natural gas", gas.a2, 0.658);
    EXPECT_DOUBLE_EQ(gas.a1, 0.37);  // burner maker's page
    EXPECT_DOUBLE_EQ(gas.b, 0.009);
    for (const auto lpg : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        const auto coefficients = siegertCoefficients(lpg);
        agreement.hold("LPG", coefficients.a2, 0.635);
        EXPECT_DOUBLE_EQ(coefficients.a1, 0.42);
        EXPECT_DOUBLE_EQ(coefficients.b, 0.008);
    }
}

TEST(Siegert, BothFormsAgreeOnTheFuelsLine) {
    const auto gas = siegertCoefficients(Gas::NaturalGas);
    for (double oxygen = 2.0; oxygen < 10.0; oxygen += 1.0) {
        const auto carbonDioxide = percent(11.8 * (21.0 - oxygen) / 21.0);
        const auto byOxygen = siegertLossByOxygen(celsius(150), celsius(20), percent(oxygen), gas);
        const auto byDioxide = siegertLossByCarbonDioxide(celsius(150), celsius(20), carbonDioxide, gas);
        EXPECT_NEAR(byOxygen->base() / byDioxide->base(), 1.0, 0.004);
    }
}

TEST(Losses, RiseWithTheFluesTemperature) {
    const auto gas = siegertCoefficients(Gas::NaturalGas);
    const auto bs = *bs845Fuel(Gas::NaturalGas, flue::named("g20"));
    double before = -1.0;
    for (double flueAt = 20.0; flueAt < 300.0; flueAt += 10.0) {
        const auto at = celsius(flueAt);
        const double siegert = siegertLossByCarbonDioxide(at, celsius(20), percent(9), gas)->base();
        const double oxygen = siegertLossByOxygen(at, celsius(20), percent(5), gas)->base();
        const double dry = dryGasLoss(at, celsius(20), percent(9), bs)->base();
        const double water = waterVapourLoss(at, celsius(20), bs)->base();
        EXPECT_GT(siegert + oxygen + dry + water, before);
        before = siegert + oxygen + dry + water;
    }
}

TEST(Bs845, FuelsAreThoseOfTheFacts) {
    // From memory of BS 845-1:1987; butane by hand (255 C/Q, heat of CO over heat per carbon).
    const auto gas = *bs845Fuel(Gas::NaturalGas, flue::named("g20"));
    EXPECT_DOUBLE_EQ(gas.k, 0.35);
    EXPECT_DOUBLE_EQ(gas.k1, 32);
    EXPECT_DOUBLE_EQ(bs845Fuel(Gas::Propane, flue::named("g31"))->k, 0.42);
    EXPECT_DOUBLE_EQ(bs845Fuel(Gas::Butane, flue::named("g30"))->k1, 39);
    EXPECT_FALSE(bs845Fuel(Gas::LpgAir, flue::named("g31")));
    // Methane by hand: 4 x 1.00794/16.043 = 25.13 % hydrogen; 55.57 MJ/kg from ISO 6976 data.
    EXPECT_NEAR(gas.hydrogen, 25.13, 0.005);
    EXPECT_NEAR(gas.grossHeat, 55570, 10);
}

TEST(Bs845, FuelConstantsAgreeWithStoichiometry) {
    testing::Agreement agreement("BS 845 K (gross) and k1 against fuel data",
                                 "derived by hand from ISO 6976: 255 C/Q; heat of CO over heat per carbon",
                                 "%",
                                 3.0);  // two digits are printed
    const auto of = [](Gas gas, const char* code) { return *bs845Fuel(gas, flue::named(code)); };
    // C %: methane 74.87, propane 81.71, butane 82.66; Q 55.57, 50.37, 49.5 MJ/kg.
    agreement.holdRelative("K methane", of(Gas::NaturalGas, "g20").k, 255 * 74.87 / 55570);
    agreement.holdRelative("K propane", of(Gas::Propane, "g31").k, 255 * 81.71 / 50370);
    agreement.holdRelative("K butane", of(Gas::Butane, "g30").k, 255 * 82.66 / 49500);
    agreement.holdRelative("k1 methane", of(Gas::NaturalGas, "g20").k1, 31.7);
    agreement.holdRelative("k1 propane", of(Gas::Propane, "g31").k1, 38.2);
}

// 9 H/Q x (2488 - 4.2 ta + 2.1 t3) at 150 and 20 degrees C is 2719 kJ/kg; the steam tables' enthalpy of
// vapour at 150 degrees C and low pressure, 2783 kJ/kg, less that of water at 20 degrees C, 84, is 2699.
TEST(Bs845, HeatOfVapourAgreesWithSteamTables) {
    testing::Agreement agreement("BS 845 heat of water vapour, 150 over 20 degrees C",
                                 "steam tables, textbook", "%",
                                 1.0);  // a straight line over all temperatures
    const auto gas = *bs845Fuel(Gas::NaturalGas, flue::named("g20"));
    const double loss = waterVapourLoss(celsius(150), celsius(20), gas)->in(kPercent);
    agreement.holdRelative("kJ/kg", loss * gas.grossHeat / (9.0 * gas.hydrogen), 2783.0 - 84.0);
}

TEST(Bs845, LossesAreThoseByHand) {
    const auto gas = *bs845Fuel(Gas::NaturalGas, flue::named("g20"));
    EXPECT_NEAR(dryGasLoss(celsius(150), celsius(20), percent(9), gas)->in(kPercent), 0.35 * 130 / 9, 1e-9);
    // 32 x 0.01/(9 + 0.01)
    EXPECT_NEAR(unburnedLoss(ppm(100), percent(9), gas)->in(kPercent), 0.0355, 0.0001);
    EXPECT_EQ(unburnedLoss(ppm(0), percent(9), gas)->in(kPercent), 0.0);
}

TEST(Losses, OutsideTheirValidityAreErrors) {
    const auto gas = siegertCoefficients(Gas::NaturalGas);
    const auto bs = *bs845Fuel(Gas::NaturalGas, flue::named("g20"));
    EXPECT_FALSE(siegertLossByCarbonDioxide(celsius(19), celsius(20), percent(9), gas));
    EXPECT_FALSE(siegertLossByCarbonDioxide(celsius(150), celsius(20), percent(0), gas));
    EXPECT_FALSE(siegertLossByCarbonDioxide(celsius(300), celsius(20), percent(0.1), gas)) << "above 100 %";
    EXPECT_FALSE(siegertLossByOxygen(celsius(150), celsius(20), percent(21), gas));
    EXPECT_FALSE(siegertLossByOxygen(celsius(10), celsius(20), percent(5), gas));
    EXPECT_FALSE(dryGasLoss(celsius(10), celsius(20), percent(9), bs));
    EXPECT_FALSE(dryGasLoss(celsius(150), celsius(20), percent(0), bs));
    EXPECT_FALSE(waterVapourLoss(celsius(10), celsius(20), bs));
    EXPECT_FALSE(unburnedLoss(ppm(-1), percent(9), bs));
    EXPECT_FALSE(unburnedLoss(ppm(10), percent(0), bs));
}

TEST(LatentCeiling, AgreesWithGrossOverNet) {
    testing::Agreement agreement("Latent heat beyond the net calorific value",
                                 "derived from ISO 6976 by hand; 11 % natural gas: German encyclopaedia", "%",
                                 0.1);
    const auto of = [](const char* code) {
        const auto values = gas::properties(flue::named(code));
        return latentCeiling(values.gross, values.net)->in(kPercent);
    };
    agreement.hold("natural gas", of("g20"), 11.1);
    agreement.hold("propane", of("g31"), 8.7);
    agreement.hold("butane", of("g30"), 8.4);
    EXPECT_FALSE(
        latentCeiling({30, quantity::kMegajoulePerCubicMetre}, {34, quantity::kMegajoulePerCubicMetre}));
    EXPECT_FALSE(latentCeiling({}, {}));
}

bool hasNote(const std::vector<rulebook::Sentence>& notes, Say say) {
    return std::any_of(notes.begin(), notes.end(), [&](const auto& note) { return note.say == say; });
}

TEST(EfficiencyNotes, NameEachMethodAndItsBasis) {
    EfficiencyInput input{flue::read(80, 10.8), celsius(195), celsius(22)};
    EXPECT_EQ(efficiencyNotes(input).size(), 1u);
    input.composition = &flue::named("g20");
    const auto notes = efficiencyNotes(input);
    ASSERT_EQ(notes.size(), 2u);
    EXPECT_EQ(notes[0].say, Say::EfficiencySiegert);
    EXPECT_EQ(std::get<quantity::Figure>(notes[0].arguments[0]).value.text(), "92.5");  // 100 - 7.48
    EXPECT_EQ(notes[1].say, Say::EfficiencyLosses);
    EXPECT_EQ(notes[1].arguments.size(), 4u);
    input.readings.carbonDioxide = {};
    EXPECT_TRUE(hasNote(efficiencyNotes(input), Say::EfficiencySiegert)) << "by O2";
    EXPECT_FALSE(hasNote(efficiencyNotes(input), Say::EfficiencyLosses));
}

// A condensing boiler's flue below the dew point: the formulas' figures stand, and that they count nothing of
// what condensed is said with them.
TEST(EfficiencyNotes, ClaimNothingOfCondensedHeat) {
    EfficiencyInput input{flue::read(80, 9.2), celsius(48), celsius(20)};
    input.composition = &flue::named("g20");
    input.dewPoint = celsius(55);
    const auto notes = efficiencyNotes(input);
    EXPECT_TRUE(hasNote(notes, Say::EfficiencyNotCondensed));
    EXPECT_TRUE(hasNote(notes, Say::EfficiencyLatentCeiling));
    input.flue = celsius(60);
    EXPECT_FALSE(hasNote(efficiencyNotes(input), Say::EfficiencyNotCondensed));
    EXPECT_LT(std::get<quantity::Figure>(notes[0].arguments[0]).value.toDouble(), 100.0);
}

TEST(EfficiencyNotes, AreEmptyWithoutReadings) {
    EXPECT_TRUE(efficiencyNotes({}).empty());
    EfficiencyInput input{flue::read(80, 9.2), celsius(18), celsius(20)};
    EXPECT_TRUE(efficiencyNotes(input).empty()) << "flue colder than the air";
}

}  // namespace
}  // namespace hearth::burner
