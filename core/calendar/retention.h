// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/deadlines.h"

#include <optional>
#include <span>

/// How long a check's record is kept, and by when whom a copy reaches: regulation 36(3)(c), (5) to (7) of the
/// Gas Safety (Installation and Use) Regulations 1998 as amended.
namespace hearth::calendar {

/// Regulation 36(6)(a): 28 days (HSE "Record keeping"; a page that quotes the regulation).
inline constexpr int kTenantCopyDays = 28;
/// Two years: HSE "Gas safety check records and what to keep".
inline constexpr int kRecordMonths = 24;

enum class KeepReason {
    AwaitsFurtherChecks,  // fewer than two further checks of the item: no date yet
    FurtherChecks,        // two further checks have been made, and two years have passed by then
    TwoYears,             // two further checks came sooner, so two years decide (or Northern Ireland's law)
    ItemRemoved,          // two years from the last check of an item that was removed
};

struct Keep {
    /// To be kept to the end of this day; nothing: on, without an end yet.
    std::optional<Date> until;
    KeepReason reason = KeepReason::AwaitsFurtherChecks;
    bool operator==(const Keep&) const = default;
};

/// How long the record of the check made on `check` is kept. `checks` are all of the item's, in any order and
/// with or without that one. The later of the two published rules is taken.
/// Source: SI 2018/139; "Work records: a reminder" (2023) (two further checks; an item removed: two years
/// from its last check); HSE "Gas safety check records and what to keep" (at least two years); that the later
/// of the two is taken is common practice, no source; Northern Ireland's two years from memory. Checked:
/// tests/core/calendar/retention_test.cpp.
[[nodiscard]] Keep keepRecord(Date check, std::span<const Date> checks, std::optional<Date> removed,
                              CheckLaw law);

/// The last day on which an existing tenant's copy is in time: 28 days after the actual check, whatever
/// deadline it counts for.
/// Source: HSE "Record keeping"; a page quoting regulation 36(6). That the actual date counts is a reading,
/// no source. Checked: tests/core/calendar/retention_test.cpp.
[[nodiscard]] Date tenantCopyBy(Date actualCheck);

/// A record may be copied to a new tenant up to this day, 12 months from the actual check.
/// Source: HSE "Gas safety checks - what if...?". Checked: tests/core/calendar/retention_test.cpp.
[[nodiscard]] Date recordCurrentUntil(Date actualCheck);

/// How a copy reaches those who live there.
enum class CopyWay {
    WithinDays,               // an existing tenant: within 28 days of the check
    BeforeMovingIn,           // a new tenant: before occupation
    MayDisplay,               // a right to occupy of 28 days or less: a copy displayed prominently will do
    MayDisplayWithStatement,  // no relevant appliance in any room occupied: displayed, with where to ask for
                              // one
};

/// What is known of the occupation; each is nothing until it is said.
struct Occupation {
    std::optional<bool> newTenant = {};
    std::optional<int> days = {};  // of the right to occupy
    std::optional<bool> applianceInRooms = {};
};

/// Nothing when what decides is not said. Length of stay and rooms are asked for before a display is allowed.
/// Source: HSE "Record keeping"; a page quoting regulation 36(6) and (7); a landlord guild's page (display
/// where no appliance stands in the rooms). Checked: tests/core/calendar/retention_test.cpp.
[[nodiscard]] std::optional<CopyWay> copyWay(const Occupation& occupation);

/// By when the copy must have reached the tenant: within 28 days of the check, or before the day of moving in
/// (which is returned as the last day: before they move in on it). Nothing for a display, which is there from
/// the first day, and nothing for a new tenant whose day is not known.
/// Source: as tenantCopyBy() and copyWay(). Checked: tests/core/calendar/retention_test.cpp.
[[nodiscard]] std::optional<Date> copyBy(CopyWay way, Date actualCheck, std::optional<Date> movesIn);

}  // namespace hearth::calendar
