// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/visit_file.h"

#include <algorithm>

namespace hearth::reg {

namespace {

template <class List, class Match>
auto firstThat(const List& list, Match match) -> const typename List::value_type* {
    const auto found = std::find_if(list.begin(), list.end(), match);
    return found == list.end() ? nullptr : &*found;
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
    const Entry* entry = find(subject(test), Item::TestGauge);
    if (entry == nullptr) {
        return nullptr;
    }
    const auto bytes = uuidFromText(entry->canonical);
    return bytes ? instrument(InstrumentId{*bytes}) : nullptr;
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
