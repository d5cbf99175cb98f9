// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/exchange/scenario.h"
#include "core/store/store.h"

namespace hearth::app {

/// The morning before the scenario's first visit: when its firm set itself up.
[[nodiscard]] Instant startOf(const exchange::Scenario& scenario);

/// Which records are issued while a scenario is written.
enum class Records { AsMarked, None };

/// Writes a scenario into a new store as its people would have: the clock stands at each visit's day, entries
/// come some seconds apart under the engineer's name, and the records that the scenario marks are issued the
/// same day. Errors: those of Store, and of issuing.
[[nodiscard]] Result<void> writeScenario(const exchange::Scenario& scenario, store::Store& store,
                                         FixedClock& clock, Records records = Records::AsMarked);

}  // namespace hearth::app
