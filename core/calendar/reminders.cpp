// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/reminders.h"

#include <algorithm>
#include <functional>

namespace hearth::calendar {
namespace {

constexpr int kMostWeeks = 52;
constexpr int kDaysOfWeek = 7;

bool isBetweenWeeks(char c) {
    return c == ' ' || c == ',' || c == '/' || c == ';';
}

}  // namespace

std::optional<Cadence> cadenceFrom(std::string_view typed) {
    Cadence cadence;
    int weeks = 0;
    bool inNumber = false;
    const auto take = [&] {
        const bool good = !inNumber || (weeks >= 1 && weeks <= kMostWeeks);
        if (inNumber) {
            cadence.push_back(weeks);
        }
        weeks = 0;
        inNumber = false;
        return good;
    };
    for (const char c : typed) {
        if (c >= '0' && c <= '9' && weeks <= kMostWeeks) {
            weeks = weeks * 10 + (c - '0');
            inNumber = true;
        } else if (!isBetweenWeeks(c) || !take()) {
            return std::nullopt;
        }
    }
    if (!take() || cadence.empty()) {
        return std::nullopt;
    }
    std::sort(cadence.begin(), cadence.end(), std::greater<>());
    cadence.erase(std::unique(cadence.begin(), cadence.end()), cadence.end());
    return cadence;
}

std::string cadenceText(const Cadence& cadence) {
    std::string text;
    for (const int weeks : cadence) {
        text.append(text.empty() ? "" : " ").append(std::to_string(weeks));
    }
    return text;
}

std::vector<Date> reminderDates(Date deadline, const Cadence& cadence) {
    std::vector<Date> dates;
    for (const int weeks : cadence) {
        dates.push_back(addDays(deadline, -weeks * kDaysOfWeek));
    }
    std::sort(dates.begin(), dates.end());
    return dates;
}

std::optional<int> reminderStage(Date deadline, const Cadence& cadence, std::span<const Date> sent,
                                 Date today) {
    const auto dates = reminderDates(deadline, cadence);
    const auto come = std::upper_bound(dates.begin(), dates.end(), today);
    if (come == dates.begin()) {
        return std::nullopt;
    }
    const Date day = *(come - 1);
    const bool wasSent = std::any_of(sent.begin(), sent.end(), [&](Date on) { return on >= day; });
    return wasSent ? std::nullopt : std::optional(static_cast<int>(come - dates.begin()));
}

}  // namespace hearth::calendar
