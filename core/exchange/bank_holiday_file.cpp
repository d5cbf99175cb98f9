// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/bank_holiday_file.h"

#include "core/exchange/file_text.h"
#include "core/exchange/json_node.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace hearth::exchange {
namespace {

using calendar::BankHoliday;
using calendar::BankHolidays;

constexpr std::size_t kMostBytes = 1024 * 1024;
constexpr std::size_t kMostNameLetters = 120;

struct Division {
    const char* key;
    std::array<bool BankHoliday::*, 2> nations;  // the same twice: one nation
};
constexpr std::array kDivisions{
    Division{"england-and-wales", {&BankHoliday::england, &BankHoliday::wales}},
    Division{"scotland", {&BankHoliday::scotland, &BankHoliday::scotland}},
    Division{"northern-ireland", {&BankHoliday::northernIreland, &BankHoliday::northernIreland}}};

/// The name as it can stand in one line; nothing for none.
std::optional<std::string> nameFrom(const std::string& title) {
    const auto isControl = [](unsigned char letter) { return letter < ' ' || letter == 0x7F; };
    const bool fits = !title.empty() && title.size() <= kMostNameLetters &&
                      std::none_of(title.begin(), title.end(), isControl) &&
                      title.find_first_not_of(' ') != std::string::npos;
    return fits ? std::optional(title) : std::nullopt;
}

/// A day of one name is one line for all that have it.
BankHoliday& holidayIn(BankHolidays& table, calendar::Date date, const std::string& name) {
    const auto same = [&](const BankHoliday& one) { return one.date == date && one.name == name; };
    const auto found = std::find_if(table.holidays.begin(), table.holidays.end(), same);
    if (found != table.holidays.end()) {
        return *found;
    }
    table.holidays.push_back({date, name});
    return table.holidays.back();
}

void takeDivision(const JsonNode& root, const Division& division, BankHolidays& table) {
    const auto found = root.find(division.key);
    if (!found) {
        throw HolidayFault{HolidayDoubt::DivisionMissing, division.key};
    }
    for (const auto& event : found->at("events").elements()) {
        const auto written = event.at("date").text();
        const auto date = calendar::fromIso(written);
        if (!date) {
            throw HolidayFault{HolidayDoubt::DateUnreadable, written};
        }
        const auto name = nameFrom(event.at("title").text());
        if (!name) {
            throw HolidayFault{HolidayDoubt::NameMissing, written};
        }
        auto& holiday = holidayIn(table, *date, *name);
        if (holiday.*division.nations.front()) {
            throw HolidayFault{HolidayDoubt::Twice, written + " " + *name};
        }
        for (const auto nation : division.nations) {
            holiday.*nation = true;
        }
    }
}

BankHolidays fromJson(std::string_view text) {
    const auto root = nlohmann::json::parse(text, nullptr, false);
    if (root.is_discarded() || !root.is_object()) {
        throw HolidayFault{HolidayDoubt::NotUnderstood, {}};
    }
    BankHolidays table;
    try {
        for (const auto& division : kDivisions) {
            takeDivision(JsonNode(root, {}), division, table);
        }
    } catch (const NodeFault& fault) {
        throw HolidayFault{HolidayDoubt::NotUnderstood, fault.where};
    }
    std::stable_sort(table.holidays.begin(), table.holidays.end(),
                     [](const BankHoliday& a, const BankHoliday& b) { return a.date < b.date; });
    return table;
}

bool sharesNation(const BankHoliday& a, const BankHoliday& b) {
    return (a.england && b.england) || (a.wales && b.wales) || (a.scotland && b.scotland) ||
           (a.northernIreland && b.northernIreland);
}

BankHolidays fromPlain(std::string_view text) {
    auto table = calendar::bankHolidaysFrom(text);
    if (!table) {
        throw HolidayFault{HolidayDoubt::NotUnderstood, {}};
    }
    for (auto one = table->holidays.begin(); one != table->holidays.end(); ++one) {
        if (!nameFrom(one->name)) {
            throw HolidayFault{HolidayDoubt::NameMissing, calendar::isoText(one->date)};
        }
        for (auto next = one + 1; next != table->holidays.end() && next->date == one->date; ++next) {
            if (next->name == one->name && sharesNation(*one, *next)) {
                throw HolidayFault{HolidayDoubt::Twice, calendar::isoText(one->date) + " " + one->name};
            }
        }
    }
    return std::move(*table);
}

/// As far as every year is whole, or as far as it says of itself.
void setLastYear(BankHolidays& table, int first) {
    const int whole = calendar::lastWholeYear(table, first);
    if (whole == 0 || whole < table.lastYear) {
        throw HolidayFault{HolidayDoubt::YearNotWhole, std::to_string(whole == 0 ? first : whole + 1)};
    }
    table.lastYear = whole;
}

}  // namespace

tl::expected<BankHolidays, HolidayFault> readBankHolidayFile(std::string_view bytes, const std::string& name,
                                                             calendar::Date today) {
    try {
        if (bytes.size() > kMostBytes) {
            throw HolidayFault{HolidayDoubt::TooLarge, {}};
        }
        const auto text = readFileText(bytes).utf8;
        const auto begins = text.find_first_not_of(" \t\r\n");
        const bool isJson = begins != std::string::npos && text[begins] == '{';
        auto table = isJson ? fromJson(text) : fromPlain(text);
        setLastYear(table, static_cast<int>(today.year()));
        table.source = table.source.empty() ? name : table.source;
        table.taken = today;
        return table;
    } catch (const HolidayFault& fault) {
        return tl::unexpected(fault);
    }
}

}  // namespace hearth::exchange
