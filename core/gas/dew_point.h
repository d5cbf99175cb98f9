// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/stoichiometry.h"
#include "core/quantity/quantity.h"
#include "core/quantity/units.h"

#include <optional>

namespace hearth::gas {

/// The standard atmosphere: exactly 1013.25 mbar.
inline constexpr quantity::AbsolutePressure kAtmosphere(1013.25, quantity::kMillibar);

/// The air that a burner takes in.
struct CombustionAir {
    quantity::Temperature temperature;
    double relativeHumidity = 0.0;  // 0 to 1
};

/// Water vapour in air, in m3 per m3 of dry air:
///     w = r ps / (p - r ps)
/// r: relative humidity; ps: saturation pressure of water at the air's temperature; p: barometer.
/// Valid for: 0 <= r <= 1, air of 0 to 60 degrees C (warmer than any that a burner is given), a barometer
/// above the vapour's own pressure. OutOfRange otherwise. Source: Dalton's law (textbook). Rounding: none.
/// Checked: tests/core/gas/dew_point_test.cpp.
[[nodiscard]] Result<double> vapourPerDryAir(const CombustionAir& air,
                                             quantity::AbsolutePressure barometer = kAtmosphere);

/// Temperature below which flue gas begins to condense, from the air ratio lambda:
///     pv = p (W + lambda A w) / (D + (lambda - 1) A + W + lambda A w)
/// and the saturation temperature at pv. A, D, W: air, dry flue gas and water at lambda 1; w: vapour in the
/// air (none said: dry air); p: barometer. Valid for: complete burning, 1 <= lambda <= 100, and
/// a dew point of 0 degrees C or more; OutOfRange otherwise. Source: Dalton's law and stoichiometry
/// (textbook). Rounding: none. Checked: tests/core/gas/dew_point_test.cpp.
[[nodiscard]] Result<quantity::Temperature> dewPoint(const Stoichiometry& burning, double lambda,
                                                     const std::optional<CombustionAir>& air = {},
                                                     quantity::AbsolutePressure barometer = kAtmosphere);

/// The same from the oxygen in dry flue gas, as an analyser shows it.
/// Source: as dewPoint(), with lambdaAtOxygen(). Checked: tests/core/gas/dew_point_test.cpp.
[[nodiscard]] Result<quantity::Temperature> dewPointAtOxygen(
    const Stoichiometry& burning, quantity::Share oxygenDry, const std::optional<CombustionAir>& air = {},
    quantity::AbsolutePressure barometer = kAtmosphere);

/// What a gas would give if all water of its burning condensed, kg of condensate per kWh of heat input.
struct CondensateCeiling {
    double perGrossKilowattHour = 0.0;
    double perNetKilowattHour = 0.0;
};

///     m = 3600 kJ/kWh W Mw / Hm
/// W: mole of water per mole of gas; Mw = 18.015 28 g/mol; Hm: molar calorific value (ISO 6976:2016), kJ/mol.
/// The air's own moisture is not in it.
/// Valid for: a gas that burns; nothing otherwise.
/// Source: stoichiometry (textbook). Rounding: none. Checked: tests/core/gas/dew_point_test.cpp.
[[nodiscard]] std::optional<CondensateCeiling> condensateCeiling(const Composition& composition);

}  // namespace hearth::gas
