// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_traces.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace hearth::store {

Result<std::vector<judging::TraceSeen>> tracesOf(const Store& store, const reg::VisitFile& file,
                                                 const rulebook::RuleBook& book) {
    std::vector<judging::TraceSeen> traces;
    for (auto one = file.traces.begin(); one != file.traces.end(); ++one) {
        const auto& kept = *one;
        // Of the rooms, or a newer one of the test stands beside what a record has issued.
        if (!kept.test || std::any_of(std::next(one), file.traces.end(), [&](const reg::GaugeTrace& newer) {
                return newer.test == kept.test;
            })) {
            continue;
        }
        auto readings = store.traceReadings(kept.id);
        if (!readings) {
            return tl::unexpected<Error>(readings.error());
        }
        traces.push_back(judging::seenTrace(
            file, book, *kept.test,
            {kept.source, reg::marksFromText(kept.marks).value_or(reg::TraceMarks()), std::move(*readings)}));
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
