// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/known_rules.h"

#include "core/quantity/units.h"
#include "core/rulebook/values.h"

#include <algorithm>

namespace hearth::air {

using rulebook::Entry;
using rulebook::Rule;

void KnownRules::keep(const Entry& entry) {
    if (std::find(m_entries.begin(), m_entries.end(), entry) == m_entries.end()) {
        m_entries.push_back(entry);
    }
}

const Entry* KnownRules::asked(Rule rule) {
    const Entry* entry = m_rules.find(rule);
    if (entry != nullptr) {
        keep(*entry);
    }
    const Entry* known = m_rules.known(rule);
    m_empty = m_empty || known == nullptr;
    return known;
}

std::optional<quantity::Area> KnownRules::area(Rule rule) {
    const Entry* entry = asked(rule);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    return figure ? std::optional(quantity::Area(figure->value.toDouble(), quantity::areaUnit(figure->unit)))
                  : std::nullopt;
}

std::optional<quantity::NetPower> KnownRules::power(Rule rule) {
    const Entry* entry = asked(rule);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    return figure ? std::optional(
                        quantity::NetPower(figure->value.toDouble(), quantity::powerUnit(figure->unit)))
                  : std::nullopt;
}

std::optional<quantity::Volume> KnownRules::volume(Rule rule) {
    const Entry* entry = asked(rule);
    return entry == nullptr ? std::nullopt : rulebook::volumeOf(*entry);
}

std::optional<double> KnownRules::factor(Rule rule) {
    const Entry* entry = asked(rule);
    return entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
}

void addOnce(std::vector<rulebook::Sentence>& sentences, const rulebook::Sentence& sentence) {
    if (std::find(sentences.begin(), sentences.end(), sentence) == sentences.end()) {
        sentences.push_back(sentence);
    }
}

}  // namespace hearth::air
