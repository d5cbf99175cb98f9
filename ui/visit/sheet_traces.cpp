// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/sheet_traces.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace hearth::ui::visit {

namespace {

/// Those that the tests go by.
std::vector<reg::GaugeTrace> usedIn(const reg::VisitFile& file) {
    std::vector<reg::GaugeTrace> used;
    std::copy_if(file.traces.begin(), file.traces.end(), std::back_inserter(used), [&](const auto& one) {
        const auto* of = one.test ? file.traceOf(*one.test) : nullptr;
        return of != nullptr && of->id == one.id;
    });
    return used;
}

}  // namespace

/// Those that are there already stay as they are. A trace that can't be read is told where it is shown; its
/// test's readings are compared then.
void SheetTraces::readAnew(const reg::VisitFile& file) {
    auto before = std::exchange(m_read, {});
    for (auto& kept : usedIn(file)) {
        const auto known =
            std::find_if(before.begin(), before.end(), [&](const Read& read) { return read.kept == kept; });
        if (known != before.end()) {
            m_read.push_back(std::move(*known));
            continue;
        }
        ++m_reads;
        Read read;
        if (auto readings = m_store.traceReadings(kept.id)) {
            auto& seen = read.seen.emplace();
            seen.test = *kept.test;
            // A second gauge says nothing of the leak.
            seen.given = {kept.source, reg::marksFromText(kept.marks).value_or(reg::TraceMarks()),
                          std::move(*readings)};
        }
        read.kept = std::move(kept);
        m_read.push_back(std::move(read));
    }
}

/// A fit is kept while what it was asked is still asked.
void SheetTraces::fitAnew(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    for (auto& read : m_read) {
        if (!read.seen) {
            continue;
        }
        auto& seen = *read.seen;
        const auto staged = judging::stagedTrace(file, book, seen.test, seen.given);
        if (!read.isFitted || staged.stages != seen.stages || !(staged.asked == seen.asked)) {
            seen = judging::seenTrace(file, book, seen.test, std::move(seen.given));
            read.isFitted = true;
            ++m_fits;
        }
    }
}

const judging::LeakHunt& SheetTraces::hunt(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    if (!m_hunt) {
        readAnew(file);
        fitAnew(file, book);
        std::vector<judging::TraceSeen> seen;
        for (const auto& read : m_read) {
            if (read.seen) {
                seen.push_back(*read.seen);
            }
        }
        m_hunt = judging::huntLeak(file, book, seen);
    }
    return *m_hunt;
}

}  // namespace hearth::ui::visit
