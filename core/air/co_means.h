// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/quantity/units.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <array>

/// Means of a room's carbon monoxide against the limits for people at work.
namespace hearth::air {

inline constexpr std::array kCoIndoors{CoPlace::Room, CoPlace::AtAppliance, CoPlace::NextRoom};
inline constexpr quantity::Duration kCoShortExposure{15.0, quantity::kMinute};
inline constexpr quantity::Duration kCoLongExposure{8.0, quantity::kHour};

/// A level in a unit of the family that carbon monoxide is read in.
/// Source: see massFromShare. Checked: co_means_test.cpp.
[[nodiscard]] double coInUnit(quantity::Share share, quantity::UnitCode unit);

/// An entry's level; nothing when it has none, or there is no entry.
/// Source: the entry's. Checked: co_means_test.cpp.
[[nodiscard]] std::optional<quantity::Share> coLimit(const rulebook::Entry* entry);

/// A level with the instrument's uncertainty, in an entry's own unit.
/// Formula: u^2 = d^2 / 12 + a^2 / 3; d: display's digit, a: accuracy (half-width).
/// Source: GUM 4.3.7. Checked: co_means_test.cpp.
[[nodiscard]] quantity::Uncertain coMeasured(quantity::Share level, const CoSeries& series,
                                             quantity::UnitCode unit);

/// The readings of the place indoors with the highest mean of 15 minutes (of all of it where it was shorter);
/// empty where none was read at two instants.
/// Source: see highestMean. Checked: co_means_test.cpp.
[[nodiscard]] std::vector<CoReading> mostExposed(const CoSeries& series);

/// The gravest of the places indoors; nothing where none has readings at two instants. Over less than the
/// limit's time nothing passes, and only what is spent already fails.
/// Source: HSE EH40/2005; WHO guidelines as notes (see co_guidelines.h). Checked: room_co_test.cpp,
/// co_means_test.cpp.
[[nodiscard]] std::optional<rulebook::Finding> coMeanFinding(rulebook::FindingKind kind, rulebook::Rule rule,
                                                             quantity::Duration window,
                                                             const CoSeries& series,
                                                             const rulebook::RulesInForce& rules);

}  // namespace hearth::air
