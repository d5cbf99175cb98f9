// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"

#include "core/base/zone.h"

#include <algorithm>
#include <ctime>
#include <optional>
#include <string_view>

namespace hearth {
namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;
using std::chrono::sys_days;
using std::chrono::sys_seconds;
using std::chrono::year_month_day;

std::string padded(long long value, std::size_t width) {
    std::string digits = std::to_string(value);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

/// Whether `text` has the shape of `pattern`, where 9 stands for any digit and all else for itself.
bool hasShape(std::string_view text, std::string_view pattern) {
    return std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(),
                      [](char c, char p) { return p == '9' ? (c >= '0' && c <= '9') : c == p; });
}

int digitsAt(std::string_view text, std::size_t at, std::size_t count) {
    int value = 0;
    for (const char c : text.substr(at, count)) {
        value = value * 10 + (c - '0');
    }
    return value;
}

std::optional<seconds> timeOfDay(int hour, int minute, int second) {
    if (hour > 23 || minute > 59 || second > 59) {
        return std::nullopt;
    }
    return hours{hour} + minutes{minute} + seconds{second};
}

/// What the zone's clocks show, as if it were UTC. A zone that nobody knows shows UTC.
Instant wallOf(Instant instant, const std::string& zone) {
    const Zone* found = zoneNamed(zone);
    return found == nullptr ? instant : instant + found->offsetAt(std::chrono::floor<seconds>(instant));
}

year_month_day dayIn(Instant instant, const std::string& zone) {
    return year_month_day{std::chrono::floor<days>(wallOf(instant, zone))};
}

}  // namespace

Instant SystemClock::now() const {
    return std::chrono::floor<milliseconds>(std::chrono::system_clock::now());
}

year_month_day SystemClock::today(const std::string& zone) const {
    return dayIn(now(), zone);
}

milliseconds SystemClock::elapsed() const {
    timespec time{};
    clock_gettime(CLOCK_BOOTTIME, &time);
    return std::chrono::floor<milliseconds>(seconds{time.tv_sec} + std::chrono::nanoseconds{time.tv_nsec});
}

year_month_day FixedClock::today(const std::string& zone) const {
    return dayIn(now(), zone);
}

std::string instantText(Instant instant) {
    const auto day = std::chrono::floor<days>(instant);
    const year_month_day date{day};
    const std::chrono::hh_mm_ss<milliseconds> time{instant - day};
    return padded(static_cast<int>(date.year()), 4) + '-' + padded(static_cast<unsigned>(date.month()), 2) +
           '-' + padded(static_cast<unsigned>(date.day()), 2) + 'T' + padded(time.hours().count(), 2) + ':' +
           padded(time.minutes().count(), 2) + ':' + padded(time.seconds().count(), 2) + '.' +
           padded(time.subseconds().count(), 3) + 'Z';
}

bool parseInstant(const std::string& text, Instant& out) {
    if (!hasShape(text, "9999-99-99T99:99:99.999Z")) {
        return false;
    }
    const year_month_day date{std::chrono::year{digitsAt(text, 0, 4)},
                              std::chrono::month{static_cast<unsigned>(digitsAt(text, 5, 2))},
                              std::chrono::day{static_cast<unsigned>(digitsAt(text, 8, 2))}};
    const auto time = timeOfDay(digitsAt(text, 11, 2), digitsAt(text, 14, 2), digitsAt(text, 17, 2));
    if (!date.ok() || !time) {
        return false;
    }
    out = sys_days{date} + *time + milliseconds{digitsAt(text, 20, 3)};
    return true;
}

std::string wallTimeText(Instant instant, const std::string& zone) {
    const Instant wall = wallOf(instant, zone);
    const auto time = wall - std::chrono::floor<days>(wall);
    const auto hour = std::chrono::floor<hours>(time);
    const std::string text =
        padded(hour.count(), 2) + ':' + padded(std::chrono::floor<minutes>(time - hour).count(), 2);
    return zoneNamed(zone) == nullptr ? text + 'Z' : text;
}

bool instantAt(year_month_day date, const std::string& hhmm, Instant& out, const std::string& zone) {
    const Zone* found = zoneNamed(zone);
    const bool hasSeconds = hasShape(hhmm, "99:99:99");
    if (found == nullptr || !date.ok() || !(hasSeconds || hasShape(hhmm, "99:99"))) {
        return false;
    }
    const auto time =
        timeOfDay(digitsAt(hhmm, 0, 2), digitsAt(hhmm, 3, 2), hasSeconds ? digitsAt(hhmm, 6, 2) : 0);
    if (!time) {
        return false;
    }
    const std::chrono::local_seconds wall{std::chrono::local_days{date} + *time};
    const auto instant = found->instantAt(wall);
    if (instant) {
        out = *instant;
    }
    return instant.has_value();
}

}  // namespace hearth
