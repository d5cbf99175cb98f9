// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/deadlines.h"
#include "core/record/kind.h"
#include "core/register/visit_file.h"

#include <optional>
#include <vector>

namespace hearth::record {

/// The dates that a landlord's record shows of one appliance and its flue: each has its own.
struct CheckDates {
    /// When it was checked: its own date, or the visit's. Nothing for one that was not checked.
    std::optional<calendar::Date> checked;
    /// The deadline that the check was held against; nothing when none was known.
    std::optional<calendar::Date> before;
    /// The check counts as made on `before` (regulation 36A(1)).
    bool keepsDeadline = false;
    /// When the next check is due. Nothing when nothing is known, and for what the duty does not reach.
    std::optional<calendar::Deadline> next;
    /// By when an existing tenant's copy is due.
    std::optional<calendar::Date> copyBy;
    /// What would follow from the last check as it was entered at the visit, where the checks that are kept
    /// say another date. Neither is left out: both are to be shown.
    std::optional<calendar::Deadline> nextByEntry = {};
};

/// What is kept of one appliance's checks before a visit.
struct CheckHistory {
    reg::ApplianceId appliance;
    calendar::CheckedItem item;
};

/// A check of an appliance that belongs to the landlord. The deadline before it is that of the checks in
/// `kept`; where there is none of the appliance, it follows from the last check as entered, else from the
/// installation. What is a tenant's own, and what was only looked at,
/// starts no twelve months.
/// Source: as calendar::deadlineAfter() and tenantCopyBy(); that the duty does not reach what a tenant may
/// take along, from memory. Checked: tests/core/record/check_dates_test.cpp.
[[nodiscard]] CheckDates checkDatesOf(const reg::VisitFile& file, const reg::Appliance& appliance,
                                      const std::vector<CheckHistory>& kept = {});

/// The law of the premises' country.
/// Source: as calendar::CheckLaw. Checked: tests/core/record/check_dates_test.cpp.
[[nodiscard]] calendar::CheckLaw checkLawOf(reg::Country country);

/// A check of one appliance that a record states.
struct MadeCheck {
    reg::ApplianceId appliance;
    calendar::Date date{};
    /// The last check before it, or the deadline that it counted for, as it was known at the visit.
    std::optional<calendar::Date> countedFrom;
    bool operator==(const MadeCheck&) const = default;
};
/// What a safety record of that kind states as checked: each appliance that was inspected, with its own day.
/// What was only looked at, and records of other kinds, make no check.
/// Source: regulation 36(3)(c)(i), each appliance's own date. Checked:
/// tests/core/record/check_dates_test.cpp.
[[nodiscard]] std::vector<MadeCheck> checksStatedBy(RecordKind kind, const reg::VisitFile& file);

}  // namespace hearth::record
