// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include "core/rulebook/rule_book.h"

#include <utility>

namespace hearth::rulebook::shipped {

namespace {

std::string_view standardOf(Edition edition) {
    switch (edition) {
        case Edition::Up1bEd3:
            return kUp1bEd3;
        case Edition::Up1bEd4:
            return kUp1bEd4;
        case Edition::General:
            break;
    }
    return {};
}

}  // namespace

Value number(std::int64_t mantissa, int decimals, quantity::UnitCode unit) {
    return quantity::Figure{quantity::Decimal(mantissa, decimals), unit};
}

Value range(std::int64_t least, std::int64_t most, quantity::UnitCode unit) {
    return Range{quantity::Decimal(least, 0), quantity::Decimal(most, 0), unit};
}

Entry entry(RuleKey key, Value value, Comparison comparison, const Origin& origin, Daily daily) {
    Entry made;
    made.key = key;
    made.value = std::move(value);
    made.comparison = comparison;
    made.provenance = origin.provenance;
    made.standard = origin.standard;
    made.clause = origin.clause;
    made.source = origin.source;
    made.doubt = origin.doubt;
    made.daily = daily == Daily::Yes;
    if (key.edition == Edition::Up1bEd3) {
        made.appliesTo = kEdition3Until;
    }
    if (key.edition == Edition::Up1bEd4) {
        made.appliesFrom = kEdition4From;
        // Honest about the day, on every entry that starts with the edition.
        made.doubt += made.doubt.empty() ? "" : " ";
        made.doubt += "Edition 4 came out in March 2026; the day is not known and is taken as the 1st.";
    }
    return made;
}

Entry emptyEntry(RuleKey key, Comparison comparison, std::string_view doubt, Daily daily) {
    // An empty entry decides nothing; memory is the weakest claim there is.
    return entry(key, std::monostate{}, comparison,
                 {Provenance::Memory, standardOf(key.edition), "not read anywhere", doubt}, daily);
}

}  // namespace hearth::rulebook::shipped

namespace hearth::rulebook {

RuleBook RuleBook::shipped() {
    std::vector<Entry> entries;
    shipped::addStages(entries);
    shipped::addMovement(entries);
    shipped::addDrops(entries);
    shipped::addScope(entries);
    shipped::addPurge(entries);
    shipped::addPressures(entries);
    shipped::addGas(entries);
    shipped::addPipework(entries);
    shipped::addLarger(entries);
    shipped::addBurner(entries);
    shipped::addCombustion(entries);
    shipped::addAir(entries);
    shipped::addDeadlines(entries);
    return RuleBook(std::move(entries));
}

}  // namespace hearth::rulebook
