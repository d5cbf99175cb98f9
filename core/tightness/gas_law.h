// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>

/// The gas in a closed pipe: what a leak, a change of temperature and the barometer do to a gauge on it.
/// Ideal gas, rigid pipe.
namespace hearth::tightness {

/// What the gas in the pipe stands at, at one moment.
struct GasState {
    quantity::AbsolutePressure pressure;
    quantity::Temperature temperature;
};

/// A barometer of 1013.25 mbar and 15 degrees Celsius: at what leaks are told, and what is taken where
/// nothing was measured. Source: ISO 13443, from memory. Checked: gas_law_test.cpp.
inline constexpr GasState referenceState() {
    return {quantity::AbsolutePressure::fromBase(101325.0), quantity::Temperature::fromBase(288.15)};
}

/// The mean leak between two states of the same closed volume, at referenceState():
///
///     Q = V (T0 / p0) (p1 / T1 - p2 / T2) / t        V m3, p Pa, T K, t s, Q m3/s
///
/// Positive when gas went out. Valid for t > 0; else nothing.
/// Source: the form of 40 CFR 1065.644 (vacuum decay), at a reference state. Not rounded. Checked:
/// gas_law_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> leakBetween(quantity::Volume volume, const GasState& first,
                                                        const GasState& second, quantity::Duration between);

/// What a gauge on a tight pipe reads after the gas went from one temperature to another:
///
///     p2 = (p1 + pb) T2 / T1 - pb
///
/// Source: UFGS 15195N, notes (there with 101.32 kPa and 273 K). Not rounded. Checked: gas_law_test.cpp.
[[nodiscard]] quantity::GaugePressure pressureWhenTight(
    quantity::GaugePressure before, quantity::Temperature from, quantity::Temperature to,
    quantity::AbsolutePressure barometer = referenceState().pressure);

/// A laminar leak is proportional to the gauge pressure, so that the pressure falls as p = p0 exp(-t k). The
/// k of a leak of `rate` (at referenceState()) while the gauge reads `at`:
///
///     k = Q p0 T / (V p_at T0)        1/s
///
/// Valid for a volume and a pressure above nought; else nothing. Source: textbook (Hagen-Poiseuille: flow
/// proportional to the difference of pressure; ideal gas). Not rounded. Checked: gas_law_test.cpp.
[[nodiscard]] std::optional<double> decayOf(quantity::Flow rate, quantity::GaugePressure at,
                                            quantity::Volume volume,
                                            quantity::Temperature gas = referenceState().temperature);

/// The other way round: the leak at `at` of a pipe whose pressure decays by k a second.
/// Source: as decayOf(). Not rounded. Checked: gas_law_test.cpp.
[[nodiscard]] quantity::Flow leakOf(double decay, quantity::GaugePressure at, quantity::Volume volume,
                                    quantity::Temperature gas = referenceState().temperature);

/// How much larger a laminar leak was at the start than its mean over a fall from p0 to p1:
///
///     p0 ln(p0 / p1) / (p0 - p1)
///
/// Valid for p0 > p1 > 0; else nothing. Source: textbook (exponential decay). Not rounded. Checked:
/// gas_law_test.cpp.
[[nodiscard]] std::optional<double> startOverMean(quantity::GaugePressure start, quantity::GaugePressure end);

}  // namespace hearth::tightness
