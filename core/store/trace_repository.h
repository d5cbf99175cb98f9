// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/traces.h"

#include <string>
#include <string_view>
#include <vector>

/// Traces of gauges. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] reg::GaugeTraceId keepTrace(Session& session, const NewTrace& trace);
[[nodiscard]] reg::GaugeTraceId keepRoomTrace(Session& session, const NewRoomTrace& trace);
void markTrace(Session& session, reg::GaugeTraceId id, const reg::TraceMarks& marks);
[[nodiscard]] std::string recordOfTrace(const Connection& db, reg::GaugeTraceId id);
void removeTrace(Session& session, reg::GaugeTraceId id);
[[nodiscard]] tightness::Trace readTraceReadings(const Connection& db, reg::GaugeTraceId id);
[[nodiscard]] std::vector<air::CoReading> readRoomTraceReadings(const Connection& db, reg::GaugeTraceId id);
/// Of a visit, in the order they were kept.
[[nodiscard]] std::vector<reg::GaugeTrace> readTraces(const Connection& db, reg::VisitId visit);

/// Where the sources' names of traces stand whose readings are not what was kept, or are gone.
[[nodiscard]] std::vector<std::string> alteredTraces(const Connection& db);
/// Removes readings that no trace names any more, and gives how many bytes that were.
[[nodiscard]] std::int64_t dropUnusedReadings(Connection& db);

/// Text as it lies in the store, and back; nothing when it is not `size` bytes long.
[[nodiscard]] std::string packed(std::string_view text);
[[nodiscard]] std::optional<std::string> unpacked(std::string_view bytes, std::size_t size);

}  // namespace hearth::store
