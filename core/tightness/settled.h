// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace_fit.h"

#include <optional>

/// Is the gas steady enough to start timing, and if not, how long to wait?
namespace hearth::tightness {

enum class Settledness {
    Settled,   // what settling can still move in the timed minutes is below the threshold, 39 times in 40
    NotYet,    // it is above it, 39 times in 40
    CantTell,  // neither: wait longer, or take a finer gauge
};

struct SettlingOutlook {
    Settledness state = Settledness::CantTell;
    Within95<quantity::PressureChange> left;  // that settling alone still moves while the test is timed
    std::optional<quantity::Duration> wait;   // until it is settled; nothing: longer than half an hour
};

/// "Settled" in numbers: from `now` on, settling alone moves the pressure in the time of the test by less
/// than the gauge's threshold of movement, by the end of the 95 % interval that is further from nought.
/// A leak is not settling and does not count.
///
/// Advice only: the settling stage is judged by stages.h. Source: the threshold is the entry that the caller
/// hands in; the rest common practice, no source. Checked: settled_test.cpp; how often it is right is printed
/// by trace_statistics_test.cpp.
[[nodiscard]] SettlingOutlook settlingOutlook(const TraceFit& fit, quantity::Duration now,
                                              quantity::Duration test, quantity::PressureChange threshold);

}  // namespace hearth::tightness
