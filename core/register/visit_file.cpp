// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/visit_file.h"

#include <algorithm>
#include <map>

namespace hearth::reg {

namespace {

template <class List, class Match>
auto firstThat(const List& list, Match match) -> const typename List::value_type* {
    const auto found = std::find_if(list.begin(), list.end(), match);
    return found == list.end() ? nullptr : &*found;
}

bool isOfReading(Item item) {
    return item == Item::RoomCo || item == Item::RoomCoAt || item == Item::RoomCoPlace;
}

/// Rooms, or readings taken in them. Ids grow with time, so their order is that in which they were made.
std::vector<SubjectRef> roomSubjects(const std::vector<Entry>& entries, bool readings) {
    std::map<SubjectRef, bool> found;
    for (const auto& entry : entries) {
        if (entry.subject.kind == SubjectKind::Room) {
            found[entry.subject] = found[entry.subject] || isOfReading(entry.item);
        }
    }
    std::vector<SubjectRef> subjects;
    for (const auto& [subject, isReading] : found) {
        if (isReading == readings) {
            subjects.push_back(subject);
        }
    }
    return subjects;
}

}  // namespace

const Entry* VisitFile::find(const SubjectRef& subject, Item item) const {
    return firstThat(entries, [&](const Entry& e) { return e.item == item && e.subject == subject; });
}

std::string_view VisitFile::choiceOf(const SubjectRef& subject, Item item) const {
    const Entry* entry = find(subject, item);
    if (entry == nullptr) {
        return {};
    }
    // A code that a newer program wrote is kept in the store but says nothing here.
    const auto choices = infoOf(item).choices;
    const bool known = std::any_of(choices.begin(), choices.end(),
                                   [&](const Choice& choice) { return choice.code == entry->canonical; });
    return known ? std::string_view(entry->canonical) : std::string_view{};
}

const Instrument* VisitFile::instrument(InstrumentId id) const {
    return firstThat(instruments, [&](const Instrument& i) { return i.id == id; });
}

const Instrument* VisitFile::gaugeOf(TestId test) const {
    return instrumentOf(subject(test), Item::TestGauge);
}

const Instrument* VisitFile::instrumentOf(const SubjectRef& subject, Item item) const {
    const Entry* entry = find(subject, item);
    if (entry == nullptr) {
        return nullptr;
    }
    const auto bytes = uuidFromText(entry->canonical);
    return bytes ? instrument(InstrumentId{*bytes}) : nullptr;
}

bool VisitFile::hasEntries(const SubjectRef& subject) const {
    return firstThat(entries, [&](const Entry& e) { return e.subject == subject; }) != nullptr;
}

std::vector<SubjectRef> VisitFile::rooms() const {
    return roomSubjects(entries, /*readings=*/false);
}

std::vector<SubjectRef> VisitFile::roomReadings() const {
    return roomSubjects(entries, /*readings=*/true);
}

const GaugeTrace* VisitFile::traceOf(TestId test) const {
    const auto found = std::find_if(traces.rbegin(), traces.rend(), [&](const GaugeTrace& trace) {
        return trace.test == test && !trace.beside;
    });
    return found == traces.rend() ? nullptr : &*found;
}

const GaugeTrace* VisitFile::traceBeside(GaugeTraceId id) const {
    return firstThat(traces, [&](const GaugeTrace& trace) { return trace.beside == id; });
}

const Engineer* VisitFile::engineer() const {
    return visit.engineer ? firstThat(engineers, [&](const Engineer& e) { return e.id == *visit.engineer; })
                          : nullptr;
}

const Party* VisitFile::holder(RoleKind role) const {
    const auto* found = firstThat(people, [&](const Holder& h) { return h.role == role; });
    return found == nullptr ? nullptr : &found->party;
}

}  // namespace hearth::reg
