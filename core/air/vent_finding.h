// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/vent_need.h"

/// A room's ventilation as findings.
namespace hearth::air {

/// Everything that the rules say of a room: scope, free area, levels, opening, whether each appliance is
/// allowed there, the state of the vents, the advice for basements.
/// Source: BS 5440-2 as each rule's entry tells. Checked: vent_finding_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> ventilation(const Room& room,
                                                         const rulebook::RulesInForce& rules);

/// Free area there against the need, with the equations as notes.
/// Source: BS 5440-2 as each rule's entry tells. Checked: vent_finding_test.cpp.
[[nodiscard]] rulebook::Finding freeAreaFinding(const Room& room, const rulebook::RulesInForce& rules);

/// A window or door that opens to outside, where an appliance without a flue asks for one; nothing otherwise.
/// Source: BS 5440-2, flueless table (cooker makers' pages; exam revision page). Checked:
/// vent_finding_test.cpp.
[[nodiscard]] std::optional<rulebook::Finding> openingFinding(const Room& room,
                                                              const rulebook::RulesInForce& rules);

/// What forbids an appliance here: room too small, bed-sitting room, heat input too large.
/// Source: BS 5440-2 as each rule's entry tells. Checked: vent_finding_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> allowedFindings(const Room& room,
                                                             const rulebook::RulesInForce& rules);

/// Net inputs of all appliances together, those that were said, against the domestic standard's scope.
/// Nothing while one is missing and the others are within.
/// Source: BS 5440-2, title and scope. Checked: vent_finding_test.cpp.
[[nodiscard]] std::optional<rulebook::Finding> scopeFinding(const std::vector<Appliance>& appliances,
                                                            const rulebook::RulesInForce& rules);

}  // namespace hearth::air
