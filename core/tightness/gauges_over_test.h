// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace_told.h"

#include <optional>

/// Two gauges that watched one pipe: how far apart they were at the beginning of the test, at its end, and at
/// most. Evidence of how far a gauge can be trusted, never a verdict.
namespace hearth::tightness {

/// What a gauge saw, and what its display can't tell apart.
struct GaugeSaw {
    const Trace& trace;
    quantity::PressureChange step;
};

struct GaugesOverTest {
    quantity::PressureChange atStart;  // first less second
    quantity::PressureChange atEnd;
    quantity::PressureChange greatest;  // the one furthest from nought
    quantity::Duration greatestAt;
    quantity::PressureChange allowed;  // what their steps alone may make of it
    Span over;                         // from the first to the last moment compared
    bool isTimed = false;              // start and end are those of the timed minutes
    bool operator==(const GaugesOverTest&) const = default;
    /// Whether that lies within what the steps allow.
    [[nodiscard]] bool allows(quantity::PressureChange difference) const;
};

/// At each of the second's readings in a stage its value is taken from the first's, which lies on the line
/// between the two readings around it where these are no more than two seconds apart; elsewhere there is
/// nothing to compare. Start and end are those of the timed minutes where the trace has them, else of all
/// stages; each is the mean over two seconds, and the greatest is that of all stretches of two seconds, so
/// that one reading's noise is no difference between gauges. While pressure is raised nothing is compared:
/// no two gauges keep step then. A trace without stages is compared over all of it. Steps allow half of the
/// one and half of the other.
/// Source: none needed: a display of step d shows each value within d/2; the two seconds are common practice,
/// no source. Not rounded. Checked: gauges_over_test_test.cpp.
[[nodiscard]] std::optional<GaugesOverTest> compareOverTest(const GaugeSaw& first, const GaugeSaw& second,
                                                            const TraceStages& stages);

}  // namespace hearth::tightness
