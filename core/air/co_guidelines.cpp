// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_guidelines.h"

#include "core/quantity/units.h"

#include <array>

namespace hearth::air {

using quantity::Duration;
using quantity::kHour;
using quantity::kMinute;

std::span<const CoGuideline> coGuidelines() {
    constexpr auto* kEurope = "WHO Air Quality Guidelines for Europe, 2nd edition";
    constexpr auto* kIndoor = "WHO guidelines for indoor air quality, 2010";
    constexpr auto* kGlobal = "WHO global air quality guidelines, 2021";
    static constexpr std::array kRows{
        CoGuideline{kEurope, 100.0, 90.0, Duration(15.0, kMinute), false},
        CoGuideline{kEurope, 60.0, 50.0, Duration(30.0, kMinute), false},
        CoGuideline{kEurope, 30.0, 25.0, Duration(1.0, kHour), false},
        CoGuideline{kEurope, 10.0, 10.0, Duration(8.0, kHour), false},
        CoGuideline{kIndoor, 100.0, 0.0, Duration(15.0, kMinute), true},
        CoGuideline{kIndoor, 35.0, 0.0, Duration(1.0, kHour), true},
        CoGuideline{kIndoor, 10.0, 0.0, Duration(8.0, kHour), true},
        CoGuideline{kIndoor, 7.0, 0.0, Duration(24.0, kHour), true},
        CoGuideline{kGlobal, 4.0, 0.0, Duration(24.0, kHour), false},
    };
    return kRows;
}

std::span<const CoAlarmRow> coAlarmRows() {
    static constexpr std::array kRows{
        CoAlarmRow{30.0, Duration(120.0, kMinute), std::nullopt},
        CoAlarmRow{50.0, Duration(60.0, kMinute), Duration(90.0, kMinute)},
        CoAlarmRow{100.0, Duration(10.0, kMinute), Duration(40.0, kMinute)},
        CoAlarmRow{300.0, Duration(), Duration(3.0, kMinute)},
    };
    return kRows;
}

}  // namespace hearth::air
