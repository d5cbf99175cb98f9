// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/composition.h"
#include "core/quantity/quantity.h"

#include <optional>

namespace hearth::gas {

/// Oxygen in dry air by volume; the rest, argon with it, counts as nitrogen. Analysers take 20.9 or 21:
/// CO2max of methane is then 11.67 or 11.73 % instead of 11.70.
inline constexpr double kOxygenInAir = 0.2095;

/// Complete burning with just enough dry air (lambda 1), in m3 per m3 of gas, all at the same temperature and
/// pressure, as ideal gases. The gas's own oxygen is taken off the air; its CO2 and N2 pass into the flue
/// gas.
struct Stoichiometry {
    double oxygen = 0.0;  // that the air has to bring
    double air = 0.0;     // dry
    double dryFlue = 0.0;
    double wetFlue = 0.0;
    double carbonDioxide = 0.0;
    double water = 0.0;
    quantity::Share co2Max;  // of the dry flue gas

    /// Oxygen in the air that it was worked out with.
    [[nodiscard]] double oxygenInAir() const { return oxygen / air; }
    bool operator==(const Stoichiometry&) const = default;
};

/// For each component CxHyOz, by its mole fraction:
///     oxygen = x + y/4 - z/2      air = oxygen / a
///     CO2 = x                     water = y/2
///     dry = CO2 + fuel N2 + (1 - a) air          wet = dry + water          CO2max = CO2 / dry
/// a: oxygen in air.
/// Valid for: a gas that needs air, and 0 < a <= 1; nothing otherwise.
/// Source: textbook stoichiometry (O2 = x + y/4, CO2 = x, H2O = y/2, dry products x + 3.773 (x + y/4)), read
/// on a stoichiometry page. Rounding: none. Checked: tests/core/gas/stoichiometry_test.cpp.
[[nodiscard]] std::optional<Stoichiometry> stoichiometry(const Composition& composition,
                                                         double oxygenInAir = kOxygenInAir);

/// Dry flue gas per air at lambda 1, the factor in lambda from oxygen: 0.895 for methane, 0.916 for propane.
/// Source: definition. Checked: tests/core/gas/stoichiometry_test.cpp.
[[nodiscard]] double dryPerAir(const Stoichiometry& burning);

/// Air ratio from the oxygen in dry flue gas, exact for complete burning:
///     lambda = 1 + (V dry / V air) O2 / (a - O2)
/// Valid for: 0 <= O2 < a; OutOfRange in per cent otherwise.
/// Source: balance of oxygen (textbook): the dry flue gas is V dry + (lambda - 1) V air, of which a (lambda -
/// 1) V air is oxygen. Rounding: none. Checked: tests/core/gas/stoichiometry_test.cpp.
[[nodiscard]] Result<double> lambdaAtOxygen(const Stoichiometry& burning, quantity::Share oxygenDry);

}  // namespace hearth::gas
