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

/// The test point (trainees' revision cards) and the joints that were loosened (Gas Safety (Installation and
/// Use) Regulations (NI) 1997, reg 22) proved with leak detection fluid; the fluid wiped off again (from
/// memory: residue can corrode), which is advice.
[[nodiscard]] rulebook::Finding jointsProved(const JointsInput& input);

/// Standing pressure against the regulator's lock-up.
[[nodiscard]] rulebook::Finding standingPressure(const Given<Reading>& pressure,
                                                 const rulebook::RulesInForce& rules);
/// Working pressure at the meter's outlet against its range.
[[nodiscard]] rulebook::Finding workingPressure(const Given<Reading>& pressure,
                                                const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
