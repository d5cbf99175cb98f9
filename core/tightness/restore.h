// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"
#include "core/tightness/given.h"

#include <optional>

/// After the test: joints proved with leak detection fluid, pressures once the gas is on again.
namespace hearth::tightness {

enum class JointsDisturbed { Proved, NotProved, NoneDisturbed };

struct JointsInput {
    std::optional<bool> testPointProved;
    std::optional<JointsDisturbed> disturbed;
    std::optional<bool> wiped;
};

/// The test point and the joints that were loosened proved with leak detection fluid; the fluid wiped off
/// again (residue can corrode), which is advice. Source: trainees' revision cards (test point); Gas Safety
/// (Installation and Use) Regulations (Northern Ireland) 1997, reg 22 (joints); wiping from memory. Checked:
/// restore_test.cpp.
[[nodiscard]] rulebook::Finding jointsProved(const JointsInput& input);

/// Standing pressure against the regulator's lock-up.
/// Source: the entry's own (Rule::StandingPressureMost). Checked: restore_test.cpp.
[[nodiscard]] rulebook::Finding standingPressure(const Given<Reading>& pressure,
                                                 const rulebook::RulesInForce& rules);
/// Working pressure at the meter's outlet against its range.
/// Source: the entry's own (Rule::WorkingPressure). Checked: restore_test.cpp.
[[nodiscard]] rulebook::Finding workingPressure(const Given<Reading>& pressure,
                                                const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
