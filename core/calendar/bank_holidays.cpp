// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/bank_holidays.h"

#include "core/calendar/bank_holiday_table.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace hearth::calendar {
namespace {

constexpr std::string_view kSourceMark = "# source: ";
constexpr std::string_view kLastYearMark = "# last year: ";
constexpr std::string_view kTakenMark = "# taken in: ";
constexpr std::array kNationsInTable{Nation::England, Nation::Wales, Nation::Scotland,
                                     Nation::NorthernIreland};
constexpr int kLeastInYear = 8;
constexpr std::size_t kIsoLength = 10;

bool beginsWith(std::string_view text, std::string_view with) {
    return text.substr(0, with.size()) == with;
}

bool takeNations(std::string_view letters, BankHoliday& holiday) {
    for (const char letter : letters) {
        bool& flag = letter == 'E'   ? holiday.england
                     : letter == 'W' ? holiday.wales
                     : letter == 'S' ? holiday.scotland
                                     : holiday.northernIreland;
        if (std::string_view("EWSN").find(letter) == std::string_view::npos || flag) {
            return false;
        }
        flag = true;
    }
    return !letters.empty();
}

std::optional<BankHoliday> holidayFrom(std::string_view line) {
    const std::size_t nations = line.find(';');
    const std::size_t name = nations == std::string_view::npos ? nations : line.find(';', nations + 1);
    if (nations != kIsoLength || name == std::string_view::npos || name + 1 == line.size()) {
        return std::nullopt;
    }
    const auto date = fromIso(line.substr(0, nations));
    BankHoliday holiday;
    if (!date || !takeNations(line.substr(nations + 1, name - nations - 1), holiday)) {
        return std::nullopt;
    }
    holiday.date = *date;
    holiday.name = line.substr(name + 1);
    return holiday;
}

/// False for a line that is none.
bool takeHolidayLine(std::string_view line, BankHolidays& table) {
    if (beginsWith(line, kSourceMark)) {
        table.source = line.substr(kSourceMark.size());
        return true;
    }
    if (beginsWith(line, kLastYearMark)) {
        const auto year = line.substr(kLastYearMark.size());
        const auto [end, problem] = std::from_chars(year.data(), year.data() + year.size(), table.lastYear);
        return problem == std::errc() && end == year.data() + year.size();
    }
    if (beginsWith(line, kTakenMark)) {
        table.taken = fromIso(line.substr(kTakenMark.size()));
        return table.taken.has_value();
    }
    if (line.empty() || line.front() == '#') {
        return true;
    }
    const auto holiday = holidayFrom(line);
    if (holiday) {
        table.holidays.push_back(*holiday);
    }
    return holiday.has_value();
}

bool isIn(const BankHoliday& holiday, Nation nation) {
    return nation == Nation::England    ? holiday.england
           : nation == Nation::Wales    ? holiday.wales
           : nation == Nation::Scotland ? holiday.scotland
                                        : holiday.northernIreland;
}

bool isWhole(const BankHolidays& table, int year) {
    const Date lastWeek = std::chrono::year(year) / std::chrono::December / 25;
    const auto wholeIn = [&](Nation nation) {
        int days = 0;
        bool reachesTheEnd = false;
        for (const auto& one : table.holidays) {
            if (static_cast<int>(one.date.year()) == year && isIn(one, nation)) {
                ++days;
                reachesTheEnd = reachesTheEnd || one.date >= lastWeek;
            }
        }
        return days >= kLeastInYear && reachesTheEnd;
    };
    return std::all_of(kNationsInTable.begin(), kNationsInTable.end(), wholeIn);
}

}  // namespace

std::optional<BankHolidays> bankHolidaysFrom(std::string_view text) {
    BankHolidays table;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        if (!line.empty() && line.back() == '\r') {
            line.remove_suffix(1);
        }
        if (!takeHolidayLine(line, table)) {
            return std::nullopt;
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    std::stable_sort(table.holidays.begin(), table.holidays.end(),
                     [](const BankHoliday& a, const BankHoliday& b) { return a.date < b.date; });
    return table;
}

const BankHolidays& shippedBankHolidays() {
    static const BankHolidays kTable = [] {
        auto table = bankHolidaysFrom(kBankHolidayTable);
        assert(table);  // a test reads it
        return std::move(*table);
    }();
    return kTable;
}

std::optional<std::string_view> bankHolidayOn(const BankHolidays& table, Date date, Nation nation) {
    for (const auto& holiday : table.holidays) {
        if (holiday.date == date && isIn(holiday, nation)) {
            return holiday.name;
        }
    }
    return std::nullopt;
}

std::string bankHolidaysText(const BankHolidays& table) {
    std::string text;
    text.append(kSourceMark).append(table.source).append("\n");
    text.append(kLastYearMark).append(std::to_string(table.lastYear)).append("\n");
    if (table.taken) {
        text.append(kTakenMark).append(isoText(*table.taken)).append("\n");
    }
    for (const auto& one : table.holidays) {
        text.append(isoText(one.date)).append(";");
        text.append(one.england ? "E" : "").append(one.wales ? "W" : "");
        text.append(one.scotland ? "S" : "").append(one.northernIreland ? "N" : "");
        text.append(";").append(one.name).append("\n");
    }
    return text;
}

int lastWholeYear(const BankHolidays& table, int first) {
    int year = first;
    while (isWhole(table, year)) {
        ++year;
    }
    return year == first ? 0 : year - 1;
}

BankHolidays joinedHolidays(BankHolidays firms, const BankHolidays& ours) {
    for (const auto& one : ours.holidays) {
        if (static_cast<int>(one.date.year()) > firms.lastYear) {
            firms.holidays.push_back(one);
        }
    }
    firms.lastYear = std::max(firms.lastYear, ours.lastYear);
    std::stable_sort(firms.holidays.begin(), firms.holidays.end(),
                     [](const BankHoliday& a, const BankHoliday& b) { return a.date < b.date; });
    return firms;
}

bool isBeyond(const BankHolidays& table, Date date) {
    return static_cast<int>(date.year()) > table.lastYear;
}

}  // namespace hearth::calendar
