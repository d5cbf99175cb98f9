// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/vent_need.h"

/// Compartments (BS 5440-2) and boiler rooms (BS 6644): high and low vents by the kilowatt.
namespace hearth::air {

/// What is asked for at high and at low level.
struct LevelNeed {
    /// Nothing while something is missing.
    std::optional<quantity::Area> high;
    std::optional<quantity::Area> low;
    /// The equations: of both, of each.
    std::vector<rulebook::Sentence> steps = {};
    std::vector<rulebook::Sentence> highSteps = {};
    std::vector<rulebook::Sentence> lowSteps = {};
    std::vector<rulebook::Entry> entries = {};
    std::vector<rulebook::Sentence> missing = {};
};

/// By the whole net input, nothing deducted; with an open-flued appliance among them its row holds for all.
/// A maker's own area stands in the place of its appliance's share, at each level.
/// Source: BS 5440-2:2000 and :2009 (suppliers' quick guides). Checked: compartment_test.cpp.
[[nodiscard]] LevelNeed compartmentNeed(const Compartment& compartment, bool toOutside,
                                        const rulebook::RulesInForce& rules);

/// Which row holds: where the vents lead decides, else what was said; nothing said is the room's, which asks
/// for more.
/// Source: see compartmentNeed. Checked: compartment_test.cpp.
[[nodiscard]] bool takesAirFromOutside(const Compartment& compartment);

/// Findings: scope, high level, low level, the room that gives the air, state of the vents. Vents through one
/// wall lead to the room, whose row counts with that wall; through more they count less.
/// Source: as compartmentNeed. Checked: compartment_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> compartmentVentilation(const Compartment& compartment,
                                                                    const rulebook::RulesInForce& rules);

enum class PlantSpace { BoilerRoom, Enclosure };
/// How much of the summer the boilers run.
enum class SummerUse { UpToHalf, HalfToThreeQuarters, More };

/// Boilers of more than the domestic standard's scope, open-flued, with natural vents straight to outside.
struct Plant {
    Given<quantity::NetPower> input;
    std::optional<PlantSpace> space;
    std::optional<SummerUse> summer;
    /// All of them: the rows are for no others.
    std::optional<bool> openFlued;
    std::optional<std::vector<Vent>> vents;
    Given<quantity::Temperature> atFloor;    // 100 mm above it
    Given<quantity::Temperature> atMiddle;   // 1.5 m
    Given<quantity::Temperature> atCeiling;  // 100 mm below it
};

/// Formula: each level a P; in a boiler room what the summer asks for is added to a, in an enclosure it
/// chooses the row.
/// Source: BS 6644 (boiler makers' pages; suppliers' quick guides to the 2005 edition). Checked:
/// compartment_test.cpp.
[[nodiscard]] LevelNeed plantNeed(const Plant& plant, const rulebook::RulesInForce& rules);

/// Findings: scope, high level, low level, state of the vents, temperatures that were read. Outside its scope
/// the standard says nothing of areas.
/// Source: as plantNeed; temperatures: an article on BS 6644:2005. Checked: compartment_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> plantVentilation(const Plant& plant,
                                                              const rulebook::RulesInForce& rules);

}  // namespace hearth::air
