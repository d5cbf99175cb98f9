// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/uncertain.h"
#include "core/rulebook/sentence.h"

#include <optional>
#include <vector>

/// Readings of carbon monoxide in a room over time, and what can be computed from them.
namespace hearth::air {

enum class CoPlace { Outside, Room, AtAppliance, NextRoom };

struct CoReading {
    /// Since the first reading of the visit's series.
    quantity::Duration at;
    quantity::Share level;
    CoPlace place = CoPlace::Room;
};

/// Readings in the order in which they were taken. `digit` and `accuracy` (half-width; nought: not counted)
/// are the instrument's.
struct CoSeries {
    std::vector<CoReading> readings;
    quantity::Share digit;
    quantity::Share accuracy;
    /// A reading that was typed but can't be read: the others still warn, but nothing passes.
    bool someUnreadable = false;
    /// A reading, its time or its place that was not said: as above.
    bool someMissing = false;
    /// Taken from outside the room, with a probe or through a logger.
    bool readAtDistance = false;
};

/// Why nothing may pass on this series; nothing where everything was said and read.
/// Source: common practice, no source (bookkeeping). Checked: co_series_test.cpp.
[[nodiscard]] std::optional<rulebook::Say> gapIn(const CoSeries& series);

/// Readings at one place, by time. Of two at the same instant both stay.
/// Source: common practice, no source (bookkeeping). Checked: co_series_test.cpp.
[[nodiscard]] std::vector<CoReading> readingsAt(const CoSeries& series, CoPlace place);

/// The highest reading wherever it was taken; nothing without readings.
/// Source: textbook (maximum). Checked: co_series_test.cpp.
[[nodiscard]] std::optional<quantity::Share> peakOf(const CoSeries& series);

/// Mean weighted by time, straight lines between readings; over what was measured and nothing beyond.
struct CoMean {
    quantity::Share mean;
    quantity::Duration measured;
    quantity::Duration longestGap;
};
/// Formula: sum of (x_i + x_(i+1)) / 2 * (t_(i+1) - t_i), over t_n - t_1 (trapezium rule). Readings by time;
/// nothing for fewer than two instants.
/// Source: textbook (trapezium rule). Checked: co_series_test.cpp.
[[nodiscard]] std::optional<CoMean> meanOf(const std::vector<CoReading>& readings);

/// The highest mean over any stretch of that length within the readings; over all of them when they are
/// shorter.
/// Formula: the greatest of F(t + w) - F(t), F the integral of the straight lines; it lies where a stretch
/// begins or ends at a reading, or where the lines at both ends are equally high.
/// Source: textbook (maximum of a piecewise quadratic). Checked: co_series_test.cpp.
[[nodiscard]] std::optional<CoMean> highestMean(const std::vector<CoReading>& readings,
                                                quantity::Duration window);

enum class Trend { Unknown, Rising, Steady, Falling };
/// Change over the time looked at, by the line of least squares, with its expanded uncertainty (k = 2).
struct CoTrend {
    Trend trend = Trend::Unknown;
    quantity::Share change;
    quantity::Share uncertainty;
    quantity::Duration over;
};
/// Least-squares slope of the last `window` of the readings. u(slope)^2 = (s^2 + d^2/12) / sum (t - mean
/// t)^2, s^2 the residual variance with n - 2 degrees, d the display's digit. Rising or falling: the change
/// is greater than its expanded uncertainty. Steady: the change with its uncertainty stays within two digits
/// of the display (own convention: less could not be told apart on it). Otherwise, and for fewer than three
/// instants: unknown.
/// Source: textbook (simple linear regression); GUM 4.3.7 for the digit. Checked: co_series_test.cpp.
[[nodiscard]] CoTrend trendOf(const std::vector<CoReading>& readings, quantity::Share digit,
                              quantity::Duration window);

}  // namespace hearth::air
