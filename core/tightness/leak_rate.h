// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/tightness/gauge.h"

#include <optional>

/// What a fall is worth: as a leak, and as cooling. Information only; nothing here passes or fails anything.
namespace hearth::tightness {

struct LeakInput {
    quantity::Volume volume;
    Change fall;
    quantity::GaugePressure start;
    quantity::Duration took;
    std::optional<quantity::PressureChange> accuracy;  // of the gauge, half-width
    quantity::TemperatureChange assumed;               // that may have happened in the time, either way
    std::optional<quantity::Share> volumeOff = std::nullopt;       // part of the volume, half-width
    std::optional<quantity::PressureChange> drift = std::nullopt;  // of the gauge in a minute, half-width
};

struct LeakRate {
    quantity::Flow rate;
    quantity::Flow uncertainty;  // expanded, k = 2
};

/// Isothermal, ideal gas, at 1013.25 mbar: Q = V dp / 1013.25 mbar / t; with V in m3, dp in mbar and t in
/// minutes Q = 60/1013.25 V dp/t m3/h, the 0.059 of the trade's formula.
///
/// Uncertainty: that of the change (gauge.h), the gauge's accuracy as an error of its slope (accuracy over
/// the pressure read, times the fall), the assumed temperature change times the pressure that a kelvin is
/// worth, the gauge's drift times the minutes, and how far the volume may be off (a part, times the fall);
/// the last four rectangular, added in squares, k = 2. What is not given counts as nought: no drift, and the
/// volume taken as exact.
///
/// Source: textbook (Boyle's law); uncertainty by JCGM 100:2008 (GUM) 4.3.7 and 5.1.2, from memory. Not
/// rounded. Checked: leak_rate_test.cpp.
[[nodiscard]] LeakRate leakRate(const LeakInput& input);

/// What one kelvin is worth in a closed pipe: p_abs / T, here with a barometer of 1013.25 mbar and 15 degrees
/// Celsius: 3.59 mbar at 20 mbar.
/// Source: textbook; the general form in 40 CFR 1065.644. Not rounded. Checked: leak_rate_test.cpp.
[[nodiscard]] quantity::PressureChange worthOfOneKelvin(quantity::GaugePressure pressure);

/// The cooling that would by itself make such a fall: the fall over worthOfOneKelvin().
/// Source: textbook. Not rounded. Checked: leak_rate_test.cpp.
[[nodiscard]] quantity::TemperatureChange coolingFor(quantity::PressureChange fall,
                                                     quantity::GaugePressure pressure);

}  // namespace hearth::tightness
