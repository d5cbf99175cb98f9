// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/record_traces.h"

#include <utility>

namespace hearth::store {

Result<std::vector<judging::TraceSeen>> tracesOf(const Store& store, const reg::VisitFile& file,
                                                 const rulebook::RuleBook& book) {
    std::vector<judging::TraceSeen> traces;
    for (const auto& kept : file.traces) {
        auto readings = store.traceReadings(kept.id);
        if (!readings) {
            return tl::unexpected<Error>(readings.error());
        }
        traces.push_back(judging::seenTrace(
            file, book, kept.test,
            {kept.source, reg::marksFromText(kept.marks).value_or(reg::TraceMarks()), std::move(*readings)}));
    }
    return traces;
}

}  // namespace hearth::store
