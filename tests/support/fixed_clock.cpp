// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/fixed_clock.h"

#include <stdexcept>

namespace hearth::testing {

FixedClock fixedClock(const std::string& isoDate, const std::string& wallTime) {
    Instant midnight{};
    Instant instant{};
    if (!parseInstant(isoDate + "T00:00:00.000Z", midnight)) {
        throw std::invalid_argument("no date: " + isoDate);
    }
    const std::chrono::year_month_day date{std::chrono::floor<std::chrono::days>(midnight)};
    if (!instantAt(date, wallTime, instant)) {
        throw std::invalid_argument("no wall time: " + wallTime);
    }
    return FixedClock(instant);
}

}  // namespace hearth::testing
