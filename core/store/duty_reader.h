// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/duties.h"

namespace hearth::store {

/// See Duties::dutiesOpen().
[[nodiscard]] std::vector<DutyLine> readDuties(const Connection& db, calendar::Date today,
                                               std::optional<reg::PremisesId> premises);
/// As many as readDuties() gives of the whole firm; the many alike are counted where they lie.
[[nodiscard]] DutyCount countDuties(const Connection& db, calendar::Date today);

}  // namespace hearth::store
