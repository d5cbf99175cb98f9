// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_room.h"

#include <algorithm>
#include <cmath>

namespace hearth::ui::gauge {

namespace {

constexpr double kSpillsFrom = 30.0;               // seconds
constexpr double kAirChange = 180.0;               // seconds
constexpr double kSettlesAt = 60.0;                // ppm
constexpr double kGoldenStep = 0.618033988749895;  // even spread by a multiplicative sequence

}  // namespace

double practiceLevel(PracticeRoom room, double seconds) {
    if (room == PracticeRoom::Clear || seconds < kSpillsFrom) {
        return 0.0;
    }
    return kSettlesAt * (1.0 - std::exp(-(seconds - kSpillsFrom) / kAirChange));
}

int practicePpm(PracticeRoom room, double seconds, std::uint32_t count) {
    const double noise = std::fmod(count * kGoldenStep, 1.0) - 0.5;
    return std::max(0, static_cast<int>(std::lround(practiceLevel(room, seconds) + noise)));
}

}  // namespace hearth::ui::gauge
