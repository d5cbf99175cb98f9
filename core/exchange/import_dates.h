// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Dates as spreadsheets write them.
namespace hearth::exchange {

enum class DateOrder { DayFirst, MonthFirst };

struct DateOrderGuess {
    DateOrder order = DateOrder::DayFirst;
    bool sure = true;  // false: no date of the column tells; day first, as in Britain
};
/// From all the cells of a column: 25/11/2026 tells that the day is first, 11/25/2026 that the month is.
/// Where some tell one and some the other the more frequent order stands, not surely.
[[nodiscard]] DateOrderGuess guessDateOrder(const std::vector<std::string>& cells);

/// How a date was written, as far as it leaves something open.
enum class DateForm {
    Plain,        // nothing left open
    EitherOrder,  // 03/04/2026: as the column's order says
    Serial,       // 46351: days since 30 December 1899, as spreadsheets count
    ShortYear,    // 25/11/26: taken as 20xx up to 29, else 19xx, as spreadsheets do
};

struct ImportedDate {
    calendar::Date date{};
    DateForm form = DateForm::Plain;
    bool operator==(const ImportedDate&) const = default;
};

/// Reads "25/11/2026", "25.11.26", "2026-11-25", "25 Nov 2026", "Nov 25, 2026", each also with a time behind
/// it, and serial numbers from 1955 to 2119 (a lower or higher one is rather something else). Nothing for
/// anything else or an impossible day. Source: ISO 8601; serial numbers and the year 30: ECMA-376 part 1,
/// section 18.17.4.1 (1900 date base), from memory; the rest common practice, no source. Checked:
/// import_dates_test.cpp.
[[nodiscard]] std::optional<ImportedDate> readImportedDate(std::string_view cell, DateOrder order);

}  // namespace hearth::exchange
