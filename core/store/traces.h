// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/co_series.h"
#include "core/base/result.h"
#include "core/register/gauge_trace.h"
#include "core/tightness/trace.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// What a second gauge saw on the same pipe at the same time; times from the first one's beginning.
struct NewTraceBeside {
    reg::TraceSource source;
    tightness::Trace trace;
};

/// A trace that is to be kept with a test.
struct NewTrace {
    reg::TestId test;
    reg::TraceSource source;
    reg::TraceMarks marks;
    tightness::Trace trace;
    std::optional<reg::GaugeTraceId> replaces =
        std::nullopt;                                     // goes in the same step, with what was beside it
    std::optional<NewTraceBeside> beside = std::nullopt;  // is kept in the same step
};

/// What an instrument that was watched saw of the carbon monoxide in rooms. Times from its beginning.
struct NewRoomTrace {
    reg::VisitId visit;
    reg::TraceSource source;
    std::vector<air::CoReading> readings;
    std::optional<reg::GaugeTraceId> replaces = std::nullopt;  // goes in the same step
};

/// What gauges saw of tightness tests, and instruments of rooms. What a visit has stands in
/// VisitFile::traces, without the readings: they are packed, under the digest of their text
/// (record::traceText, record::roomTraceText).
class Traces {
  public:
    /// A day at ten a second.
    static constexpr std::size_t kMostTracePoints = 864000;

    Traces() = default;
    Traces(const Traces&) = delete;
    Traces& operator=(const Traces&) = delete;
    virtual ~Traces() = default;

    /// Errors: TraceUnusable for no readings, or times that go back, or too many marks; TraceTooLong;
    /// NotFound for a test or a trace to replace that is not there; TraceInRecord.
    [[nodiscard]] virtual Result<reg::GaugeTraceId> keepTrace(const NewTrace& trace) = 0;
    /// The same of a room: NotFound for a visit that is not there.
    [[nodiscard]] virtual Result<reg::GaugeTraceId> keepRoomTrace(const NewRoomTrace& trace) = 0;
    /// What happened when, in place of what was said so far. Errors: TraceUnusable; TraceInRecord; NotFound.
    [[nodiscard]] virtual Result<void> markTrace(reg::GaugeTraceId id, const reg::TraceMarks& marks) = 0;
    /// The number of the newest issued record that shows it; empty: none does. Errors: NotFound.
    [[nodiscard]] virtual Result<std::string> recordOfTrace(reg::GaugeTraceId id) const = 0;
    /// Takes it away, and what was watched beside it; undo brings it back: the readings stay until
    /// dropUnusedBytes(). Errors: TraceInRecord when an issued record shows it; NotFound.
    [[nodiscard]] virtual Result<void> removeTrace(reg::GaugeTraceId id) = 0;
    /// The readings as they were kept. Errors: TraceAltered when they are not those that came; NotFound.
    [[nodiscard]] virtual Result<tightness::Trace> traceReadings(reg::GaugeTraceId id) const = 0;
    /// The same of a room.
    [[nodiscard]] virtual Result<std::vector<air::CoReading>> roomTraceReadings(
        reg::GaugeTraceId id) const = 0;
};

}  // namespace hearth::store
