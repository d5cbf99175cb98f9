// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/calendar/civil_date.h"

#include <string>
#include <vector>

namespace hearth::exchange {

/// An entry of a calendar, for other programs.
struct CalendarEvent {
    std::string uid;  // stable: the same entry has the same in every file
    /// Raised with each change; a program that has the entry follows the greater one.
    int sequence = 0;
    std::string summary;
    std::string description;
    std::string location;
    calendar::Date date{};
    std::string from;   // "09:30" where the firm works; empty: all day
    std::string until;  // empty: an hour
    bool cancelled = false;
    std::vector<int> alarmsBefore;  // minutes
};

/// SEQUENCE of an entry that follows from others and has no count of its own: minutes since 2020, so that a
/// later file goes before an earlier one.
/// Source: RFC 5545, section 3.8.7.4 (a revision has a greater one). Checked: calendar_file_test.cpp.
[[nodiscard]] int sequenceAt(Instant now);

/// The events as an iCalendar file: UID, DTSTAMP, SEQUENCE; whole days as VALUE=DATE with an exclusive end,
/// times in UTC; alarms that show; what is cancelled as STATUS:CANCELLED. Errors: TimeUnreadable for a time
/// that is none, or that the clocks leave out.
/// Source: RFC 5545, sections 3.1 (folding), 3.6.1, 3.6.6, 3.8.4.7, 3.8.7.4. Checked: calendar_file_test.cpp.
[[nodiscard]] Result<std::string> calendarOf(const std::vector<CalendarEvent>& events, Instant now,
                                             const std::string& zone = "Europe/London");

}  // namespace hearth::exchange
