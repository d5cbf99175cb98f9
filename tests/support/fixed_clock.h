// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <string>

namespace hearth::testing {

/// A clock that stands at a wall time in London: fixedClock("2026-11-25", "09:46"). Throws
/// std::invalid_argument, and so fails the test, for a date or time that can't be read.
[[nodiscard]] FixedClock fixedClock(const std::string& isoDate, const std::string& wallTime = "09:00");

}  // namespace hearth::testing
