// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/fuel.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>
#include <limits>

namespace hearth::gas {
namespace {

using quantity::GrossHeatValue;
using quantity::kMegajoulePerCubicMetre;
using quantity::NetHeatValue;
using rulebook::Gas;

const rulebook::RuleBook& shippedBook() {
    static const auto book = rulebook::RuleBook::shipped();
    return book;
}

Result<Fuel> fuelFor(Gas gas, const FuelInput& input = {}) {
    return fuelOf({shippedBook(), rulebook::Edition::General, gas, calendar::fromIso("2026-11-10").value()},
                  input);
}

GrossHeatValue grossOf(double megajoules) {
    return {megajoules, kMegajoulePerCubicMetre};
}

// Working values: 38.76 MJ/m3 of natural gas (an installer's note, revision cards), G31 95.65 and G30 125.81
// (EN 437, from memory).
TEST(Fuel, TakesTheWorkingValueWhereNoneIsTyped) {
    const auto natural = fuelFor(Gas::NaturalGas).value();
    EXPECT_NEAR(natural.gross.in(kMegajoulePerCubicMetre), 38.76, 1e-9);
    EXPECT_NEAR(natural.net->in(kMegajoulePerCubicMetre), 38.76 / 1.109, 0.02);
    ASSERT_NE(natural.workingHeatValue, nullptr);
    EXPECT_EQ(natural.workingHeatValue->key.rule, rulebook::Rule::WorkingHeatValue);
    EXPECT_TRUE(natural.isWobbeRough);
    EXPECT_EQ(natural.named, usualGas(Gas::NaturalGas));
    EXPECT_EQ(natural.stoichiometry, stoichiometry(natural.named->composition));
    EXPECT_NEAR(fuelFor(Gas::Propane)->gross.in(kMegajoulePerCubicMetre), 95.65, 1e-9);
    EXPECT_NEAR(fuelFor(Gas::Butane)->gross.in(kMegajoulePerCubicMetre), 125.81, 1e-9);
}

TEST(Fuel, TakesWhatIsTyped) {
    FuelInput input;
    input.gross = grossOf(39.5);
    input.relativeDensity = 0.6;
    const auto typed = fuelFor(Gas::NaturalGas, input).value();
    EXPECT_EQ(typed.workingHeatValue, nullptr);
    EXPECT_FALSE(typed.isWobbeRough);
    EXPECT_NEAR(typed.net->in(kMegajoulePerCubicMetre), 39.5 / 1.109, 0.02);
    EXPECT_NEAR(typed.grossWobbe->in(kMegajoulePerCubicMetre), 50.994, 0.001);  // 39.5 / sqrt(0.6)
    EXPECT_NEAR(typed.netWobbe->base(), typed.net->base() / 0.7745966692, 1.0);
    input.net = NetHeatValue(35.5, kMegajoulePerCubicMetre);
    EXPECT_NEAR(fuelFor(Gas::NaturalGas, input)->net->in(kMegajoulePerCubicMetre), 35.5, 1e-9);
    FuelInput methane;
    methane.named = namedGas("g20");
    EXPECT_EQ(fuelFor(Gas::NaturalGas, methane)->named, namedGas("g20"));
}

// Each plant mixes its own: without the supplier's figure there is no fuel, and no composition ever.
TEST(Fuel, OfLpgAirIsTheSuppliers) {
    const auto unknown = fuelFor(Gas::LpgAir);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error(), (Error{ErrorCode::NumberMissing, {"heat_value"}}));
    FuelInput input;
    input.gross = grossOf(50.0);
    const auto typed = fuelFor(Gas::LpgAir, input).value();
    EXPECT_EQ(typed.named, nullptr);
    EXPECT_FALSE(typed.net);
    EXPECT_FALSE(typed.relativeDensity);
    EXPECT_FALSE(typed.grossWobbe);
    EXPECT_FALSE(typed.netWobbe);
    EXPECT_FALSE(typed.stoichiometry);
    input.relativeDensity = 1.28;
    EXPECT_TRUE(fuelFor(Gas::LpgAir, input)->grossWobbe);
    EXPECT_FALSE(fuelFor(Gas::LpgAir, input)->netWobbe);
}

TEST(Fuel, ThatCannotBeIsRefused) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    for (const double gross : {0.0, -38.0, 200.1, 1040.0, none}) {  // 1040: Btu/ft3 typed as MJ/m3
        FuelInput input;
        input.gross = grossOf(gross);
        const auto found = fuelFor(Gas::NaturalGas, input);
        ASSERT_FALSE(found) << gross;
        EXPECT_EQ(found.error().code, ErrorCode::OutOfRange) << gross;
    }
    for (const double density : {0.0, -0.6, 3.1, none}) {
        FuelInput input;
        input.relativeDensity = density;
        EXPECT_FALSE(fuelFor(Gas::NaturalGas, input)) << density;
    }
    for (const double net : {0.0, -1.0, 38.77, none}) {  // above the working 38.76 gross
        FuelInput input;
        input.net = NetHeatValue(net, kMegajoulePerCubicMetre);
        EXPECT_FALSE(fuelFor(Gas::NaturalGas, input)) << net;
    }
}

}  // namespace
}  // namespace hearth::gas
