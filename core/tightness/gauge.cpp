// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/gauge.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>

namespace hearth::tightness {

using quantity::PressureChange;

namespace {

/// Smallest readable division of a water gauge: trainees' revision cards on IGEM/UP/1B.
constexpr PressureChange kWaterDivision(0.5, quantity::kMillibar);
/// Differences below this are binary fractions, not readings.
constexpr PressureChange kForgiven(1e-9, quantity::kMillibar);

PressureChange readableStep(const Gauge& gauge, PressureChange typedDigit) {
    if (gauge.kind == GaugeKind::Water) {
        return gauge.resolution.value_or(kWaterDivision) / 2.0;
    }
    return std::max(gauge.resolution.value_or(typedDigit), typedDigit);
}

PressureChange repeatability(const Gauge& gauge, PressureChange step) {
    if (gauge.repeatability) {
        return *gauge.repeatability;
    }
    return gauge.kind == GaugeKind::Water ? PressureChange{} : step;
}

}  // namespace

Change changeBetween(const Gauge& gauge, const Reading& start, const Reading& end) {
    const auto digit = std::min(start.digit, end.digit);
    const auto step = readableStep(gauge, digit);
    const double half = (step / 2.0).base();
    const double repeat = repeatability(gauge, step).base();
    const double standard = std::sqrt(2.0 * (half * half + repeat * repeat) / 3.0);
    return {start.pressure - end.pressure, PressureChange::fromBase(kCoverage * standard), digit};
}

Standing standing(const Change& change, PressureChange limit) {
    const auto distance = change.fall - limit;
    const auto margin = change.uncertainty + kForgiven;
    if (distance > margin) {
        return Standing::Beyond;
    }
    return -distance > margin ? Standing::Within : Standing::AtLimit;
}

const rulebook::Entry* movementThreshold(const Gauge& gauge, const rulebook::RulesInForce& rules) {
    return rules.known(gauge.kind == GaugeKind::Water ? rulebook::Rule::NoMovementWater
                                                      : rulebook::Rule::NoMovementElectronic);
}

}  // namespace hearth::tightness
