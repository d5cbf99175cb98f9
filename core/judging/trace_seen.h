// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"
#include "core/rulebook/rule_book.h"
#include "core/tightness/gauges_over_test.h"
#include "core/tightness/trace_told.h"

#include <optional>
#include <string>
#include <vector>

/// The trace of a test with what the visit knows of that test: its stages, and what it tells.
namespace hearth::judging {

/// What a second gauge saw on the same pipe; times are the first one's.
struct SecondGauge {
    reg::TraceSource source;
    tightness::Trace trace;
};

/// A trace and what was said of it.
struct TraceGiven {
    reg::TraceSource source;
    reg::TraceMarks marks;
    tightness::Trace trace;
    std::optional<SecondGauge> second = std::nullopt;
};

/// A reading that the trace has at the beginning or end of a stage: for the fitter to confirm, never entered
/// by itself.
struct TraceProposal {
    reg::Item item = reg::Item::TightStart;
    quantity::Typed reading;
    reg::Item timeItem = reg::Item::TightStartedAt;
    std::optional<Instant> at;  // where the trace knows the time of day
};

struct TraceSeen {
    reg::TestId test;
    TraceGiven given;
    tightness::TraceStages stages;
    tightness::TraceTold told;
    tightness::TellInput asked;  // the volume of what was tested, the gauge's step and threshold, the time
    std::optional<tightness::ZeroCheck> zero;  // nothing: not seen open to the air, or no step known
    std::vector<tightness::Span> gaps;
    /// Both gauges over the stages; nothing: one gauge, or no step known of either, or never both at once.
    std::optional<tightness::GaugesOverTest> compared;
};

/// Marks where the stages seem to begin and end, by the rule book's bands and times for this test's edition
/// and gas (Edition 4 while none is said); none where it has no band.
[[nodiscard]] reg::TraceMarks guessedMarks(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                           reg::TestId test, const tightness::Trace& trace);

/// The stages by the marks: let-by lasts its time, or until the settling begins; settling until the timing
/// begins, or its time; the timing until its end is marked, or its time. None is longer than the trace.
[[nodiscard]] TraceSeen seenTrace(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                  reg::TestId test, TraceGiven given);

/// The same without what it tells: quick, for finding out whether that is still what it was.
[[nodiscard]] TraceSeen stagedTrace(const reg::VisitFile& file, const rulebook::RuleBook& book,
                                    reg::TestId test, TraceGiven given);

/// Readings for the fitter to confirm, in the order of the stages; in the unit that the gauge shows, to its
/// step. None of a simulation or of a stuck gauge, nor where the trace is silent for a second about it.
[[nodiscard]] std::vector<TraceProposal> proposalsOf(const TraceSeen& seen);

}  // namespace hearth::judging
