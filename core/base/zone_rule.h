// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string_view>

namespace hearth {

/// One yearly change of a zone's clocks, as POSIX TZ writes it: "M3.5.0/1" is the last Sunday of March at
/// 1:00.
struct ZoneChange {
    enum class Form { MonthWeekDay, JulianWithoutLeapDay, DayOfYear };

    Form form = Form::MonthWeekDay;
    int month = 0;  ///< 1 to 12 (MonthWeekDay)
    int week = 0;   ///< 1 to 5, 5 is the last (MonthWeekDay)
    int day = 0;    ///< weekday 0 = Sunday, or day of the year: 1 to 365 without 29 February, or 0 to 365
    std::chrono::seconds time{7200};  ///< wall time of the change
};

/// A zone's rule for all years: POSIX.1-2017 section 8.3 "TZ", with the wider hours of RFC 9636
/// section 3.3.1.
struct ZoneRule {
    std::chrono::seconds standardOffset{0};  ///< east of Greenwich is positive
    std::chrono::seconds summerOffset{0};
    std::optional<ZoneChange> toSummer;  ///< none: standard time all the year
    std::optional<ZoneChange> toStandard;

    /// Offset from UTC at an instant (seconds since 1970, UTC).
    [[nodiscard]] std::chrono::seconds offsetAt(std::chrono::sys_seconds instant) const;
};

/// "GMT0BST,M3.5.0/1,M10.5.0"; nothing when it can't be read.
[[nodiscard]] std::optional<ZoneRule> parseZoneRule(std::string_view text);

}  // namespace hearth
