// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace_fit.h"

/// What a fitted trace means, in one word: evidence beside the verdict, never a verdict.
namespace hearth::tightness {

enum class TraceMeaning {
    CantTell,    // wait longer, or take a finer gauge
    MostIsGone,  // half of the pressure or more fell away: no settling is taken for that
    Leak,        // a steady fall that settling does not explain
    GasComesIn,  // a steady rise: let-by, or the pipe goes on warming
    Cooling,     // the fall is what cooling explains, within what the trace can tell
    Warming,     // the rise is what warming explains; a leak may hide under it
    Still,       // nothing moves that the gauge can tell
};

/// By the 95 % intervals: a leak that can't be nought is one; else settling that can't be nought; else still.
/// What the trace doesn't identify is never called tight; where half of the pressure or more fell away it is
/// not called a matter of waiting either. None of them says that a leak smaller than TraceFit::detectable is
/// not there. Source: none needed: names for the intervals of fitTrace(). Checked: trace_meaning_test.cpp.
[[nodiscard]] TraceMeaning meaningOf(const TraceFit& fit);

/// What the settling alone means: Cooling, Warming or Still.
/// Source: none needed: as meaningOf(). Checked: trace_meaning_test.cpp.
[[nodiscard]] TraceMeaning settlingMeaning(const TraceFit& fit);

}  // namespace hearth::tightness
