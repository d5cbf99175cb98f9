// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/ventilation.h"
#include "core/base/result.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

/// How much free area a room needs, with the equation as data, so that the window can show it.
namespace hearth::air {

/// Gross heat input by the gross calorific value, as net.
/// Formula: net = gross / ratio; ratio: gross over net calorific value of the gas burnt.
/// Valid for: ratio from 1 to 1.2 (fuel gases lie between 1.08 and 1.11); else OutOfRange with both ends.
/// Source: textbook (definition of the two calorific values). Checked: vent_need_test.cpp.
[[nodiscard]] Result<quantity::NetPower> netFromGross(quantity::GrossPower gross, double ratio);

/// Vent for open-flued appliances: so many cm2 for each kW above what leaks in by itself.
/// Formula: A = a (P - P0), nought if P <= P0. P: net input of all of them, P0: deducted once, a: cm2/kW.
/// Source: BS 5440-2:2000 and :2009 (suppliers' quick guides; a gas-safety page): A = 5 (P - 7).
/// Checked: vent_need_test.cpp (the page's examples: 17 kW 50 cm2, 33 kW 130 cm2).
[[nodiscard]] quantity::Area openFluedArea(quantity::NetPower total, quantity::NetPower deducted,
                                           double squareCentimetresPerKilowatt);

/// Vent of so many cm2 for each kW of the whole input: compartments and boiler rooms.
/// Formula: A = a P.
/// Source: BS 5440-2 (compartments, suppliers' quick guides); BS 6644 (boiler makers' pages).
/// Checked: vent_need_test.cpp (24 kW by hand).
[[nodiscard]] quantity::Area perKilowattArea(quantity::NetPower input, double squareCentimetresPerKilowatt);

/// Vent for a flueless space heater.
/// Formula: A = A0 + a max(0, P - P0). A0: first vent, which serves P0; a: cm2/kW.
/// Source: BS 5440-2, flueless table (exam revision page 2013): 100 + 55 (P - 2.7) in a room, 100 + 27.5
/// (P - 5.4) in an internal space. Checked: vent_need_test.cpp (2.7 kW 100 cm2, 4 kW 171.5 cm2).
[[nodiscard]] quantity::Area fluelessHeaterArea(quantity::NetPower input, quantity::Area first,
                                                quantity::NetPower served,
                                                double squareCentimetresPerKilowatt);

/// Vent for an LPG cabinet heater, at high and at low level each.
/// Formula: A = max(A0, a P).
/// Source: BS 5440-2, flueless table (exam revision page 2013): 25 cm2/kW, at least 50. Checked:
/// vent_need_test.cpp.
[[nodiscard]] quantity::Area cabinetHeaterArea(quantity::NetPower input, quantity::Area least,
                                               double squareCentimetresPerKilowatt);

/// The appliance's net input: as given, or from gross with its ratio. Nothing when it can't be said.
/// Source: see netFromGross. Checked: vent_need_test.cpp.
[[nodiscard]] std::optional<quantity::NetPower> netInputOf(const HeatInput& input);

/// A free area that is asked for, straight to outside, and how it came about.
struct Need {
    /// Nothing while something is missing.
    std::optional<quantity::Area> area;
    /// Of it at high and at low level, where the levels are told apart (cabinet heaters).
    quantity::Area high;
    quantity::Area low;
    /// Part that flueless appliances ask for (whether it may come through an inside wall is not known).
    quantity::Area flueless;
    /// Whether air that leaks in was counted, so that a tight dwelling may need more.
    bool countsLeaks = false;
    /// The equations, one sentence each, with their figures.
    std::vector<rulebook::Sentence> steps = {};
    /// What it rests on, without repetition.
    std::vector<rulebook::Entry> entries = {};
    /// What is missing to say it.
    std::vector<rulebook::Sentence> missing = {};
};

/// What a room's appliances ask for together: each by its own rule, then, of all flueless space heaters, all
/// open-flued space heaters (boilers and fires with them, the leak deducted once) and the largest other
/// appliance, the greatest. The maker's own figure stands in the place of the appliance's rule.
/// Source: BS 5440-2; several appliances from memory of it (facts: greatest of three). Checked:
/// vent_need_test.cpp.
[[nodiscard]] Need roomNeed(const Room& room, const rulebook::RulesInForce& rules);

}  // namespace hearth::air
