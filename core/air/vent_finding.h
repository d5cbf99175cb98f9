// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/vent_need.h"
#include "core/quantity/uncertain.h"

/// A room's ventilation as findings.
namespace hearth::air {

/// Everything that the rules say of a room: scope, free area, levels, opening, whether each appliance is
/// allowed there, the state of the vents, the advice for basements.
/// Source: BS 5440-2 as each rule's entry tells. Checked: vent_finding_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> ventilation(const Room& room,
                                                         const rulebook::RulesInForce& rules);

/// The free area there, as if straight to outside, in cm2 with its uncertainty: vents through an inside wall
/// count by the factor of the rule book. Nothing while an area or a destination is missing.
/// Formula: A = sum of A_outside + sum of A_inside / f; uncertainties independent.
/// Source: gas-safety page on BS 5440-2 (50 % larger through an inside wall); GUM 5.1.2. Checked:
/// vent_finding_test.cpp.
[[nodiscard]] std::optional<quantity::Uncertain> areaThere(const std::vector<Vent>& vents, double wallFactor);

/// The state of the vents: blocked, closable, with a fly-screen, without a sleeve.
/// Source: gas-safety page on BS 5440-2; Approved Document J. Checked: vent_finding_test.cpp.
[[nodiscard]] rulebook::Finding ventState(const std::vector<Vent>& vents);

}  // namespace hearth::air
