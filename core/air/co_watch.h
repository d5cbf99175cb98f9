// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/rulebook/entry.h"
#include "core/rulebook/rules_in_force.h"

#include <vector>

/// Carbon monoxide that an instrument sends while it is watched from outside the room. Nothing of it decides:
/// findings rest on the readings that the engineer puts into the series.
namespace hearth::air {

/// The entries that findings hold a level or a mean against, as far as they have a value: what a plot of the
/// levels shows for comparison.
/// Source: the rule book's entries. Checked: co_watch_test.cpp.
[[nodiscard]] std::vector<rulebook::Entry> coLevelsInForce(const rulebook::RulesInForce& rules);

/// Which of the readings watched are proposed for the series, by their numbers, in the order of time: the
/// first of each stretch of that length from the first reading on, and the highest. A stretch without a
/// reading has none; of readings equally high the first. Just the highest for a length that is not above
/// nought.
/// Source: common practice, no source (a series is read at steady intervals, its peak noted). Checked:
/// co_watch_test.cpp.
[[nodiscard]] std::vector<std::size_t> offeredOf(const std::vector<CoReading>& watched,
                                                 quantity::Duration every);

/// The number of the highest reading; of several the first. Nothing without readings.
/// Source: textbook (maximum). Checked: co_watch_test.cpp.
[[nodiscard]] std::optional<std::size_t> highestOf(const std::vector<CoReading>& watched);

}  // namespace hearth::air
