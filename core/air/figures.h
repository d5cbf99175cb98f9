// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/typed.h"
#include "core/rulebook/entry.h"

/// Computed quantities as figures for findings, with as many decimals as they deserve. The one place where
/// this folder rounds.
/// Source of all of it: common practice, no source (what a reader can use). Checked: figures_test.cpp.
namespace hearth::air {

/// cm2 to 0.1. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::Area area);
/// kW to 0.01. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::NetPower power);
/// kW to 0.01. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::GrossPower power);
/// m3 to 0.01. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::Volume volume);
/// Minutes to 0.1; whole hours from 8 hours on. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::Duration duration);
/// m to 0.01. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::Length length);
/// Degrees C to 0.1. Source: common practice, no source.
[[nodiscard]] quantity::Figure figureOf(quantity::Temperature temperature);
/// ppm to 0.1. Source: common practice, no source.
[[nodiscard]] quantity::Figure ppmFigure(quantity::Share share);
/// A number without a unit, whole ones without decimals, others to `decimals`. Source: common practice, no
/// source.
[[nodiscard]] quantity::Figure plainFigure(double value, int decimals);

/// An entry's own figure, or an empty one that is never shown when it has none. Source: the entry's.
[[nodiscard]] quantity::Figure limitFigure(const rulebook::Entry& entry);

}  // namespace hearth::air
