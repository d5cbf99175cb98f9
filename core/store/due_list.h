// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/due_lines.h"

#include <string>
#include <vector>

/// The list of what is due. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] DueCounts countDue(const Connection& db, const DueFilter& filter, calendar::Date today);
/// A list as it is asked for; `counts`: see Due::duePage().
struct DueAsking {
    const DueFilter& filter;
    DueSort sort;
    calendar::Date today;
    const std::optional<DueCounts>& counts;
};
[[nodiscard]] std::vector<DueLine> readDuePage(const Connection& db, const DueAsking& asked, int first,
                                               int count);
[[nodiscard]] std::vector<DueChoice> readDueChoices(const Connection& db, DueBy by, calendar::Date today);
[[nodiscard]] std::vector<DueLine> readOverdueSince(const Connection& db, calendar::Date since,
                                                    calendar::Date today);
/// Those with a deadline up to that day that meet the filter but for its states, by deadline.
[[nodiscard]] std::vector<DueLine> readDueUntil(const Connection& db, const DueFilter& filter,
                                                calendar::Date today, calendar::Date last);
/// In the order of `premises`; those that are gone or lie in the bin are left out.
[[nodiscard]] std::vector<DueLine> readDueLines(const Connection& db,
                                                const std::vector<reg::PremisesId>& premises,
                                                calendar::Date today);

}  // namespace hearth::store
