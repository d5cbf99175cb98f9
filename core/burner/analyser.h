// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/uncertain.h"
#include "core/quantity/units.h"
#include "core/rulebook/given.h"

#include <optional>

/// A flue-gas analyser and what is read off it.
namespace hearth::burner {

/// A reading with the worth of its last typed digit.
struct ShareReading {
    quantity::Share value;
    quantity::Share digit;
};

struct Analyser {
    /// One step of each display.
    quantity::Share carbonMonoxideStep{1.0, quantity::kPpm};
    quantity::Share carbonDioxideStep{0.1, quantity::kPercent};
    quantity::Share oxygenStep{0.1, quantity::kPercent};
    /// Half-widths from its data sheet. CO's absent: the standard's (see carbonMonoxideAccuracy); the others'
    /// absent: not counted.
    std::optional<quantity::Share> carbonMonoxideAccuracy;
    std::optional<quantity::Share> carbonDioxideAccuracy;
    std::optional<quantity::Share> oxygenAccuracy;
    /// Whether it works CO2 out from O2 (most do) instead of measuring it.
    std::optional<bool> computesCarbonDioxide;
    /// Whether it was set to fresh air outdoors before.
    std::optional<bool> zeroedOutdoors;
};

/// What was read at one rate of the burner, as far as it has been entered.
struct FlueReadings {
    rulebook::Given<ShareReading> carbonMonoxide;
    rulebook::Given<ShareReading> carbonDioxide;
    rulebook::Given<ShareReading> oxygen;
};

/// How far a CO reading may be wrong (half-width): the larger of 3 ppm and 5 % of the reading.
/// The source has 3 ppm up to 20 ppm and 5 % above; taking the larger keeps the uncertainty from shrinking as
/// the reading grows, which would let more CO be judged better, and is never narrower than the source.
/// Valid for: any reading. Source: BS EN 50379-3 / BS 7927, as quoted by an exam revision page (medium;
/// facts: combustion 2.3). Rounding: none. Checked: tests/core/burner/ratio_test.cpp.
[[nodiscard]] quantity::Share carbonMonoxideAccuracy(quantity::Share reading);

/// A reading with its standard uncertainty: the step (the display's, or the last typed digit if that is
/// coarser) and the accuracy, both rectangular. CO in ppm, CO2 and O2 in per cent.
/// Source: GUM 4.3.7, from memory (core/quantity/uncertain.h). Checked: tests/core/burner/ratio_test.cpp.
[[nodiscard]] quantity::Uncertain carbonMonoxideRead(const ShareReading& reading, const Analyser& analyser);
[[nodiscard]] quantity::Uncertain carbonDioxideRead(const ShareReading& reading, const Analyser& analyser);
[[nodiscard]] quantity::Uncertain oxygenRead(const ShareReading& reading, const Analyser& analyser);

}  // namespace hearth::burner
