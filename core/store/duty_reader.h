// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/duties.h"

namespace hearth::store {

/// See Duties::dutiesOpen().
[[nodiscard]] std::vector<DutyLine> readDuties(const Connection& db, calendar::Date today,
                                               std::optional<reg::PremisesId> premises);

}  // namespace hearth::store
