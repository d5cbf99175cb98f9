// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/bank_holidays.h"

#include <string>
#include <string_view>
#include <tl/expected.hpp>

/// A file of bank holidays that the firm brings.
namespace hearth::exchange {

enum class HolidayDoubt {
    TooLarge,         // no such file is
    NotUnderstood,    // detail: where
    DivisionMissing,  // detail: "scotland"
    DateUnreadable,   // detail: as it stands
    NameMissing,      // detail: the date
    Twice,            // detail: date and name of a day that a nation has twice
    YearNotWhole,     // detail: the first year of which days are missing
};
struct HolidayFault {
    HolidayDoubt what = HolidayDoubt::NotUnderstood;
    std::string detail = {};
    bool operator==(const HolidayFault&) const = default;
};

/// Reads such a file in one of two forms: the one in which the government publishes bank holidays as open
/// data, JSON with a member for each division ("england-and-wales", "scotland", "northern-ireland"), each
/// with "events" of "title" and "date"; or the form of calendar::bankHolidaysFrom(). It must be whole from
/// the year of `today` on, in all nations; of the plain form also up to the year that it names. `name`: the
/// file's, kept as the source where it names none. `today` is kept as the day on which it was taken in.
/// Source: GOV.UK, "Bank holidays" as JSON, the form from memory. Checked:
/// tests/core/exchange/bank_holiday_file_test.cpp.
[[nodiscard]] tl::expected<calendar::BankHolidays, HolidayFault> readBankHolidayFile(std::string_view bytes,
                                                                                     const std::string& name,
                                                                                     calendar::Date today);

}  // namespace hearth::exchange
