// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/doubts.h"

#include "core/rulebook/conclude.h"

#include <utility>

namespace hearth::judging {

using reg::Item;
using rulebook::Finding;
using rulebook::Outcome;
using rulebook::Say;

bool isGasSaid(const Asking& asking) {
    return rulebook::gasFromText(asking.once.code(Item::GasFamily)).has_value();
}

Finding byTheGas(const Asking& asking, Finding finding) {
    if (isGasSaid(asking) || finding.outcome == Outcome::NoVerdict) {
        return finding;
    }
    finding.notes.insert(finding.notes.begin(), finding.why);
    rulebook::concludeAtLimit(finding, {Say::GasNotSaid});
    return finding;
}

bool isUnclear(const Readings& readings, Item item) {
    if (!readings.isEntered(item)) {
        return false;
    }
    const auto figure = readings.figure(item);
    return !figure || figure->value.mantissa() < 0;
}

TypedRange rangeTyped(const Readings& readings, Item least, Item most) {
    if (!readings.isEntered(least) && !readings.isEntered(most)) {
        return {};
    }
    const auto low = readings.figure(least);
    const auto high = readings.figure(most);
    if (!low || !high || low->unit != high->unit || low->value.toDouble() > high->value.toDouble()) {
        return {std::nullopt, true};
    }
    return {rulebook::Range{low->value, high->value, low->unit}, false};
}

Finding withoutMakers(Finding finding) {
    if (finding.outcome == Outcome::Fail) {
        finding.notes.push_back({Say::MakersFigureUnclear});
        return finding;
    }
    auto open = rulebook::noVerdict(finding.kind, {Say::MakersFigureUnclear});
    open.measured = finding.measured;
    return open;
}

void sayUnclear(Asking& asking, rulebook::FindingKind kind, std::initializer_list<Item> items) {
    for (const auto item : items) {
        if (isUnclear(asking.once, item)) {
            asking.find(rulebook::noVerdict(kind, {Say::ReadingUnusable}), {item});
        }
    }
}

}  // namespace hearth::judging
