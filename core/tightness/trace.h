// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <vector>

/// What a gauge that was watched all the time has seen. A trace says more than two readings; it never says
/// that a test is passed: that is the standard's rule of start and end (verdict.h).
namespace hearth::tightness {

/// One line of a gauge. The two other channels are there when something measured them.
struct TracePoint {
    quantity::Duration at;  // from the trace's beginning, never falling
    quantity::GaugePressure pressure;
    std::optional<quantity::AbsolutePressure> barometer = std::nullopt;
    std::optional<quantity::Temperature> temperature = std::nullopt;  // of pipe or gas
};

struct Span {
    quantity::Duration from;
    quantity::Duration to;
    bool operator==(const Span&) const = default;
};

/// Points in the order of time.
using Trace = std::vector<TracePoint>;

/// The points from `span.from` to `span.to`, ends included; their times stay as they are.
/// Source: none needed: a cut. Checked: trace_test.cpp.
[[nodiscard]] Trace stretchOf(const Trace& trace, const Span& span);

/// Where the gauge was silent: more than three of its usual steps (their median), and more than two seconds.
/// Source: common practice, no source. Checked: trace_test.cpp.
[[nodiscard]] std::vector<Span> gapsOf(const Trace& trace);
/// The same of the times alone, whatever was read at them.
/// Source: common practice, no source. Checked: trace_test.cpp.
[[nodiscard]] std::vector<Span> silencesIn(const std::vector<quantity::Duration>& times);

/// The step that the display seems to have: the greatest of 1, 2 or 5 times a power of ten that all readings
/// are multiples of. Nothing for fewer than three different readings, or when there is no such step down to
/// 0.0001 mbar. Source: common practice, no source. Checked: trace_test.cpp.
[[nodiscard]] std::optional<quantity::PressureChange> stepOf(const Trace& trace);

/// The trace as a gauge would have shown it had barometer and temperature stayed what they were at its first
/// point: the gauge goes against the barometer one to one, and with the temperature as the absolute pressure
/// does. A channel counts only when every point has it.
/// Source: textbook (ideal gas; a rigid closed pipe). Not rounded. Checked: trace_test.cpp.
[[nodiscard]] Trace compensated(const Trace& trace);

/// Does the gauge stand still where it must move? `before` and `after` are two stages between which the
/// pressure was changed by more than a step (let-by and test pressure). True when not one reading in `after`
/// differs from the last of `before`. A tight pipe's steady reading is none: it was changed to. False while
/// either has no points. Source: common practice, no source. Checked: trace_test.cpp.
[[nodiscard]] bool isStuck(const Trace& before, const Trace& after);

/// The zero that a gauge shows while it is open to the air: the mean of the readings, and whether it is
/// within one step of nought.
struct ZeroCheck {
    quantity::PressureChange reads;
    bool isZero = false;
};

/// Nothing without readings. Source: common practice, no source (an electronic gauge is zeroed to air before
/// it is connected). Checked: trace_test.cpp.
[[nodiscard]] std::optional<ZeroCheck> zeroCheck(const Trace& open, quantity::PressureChange step);

/// Two gauges on one pipe, over the time that both saw.
struct GaugesCompared {
    quantity::PressureChange difference;  // first less second: mean over the second's points
    quantity::PressureChange allowed;     // what their steps alone may make of it
    bool agrees = false;
    int points = 0;
};

/// The first's reading nearest in time to each of the second's, no further than a second away. Their steps
/// allow half of the one and half of the other. Nothing when no two readings are near each other.
/// Source: none needed: a display of step d shows each value within d/2. Checked: trace_test.cpp.
[[nodiscard]] std::optional<GaugesCompared> compareGauges(const Trace& first,
                                                          quantity::PressureChange firstStep,
                                                          const Trace& second,
                                                          quantity::PressureChange secondStep);

}  // namespace hearth::tightness
