// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"

/// Computed quantities as figures for findings, with as many decimals as they deserve.
namespace hearth::burner {

// --- burner
/// A gas rate: m3/h to 0.001. Source: rounding alone.
[[nodiscard]] quantity::Figure gasFlowFigure(quantity::Flow flow);
/// A water flow: l/min to 0.1. Source: rounding alone.
[[nodiscard]] quantity::Figure waterFlowFigure(quantity::Flow flow);
/// Heat: kW to 0.01. Source: rounding alone.
[[nodiscard]] quantity::Figure heatFigure(quantity::GrossPower power);
[[nodiscard]] quantity::Figure heatFigure(quantity::NetPower power);
[[nodiscard]] quantity::Figure heatFigure(quantity::HeatOutput power);
/// A meter's index, m3 to 0.0001. Source: rounding alone.
[[nodiscard]] quantity::Figure indexFigure(quantity::Volume volume);
/// Whole seconds. Source: rounding alone.
[[nodiscard]] quantity::Figure secondsFigure(quantity::Duration duration);
/// mbar to 0.01. Source: rounding alone.
[[nodiscard]] quantity::Figure millibarFigure(double millibar);
/// A bare number with so many decimals. Source: rounding alone.
[[nodiscard]] quantity::Figure plainFigure(double number, int decimals);
// --- end of burner

}  // namespace hearth::burner
