// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <vector>

/// Carbon monoxide in a room as findings. Nothing here ever says that a room is safe: below every limit the
/// words say so, and a reading that is dangerous by a published exposure limit warns whatever else is known.
namespace hearth::air {

using rulebook::Given;

struct RoomCoInput {
    CoSeries series;
    /// A cooker or other flueless appliance was under test.
    std::optional<bool> flueless;
    std::optional<bool> cooker;
    Given<quantity::Length> height;
    Given<quantity::Length> distance;
};

/// Background outdoors, level against the action levels, highest means of 15 minutes and 8 hours, how the
/// room was sampled, what the exposure could do to the blood.
/// Source: HSE EH40/2005, WHO guidelines, BS 7967 as each rule's entry tells. Checked: room_co_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> roomCo(const RoomCoInput& input,
                                                    const rulebook::RulesInForce& rules);

/// From which reading on everybody is told to leave: the rule book's value, at most 100 ppm whatever a firm
/// enters, and 20 ppm when it has none.
/// Source: HSE EH40/2005: 20 ppm as a mean of 8 hours, 100 ppm of 15 minutes. Checked: room_co_test.cpp.
[[nodiscard]] quantity::Share dangerFrom(const rulebook::RulesInForce& rules);

/// The trend indoors, over the time that the room must be sampled (over all of it where that is not known);
/// rising at any place is rising.
/// Source: see trendOf. Checked: room_co_test.cpp.
[[nodiscard]] CoTrend roomTrend(const RoomCoInput& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::air
