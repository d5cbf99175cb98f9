// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_dates.h"

#include "core/exchange/folded.h"

#include <algorithm>
#include <array>

namespace hearth::exchange {
namespace {

using calendar::Date;

/// English, Welsh and Polish names, folded, by their first letters: "nov", "tach", "lis".
struct MonthName {
    std::string_view start;
    unsigned month;
};
constexpr std::array kMonthNames{
    MonthName{"jan", 1},  MonthName{"feb", 2},  MonthName{"mar", 3},   MonthName{"apr", 4},
    MonthName{"may", 5},  MonthName{"jun", 6},  MonthName{"jul", 7},   MonthName{"aug", 8},
    MonthName{"sep", 9},  MonthName{"oct", 10}, MonthName{"nov", 11},  MonthName{"dec", 12},
    MonthName{"ion", 1},  MonthName{"chw", 2},  MonthName{"maw", 3},   MonthName{"ebr", 4},
    MonthName{"mai", 5},  MonthName{"meh", 6},  MonthName{"gor", 7},   MonthName{"aws", 8},
    MonthName{"med", 9},  MonthName{"hyd", 10}, MonthName{"tach", 11}, MonthName{"rhag", 12},
    MonthName{"sty", 1},  MonthName{"lut", 2},  MonthName{"kwi", 4},   MonthName{"maj", 5},
    MonthName{"cze", 6},  MonthName{"lip", 7},  MonthName{"sie", 8},   MonthName{"wrz", 9},
    MonthName{"paz", 10}, MonthName{"lis", 11}, MonthName{"gru", 12}};

std::optional<unsigned> monthCalled(std::string_view word) {
    for (const auto& [start, month] : kMonthNames) {
        if (word.substr(0, start.size()) == start) {
            return month;
        }
    }
    return std::nullopt;
}

bool isNumeral(std::string_view text) {
    return !text.empty() && text.size() <= 5 &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

unsigned numberOf(std::string_view digits) {
    unsigned number = 0;
    for (const char digit : digits) {
        number = number * 10 + static_cast<unsigned>(digit - '0');
    }
    return number;
}

/// The cell's parts without a time of day behind them ("2026-11-25T00:00:00", "25/11/2026 00:00").
std::vector<std::string> dateParts(std::string_view cell) {
    const std::size_t colon = cell.find(':');
    if (colon != std::string_view::npos) {
        const std::size_t before = cell.find_last_of(" T", colon);
        cell = cell.substr(0, before == std::string_view::npos ? 0 : before);
    }
    auto parts = foldedWords(cell);
    for (auto& part : parts) {  // "25th"
        if (part.size() > 2 && isNumeral(part.substr(0, part.size() - 2)) &&
            std::string_view("st nd rd th").find(part.substr(part.size() - 2)) != std::string_view::npos) {
            part.resize(part.size() - 2);
        }
    }
    return parts;
}

std::optional<ImportedDate> madeOf(const std::string& yearText, unsigned month, unsigned day, DateForm form) {
    constexpr unsigned kFirstOfLastCentury = 30;
    if (yearText.size() != 2 && yearText.size() != 4) {
        return std::nullopt;
    }
    unsigned year = numberOf(yearText);
    if (yearText.size() == 2) {
        year += year < kFirstOfLastCentury ? 2000 : 1900;
        form = form == DateForm::Plain ? DateForm::ShortYear : form;
    }
    const Date date{std::chrono::year(static_cast<int>(year)), std::chrono::month(month),
                    std::chrono::day(day)};
    const bool good = date.ok() && year >= 1900 && year < 2200;
    return good ? std::optional(ImportedDate{date, form}) : std::nullopt;
}

std::optional<ImportedDate> fromSerial(unsigned days) {
    constexpr unsigned kFirst = 20090;  // 1 January 1955
    constexpr unsigned kLast = 80353;   // 31 December 2119
    if (days < kFirst || days > kLast) {
        return std::nullopt;
    }
    const Date zero{std::chrono::year(1899), std::chrono::month(12), std::chrono::day(30)};
    return ImportedDate{calendar::addDays(zero, static_cast<int>(days)), DateForm::Serial};
}

/// "45231" and "45231.5", alone.
std::optional<unsigned> serialIn(std::string_view cell) {
    const std::string text = tidied(cell);
    const std::size_t point = text.find_first_of(".,");
    const std::string_view whole = std::string_view(text).substr(0, point);
    const std::string_view part = point == std::string::npos ? "0" : std::string_view(text).substr(point + 1);
    const bool good = whole.size() == 5 && isNumeral(whole) && !part.empty() &&
                      part.find_first_not_of("0123456789") == std::string_view::npos;
    return good ? std::optional(numberOf(whole)) : std::nullopt;
}

bool isPair(const std::vector<std::string>& parts) {
    return parts.size() == 3 && isNumeral(parts[0]) && isNumeral(parts[1]) && isNumeral(parts[2]) &&
           parts[0].size() <= 2 && parts[1].size() <= 2;
}

std::optional<ImportedDate> fromNumbers(const std::vector<std::string>& parts, DateOrder order) {
    constexpr unsigned kMonths = 12;
    if (parts[0].size() == 4) {
        return madeOf(parts[0], numberOf(parts[1]), numberOf(parts[2]), DateForm::Plain);
    }
    if (!isPair(parts)) {
        return std::nullopt;
    }
    const unsigned first = numberOf(parts[0]);
    const unsigned second = numberOf(parts[1]);
    const bool either = first <= kMonths && second <= kMonths && first != second;
    const bool dayFirst = order == DateOrder::DayFirst;
    return madeOf(parts[2], dayFirst ? second : first, dayFirst ? first : second,
                  either ? DateForm::EitherOrder : DateForm::Plain);
}

}  // namespace

DateOrderGuess guessDateOrder(const std::vector<std::string>& cells) {
    constexpr unsigned kMonths = 12;
    int dayFirst = 0;
    int monthFirst = 0;
    int either = 0;
    for (const auto& cell : cells) {
        const auto parts = dateParts(cell);
        if (!isPair(parts)) {
            continue;
        }
        const bool firstIsDay = numberOf(parts[0]) > kMonths;
        const bool secondIsDay = numberOf(parts[1]) > kMonths;
        dayFirst += firstIsDay && !secondIsDay ? 1 : 0;
        monthFirst += secondIsDay && !firstIsDay ? 1 : 0;
        either += !firstIsDay && !secondIsDay && parts[0] != parts[1] ? 1 : 0;
    }
    const bool told = (dayFirst > 0) != (monthFirst > 0);
    const bool asked = dayFirst + monthFirst + either > 0;
    return {monthFirst > dayFirst ? DateOrder::MonthFirst : DateOrder::DayFirst, told || !asked};
}

std::optional<ImportedDate> readImportedDate(std::string_view cell, DateOrder order) {
    if (const auto serial = serialIn(cell)) {
        return fromSerial(*serial);
    }
    auto parts = dateParts(cell);
    if (parts.size() == 4 && !isNumeral(parts[0]) && !monthCalled(parts[0])) {
        parts.erase(parts.begin());  // "Wed 25 Nov 2026"
    }
    if (parts.size() != 3) {
        return std::nullopt;
    }
    if (isNumeral(parts[0]) && isNumeral(parts[1]) && isNumeral(parts[2])) {
        return fromNumbers(parts, order);
    }
    const bool monthInMiddle = isNumeral(parts[0]) && isNumeral(parts[2]);
    const auto month = monthCalled(parts[monthInMiddle ? 1 : 0]);
    if (!month || !isNumeral(parts[2]) || !isNumeral(parts[monthInMiddle ? 0 : 1])) {
        return std::nullopt;
    }
    return madeOf(parts[2], *month, numberOf(parts[monthInMiddle ? 0 : 1]), DateForm::Plain);
}

}  // namespace hearth::exchange
