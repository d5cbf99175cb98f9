// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/against.h"

#include <cmath>
#include <utility>

namespace hearth::rulebook {

Standing standing(const quantity::Uncertain& measured, Comparison comparison, double limit) {
    const double margin = quantity::expanded(measured);
    if (holds(std::abs(measured.value - limit), Comparison::AtMost, margin) ||
        holds(measured.value, Comparison::Equals, limit)) {
        return Standing::Near;
    }
    return holds(measured.value, comparison, limit) ? Standing::Within : Standing::Beyond;
}

Standing standing(const quantity::Uncertain& measured, double least, double most) {
    const auto low = standing(measured, Comparison::AtLeast, least);
    const auto high = standing(measured, Comparison::AtMost, most);
    if (low == Standing::Beyond || high == Standing::Beyond) {
        return Standing::Beyond;
    }
    return low == Standing::Near || high == Standing::Near ? Standing::Near : Standing::Within;
}

void judgeAgainst(Finding& finding, const Entry& entry, const quantity::Uncertain& measured,
                  const Verdicts& verdicts) {
    restOn(finding, entry);
    std::optional<Standing> where;
    if (const auto figure = figureOf(entry)) {
        where = standing(measured, entry.comparison, figure->value.toDouble());
    } else if (const auto range = rangeOf(entry)) {
        where = standing(measured, range->least.toDouble(), range->most.toDouble());
    }
    if (!where) {
        concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    switch (*where) {
        case Standing::Within:
            concludeWithin(finding, {verdicts.within, verdicts.arguments});
            break;
        case Standing::Near:
            concludeAtLimit(finding, {verdicts.near, verdicts.arguments});
            break;
        case Standing::Beyond:
            concludeBeyond(finding, entry, {verdicts.beyond, verdicts.arguments});
            break;
    }
}

void judgeAgainst(Finding& finding, const Entry* entry, const quantity::Uncertain& measured,
                  const Verdicts& verdicts) {
    if (entry == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    judgeAgainst(finding, *entry, measured, verdicts);
}

Entry makersEntry(RuleKey key, Value value, Comparison comparison, std::string source) {
    Entry entry;
    entry.key = key;
    entry.value = std::move(value);
    entry.comparison = comparison;
    entry.provenance = Provenance::Maker;
    entry.standard = "Maker's instructions";
    entry.source = std::move(source);
    return entry;
}

}  // namespace hearth::rulebook
