// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/tightness/settle_leak.h"
#include "core/tightness/trace.h"
#include "core/tightness/within95.h"

#include <optional>
#include <vector>

/// What a trace says of a pipe: how much it leaks, how much of the fall is gas that settles, and what could
/// not be told. Evidence beside the verdict, never a verdict.
namespace hearth::tightness {

struct FitInput {
    quantity::Volume volume;
    quantity::GaugePressure at;                    // the leak is told at this gauge pressure
    std::optional<quantity::PressureChange> step;  // the display's; nothing: as the readings show
    quantity::PressureChange drift;                // of the gauge in a minute, half-width
    quantity::Share volumeOff;                     // part of the volume that it may be off by, half-width
    quantity::Temperature gas = quantity::Temperature::fromBase(288.15);
};

struct TraceFit {
    Within95<quantity::Flow> leak;  // at referenceState(), while the gauge reads FitInput::at
    bool isIdentified = false;      // false: the trace can't tell the leak, and `leak` must not be shown
    quantity::Flow detectable;      // the smallest leak that this trace could have shown
    quantity::PressureChange noise;
    std::optional<quantity::PressureChange> step;
    int points = 0;
    int outliers = 0;
    quantity::Duration begin;  // of the fitted trace
    quantity::Duration end;
    std::vector<FitComponent> components;  // in mbar and seconds from `begin`

    /// The curve at a time; 95 % of what the gauge's mean would show there.
    [[nodiscard]] Within95<quantity::GaugePressure> pressureAt(quantity::Duration time) const;
    /// How far settling alone moves the pressure from `from` on, for so long: positive is a fall.
    [[nodiscard]] Within95<quantity::PressureChange> settlingOver(quantity::Duration from,
                                                                  quantity::Duration length) const;
    /// Best guess of the settling: its size from the trace's beginning on (a fall is positive) and its time.
    [[nodiscard]] Within95<quantity::PressureChange> settlingSize() const;
    [[nodiscard]] quantity::Duration settlingTime() const;
};

/// Lays the curve of settle_leak.h through a trace (one stretch with the valve shut; compensated() before).
///
/// Readings far from all others are set aside: beyond five standard deviations of the fit. A display whose
/// steps the noise does not smooth (noise under 0.45 of a step) gives intervals, not values. The settling
/// time is not guessed but averaged over: from 2 s to 400 s, all powers of ten alike before the readings are
/// seen; the settling's size is taken to be of the order of 3 K, the leak may be anything, below nought too
/// (gas coming in). Noise is taken to be no less than a tenth of a step.
///
/// The interval is of the readings' noise and steps, the settling that can't be told from a leak, the gauge's
/// drift and how far the volume may be off. The drift moves the decay k and is added in squares to either
/// side of its interval (rectangular). The leak is the volume times k, and a volume has no sign:
/// widenedByVolume() says how it widens an interval without ever making a leak of what was none, or none of
/// what was one. detectable is 3.29 standard deviations of the leak: found 95 times in a hundred, with one
/// false alarm in twenty; by the volume's standard deviation more.
///
/// isIdentified by the interval as it is with the volume taken as exact (what is told apart are leak and
/// settling, whatever the volume): where the leak's own decay (the interval's larger end) times the settling
/// time is below 0.3, the settling is less than half of `at` (a fall of more is also that of a leak which
/// empties the pipe), and the interval's half is below 0.5 l/h or three tenths of the leak. Elsewhere: "can't
/// tell". Nothing for fewer than 20 points, or less than 20 seconds, or a volume or pressure not above
/// nought, or one that may be off by all of it.
///
/// Source: Bayes's theorem with a normal approximation for each settling time (textbook; Gelman and others,
/// Bayesian Data Analysis, chapter 4, from memory); detection limit: Currie 1968, from memory.
/// Checked: trace_fit_test.cpp; trace_statistics_test.cpp (random installations by a simulator of its own).
[[nodiscard]] std::optional<TraceFit> fitTrace(const Trace& trace, const FitInput& input);

}  // namespace hearth::tightness
