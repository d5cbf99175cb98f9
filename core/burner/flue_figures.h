// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/analyser.h"
#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"

#include <string_view>

/// What the findings on flue gas show, rounded once, and how its formulas say that a value lies outside what
/// they hold for.
namespace hearth::burner {

/// A CO/CO2 ratio, four decimals. Source: BS 7967, from memory (facts: combustion 2.1).
/// Checked: tests/core/burner/flue_figures_test.cpp.
[[nodiscard]] quantity::Figure ratioFigure(double ratio);
/// Its uncertainty, one decimal more, so that a small one does not read as nought. Source: none, our own.
/// Checked: the same.
[[nodiscard]] quantity::Figure ratioUncertaintyFigure(double uncertainty);
/// ppm and per cent with that many decimals. Source: none, our own. Checked: the same.
[[nodiscard]] quantity::Figure ppmFigure(quantity::Share share, int decimals = 0);
[[nodiscard]] quantity::Figure percentFigure(quantity::Share share, int decimals = 1);
/// A reading with the decimals that it was read with, and those at least: one below a limit never reads as if
/// it were on it. Source: none, our own. Checked: the same.
[[nodiscard]] quantity::Figure ppmRead(const ShareReading& reading, int least = 0);
[[nodiscard]] quantity::Figure percentRead(const ShareReading& reading, int least = 1);
/// Whole mg/kWh. Source: none, our own. Checked: the same.
[[nodiscard]] quantity::Figure emissionFigure(double milligramsPerKilowattHour);
/// Whole degrees C. Source: none, our own. Checked: the same.
[[nodiscard]] quantity::Figure degreesFigure(quantity::Temperature temperature);

/// OutOfRange with the value and the bounds, in the unit that the formula's block names. Source: none, our
/// own. Checked: the same.
[[nodiscard]] tl::unexpected<Error> outOfRange(double value, std::string_view least, std::string_view most);

}  // namespace hearth::burner
