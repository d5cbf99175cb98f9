// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"

#include <optional>

/// The stages before the verdict: let-by, settling, the test pressure and the time. Limits come from the rule
/// book (IGEM/UP/1B by edition and gas); each finding carries those that decided.
///
/// Source: certification body's pocket guide Gas 2, reproducing IGEM/UP/1B Edition 3, and the gas register's
/// magazine, 2026, on Edition 4; each entry names its own, with the doubts. What is added to them is said at
/// the function. Checked: stages_test.cpp.
namespace hearth::tightness {

/// Does the valve let by? A perceptible rise fails, whatever else is wrong with the stage; a perceptible fall
/// is looked at again (it points to a leak: common practice, no source). No verdict when the pressure at the
/// start lies outside the let-by band or the stage was too short.
[[nodiscard]] rulebook::Finding letBy(const Stage& stage, const std::optional<Gauge>& gauge,
                                      const rulebook::RulesInForce& rules);

/// Long enough to settle, and steady at its end? Too short is no verdict. A movement is advice only: "look
/// again". While the rule book has no figure for steady, no perceptible movement is taken (common practice,
/// no source).
[[nodiscard]] rulebook::Finding settling(const Stage& stage, const std::optional<Gauge>& gauge,
                                         const rulebook::RulesInForce& rules);

/// Is the pressure at the start of the test within its band? Where a reason is given that it could not be
/// reached, and the edition knows a least pressure for that, down to it. Outside there is no verdict. To
/// stand on the band's edge is to keep it: this is a setting, and no look-again zone is laid about it.
[[nodiscard]] rulebook::Finding testPressure(const Given<Reading>& start, bool reasonGiven,
                                             const rulebook::RulesInForce& rules);

/// Was it timed long enough? Longer is no fault: the fall only grows.
[[nodiscard]] rulebook::Finding testTime(const Given<quantity::Duration>& took,
                                         const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
