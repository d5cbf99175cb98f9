// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/settled.h"
#include "core/tightness/trace_fit.h"

#include <optional>

/// What the trace of a whole test tells: let-by, settling and the timed minutes together. Evidence beside the
/// verdict, never a verdict.
namespace hearth::tightness {

/// When the stages were; one that is not there was not watched.
struct TraceStages {
    std::optional<Span> letBy;
    std::optional<Span> settling;
    std::optional<Span> timing;
    bool operator==(const TraceStages&) const = default;
};

/// What a test's stages are known by: the bands of pressure and how long each has to last.
struct StageBands {
    quantity::GaugePressure letByLeast;
    quantity::GaugePressure letByMost;
    quantity::GaugePressure testLeast;
    quantity::Duration letByTime;
    quantity::Duration settleTime;
    quantity::Duration testTime;
};

/// Where the stages seem to be, to be put right by hand: the pressure was last raised through the middle
/// between the two bands; let-by is the time before it, back to when the pressure came into its band;
/// settling and the timed minutes follow, one after the other, from when the rise was over. Pressure rises
/// while it moves by more than 0.5 mbar in two seconds. A trace that was never raised begins with its
/// settling, or is let-by alone where it stays below the middle. What the trace is too short for is not
/// there. Source: common practice, no source. Checked: trace_told_test.cpp.
[[nodiscard]] TraceStages guessStages(const Trace& trace, const StageBands& bands);

enum class TraceSays {
    NothingToGoBy,  // no stage, or too short a one, or no volume
    StuckGauge,     // it stands still though the pressure was changed
    LetsBy,         // rising in the let-by stage: the valve lets by, or the pipe warms
    Leak,           // a steady fall that settling does not explain
    HiddenLeak,     // the same, under warming that makes up for some of it
    GasComesIn,     // rising steadily in the test
    Cooling,        // the fall is what cooling explains
    Warming,        // the rise is what warming explains
    Still,          // nothing moves
    MostIsGone,     // half of the pressure or more fell away
    CantTell,
};

struct TellInput {
    std::optional<quantity::Volume> volume;
    std::optional<quantity::PressureChange> step;       // of the display; nothing: as the readings show
    std::optional<quantity::PressureChange> threshold;  // of the gauge's movement; nothing: no outlook
    quantity::Duration testTime;
    std::optional<quantity::Share> volumeOff = std::nullopt;       // nothing: the volume is taken as exact
    std::optional<quantity::PressureChange> drift = std::nullopt;  // of the gauge in a minute, half-width
    bool operator==(const TellInput&) const = default;
};

struct TraceTold {
    TraceSays says = TraceSays::NothingToGoBy;
    std::optional<TraceFit> letBy;
    std::optional<TraceFit> test;
    std::optional<quantity::PressureChange> letByRise;  // over that stage; a fall is below nought
    std::optional<SettlingOutlook> outlook;  // as the timing began; before it began, at the settling's end
};

/// Looks for a stuck gauge first, then for let-by, then at the test. It lets by where the fit of that stage
/// says that gas comes in, or where it rose by the gauge's threshold of movement (from the mean of its first
/// tenth to that of its last): gas that comes in from a higher pressure and warming look alike in one minute.
/// The test is settling and timed minutes in one fit where the one follows the other within a second, else
/// the timed minutes alone (the pressure was set again between them). What would move the display by less
/// than one step over the fitted time is called neither leak nor gas coming in. Barometer and temperature are
/// made up for where each point of a stage has them. A fit whose beginning pressure is not above nought is
/// none. Source: none needed: fitTrace() and meaningOf() by stages; isStuck(). Checked: trace_told_test.cpp.
[[nodiscard]] TraceTold tellTrace(const Trace& trace, const TraceStages& stages, const TellInput& input);

}  // namespace hearth::tightness
