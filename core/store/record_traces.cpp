// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_traces.h"

#include <utility>

namespace hearth::store {

Result<std::optional<judging::SecondGauge>> secondGaugeOf(const Store& store, const reg::VisitFile& file,
                                                          reg::GaugeTraceId trace) {
    const auto* kept = file.traceBeside(trace);
    if (kept == nullptr) {
        return std::nullopt;
    }
    return store.traceReadings(kept->id).map([&](tightness::Trace readings) {
        return std::optional(judging::SecondGauge{kept->source, std::move(readings)});
    });
}

Result<std::vector<judging::TraceSeen>> tracesOf(const Store& store, const reg::VisitFile& file,
                                                 const rulebook::RuleBook& book) {
    std::vector<judging::TraceSeen> traces;
    for (const auto& kept : file.traces) {
        // Of the rooms, or beside another, or a newer one of the test stands beside what a record has issued.
        if (!kept.test || file.traceOf(*kept.test) != &kept) {
            continue;
        }
        auto readings = store.traceReadings(kept.id);
        if (!readings) {
            return tl::unexpected<Error>(readings.error());
        }
        auto second = secondGaugeOf(store, file, kept.id);
        if (!second) {
            return tl::unexpected<Error>(second.error());
        }
        traces.push_back(
            judging::seenTrace(file, book, *kept.test,
                               {kept.source, reg::marksFromText(kept.marks).value_or(reg::TraceMarks()),
                                std::move(*readings), std::move(*second)}));
    }
    return traces;
}

Result<std::vector<record::RoomTrace>> roomTracesOf(const Store& store, const reg::VisitFile& file) {
    std::vector<record::RoomTrace> traces;
    for (const auto& kept : file.traces) {
        if (kept.test) {
            continue;
        }
        auto readings = store.roomTraceReadings(kept.id);
        if (!readings) {
            return tl::unexpected<Error>(readings.error());
        }
        traces.push_back({kept.source, std::move(*readings)});
    }
    return traces;
}

}  // namespace hearth::store
