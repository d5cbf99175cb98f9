// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"

#include <optional>
#include <vector>

/// When the next check of a let appliance or flue is due: regulations 36 and 36A of the Gas Safety
/// (Installation and Use) Regulations 1998 as amended in 2018. A deadline belongs to one appliance or one
/// flue, never to the premises. What the published texts leave open comes out as two dates, never as a guess.
namespace hearth::calendar {

/// Northern Ireland has its own regulations (SR 2004/63) without regulation 36A: a strict 12 months from each
/// check (from memory).
enum class CheckLaw { GreatBritain, NorthernIreland };

/// Regulation 36(3)(a): intervals of not more than 12 months.
inline constexpr int kCheckMonths = 12;
/// Regulation 36A(1), and HSE's page "Gas safety checks - what if...?" for a new appliance's one extension.
inline constexpr int kWindowMonths = 2;

/// In which days a check counts as made on the deadline date.
///
/// Regulation 36A(1): the period of two months ending with the deadline date. `strict` is that text's first
/// day. The regulator's guidance speaks of 10 to 12 calendar months after the last check, which starts one
/// day earlier: `earliest`. Where the deadline is the end of a month shorter than the one before the window,
/// whether the period starts with the next month is not settled: `certain` is the first day on which every
/// reading agrees. From `earliest` to the day before `certain` is the boundary.
struct CheckWindow {
    Date earliest;
    Date strict;
    Date certain;
    Date deadline;
    bool operator==(const CheckWindow&) const = default;
};

/// The window before a deadline; nothing where the law has none.
/// Source: regulation 36A(1) as quoted in "The Changes to Gas Safety Rules You Need to Know About"; guidance
/// L56 paragraph 305 as quoted in a landlord's knowledge base; month ends: corresponding-date rule
/// (Interpretation Act 1978 Schedule 1 and case law, from memory). Checked:
/// tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] std::optional<CheckWindow> checkWindow(Date deadline, CheckLaw law);

/// Where a day stands to a deadline: what a check on that day is, or would be.
enum class CheckTiming {
    BeforeWindow,  // resets the clock
    Boundary,      // in or before the window, by the reading: look again
    InWindow,      // counts as made on the deadline
    InTime,        // by the deadline, where the law has no window
    Late,          // after the deadline
};

/// Source: as checkWindow(). Checked: tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] CheckTiming checkTiming(Date deadline, Date day, CheckLaw law);

/// Why a deadline is what it is.
enum class DeadlineReason {
    Installed,             // 12 months from installation
    LeaseBegins,           // a check in the 12 months before the lease begins
    FirstKnownCheck,       // 12 months from the first check known: nothing is known of the time before it
    CheckedInWindow,       // 12 months from the deadline that the check counts for
    CheckedEarly,          // 12 months from a check before the window
    CheckedAtWindowsEdge,  // in the window or not, by the reading: both dates are given
    CheckedBeforeLease,    // shortly before the lease: whether it counts from the lease was not read; both
    CheckedInTime,         // 12 months from the check: no window in this law
    CheckedLate,           // 12 months from a check after its deadline
    Extended,              // a new appliance's first check put off, once, to come with the others'
    CheckedExtended,  // after that check: how the next deadline is fixed was not read; both ends are given
    OwnInterval,      // by the firm's own interval: no regulation sets one
};

struct Deadline {
    /// The date to keep: the earliest of those that the texts may mean.
    Date date;
    DeadlineReason reason = DeadlineReason::Installed;
    /// What it counts from: the installation, the lease's first day, the check.
    Date base;
    /// The deadline that the check was held against; nothing for a first one.
    std::optional<Date> before = {};
    /// Not decided: the latest date that the texts may mean. Ask, or keep `date`.
    std::optional<Date> latest = {};

    [[nodiscard]] bool isUndecided() const { return latest.has_value(); }
    bool operator==(const Deadline&) const = default;
};

/// The first deadline: the later of 12 months from installation and the day on which the lease begins
/// (regulation 36(3)(a) and (b)); nothing when neither is known.
/// Source: lettings pages and a forum copy of HSE's text summarising regulation 36(3); the wording itself
/// from memory. Checked: tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] std::optional<Deadline> firstDeadline(std::optional<Date> installed,
                                                    std::optional<Date> leaseBegins);

/// The deadline after a check that was held against `deadline`.
/// Source: regulation 36A(1) and (4) as quoted in "The Changes to Gas Safety Rules You Need to Know About"
/// (in the window: the deadline is kept); early and late resets: a law firm's article of September 2018 and
/// HSE's text. Checked: tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] Deadline deadlineAfter(Date deadline, Date check, CheckLaw law);

/// A new appliance's first check may, once, be put off by up to two months after its deadline, so that it
/// comes with the other appliances' checks. Given the others' deadline; nothing when putting off does not
/// help (they are not due within those two months) or the law has no window.
/// Source: HSE "Gas safety checks - what if...?"; a lettings page ("14 months once"). Checked:
/// tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] std::optional<Deadline> extendedFirstDeadline(Date installed, Date othersDeadline,
                                                            CheckLaw law);

/// After a check that used that extension: the earliest and the latest date that the next deadline may be
/// (its own anniversary of installation; 12 months after the others' deadline, or after the check).
/// Regulation 36A(2) and (3), which settle it, were not read. Source: HSE "Gas safety checks - what if...?",
/// as far as it goes. Checked: tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] Deadline deadlineAfterExtension(Date installed, Date check, Date othersDeadline);

/// All that is known of one appliance or flue.
struct CheckedItem {
    std::optional<Date> installed = {};
    std::optional<Date> leaseBegins = {};
    std::vector<Date> checks = {};  // actual dates, in any order
    /// The first check used the one extension to come with the others, due on this date.
    std::optional<Date> extendedTo = {};
    std::optional<Date> removed = {};
    CheckLaw law = CheckLaw::GreatBritain;
};

/// The deadline in force after all checks of an item, or the first; nothing when the item is gone or nothing
/// is known. Where a check stood on the boundary, every reading is followed to the end. Source: as
/// deadlineAfter(). Checked: tests/core/calendar/deadlines_test.cpp.
[[nodiscard]] std::optional<Deadline> deadlineOf(const CheckedItem& item);

}  // namespace hearth::calendar
