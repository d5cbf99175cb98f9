// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/stoichiometry.h"
#include "core/quantity/quantity.h"
#include "core/quantity/units.h"

/// What the products of combustion say of the burning: excess air, CO free of air, emission. Everything is by
/// volume and dry unless said; two constants for the oxygen in air are in use and named here.
namespace hearth::burner {

/// Oxygen in dry air, by which complete combustion is worked out.
inline constexpr quantity::Share kOxygenInAir{gas::kOxygenInAir, quantity::kOne};
/// What analysers show in fresh air, by which readings are corrected.
inline constexpr quantity::Share kOxygenOnDisplay{20.9, quantity::kPercent};
/// Molar mass of CO, g/mol. Source: ISO 6976:1995.
inline constexpr double kMolarMassCarbonMonoxide = 28.010;
/// Molar mass of NO2, as which NOx is counted, g/mol. Source: textbook.
inline constexpr double kMolarMassNitrogenDioxide = 46.0055;

/// What: CO2 that goes with an O2 reading in complete combustion.
/// Formula: CO2 = CO2max (20.95 - O2)/20.95, per cent, dry.
/// Valid for: 0 <= O2 <= 20.95 %. Source: German energy glossary on flue losses (with 21; facts: combustion
/// 2.1); derived. Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> carbonDioxideFromOxygen(quantity::Share oxygen, quantity::Share co2Max);

/// What: air ratio, the simple way of most printouts: overstates by 1 to 4 points and more where gas burns;
/// gas::lambdaAtOxygen is the exact one.
/// Formula: lambda = 20.9/(20.9 - O2).
/// Valid for: 0 <= O2 < 20.9 %. Source: combustion tables (textbook; facts: combustion 2.1). Rounding: none.
/// Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<double> lambdaSimple(quantity::Share oxygen);

/// What: the simple air ratio from CO2. Formula: lambda = CO2max/CO2.
/// Valid for: 0 < CO2 <= CO2max. Source: combustion tables (textbook). Rounding: none.
/// Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<double> lambdaByCarbonDioxide(quantity::Share carbonDioxide, quantity::Share co2Max);

/// What: air beyond what burns the fuel. Formula: lambda - 1, as a share of the air needed.
/// Valid for: lambda >= 1. Source: textbook. Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> excessAir(double lambda);

/// What: a share as it would be at another O2, the products thinned or thickened with air.
/// Formula: C ref = C (20.9 - O2 ref)/(20.9 - O2).
/// Valid for: 0 <= O2 < 20.9 %, 0 <= O2 ref < 20.9 %, C >= 0. Source: emission conversion page citing US EPA
/// notes (facts: combustion 2.1). Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> atOxygen(quantity::Share measured, quantity::Share oxygen,
                                               quantity::Share reference);
/// What: CO free of air. Formula: atOxygen at 0 % O2: C 20.9/(20.9 - O2). Valid for, source, rounding,
/// Checked: as atOxygen. Source: the same.
[[nodiscard]] Result<quantity::Share> airFree(quantity::Share measured, quantity::Share oxygen);
/// What: CO at 3 % O2. Formula: C 17.9/(20.9 - O2). Valid for, rounding, Checked: as atOxygen.
/// Source: the same.
[[nodiscard]] Result<quantity::Share> atThreePercent(quantity::Share measured, quantity::Share oxygen);
/// What: CO free of air, from CO2. Formula: C CO2max/CO2. Valid for: 0 < CO2 <= CO2max, C >= 0.
/// Source: derived (facts: combustion 2.1). Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> airFreeByCarbonDioxide(quantity::Share measured,
                                                             quantity::Share carbonDioxide,
                                                             quantity::Share co2Max);
/// What: the CO free of air that a CO/CO2 ratio means. Formula: ratio CO2max. Valid for: ratio >= 0.
/// Source: derived (facts: combustion 2.3). Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> airFreeOfRatio(double ratio, quantity::Share co2Max);

/// What: a share of the wet gas as one of the dry gas. Formula: C dry = C wet 100/(100 - H2O %).
/// Valid for: 0 <= H2O < 100 %, C >= 0. Source: emission conversion page citing US EPA notes (facts:
/// combustion 2.1). Rounding: none. Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<quantity::Share> dryFromWet(quantity::Share wet, quantity::Share water);

/// What: mass of CO per volume at 1013.25 mbar, mg/m3. Formula: C M p/(R T), ideal gas, M 28.010 g/mol,
/// R 8.314462618 J/(mol K). Valid for: C >= 0; T > 0 K. Source: ideal gas law, textbook. Rounding: none.
/// Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<double> milligramsPerCubicMetre(quantity::Share carbonMonoxide,
                                                     quantity::Temperature at);

/// What: mass of a trace gas per heat of the fuel burned, mg/kWh; net or gross as the molar heat is.
/// Formula: C V dry M/H; C free of air, M in g/mol (NOx as NO2), V dry in mol per mol of fuel, H in kWh/mol.
/// Valid for: C >= 0, M > 0, V dry > 0, H > 0. Source: derived from stoichiometry; EN 15502 and EN 676 print
/// such constants (from memory; facts: combustion 2.1). Rounding: none.
/// Checked: tests/core/burner/flue_gas_test.cpp.
[[nodiscard]] Result<double> milligramsPerKilowattHour(quantity::Share airFree, double molarMass,
                                                       double dryFlue, double kilowattHoursPerMole);

}  // namespace hearth::burner
