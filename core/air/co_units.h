// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/rulebook/entry.h"

#include <optional>

/// Carbon monoxide in air by volume and by mass.
namespace hearth::air {

/// Mass of a gas in a volume of air.
struct MassConcentration {
    double milligramsPerCubicMetre = 0.0;
};

/// 20 degrees C: the temperature at which HSE EH40 relates the two (1013.25 mbar), and the one at which
/// typed mg/m3 are taken.
inline constexpr quantity::Temperature kExposureTemperature(20.0, {1.0, 273.15});

/// Formula: x = c R T / (M p); c: mg/m3, R = 8.314462618 J/(mol K), M = 28.010 g/mol, p = 1013.25 mbar.
/// Valid for: T above absolute zero (assert).
/// Source: textbook (ideal gas). Checked: co_units_test.cpp (conversion pages; WHO and EH40 pairs).
[[nodiscard]] quantity::Share shareFromMass(MassConcentration mass,
                                            quantity::Temperature at = kExposureTemperature);

/// The same backwards.
/// Source: textbook (ideal gas). Checked: co_units_test.cpp.
[[nodiscard]] MassConcentration massFromShare(quantity::Share share,
                                              quantity::Temperature at = kExposureTemperature);

/// A typed figure of carbon monoxide (ppm, % or mg/m3 at 20 degrees C) as a share; nothing for another unit.
/// Source: see shareFromMass. Checked: co_units_test.cpp.
[[nodiscard]] std::optional<quantity::Share> coShare(const quantity::Figure& figure);

}  // namespace hearth::air
