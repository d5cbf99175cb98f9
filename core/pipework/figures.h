// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"

/// Computed quantities as figures for findings, rounded once. Source of the numbers of decimals: none, what a
/// reader can use.
namespace hearth::pipework {

/// mbar to 0.001. Source: own rounding. Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure figureOf(quantity::PressureChange drop);
/// m3/h to 0.001. Source: own rounding. Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure figureOf(quantity::Flow flow);
/// m3 to a millilitre. Source: own rounding. Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure figureOf(quantity::Volume volume);
/// Whole seconds, upward: a time that is needed is never shown shorter. Source: own rounding.
/// Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure figureOf(quantity::Duration needed);
/// Per cent to 0.1. Source: own rounding. Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure figureOf(quantity::Share share);
/// A bare number to 0.01. Source: own rounding. Checked: figures_test.cpp.
[[nodiscard]] quantity::Figure bareFigure(double value);

}  // namespace hearth::pipework
