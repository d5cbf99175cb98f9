// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/named_gases.h"
#include "core/gas/properties.h"
#include "core/gas/stoichiometry.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>

namespace hearth::gas {

/// What somebody knows of the gas that is burnt: from the bill, or from the supplier of LPG.
struct FuelInput {
    std::optional<quantity::GrossHeatValue> gross;
    std::optional<quantity::NetHeatValue> net;
    std::optional<double> relativeDensity;
    /// Another composition than the usual one of the gas.
    const NamedGas* named = nullptr;
};

/// The gas of one installation on one day, as a burner's computations need it.
struct Fuel {
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    /// The composition that stands for it; none for LPG-air.
    const NamedGas* named = nullptr;
    quantity::GrossHeatValue gross;
    /// From the gross one by the composition's ratio; none for LPG-air whose supplier gave none.
    std::optional<quantity::NetHeatValue> net;
    /// None, and no Wobbe index, for LPG-air whose supplier gave none.
    std::optional<double> relativeDensity;
    std::optional<GrossWobbe> grossWobbe;
    std::optional<NetWobbe> netWobbe;
    /// None for LPG-air: how much air it brings is not known.
    std::optional<Stoichiometry> stoichiometry;
    /// The entry that gave the calorific value, for findings to rest on; none when it was typed in. Belongs
    /// to the rule book.
    const rulebook::Entry* workingHeatValue = nullptr;
    /// Calorific value and relative density are not of one analysis: the Wobbe index is a rough one.
    bool isWobbeRough = false;
};

/// The fuel of the gas, edition and day of `rules`. The calorific value typed in comes first, the working one
/// of the rule book (Rule::WorkingHeatValue) otherwise; net from gross by the ratio of the composition.
/// Errors: NumberMissing with "heat_value" where none was typed and the rule book has none (LPG-air: from the
/// supplier); OutOfRange for a typed value that is not positive, a gross calorific value above 200 MJ/m3 (no
/// fuel gas has it: another unit was meant), or a net one above the gross one. Source: ISO 6976 for the
/// ratio; the working value as its entry says. Rounding: none. Checked: tests/core/gas/fuel_test.cpp.
[[nodiscard]] Result<Fuel> fuelOf(const rulebook::RulesInForce& rules, const FuelInput& input = {});

}  // namespace hearth::gas
