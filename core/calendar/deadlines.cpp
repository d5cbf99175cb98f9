// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/deadlines.h"

#include <algorithm>
#include <iterator>

namespace hearth::calendar {

namespace {

Date lastOfMonth(Date date) {
    return Date{date.year() / date.month() / std::chrono::last};
}

Date firstOfMonthBefore(Date date) {
    return addMonths(Date{date.year() / date.month() / std::chrono::day(1)}, -1);
}

Deadline counted(DeadlineReason reason, Date base, Date from, Date before) {
    return {addMonths(from, kCheckMonths), reason, base, before, std::nullopt};
}

/// One deadline that the texts may mean, on the way through a history; the dates between it and others are
/// kept until the end.
using Possible = std::vector<Deadline>;

void addOnce(Possible& possible, const Deadline& deadline) {
    const bool known = std::any_of(possible.begin(), possible.end(),
                                   [&](const Deadline& one) { return one.date == deadline.date; });
    if (!known) {
        possible.push_back(deadline);
    }
}

/// The two dates of an undecided deadline as deadlines of their own.
void addBoth(Possible& possible, const Deadline& deadline) {
    Deadline one = deadline;
    one.latest.reset();
    addOnce(possible, one);
    if (deadline.latest) {
        one.date = *deadline.latest;
        addOnce(possible, one);
    }
}

Possible after(const Possible& before, Date check, CheckLaw law) {
    Possible next;
    for (const auto& deadline : before) {
        addBoth(next, deadlineAfter(deadline.date, check, law));
    }
    return next;
}

/// The earliest, with the latest beside it where they differ.
std::optional<Deadline> together(const Possible& possible) {
    if (possible.empty()) {
        return std::nullopt;
    }
    const auto earlier = [](const Deadline& a, const Deadline& b) { return a.date < b.date; };
    const auto [first, last] = std::minmax_element(possible.begin(), possible.end(), earlier);
    Deadline deadline = *first;
    if (last->date != first->date) {
        deadline.latest = last->date;
    }
    return deadline;
}

/// Whether the first check is one that the extension covers: later than the ordinary deadline, and not later
/// than the extended one.
bool usesExtension(const CheckedItem& item, Date firstCheck) {
    if (!item.extendedTo || !item.installed) {
        return false;
    }
    const auto extended = extendedFirstDeadline(*item.installed, *item.extendedTo, item.law);
    return extended && firstCheck > *extended->before && firstCheck <= extended->date;
}

/// What stands after the first check, which may have no deadline to be held against.
Possible afterFirst(const CheckedItem& item, Date check) {
    Possible possible;
    if (usesExtension(item, check)) {
        addBoth(possible, deadlineAfterExtension(*item.installed, check, *item.extendedTo));
    } else if (const auto first = firstDeadline(item.installed, item.leaseBegins)) {
        auto next = deadlineAfter(first->date, check, item.law);
        if (first->reason == DeadlineReason::LeaseBegins && next.date > addMonths(check, kCheckMonths)) {
            // Whether the window applies to a day that is no end of a 12-month period was not read.
            next = counted(DeadlineReason::CheckedBeforeLease, check, check, first->date);
            next.latest = addMonths(first->date, kCheckMonths);
        }
        addBoth(possible, next);
    } else {
        possible.push_back({addMonths(check, kCheckMonths), DeadlineReason::FirstKnownCheck, check,
                            std::nullopt, std::nullopt});
    }
    return possible;
}

std::optional<Deadline> withoutChecks(const CheckedItem& item) {
    if (item.extendedTo && item.installed) {
        if (auto extended = extendedFirstDeadline(*item.installed, *item.extendedTo, item.law)) {
            return extended;
        }
    }
    return firstDeadline(item.installed, item.leaseBegins);
}

}  // namespace

std::optional<CheckWindow> checkWindow(Date deadline, CheckLaw law) {
    if (law == CheckLaw::NorthernIreland) {
        return std::nullopt;
    }
    CheckWindow window;
    window.deadline = deadline;
    window.earliest = addMonths(deadline, -kWindowMonths);
    window.strict = addDays(window.earliest, 1);
    window.certain = deadline == lastOfMonth(deadline) ? std::max(window.strict, firstOfMonthBefore(deadline))
                                                       : window.strict;
    return window;
}

CheckTiming checkTiming(Date deadline, Date day, CheckLaw law) {
    if (day > deadline) {
        return CheckTiming::Late;
    }
    const auto window = checkWindow(deadline, law);
    if (!window) {
        return CheckTiming::InTime;
    }
    if (day < window->earliest) {
        return CheckTiming::BeforeWindow;
    }
    return day < window->certain ? CheckTiming::Boundary : CheckTiming::InWindow;
}

std::optional<Deadline> firstDeadline(std::optional<Date> installed, std::optional<Date> leaseBegins) {
    std::optional<Deadline> first;
    if (installed) {
        first = {addMonths(*installed, kCheckMonths), DeadlineReason::Installed, *installed, std::nullopt,
                 std::nullopt};
    }
    if (leaseBegins && (!first || *leaseBegins > first->date)) {
        first = {*leaseBegins, DeadlineReason::LeaseBegins, *leaseBegins, std::nullopt, std::nullopt};
    }
    return first;
}

Deadline deadlineAfter(Date deadline, Date check, CheckLaw law) {
    switch (checkTiming(deadline, check, law)) {
        case CheckTiming::BeforeWindow:
            return counted(DeadlineReason::CheckedEarly, check, check, deadline);
        case CheckTiming::InWindow:
            return counted(DeadlineReason::CheckedInWindow, check, deadline, deadline);
        case CheckTiming::InTime:
            return counted(DeadlineReason::CheckedInTime, check, check, deadline);
        case CheckTiming::Late:
            return counted(DeadlineReason::CheckedLate, check, check, deadline);
        case CheckTiming::Boundary:
            break;
    }
    auto edge = counted(DeadlineReason::CheckedAtWindowsEdge, check, check, deadline);
    edge.latest = addMonths(deadline, kCheckMonths);
    return edge;
}

std::optional<Deadline> extendedFirstDeadline(Date installed, Date othersDeadline, CheckLaw law) {
    if (law == CheckLaw::NorthernIreland) {
        return std::nullopt;
    }
    const auto ordinary = addMonths(installed, kCheckMonths);
    const auto most = addMonths(ordinary, kWindowMonths);
    // The others must still be checkable without a reset of theirs: their window reaches into the two months.
    const auto window = *checkWindow(othersDeadline, law);
    if (othersDeadline <= ordinary || window.certain > most) {
        return std::nullopt;
    }
    return Deadline{std::min(most, othersDeadline), DeadlineReason::Extended, installed, ordinary,
                    std::nullopt};
}

Deadline deadlineAfterExtension(Date installed, Date check, Date othersDeadline) {
    const auto own = addMonths(installed, kCheckMonths);
    const auto fromCheck = addMonths(check, kCheckMonths);
    const auto fromOthers = addMonths(othersDeadline, kCheckMonths);
    const auto fromOwn = addMonths(own, kCheckMonths);
    const auto [earliest, latest] = std::minmax({fromCheck, fromOthers, fromOwn});
    Deadline deadline{earliest, DeadlineReason::CheckedExtended, check, own, std::nullopt};
    if (latest != earliest) {
        deadline.latest = latest;
    }
    return deadline;
}

std::optional<Deadline> deadlineOf(const CheckedItem& item) {
    if (item.removed) {
        return std::nullopt;
    }
    if (item.checks.empty()) {
        return withoutChecks(item);
    }
    auto checks = item.checks;
    std::sort(checks.begin(), checks.end());
    auto possible = afterFirst(item, checks.front());
    for (auto check = std::next(checks.begin()); check != checks.end(); ++check) {
        possible = after(possible, *check, item.law);
    }
    return together(possible);
}

}  // namespace hearth::calendar
