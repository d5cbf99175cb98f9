// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/analyser.h"
#include "core/gas/composition.h"
#include "core/quantity/quantity.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/standard.h"

#include <optional>
#include <vector>

/// Flue losses and what is left, each by a named method. None of them counts what a condensing boiler wins
/// from the water in its products, and none claims to.
namespace hearth::burner {

/// Of the Siegert formula, net basis. Source: 1. BImSchV (Annex), A1 and B as a burner maker's start-up page
/// prints them; A2 from memory (high); facts: combustion 2.5. LPG/air as LPG.
struct SiegertCoefficients {
    double a1;
    double a2;
    double b;
};
/// Source: as above. Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] SiegertCoefficients siegertCoefficients(rulebook::Gas gas);

/// What: flue loss, share of the net heat input, dry flue, nothing condensed.
/// Formula: qA % = (tA - tL)(A1/CO2 + B), temperatures in degrees C, CO2 in per cent.
/// Valid for: tA >= tL, 0 < CO2, a loss of at most 100 %. Source: 1. BImSchV, as a burner maker's start-up
/// page and a German energy glossary print it (facts: combustion 2.5). Rounding: none. Checked:
/// tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> siegertLossByCarbonDioxide(quantity::Temperature flue,
                                                                 quantity::Temperature air,
                                                                 quantity::Share carbonDioxide,
                                                                 const SiegertCoefficients& fuel);
/// What: the same from O2. Formula: qA % = (tA - tL)(A2/(21 - O2) + B).
/// Valid for: tA >= tL, 0 <= O2 < 21 %, a loss of at most 100 %. Source: the same. Rounding: none.
/// Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> siegertLossByOxygen(quantity::Temperature flue,
                                                          quantity::Temperature air, quantity::Share oxygen,
                                                          const SiegertCoefficients& fuel);

/// A fuel in the losses method of BS 845, gross basis.
struct Bs845Fuel {
    double k;          // 255 C/Q
    double k1;         // of unburned gas
    double hydrogen;   // per cent by mass
    double grossHeat;  // kJ/kg
};
/// Natural gas, propane, butane; nothing for LPG/air. Hydrogen and heat are the composition's own.
/// Source: K and k1 BS 845-1:1987 from memory (natural gas high, LPG medium; butane derived, k1 the larger of
/// 38 and 39); hydrogen and heat by ISO 6976 (core/gas); facts: combustion 2.6.
/// Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] std::optional<Bs845Fuel> bs845Fuel(rulebook::Gas gas, const gas::Composition& composition);

/// What: loss by the heat of the dry products, gross basis. Formula: L1 % = K (t3 - ta)/CO2.
/// Valid for: t3 >= ta, 0 < CO2, a loss of at most 100 %. Source: BS 845-1:1987, from memory (high; facts:
/// combustion 2.6). Rounding: none. Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> dryGasLoss(quantity::Temperature flue, quantity::Temperature air,
                                                 quantity::Share carbonDioxide, const Bs845Fuel& fuel);
/// What: loss by the water vapour of the products, gross basis. Formula: L2 % = 9 H (2488 - 4.2 ta + 2.1
/// t3)/Q, H in per cent by mass, Q in kJ/kg; the fuel has no water of its own. The form for the net basis is
/// not used: its constant is doubtful. Valid for: t3 >= ta. Source: BS 845-1:1987, from memory (high; facts:
/// combustion 2.6, 9.22). Rounding: none. Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> waterVapourLoss(quantity::Temperature flue, quantity::Temperature air,
                                                      const Bs845Fuel& fuel);
/// What: loss by unburned CO, gross basis. Formula: L3 % = k1 CO/(CO2 + CO), both in per cent.
/// Valid for: CO >= 0, CO2 > 0. Source: BS 845-1:1987, from memory (medium); 31.7 for methane derived (facts:
/// combustion 2.5, 2.6). Rounding: none. Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> unburnedLoss(quantity::Share carbonMonoxide,
                                                   quantity::Share carbonDioxide, const Bs845Fuel& fuel);

/// What: the most that condensing could win, share of the net input. Formula: Hs/Hi - 1.
/// Valid for: Hs >= Hi > 0. Source: derived (facts: combustion 2.6). Rounding: none.
/// Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] Result<quantity::Share> latentCeiling(quantity::GrossHeatValue gross,
                                                    quantity::NetHeatValue net);

struct EfficiencyInput {
    FlueReadings readings;
    rulebook::Given<quantity::Temperature> flue;
    rulebook::Given<quantity::Temperature> air;
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    /// Of the gas; without it only the Siegert formula is used.
    const gas::Composition* composition = nullptr;
    std::optional<quantity::Temperature> dewPoint = {};
};

/// The efficiencies in words, each with its basis and method, for the notes of a finding: information that
/// decides nothing. Empty when a reading is missing or outside what the formulas hold for.
/// Source: as the formulas. Checked: tests/core/burner/efficiency_test.cpp.
[[nodiscard]] std::vector<rulebook::Sentence> efficiencyNotes(const EfficiencyInput& input);

}  // namespace hearth::burner
