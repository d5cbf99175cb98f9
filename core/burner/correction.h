// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/quantity/units.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>

/// From the volume that the meter counted to the volume at 15 degrees C and 1013.25 mbar.
namespace hearth::burner {

/// Which correction of the metered volume to standard conditions was used: none (the trade's habit), the
/// fixed factor of the bills, or pressure, temperature and altitude as they were.
enum class CorrectionKind { None, FixedFactor, AsMeasured };

struct Correction {
    CorrectionKind kind = CorrectionKind::None;
    double factor = 1.0;
    /// The entry of the fixed factor, for findings to rest on. Belongs to the rule book.
    const rulebook::Entry* entry = nullptr;
    bool operator==(const Correction&) const = default;
};

/// Gas at the meter.
struct MeterState {
    quantity::GaugePressure pressure;
    quantity::Temperature temperature;
    quantity::Length altitude;
};

/// What the air's pressure is less at a height, by bands of 2.5 m (each counted at its top), nought at sea
/// level and below:
///
///     A = 0.120206 h        h: top of the band, m        A: mbar, rounded to 0.001
///
/// The slope is the one that gives each value read (0.301, 0.601, 0.902, 1.202, 6.010, 12.021 and 24.041 mbar
/// at 2.5, 5, 7.5, 10, 50, 100 and 200 m). Valid up to 200 m, the last value read. Error: OutOfRange.
/// Source: Gas (Calculation of Thermal Energy) Regulations 1996, Schedule (as made).
/// Checked: tests/core/burner/correction_test.cpp
[[nodiscard]] Result<quantity::PressureChange> heightDeduction(quantity::Length altitude);

/// Metered volume to 1013.25 mbar:
///
///     (1013.25 + M - A) / 1013.25        M: mbar gauge at the meter; A: mbar, as above
///
/// Valid for M from 0 to 500 mbar, where compressibility does not show. Error: OutOfRange.
/// Source: Gas (Calculation of Thermal Energy) Regulations 1996, Schedule: M and A read, the formula's image
/// was missing and its form is from memory.
/// Checked: tests/core/burner/correction_test.cpp
[[nodiscard]] Result<double> pressureFactor(quantity::GaugePressure meter,
                                            quantity::PressureChange deduction);

/// Metered volume to 15 degrees C:
///
///     288.15 / (273.15 + t)        t: degrees C of the gas
///
/// Valid for -20 to 50 degrees C. Error: OutOfRange.
/// Source: textbook; 12.2 degrees C giving 1.00981 in the regulations above, from memory.
/// Checked: tests/core/burner/correction_test.cpp
[[nodiscard]] Result<double> temperatureFactor(quantity::Temperature gas);

/// The two factors above together. Error: OutOfRange.
/// Source: as above.
/// Checked: tests/core/burner/correction_test.cpp
[[nodiscard]] Result<Correction> correctionAsMeasured(const MeterState& state);
/// The fixed factor of the rule book (MeteringFactor); nothing for a gas that has none.
/// Source: suppliers' help pages on bills; see the entry.
[[nodiscard]] std::optional<Correction> fixedCorrection(const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
