// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"

/// Computed quantities as figures for findings, with as many decimals as they deserve.
namespace hearth::gas {

/// MJ/m3 to two decimals, as calorific values and Wobbe indices are printed.
/// Source: our own rounding; EN 437 prints two decimals. Checked: tests/core/gas/figures_test.cpp.
[[nodiscard]] quantity::Figure megajoules(double megajoulesPerCubicMetre);

/// Relative density to three decimals, without a unit.
/// Source: our own rounding; EN 437 prints three decimals. Checked: tests/core/gas/figures_test.cpp.
[[nodiscard]] quantity::Figure densityFigure(double relativeDensity);

/// The OutOfRange error of a formula asked beyond its validity: value and limits in `unit`, to two decimals.
/// Source: our own rounding. Checked: tests/core/gas/figures_test.cpp.
[[nodiscard]] tl::unexpected<Error> outside(double value, double least, double most, quantity::UnitCode unit);

}  // namespace hearth::gas
