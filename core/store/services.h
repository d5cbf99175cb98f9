// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/store/connection.h"

#include <optional>
#include <string>

namespace hearth::store {

/// Services of appliances that our records speak of, for FROM and WHERE: `v.date` is the day, `e.subject` the
/// appliance. A record of a service speaks of those that have lines of it, a record of a check of those that
/// it says were serviced. What was made void does not count.
[[nodiscard]] std::string servicesOnRecord();
/// The same, read from the visits on: for those of some days, without looking at every entry of the store.
[[nodiscard]] std::string servicesByVisit();

/// The newest of an appliance.
[[nodiscard]] std::optional<calendar::Date> lastService(const Connection& db, const UuidBytes& appliance);

}  // namespace hearth::store
