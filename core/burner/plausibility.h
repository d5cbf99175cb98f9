// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/analyser.h"
#include "core/quantity/typed.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>

/// Can these readings be true together? What is found here is never graver than "look again".
namespace hearth::burner {

/// A fuel by its gas and the CO2 of its dry products without excess air.
struct FuelLine {
    rulebook::Gas gas;
    quantity::Share co2Max;
};

/// What: how far O2 and CO2 are from the line of a fuel that burns completely.
/// Formula: CO2 + (CO2max/20.95) O2 - CO2max, in percentage points.
/// Valid for: 0 <= O2 <= 20.95 %, 0 <= CO2, CO2max > 0. Source: derived (facts: combustion 2.2).
/// Rounding: none. Checked: tests/core/burner/plausibility_test.cpp.
[[nodiscard]] Result<quantity::Share> offLine(quantity::Share oxygen, quantity::Share carbonDioxide,
                                              quantity::Share co2Max);

/// The line of the composition that stands for a gas; nothing for LPG/air, which only its supplier knows.
/// Source: core/gas/named_gases.h, stoichiometry.h. Checked: tests/core/burner/plausibility_test.cpp.
[[nodiscard]] std::optional<FuelLine> usualFuelLine(rulebook::Gas gas);

struct PlausibilityInput {
    FlueReadings readings;
    Analyser analyser;
    FuelLine fuel;
    rulebook::Given<quantity::Temperature> flue = {};
    rulebook::Given<quantity::Temperature> air = {};
};

/// O2 and CO2 against the fuel's line, with the likely causes where they are off it: the analyser not set to
/// fresh air, another fuel set (natural gas, propane and butane
/// are tried), a decimal point shifted, the two exchanged.
/// What it can't see: air that leaks into the hose or past the probe moves both along the line; and where the
/// analyser works CO2 out from O2 only a wrong fuel shows.
/// Source: derived (facts: combustion 2.2). Checked: tests/core/burner/plausibility_test.cpp.
[[nodiscard]] rulebook::Finding plausibility(const PlausibilityInput& input,
                                             const rulebook::RulesInForce& rules);

/// Is the ratio that was typed from the printout that of its CO and CO2? All three are taken as known within
/// half their last digit.
/// Source: derived (facts: combustion 2.2). Checked: tests/core/burner/plausibility_test.cpp.
[[nodiscard]] rulebook::Finding ratioAgrees(const rulebook::Given<quantity::Decimal>& printed,
                                            const FlueReadings& readings, const Analyser& analyser);

}  // namespace hearth::burner
