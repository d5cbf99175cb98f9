// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

/// Civil dates: days of the calendar where the work is done, without a time or a zone.
///
/// Source: ISO 8601 for the calendar (Gregorian, also before its time) and the form in files, from memory;
/// what a person may type and which day a short month gets: common practice, no source. Checked:
/// civil_date_test.cpp.
namespace hearth::calendar {

using Date = std::chrono::year_month_day;

/// "2026-11-25", the only form in files. Source: ISO 8601, from memory.
[[nodiscard]] std::string isoText(Date date);
/// And back; nothing for anything else or an impossible day. Source: ISO 8601, from memory.
[[nodiscard]] std::optional<Date> fromIso(std::string_view text);

/// What a person types: 25/11/2026, 25.11.2026, 25-11-26 (20xx), 25 Nov 2026, 2026-11-25, 25/11 and 25 (this
/// month, this year of `today`), t or today, +3 and -3 (days from today). Errors: DateUnreadable,
/// DateImpossible (31 February; a year before 1900 or after 2199). Source: common practice, no source.
[[nodiscard]] Result<Date> parseDate(std::string_view typed, Date today);

/// Adds calendar months; a day that the target month lacks becomes its last day. Source: corresponding-date
/// rule with the month's end in its place (Interpretation Act 1978 Schedule 1 and case law, from memory).
/// Checked: tests/core/calendar/months_test.cpp.
[[nodiscard]] Date addMonths(Date date, int months);
/// Days on, or back. Source: Gregorian calendar, textbook.
[[nodiscard]] Date addDays(Date date, int days);
/// Days from a to b; negative when b is earlier. Source: Gregorian calendar, textbook.
[[nodiscard]] int daysBetween(Date a, Date b);

}  // namespace hearth::calendar
