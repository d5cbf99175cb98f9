// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/larger_method.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace hearth::tightness {

using quantity::Duration;
using quantity::Flow;
using quantity::PressureChange;
using quantity::Volume;

namespace {

/// k GRM IV F1 in minutes, the form that all area types share.
std::optional<Duration> timeBy(double share, PressureChange readable, Volume volume, double factor) {
    const double movement = readable.in(quantity::kMillibar);
    const double space = volume.in(quantity::kCubicMetre);
    const bool valid = share > 0.0 && movement > 0.0 && space > 0.0 && factor > 0.0;
    return valid ? std::optional(Duration(share * movement * space * factor, quantity::kMinute))
                 : std::nullopt;
}

}  // namespace

std::optional<Duration> timeForTypeA(PressureChange readable, Volume volume, double factor) {
    return timeBy(1.0, readable, volume, factor);
}

std::optional<Duration> timeForTypeB(PressureChange readable, Volume volume, double factor, double roomFactor,
                                     Volume room) {
    const double space = room.in(quantity::kCubicMetre);
    return space > 0.0 ? timeBy(roomFactor / space, readable, volume, factor) : std::nullopt;
}

std::optional<Duration> timeForTypeC(PressureChange readable, Volume volume, double factor,
                                     double largeRoomFactor) {
    return timeBy(largeRoomFactor, readable, volume, factor);
}

Duration wholeMinutes(Duration time, Duration least) {
    constexpr double kForgivenPart = 1e-9;
    const Duration whole(std::ceil(time.in(quantity::kMinute)-kForgivenPart), quantity::kMinute);
    return std::max(whole, least);
}

std::optional<Flow> leakByFactor(double leakFactor, PressureChange fall, Volume volume, Duration time) {
    const double space = volume.in(quantity::kCubicMetre);
    const double minutes = time.in(quantity::kMinute);
    const bool valid = leakFactor > 0.0 && space > 0.0 && minutes > 0.0;
    return valid ? std::optional(Flow(leakFactor * fall.in(quantity::kMillibar)*space / minutes,
                                      quantity::kCubicMetrePerHour))
                 : std::nullopt;
}

std::optional<Flow> smallestLeak(double leakFactor, PressureChange readable, Volume volume, Duration time) {
    return readable > PressureChange{} ? leakByFactor(leakFactor, readable, volume, time) : std::nullopt;
}

}  // namespace hearth::tightness
