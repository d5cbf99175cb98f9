// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/trace_seen.h"
#include "core/record/trace_text.h"
#include "core/store/store.h"

#include <optional>
#include <vector>

namespace hearth::store {

/// What a second gauge saw beside that trace; nothing where there was none. Errors: TraceAltered and the
/// store's.
[[nodiscard]] Result<std::optional<judging::SecondGauge>> secondGaugeOf(const Store& store,
                                                                        const reg::VisitFile& file,
                                                                        reg::GaugeTraceId trace);

/// What the visit's traces of tests tell, with their readings, in the order they were kept: of each test the
/// newest. Errors: TraceAltered and the store's.
[[nodiscard]] Result<std::vector<judging::TraceSeen>> tracesOf(const Store& store, const reg::VisitFile& file,
                                                               const rulebook::RuleBook& book);

/// What was watched of the visit's rooms, in the order it was kept. Errors: the same.
[[nodiscard]] Result<std::vector<record::RoomTrace>> roomTracesOf(const Store& store,
                                                                  const reg::VisitFile& file);

}  // namespace hearth::store
