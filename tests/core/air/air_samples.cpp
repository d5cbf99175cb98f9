// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/air/air_samples.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <utility>

namespace hearth::air::samples {

quantity::Area cm2(double value) {
    return {value, quantity::kSquareCentimetre};
}

quantity::NetPower kw(double value) {
    return {value, quantity::kKilowatt};
}

quantity::Volume m3(double value) {
    return {value, quantity::kCubicMetre};
}

quantity::Share ppm(double value) {
    return {value, quantity::kPpm};
}

quantity::Duration minutes(double value) {
    return {value, quantity::kMinute};
}

Appliance appliance(ApplianceKind kind, Flue flue, double kilowatt) {
    Appliance made;
    made.kind = kind;
    made.flue = flue;
    made.input.net = kw(kilowatt);
    return made;
}

Vent vent(double squareCentimetres, VentLeadsTo leadsTo) {
    Vent made;
    made.freeArea = cm2(squareCentimetres);
    made.leadsTo = leadsTo;
    made.blocked = false;
    made.closable = false;
    made.flyScreen = false;
    made.sleeved = true;
    return made;
}

Room roomWith(std::vector<Appliance> appliances) {
    Room room;
    room.volume = m3(30);
    room.internalSpace = false;
    room.bedSitting = false;
    room.basement = false;
    room.opensToOutside = true;
    room.doorToOutside = false;
    room.tightDwelling = false;
    room.vents.emplace();
    room.appliances = std::move(appliances);
    return room;
}

rulebook::RuleBook confirmedBook() {
    const auto shipped = rulebook::RuleBook::shipped();
    std::vector<rulebook::Entry> entries(shipped.entries().begin(), shipped.entries().end());
    for (auto& entry : entries) {
        if (entry.isKnown()) {
            entry.provenance = rulebook::Provenance::Firm;
        }
    }
    return rulebook::RuleBook(std::move(entries));
}

void enter(rulebook::RuleBook& book, rulebook::Rule rule, double value, quantity::UnitCode unit) {
    const quantity::Figure figure{quantity::Decimal::rounded(value, 2), unit};
    const auto laid =
        book.lay({{rule}, figure, "A. Tester", calendar::fromIso("2026-01-01").value(), "own copy"});
    ASSERT_TRUE(laid.has_value()) << rulebook::ruleText(rule);
}

rulebook::RuleBook bookWith(rulebook::Rule rule, double value, quantity::UnitCode unit) {
    auto book = confirmedBook();
    enter(book, rule, value, unit);
    return book;
}

rulebook::RulesInForce airRules(const rulebook::RuleBook& book) {
    return {book, rulebook::Edition::Up1bEd4, rulebook::Gas::NaturalGas,
            calendar::fromIso("2026-11-10").value()};
}

rulebook::Finding findingOf(const std::vector<rulebook::Finding>& findings, rulebook::FindingKind kind) {
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const auto& finding) { return finding.kind == kind; });
    if (found == findings.end()) {
        ADD_FAILURE() << "no finding of kind " << rulebook::kindText(kind);
        return rulebook::Finding{kind};
    }
    return *found;
}

}  // namespace hearth::air::samples
