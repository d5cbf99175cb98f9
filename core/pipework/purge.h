// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/volume.h"
#include "core/quantity/uncertain.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <span>
#include <vector>

/// Purging to gas: how much, how fast, how long. The rule for small installations is in core/tightness/purge;
/// what is here serves larger ones, and the time of either.
namespace hearth::pipework {

/// t = V / Q. Valid for V not below 0 and Q above 0; nothing otherwise. Unrounded. Source: definition.
/// Checked: purge_test.cpp (purge of 30 m DN 100).
[[nodiscard]] std::optional<quantity::Duration> purgeTime(quantity::Volume volume, quantity::Flow flow);

/// Time to pass a purge volume through a burner of that gross heat input: t = V H / P. Air comes first and
/// does not burn: it is the least time, at the flow that the burner takes of gas. Nothing as for purgeTime()
/// and demandFlow(). Source: definition. Checked: purge_test.cpp.
[[nodiscard]] std::optional<quantity::Duration> purgeTimeThroughBurner(quantity::Volume volume,
                                                                       quantity::GrossPower input,
                                                                       quantity::GrossHeatValue heatValue);

/// Q = v pi/4 D2: the flow that moves through a bore at a speed (m/s). Nothing for a bore or speed not above
/// 0. Source: definition. Checked: purge_test.cpp (0.6 m/s through nominal bores).
[[nodiscard]] std::optional<quantity::Flow> flowAtSpeed(double metresPerSecond, quantity::Length bore);

/// The rule that holds a meter's cyclic volume by its badge; nothing for a meter without one (ultrasonic,
/// none) or of another kind. Source: facts/tightness.md 3.2, as in core/rulebook/shipped.
/// Checked: purge_test.cpp.
[[nodiscard]] std::optional<rulebook::Rule> cyclicVolumeRule(const Meter& meter);

struct LargePurgeInput {
    VolumeReport volume;                            // of the part that is purged
    const Meter* meter = nullptr;                   // none: not said yet
    bool meterPurged = true;                        // part of what is purged
    rulebook::Given<quantity::Volume> plateCyclic;  // from the meter's plate: stands before the rule book
    std::optional<TubeFamily> family;               // of the largest pipe; with its size:
    double largestNominal = 0.0;                    // mm: DN of steel
    double largestBore = 0.0;                       // mm
    rulebook::Given<quantity::Volume> passed;       // what was purged
    rulebook::Given<quantity::Flow> flow;           // at which flow
    quantity::Flow flowUncertainty;                 // standard uncertainty
    rulebook::Given<quantity::Share> endGas;        // of gas at the vent, at the end
    quantity::Share endUncertainty;                 // standard uncertainty
};

/// The largest pipe of the sections that are under test, as the input wants it. Source: definition.
/// Checked: purge_test.cpp.
void takeLargestPipe(LargePurgeInput& input, std::span<const SectionInput> sections);

/// PV = 1.5 x (pipes + fittings) + 5 x cyclic volume of a diaphragm meter, with the entries that say so. No
/// volume while pipes, meter or cyclic volume are not known, or for a meter of another kind. Source:
/// IGE/UP/1, from memory, as in core/rulebook/shipped. Checked: purge_test.cpp (purge of 30 m DN 100).
struct LargePurgeNeed {
    std::optional<quantity::Volume> volume;
    std::vector<rulebook::Entry> entries;
    std::optional<quantity::Volume> cyclicFromBook;
    bool cyclicMissing = false;
};
[[nodiscard]] LargePurgeNeed largePurgeNeed(const LargePurgeInput& input,
                                            const rulebook::RulesInForce& rules);

/// The least purge flow for the largest pipe. Steel: its DN's entry. Other tubes: the entry of the largest DN
/// not above the bore, or the least speed through the bore, whichever is more. Nothing beyond DN 150.
/// Source: IGE/UP/1, from memory, as in core/rulebook/shipped. Checked: purge_test.cpp.
struct LeastPurgeFlow {
    std::optional<quantity::Flow> flow;
    std::vector<rulebook::Entry> entries;  // what it rests on; the one that decides first
    bool sizeKnown = false;                // and within the table
};
[[nodiscard]] LeastPurgeFlow leastPurgeFlow(const LargePurgeInput& input,
                                            const rulebook::RulesInForce& rules);

/// Was enough passed? Source: largePurgeNeed(). Checked: purge_test.cpp.
[[nodiscard]] rulebook::Finding judgeLargePurgeVolume(const LargePurgeInput& input,
                                                      const rulebook::RulesInForce& rules);
/// Was it fast enough, and how long does it take at that flow? Source: leastPurgeFlow().
/// Checked: purge_test.cpp.
[[nodiscard]] rulebook::Finding judgePurgeFlow(const LargePurgeInput& input,
                                               const rulebook::RulesInForce& rules);
/// Was there enough gas at the vent at the end? Source: IGE/UP/1, from memory, as in core/rulebook/shipped.
/// Checked: purge_test.cpp.
[[nodiscard]] rulebook::Finding judgePurgeEnd(const LargePurgeInput& input,
                                              const rulebook::RulesInForce& rules);

}  // namespace hearth::pipework
