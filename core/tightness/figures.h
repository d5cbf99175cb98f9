// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"
#include "core/rulebook/entry.h"
#include "core/tightness/gauge.h"

/// Computed quantities as figures for findings, with as many decimals as they deserve.
/// Source: none needed: rounding only, once. Checked: figures_test.cpp.
namespace hearth::tightness {

/// mbar, with the decimals of the readings that it comes from.
[[nodiscard]] quantity::Figure figureOf(const Reading& reading);
[[nodiscard]] quantity::Figure figureOf(const Change& change);
[[nodiscard]] quantity::Figure uncertaintyOf(const Change& change);
/// mbar as typed in the register, to two decimals.
[[nodiscard]] quantity::Figure figureOf(quantity::GaugePressure pressure);
/// Whole seconds; m3 to a millilitre; l/h to 0.01; K to 0.01.
[[nodiscard]] quantity::Figure figureOf(quantity::Duration duration);
[[nodiscard]] quantity::Figure figureOf(quantity::Volume volume);
[[nodiscard]] quantity::Figure figureOf(quantity::Flow flow);
/// m3 of a volume that may have been typed: as many decimals as it takes, three to six.
[[nodiscard]] quantity::Figure shortFigureOf(quantity::Volume volume);
[[nodiscard]] quantity::Figure figureOf(quantity::TemperatureChange change);
[[nodiscard]] quantity::Figure millimetres(double nominal);
/// Whole minutes as minutes, anything else in whole seconds: 6 min 59 s never reads as 7 min.
[[nodiscard]] quantity::Figure minutesOf(quantity::Duration duration);

/// An entry's own figure, or an empty one that is never shown when it has none.
[[nodiscard]] quantity::Figure limitOf(const rulebook::Entry& entry);

}  // namespace hearth::tightness
