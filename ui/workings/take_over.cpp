// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/take_over.h"

#include <algorithm>

namespace hearth::ui::workings {

using reg::Item;

namespace {

/// The entry to write: the one that is there, or a new one.
reg::Entry entryFor(const reg::VisitFile& file, const reg::SubjectRef& subject, Item item) {
    if (const reg::Entry* present = file.find(subject, item)) {
        return *present;
    }
    reg::Entry entry;
    entry.visit = file.visit.id;
    entry.subject = subject;
    entry.item = item;
    return entry;
}

/// The pressure typed at the meter, where it can be read and the visit's last test has none.
std::optional<reg::Entry> pressureFor(const reg::VisitFile& file, const judging::Worksheet& sheet) {
    const reg::Entry* typed = sheet.question() == judging::Question::Pressures
                                  ? sheet.find(judging::Group::Once, 0, Item::MeterWorkingPressure)
                                  : nullptr;
    if (typed == nullptr || typed->canonical.empty() || file.tests.empty()) {
        return std::nullopt;
    }
    const reg::SubjectRef test = reg::subject(file.tests.back().id);
    if (file.find(test, Item::WorkingPressure) != nullptr) {
        return std::nullopt;
    }
    reg::Entry entry = entryFor(file, test, Item::WorkingPressure);
    entry.text = typed->text;
    entry.unit = typed->unit;
    return entry;
}

}  // namespace

Result<std::vector<store::VisitLine>> openVisits(const store::Store& store) {
    auto visits = store.visits({});
    if (!visits) {
        return visits;
    }
    std::erase_if(*visits,
                  [](const store::VisitLine& line) { return line.visit.closed || line.records > 0; });
    std::stable_sort(visits->begin(), visits->end(), [](const auto& a, const auto& b) {
        return std::pair(a.visit.date, a.visit.startedAt) > std::pair(b.visit.date, b.visit.startedAt);
    });
    return visits;
}

Result<TakenOver> takeOver(store::Store& store, reg::VisitId visit, const judging::Worksheet& sheet,
                           const std::string& text) {
    const auto file = store.visitFile(visit);
    if (!file) {
        return tl::unexpected(file.error());
    }
    TakenOver taken;
    const auto kept = store.together([&]() -> Result<void> {
        if (const auto pressure = pressureFor(*file, sheet)) {
            taken.workingPressure = true;
            if (auto saved = store.saveEntry(*pressure); !saved) {
                return saved;
            }
        }
        reg::Entry remarks = entryFor(*file, reg::subject(visit), Item::VisitRemarks);
        remarks.text += (remarks.text.empty() ? "" : "\n\n") + text;
        return store.saveEntry(remarks);
    });
    return kept ? Result<TakenOver>(taken) : tl::unexpected(kept.error());
}

}  // namespace hearth::ui::workings
