// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/gas/composition.h"
#include "core/gas/properties.h"
#include "core/gas/stated.h"

#include <optional>
#include <span>

/// What an analysis or a bill says of a gas, with what its last digits are worth in the figures that follow.
namespace hearth::gas {

/// A component as an analysis prints it: its mole fraction (0 to 1) and what the last digit is worth.
struct AnalysedPart {
    Component component;
    double fraction = 0.0;
    double digit = 0.0;
};

/// A gas by its analysis.
struct Analysis {
    Composition composition;
    Stated<quantity::GrossHeatValue> gross;
    Stated<double> relativeDensity;
    Stated<GrossWobbe> grossWobbe;
};

/// Properties from an analysis, and the digit of each that all the parts' digits together are worth:
///     digit(f) = sqrt(sum (f(x with part i one digit more, all divided by 1 + digit) - f(x))^2)
/// f: gross calorific value, relative density, gross Wobbe index (ISO 6976:2016). Both a digit and the digit
/// that it leads to stand for anything in +- half of it, all equally likely, so that they go through
/// alike; the parts are taken as independent.
/// Errors: those of compositionOf(), as typed.
/// Source: JCGM 100:2008 (GUM) 5.1.2 and 5.1.3 (effect of each input found by changing it), from memory.
/// Rounding: none. Checked: tests/core/gas/analysis_test.cpp.
[[nodiscard]] Result<Analysis> analysed(std::span<const AnalysedPart> parts);

/// The Wobbe index from a bill's calorific value and relative density, and its digit:
///     W = H / sqrt(d)      digit(W) = W sqrt((digit(H) / H)^2 + (digit(d) / (2 d))^2)
/// Valid for: H > 0 and d > 0; nothing otherwise.
/// Source: ISO 6976, definition; JCGM 100:2008 (GUM) 5.1.6, from memory. Rounding: none. Checked:
/// tests/core/gas/analysis_test.cpp.
[[nodiscard]] std::optional<Stated<GrossWobbe>> wobbeStated(const Stated<quantity::GrossHeatValue>& gross,
                                                            const Stated<double>& relativeDensity);

}  // namespace hearth::gas
