// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/deadlines.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

/// From deadlines to work: which of several decides, what stands where on a day, and what to do next.
namespace hearth::calendar {

/// By which duty premises are checked.
enum class CheckDuty {
    NotKnown,     // nobody said, and no role tells
    Let,          // regulation 36: a deadline with its window for each appliance and flue
    OwnInterval,  // regulation 35 (a workplace, a hall): the firm's own interval, without a window
    None,         // no duty, and the firm asks for none
};

/// Where premises stand, in the order of what needs doing next.
enum class DueState {
    Overdue,       // the deadline has passed
    LastTwoWeeks,  // the deadline is near, and nothing is booked before it
    WindowOpen,    // a check would count, and nothing is booked before the deadline
    Booked,        // to be done by the deadline
    OpeningSoon,   // within 30 days a check would count
    Later,
    NotKnown,  // there is a duty, and nothing is known to count from
    NoDuty,
};
inline constexpr std::array kDueStates{DueState::Overdue,  DueState::LastTwoWeeks, DueState::WindowOpen,
                                       DueState::Booked,   DueState::OpeningSoon,  DueState::Later,
                                       DueState::NotKnown, DueState::NoDuty};
/// "overdue", "last_two_weeks", "window_open", "booked", "opening_soon", "later", "not_known", "no_duty".
/// Source: none needed: the program's own codes.
[[nodiscard]] std::string_view codeOf(DueState state);
/// Source: none needed: the program's own codes.
[[nodiscard]] std::optional<DueState> dueStateFromCode(std::string_view code);

/// Common practice, no source: when a deadline is near, and how long before its window premises are named.
inline constexpr int kLastDays = 14;
inline constexpr int kOpeningDays = 30;

/// What decides where premises stand.
struct DueDates {
    CheckDuty duty = CheckDuty::Let;
    std::optional<Date> deadline = {};
    std::optional<Date> opens = {};   // opensOn()
    std::optional<Date> booked = {};  // the first day that is booked and not past
};

/// The first day on which a check that is worth making now keeps the deadline by every reading; without a
/// window the day from which it is worth asking for one, two months before.
/// Source: as checkWindow(); without a window common practice, no source. Checked:
/// tests/core/calendar/due_state_test.cpp.
[[nodiscard]] Date opensOn(Date deadline, CheckDuty duty, CheckLaw law);

/// On the deadline itself it is not overdue. What is booked after the deadline settles nothing.
/// Source: order of the work list, common practice, no source. Checked:
/// tests/core/calendar/due_state_test.cpp.
[[nodiscard]] DueState dueState(const DueDates& dates, Date today);

/// The deadline of premises is that of the item that comes first; which of `deadlines` it is. Of two on one
/// day the first. Nothing when none is known.
/// Source: regulation 36(3): each appliance and flue has its own (facts of the trade's bulletin). Checked:
/// tests/core/calendar/due_state_test.cpp.
[[nodiscard]] std::optional<std::size_t> firstDue(std::span<const std::optional<Deadline>> deadlines);

/// The deadline by the firm's own interval, counted from each actual check; nothing without a check, and for
/// no interval (`months` below 1).
/// Source: regulation 35 sets none (HSE "Gas safety for employers"): the firm's own. Checked:
/// tests/core/calendar/due_state_test.cpp.
[[nodiscard]] std::optional<Deadline> ownDeadline(std::span<const Date> checks, int months);

/// What a check on a day would do to an item.
struct IfChecked {
    std::optional<Deadline> now;        // in force before it
    std::optional<CheckTiming> timing;  // of the check to it
    Deadline next;                      // in force after it
    bool operator==(const IfChecked&) const = default;
};
/// Nothing for an item that is gone. Source: as deadlineAfter(). Checked:
/// tests/core/calendar/due_state_test.cpp.
[[nodiscard]] std::optional<IfChecked> ifChecked(const CheckedItem& item, Date day);

/// What the program offers to do next at premises.
enum class NextStep {
    Nothing,
    AskLastCheck,  // nothing is known to count from
    Prepare,       // the window opens soon: tell the landlord, ask for a day
    Book,
    BookNow,            // in the last two weeks, or overdue: by telephone
    TryAgain,           // nobody let us in: another attempt, and tell the landlord
    TryAgainAndRecord,  // three attempts and more: the same, and the evidence to the landlord. Never "enough"
    Attend,             // booked, in time or late
};
/// `attempts` since the last check; `isBooked`: for a day that is not past.
/// Source: HSE's answer on tenants who prevent access (three attempts are looked for, and are no safe
/// harbour); the rest common practice, no source. Checked: tests/core/calendar/due_state_test.cpp.
[[nodiscard]] NextStep nextStep(DueState state, int attempts, bool isBooked);
/// What inspectors look for (HSE's answer on tenants who prevent access).
inline constexpr int kAttemptsLookedFor = 3;

}  // namespace hearth::calendar
