// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/gas_law.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::tightness {

using quantity::Duration;
using quantity::Flow;
using quantity::GaugePressure;
using quantity::Temperature;
using quantity::Volume;

std::optional<Flow> leakBetween(Volume volume, const GasState& first, const GasState& second,
                                Duration between) {
    if (between <= Duration{}) {
        return std::nullopt;
    }
    const auto filled = [](const GasState& state) {
        return state.pressure.in(quantity::kPascal) / state.temperature.in(quantity::kKelvin);
    };
    const double lost = (filled(first) - filled(second)) / filled(referenceState());
    return Flow(volume.in(quantity::kCubicMetre)*lost / between.in(quantity::kSecond),
                quantity::kCubicMetrePerSecond);
}

GaugePressure pressureWhenTight(GaugePressure before, Temperature from, Temperature to,
                                quantity::AbsolutePressure barometer) {
    const double ratio = to.in(quantity::kKelvin) / from.in(quantity::kKelvin);
    const double after = absolute(before, barometer).in(quantity::kPascal)*ratio;
    return {after - barometer.in(quantity::kPascal), quantity::kPascal};
}

std::optional<double> decayOf(Flow rate, GaugePressure at, Volume volume, Temperature gas) {
    if (at <= GaugePressure{} || volume <= Volume{}) {
        return std::nullopt;
    }
    const double warmer = gas.in(quantity::kKelvin) / referenceState().temperature.in(quantity::kKelvin);
    return rate.in(quantity::kCubicMetrePerSecond) /
           volume.in(quantity::kCubicMetre)*referenceState().pressure.in(quantity::kPascal) /
           at.in(quantity::kPascal)*warmer;
}

Flow leakOf(double decay, GaugePressure at, Volume volume, Temperature gas) {
    const double cooler = referenceState().temperature.in(quantity::kKelvin) / gas.in(quantity::kKelvin);
    return {decay * volume.in(quantity::kCubicMetre)*at.in(quantity::kPascal) /
                referenceState().pressure.in(quantity::kPascal)*cooler,
            quantity::kCubicMetrePerSecond};
}

std::optional<double> startOverMean(GaugePressure start, GaugePressure end) {
    if (end <= GaugePressure{} || start <= end) {
        return std::nullopt;
    }
    const double before = start.in(quantity::kPascal);
    const double after = end.in(quantity::kPascal);
    return before * std::log(before / after) / (before - after);
}

}  // namespace hearth::tightness
