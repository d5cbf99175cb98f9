// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/leak_rate.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::tightness {

using quantity::AbsolutePressure;
using quantity::Flow;
using quantity::PressureChange;
using quantity::Temperature;

namespace {

constexpr AbsolutePressure kAtmosphere(1013.25, quantity::kMillibar);
constexpr Temperature kTemperature(15.0, quantity::kCelsius);

}  // namespace

PressureChange worthOfOneKelvin(quantity::GaugePressure pressure) {
    const double kelvin = kTemperature.in(quantity::kKelvin);
    return PressureChange(absolute(pressure, kAtmosphere).in(quantity::kPascal), quantity::kPascal) / kelvin;
}

quantity::TemperatureChange coolingFor(PressureChange fall, quantity::GaugePressure pressure) {
    return {fall / worthOfOneKelvin(pressure), quantity::kKelvin};
}

LeakRate leakRate(const LeakInput& input) {
    const double reference = kAtmosphere.in(quantity::kPascal);
    const double perPascal =
        input.volume.in(quantity::kCubicMetre) / reference / input.took.in(quantity::kSecond);  // m3/s

    const double read = std::abs(input.start.in(quantity::kPascal));
    const double slope = input.accuracy && read > 0.0 ? input.accuracy->in(quantity::kPascal) / read : 0.0;
    const double fall = input.fall.fall.in(quantity::kPascal);
    const double ofChange = input.fall.uncertainty.in(quantity::kPascal) / kCoverage;
    const double ofSlope = fall * slope / std::sqrt(3.0);
    const double ofTemperature =
        worthOfOneKelvin(input.start).in(quantity::kPascal)*input.assumed.in(quantity::kKelvin) /
        std::sqrt(3.0);
    const double minutes = input.took.in(quantity::kMinute);
    const double ofDrift = input.drift ? input.drift->in(quantity::kPascal)*minutes / std::sqrt(3.0) : 0.0;
    const double ofVolume =
        input.volumeOff ? fall * input.volumeOff->in(quantity::kOne) / std::sqrt(3.0) : 0.0;
    const double standard =
        std::sqrt(ofChange * ofChange + ofSlope * ofSlope + ofTemperature * ofTemperature +
                  ofDrift * ofDrift + ofVolume * ofVolume);
    return {Flow(perPascal * fall, quantity::kCubicMetrePerSecond),
            Flow(perPascal * kCoverage * standard, quantity::kCubicMetrePerSecond)};
}

}  // namespace hearth::tightness
