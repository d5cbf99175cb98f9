// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/civil_date.h"

#include "core/base/blanks.h"
#include "core/base/digits.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace hearth::calendar {
namespace {

using std::chrono::sys_days;

constexpr std::string_view kMinusSign = "\u2212";
// A date of work or of a document: a year outside these is a slip of the finger.
constexpr int kFirstYear = 1900;
constexpr int kLastYear = 2199;

std::string padded(unsigned value, std::size_t width) {
    const std::string digits = std::to_string(value);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

std::optional<int> wholeNumber(std::string_view digits, std::size_t most) {
    if (digits.empty() || digits.size() > most || !std::all_of(digits.begin(), digits.end(), isDigit)) {
        return std::nullopt;
    }
    int value = 0;
    for (const char digit : digits) {
        value = value * 10 + (digit - '0');
    }
    return value;
}

Date dateOf(int year, int month, int day) {
    return Date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                std::chrono::day{static_cast<unsigned>(day)}};
}

/// Small letters; blanks within become single spaces.
std::string plain(std::string_view typed) {
    std::string text;
    for (std::string_view rest = withoutOuterBlanks(typed); !rest.empty();) {
        const std::size_t blank = blankLength(rest);
        const char c = blank > 0 ? ' ' : rest.front();
        if (c != ' ' || text.back() != ' ') {
            text += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
        rest.remove_prefix(std::max<std::size_t>(blank, 1));
    }
    return text;
}

/// 1 to 12 for "nov", "sept", "november": three letters or more of the name.
std::optional<int> monthCalled(std::string_view word) {
    constexpr std::array<std::string_view, 12> kNames{"january",   "february", "march",    "april",
                                                      "may",       "june",     "july",     "august",
                                                      "september", "october",  "november", "december"};
    for (std::size_t i = 0; i < kNames.size(); ++i) {
        if (word.size() >= 3 && word == kNames[i].substr(0, word.size())) {
            return static_cast<int>(i) + 1;
        }
    }
    return std::nullopt;
}

/// Two digits are of this century, four are themselves.
std::optional<int> yearOf(std::string_view digits) {
    const auto number = wholeNumber(digits, 4);
    if (!number || (digits.size() != 2 && digits.size() != 4)) {
        return std::nullopt;
    }
    return digits.size() == 2 ? 2000 + *number : *number;
}

struct Parts {
    std::optional<int> year;
    std::optional<int> month;
    std::optional<int> day;

    [[nodiscard]] bool isWhole() const { return year && month && day; }
};

/// "25 nov 2026", "25nov26", "25 november"
std::optional<Parts> withMonthName(std::string_view text, Date today) {
    std::vector<std::string_view> words;
    for (std::size_t at = 0; at < text.size();) {
        const auto sameKind = isLetter(text[at]) ? isLetter : isDigit;
        std::size_t end = at;
        while (end < text.size() && sameKind(text[end])) {
            ++end;
        }
        if (end > at) {
            words.push_back(text.substr(at, end - at));
        } else if (std::string_view(" ./-,").find(text[at]) == std::string_view::npos) {
            return std::nullopt;
        }
        at = std::max(end, at + 1);
    }
    if (words.size() < 2 || words.size() > 3) {
        return std::nullopt;
    }
    const auto year = words.size() == 3 ? yearOf(words[2]) : std::optional(static_cast<int>(today.year()));
    return Parts{year, monthCalled(words[1]), wholeNumber(words[0], 2)};
}

/// "25/11/2026", "25.11.26", "25 11 2026", "25/11", "25", "2026-11-25": one and the same mark between the
/// numbers.
std::optional<Parts> withNumbers(std::string_view text, Date today) {
    const std::size_t first = text.find_first_not_of("0123456789");
    std::vector<std::string_view> numbers;
    std::size_t at = 0;
    while (at <= text.size()) {
        const std::size_t end =
            first == std::string_view::npos ? text.size() : std::min(text.find(text[first], at), text.size());
        numbers.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    if (first != std::string_view::npos &&
        std::string_view(" ./-").find(text[first]) == std::string_view::npos) {
        return std::nullopt;
    }
    if (numbers.size() > 3) {
        return std::nullopt;
    }
    if (numbers.size() == 3 && numbers[0].size() == 4) {
        return Parts{yearOf(numbers[0]), wholeNumber(numbers[1], 2), wholeNumber(numbers[2], 2)};
    }
    Parts parts{static_cast<int>(today.year()), static_cast<int>(static_cast<unsigned>(today.month())), {}};
    parts.day = wholeNumber(numbers[0], 2);
    if (numbers.size() > 1) {
        parts.month = wholeNumber(numbers[1], 2);
    }
    if (numbers.size() > 2) {
        parts.year = yearOf(numbers[2]);
    }
    return parts;
}

/// "+3", "-3"
std::optional<int> dayStep(std::string_view text) {
    const bool isLongMinus = text.substr(0, kMinusSign.size()) == kMinusSign;
    const bool isBack = isLongMinus || text.front() == '-';
    if (!isBack && text.front() != '+') {
        return std::nullopt;
    }
    text.remove_prefix(isLongMinus ? kMinusSign.size() : 1);
    const auto days = wholeNumber(withoutOuterBlanks(text), 5);
    return days && isBack ? std::optional(-*days) : days;
}

}  // namespace

std::string isoText(Date date) {
    return padded(static_cast<unsigned>(static_cast<int>(date.year())), 4) + '-' +
           padded(static_cast<unsigned>(date.month()), 2) + '-' +
           padded(static_cast<unsigned>(date.day()), 2);
}

std::optional<Date> fromIso(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = wholeNumber(text.substr(0, 4), 4);
    const auto month = wholeNumber(text.substr(5, 2), 2);
    const auto day = wholeNumber(text.substr(8, 2), 2);
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const Date date = dateOf(*year, *month, *day);
    return date.ok() ? std::optional(date) : std::nullopt;
}

Result<Date> parseDate(std::string_view typed, Date today) {
    const auto failure = [typed](ErrorCode code) { return fail(code, {std::string(typed)}); };
    const std::string text = plain(typed);
    if (text.empty()) {
        return failure(ErrorCode::DateUnreadable);
    }
    if (text == "t" || text == "today") {
        return today;
    }
    if (const auto step = dayStep(text)) {
        return addDays(today, *step);
    }
    const bool hasLetters = std::any_of(text.begin(), text.end(), isLetter);
    const auto parts = hasLetters ? withMonthName(text, today) : withNumbers(text, today);
    if (!parts || !parts->isWhole()) {
        return failure(ErrorCode::DateUnreadable);
    }
    const Date date = dateOf(*parts->year, *parts->month, *parts->day);
    if (!date.ok() || *parts->year < kFirstYear || *parts->year > kLastYear) {
        return failure(ErrorCode::DateImpossible);
    }
    return date;
}

Date addMonths(Date date, int months) {
    const Date moved = date + std::chrono::months{months};
    return moved.ok() ? moved : Date{moved.year() / moved.month() / std::chrono::last};
}

Date addDays(Date date, int days) {
    return Date{sys_days{date} + std::chrono::days{days}};
}

int daysBetween(Date a, Date b) {
    return static_cast<int>((sys_days{b} - sys_days{a}).count());
}

}  // namespace hearth::calendar
