// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/due_state.h"

#include <algorithm>
#include <utility>

namespace hearth::calendar {
namespace {

constexpr std::array<std::pair<DueState, std::string_view>, kDueStates.size()> kDueStateCodes{{
    {DueState::Overdue, "overdue"},
    {DueState::LastTwoWeeks, "last_two_weeks"},
    {DueState::WindowOpen, "window_open"},
    {DueState::Booked, "booked"},
    {DueState::OpeningSoon, "opening_soon"},
    {DueState::Later, "later"},
    {DueState::NotKnown, "not_known"},
    {DueState::NoDuty, "no_duty"},
}};

}  // namespace

std::string_view codeOf(DueState state) {
    return kDueStateCodes.at(static_cast<std::size_t>(state)).second;
}

std::optional<DueState> dueStateFromCode(std::string_view code) {
    for (const auto& [state, known] : kDueStateCodes) {
        if (known == code) {
            return state;
        }
    }
    return std::nullopt;
}

Date opensOn(Date deadline, CheckDuty duty, CheckLaw law) {
    const auto window = duty == CheckDuty::OwnInterval ? std::nullopt : checkWindow(deadline, law);
    return window ? window->certain : addMonths(deadline, -kWindowMonths);
}

DueState dueState(const DueDates& dates, Date today) {
    if (dates.duty == CheckDuty::None) {
        return DueState::NoDuty;
    }
    if (!dates.deadline) {
        return DueState::NotKnown;
    }
    if (*dates.deadline < today) {
        return DueState::Overdue;
    }
    if (dates.booked && *dates.booked <= *dates.deadline) {
        return DueState::Booked;
    }
    if (daysBetween(today, *dates.deadline) <= kLastDays) {
        return DueState::LastTwoWeeks;
    }
    const Date opens = dates.opens.value_or(*dates.deadline);
    if (opens <= today) {
        return DueState::WindowOpen;
    }
    return daysBetween(today, opens) <= kOpeningDays ? DueState::OpeningSoon : DueState::Later;
}

std::optional<std::size_t> firstDue(std::span<const std::optional<Deadline>> deadlines) {
    std::optional<std::size_t> first;
    for (std::size_t i = 0; i < deadlines.size(); ++i) {
        if (deadlines[i] && (!first || deadlines[i]->date < deadlines[*first]->date)) {
            first = i;
        }
    }
    return first;
}

std::optional<Deadline> ownDeadline(std::span<const Date> checks, int months) {
    if (checks.empty() || months < 1) {
        return std::nullopt;
    }
    const Date last = *std::max_element(checks.begin(), checks.end());
    return Deadline{addMonths(last, months), DeadlineReason::OwnInterval, last, std::nullopt, std::nullopt};
}

std::optional<IfChecked> ifChecked(const CheckedItem& item, Date day) {
    if (item.removed) {
        return std::nullopt;
    }
    IfChecked checked{deadlineOf(item), std::nullopt, {}};
    if (checked.now) {
        checked.timing = checkTiming(checked.now->date, day, item.law);
    }
    CheckedItem then = item;
    then.checks.push_back(day);
    checked.next = *deadlineOf(then);  // there is a check
    return checked;
}

NextStep nextStep(DueState state, int attempts, bool isBooked) {
    const bool isOpen =
        state == DueState::Overdue || state == DueState::LastTwoWeeks || state == DueState::WindowOpen;
    if (isOpen && isBooked) {
        return NextStep::Attend;
    }
    if (isOpen && attempts > 0) {
        return attempts < kAttemptsLookedFor ? NextStep::TryAgain : NextStep::TryAgainAndRecord;
    }
    switch (state) {
        case DueState::Overdue:
        case DueState::LastTwoWeeks:
            return NextStep::BookNow;
        case DueState::WindowOpen:
            return NextStep::Book;
        case DueState::Booked:
            return NextStep::Attend;
        case DueState::OpeningSoon:
            return NextStep::Prepare;
        case DueState::NotKnown:
            return NextStep::AskLastCheck;
        case DueState::Later:
        case DueState::NoDuty:
            break;
    }
    return NextStep::Nothing;
}

}  // namespace hearth::calendar
