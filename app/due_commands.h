// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

namespace hearth::app {

/// `due`: the list of checks due. Done when nothing of it is overdue, Refused when something is: for a
/// nightly job.
[[nodiscard]] Exit runDue(const CommandLine& line, const Desk& desk);

/// `calendar`: deadlines and bookings as iCalendar.
[[nodiscard]] Exit runCalendar(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app
