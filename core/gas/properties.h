// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gas/composition.h"
#include "core/quantity/quantity.h"

#include <optional>

namespace hearth::gas {

/// The Wobbe index, calorific value by volume over the root of the relative density: of the same dimension as
/// a calorific value and yet never one.
using GrossWobbe = quantity::Amount<struct GrossWobbeTag, quantity::HeatValueDimension>;
using NetWobbe = quantity::Amount<struct NetWobbeTag, quantity::HeatValueDimension>;

/// Edition of ISO 6976 whose component data are used.
enum class Iso6976 { Y1995, Y2016 };

/// A gas at 15 degrees C and 1013.25 mbar, dry, burnt at 15 degrees C (the trade's "15/15").
struct Properties {
    double molarMass = 0.0;    // kg/kmol
    double compression = 0.0;  // Z
    double grossMolar = 0.0;   // kJ/mol
    double netMolar = 0.0;     // kJ/mol
    quantity::GrossHeatValue gross;
    quantity::NetHeatValue net;
    double grossPerKilogram = 0.0;  // MJ/kg
    double netPerKilogram = 0.0;    // MJ/kg
    double density = 0.0;           // kg/m3
    double relativeDensity = 0.0;
    GrossWobbe grossWobbe;
    NetWobbe netWobbe;
};

/// Molar mass, compression factor, calorific values, relative density and Wobbe indices from the composition:
///     M = sum x M      Z = 1 - (sum x s)^2      Hm = sum x Hm
///     H = Hm p0 / (R T Z)      d = (M / M air) (Z air / Z)      W = H / sqrt(d)
/// x: mole fraction; s: summation factor (sqrt(b) in 1995); Hm: molar calorific value, kJ/mol; p0 = 101.325
/// kPa; T = 288.15 K; R: molar gas constant. Net molar value: tabulated in 1995; in 2016 the gross one
/// less 44.431 kJ/mol of water formed. Valid for: mixtures that are gas at these conditions, as the
/// standard's fuel gases are; Z > 0.9 there. Source: ISO 6976:1995 and :2016, formulas and component data
/// read in the component tables and their guide of an open-source process-simulation library; of 2016 the
/// summation factors of hydrogen, carbon monoxide and oxygen from memory. The tabulated Z of single gases is
/// not used: of propane, butanes and pentanes it does not agree with s. Rounding: none. Checked:
/// tests/core/gas/properties_test.cpp.
[[nodiscard]] Properties properties(const Composition& composition, Iso6976 edition = Iso6976::Y2016);

/// Gross over net calorific value; nothing for what does not burn.
/// Source: definition. Checked: tests/core/gas/properties_test.cpp.
[[nodiscard]] std::optional<double> grossOverNet(const Composition& composition,
                                                 Iso6976 edition = Iso6976::Y2016);

/// The Wobbe index from a calorific value and a relative density: W = H / sqrt(d).
/// Valid for: d > 0; nothing otherwise.
/// Source: ISO 6976, definition. Rounding: none. Checked: tests/core/gas/properties_test.cpp.
[[nodiscard]] std::optional<GrossWobbe> wobbeOf(quantity::GrossHeatValue gross, double relativeDensity);
/// The same, net. Source: ISO 6976, definition. Checked: tests/core/gas/properties_test.cpp.
[[nodiscard]] std::optional<NetWobbe> wobbeOf(quantity::NetHeatValue net, double relativeDensity);

}  // namespace hearth::gas
