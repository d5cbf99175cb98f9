// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// When somebody is reminded of a check.
namespace hearth::calendar {

/// Weeks before the deadline, the longest first.
using Cadence = std::vector<int>;
/// Common practice, no source: 8, 4, 2 weeks and 1 before the deadline.
inline constexpr std::array kUsualWeeks{8, 4, 2, 1};

/// "8 4 2 1", with commas or blanks, in any order; nothing for anything but whole weeks of 1 to 52, or none.
/// Source: none needed: the program's own form. Checked: tests/core/calendar/reminders_test.cpp.
[[nodiscard]] std::optional<Cadence> cadenceFrom(std::string_view typed);
/// "8 4 2 1". Source: none needed: the program's own form. Checked: tests/core/calendar/reminders_test.cpp.
[[nodiscard]] std::string cadenceText(const Cadence& cadence);

/// The days on which reminders fall due, in order.
/// Source: common practice, no source; for 1 June 2026: 6 April, 4, 18 and 25 May. Checked:
/// tests/core/calendar/reminders_test.cpp.
[[nodiscard]] std::vector<Date> reminderDates(Date deadline, const Cadence& cadence);

/// Which reminder is due on `today`, counted from 1; nothing when none is, or one was sent since that day.
/// What was missed is not made up for: the newest stage whose day has come stands for those before it. After
/// the deadline the last one goes on until it was sent. `sent` are the days on which reminders of this
/// deadline went, in any order.
/// Source: common practice, no source. Checked: tests/core/calendar/reminders_test.cpp.
[[nodiscard]] std::optional<int> reminderStage(Date deadline, const Cadence& cadence,
                                               std::span<const Date> sent, Date today);

}  // namespace hearth::calendar
