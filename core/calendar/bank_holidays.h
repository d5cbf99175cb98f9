// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/notices.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Bank holidays: for bookings alone. No deadline moves for one.
namespace hearth::calendar {

struct BankHoliday {
    Date date;
    std::string name;  // a proper name, untranslated
    bool england = false;
    bool wales = false;
    bool scotland = false;
    bool northernIreland = false;
    bool operator==(const BankHoliday&) const = default;
};

struct BankHolidays {
    std::string source;                 // where the dates were read
    int lastYear = 0;                   // the last year of which they are all known; 0: none
    std::optional<Date> taken = {};     // when the firm took it in; nothing: it is ours
    std::vector<BankHoliday> holidays;  // by date
    bool operator==(const BankHolidays&) const = default;
};

/// Reads a table of bank holidays: lines "YYYY-MM-DD;nations;name" with E, W, S and N for the nations, "#
/// source: ...", "# last year: YYYY" and "# taken in: YYYY-MM-DD" before them; other lines that begin with #
/// are remarks. Nothing when a line is none of these. Source: none needed: the program's own form. Checked:
/// tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] std::optional<BankHolidays> bankHolidaysFrom(std::string_view text);
/// The same in that form. Source: none needed: the program's own form. Checked:
/// tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] std::string bankHolidaysText(const BankHolidays& table);

/// The last year up to which every year from `first` on is whole: every nation has its eight days or more,
/// one of them in the last week of the year. 0: that of `first` is not. Source: Banking and Financial
/// Dealings Act 1971, Schedule 1, with Christmas Day and Good Friday: from memory. Checked:
/// tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] int lastWholeYear(const BankHolidays& table, int first);

/// A table that the firm took in, and what `ours` has beyond its last year. Its source is the firm's.
/// Source: none needed: the newer table goes before. Checked: tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] BankHolidays joinedHolidays(BankHolidays firms, const BankHolidays& ours);

/// The program's own table.
/// Source: resources/bank_holidays.txt names it: the government's list of bank holidays, from memory.
/// Checked: tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] const BankHolidays& shippedBankHolidays();

/// The holiday's name, where that day is one in that nation.
/// Source: the table's. Checked: tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] std::optional<std::string_view> bankHolidayOn(const BankHolidays& table, Date date,
                                                            Nation nation);
/// Whether the table says nothing of that day: it is to be asked for.
/// Source: the table's. Checked: tests/core/calendar/bank_holidays_test.cpp.
[[nodiscard]] bool isBeyond(const BankHolidays& table, Date date);

}  // namespace hearth::calendar
