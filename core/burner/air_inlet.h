// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/analyser.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

/// Do products get into the air that a room-sealed appliance breathes?
namespace hearth::burner {

struct AirInletFindings {
    rulebook::Finding oxygen;
    rulebook::Finding carbonDioxide;
};

/// O2 and CO2 read at the air inlet's test point, each held against its entry: the two are near-equal but not
/// the same, so both are tested. An analyser that was set to fresh air outdoors just before compares this air
/// with that: its accuracy cancels, and the steps of the two readings count. Without that nothing passes, and
/// its accuracy counts as far as it is known.
/// Source: boiler trade's procedure TB 143 and BS 7967:2015, from memory (facts: combustion 2.2, 9.5).
/// Checked: tests/core/burner/air_inlet_test.cpp.
[[nodiscard]] AirInletFindings airInlet(const FlueReadings& readings, const Analyser& analyser,
                                        const rulebook::RulesInForce& rules);

/// What: how much of the products a reading at the inlet means: share of the air that is recirculated.
/// Formula: CO2 inlet/CO2 products. Valid for: 0 <= CO2 inlet <= CO2 products, CO2 products > 0.
/// Source: derived (facts: combustion 2.2). Rounding: none. Checked: tests/core/burner/air_inlet_test.cpp.
[[nodiscard]] Result<quantity::Share> recirculation(quantity::Share atInlet, quantity::Share inProducts);

}  // namespace hearth::burner
