// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <vector>

namespace hearth::air {

/// Rules asked for one computation: hands out their values, keeps each entry once, and remembers when one
/// was empty.
/// Source: the rule book's entries. Checked: vent_need_test.cpp.
class KnownRules {
  public:
    explicit KnownRules(const rulebook::RulesInForce& rules) : m_rules(rules) {}

    [[nodiscard]] std::optional<quantity::Area> area(rulebook::Rule rule);
    [[nodiscard]] std::optional<quantity::NetPower> power(rulebook::Rule rule);
    [[nodiscard]] std::optional<quantity::Volume> volume(rulebook::Rule rule);
    [[nodiscard]] std::optional<double> factor(rulebook::Rule rule);
    /// Keeps an entry that is not in the book (a maker's figure).
    void keep(const rulebook::Entry& entry);

    [[nodiscard]] const std::vector<rulebook::Entry>& entries() const { return m_entries; }
    [[nodiscard]] bool oneIsEmpty() const { return m_empty; }

  private:
    const rulebook::Entry* asked(rulebook::Rule rule);

    const rulebook::RulesInForce& m_rules;
    std::vector<rulebook::Entry> m_entries;
    bool m_empty = false;
};

/// Adds a sentence unless it is there already. Source: common practice, no source (bookkeeping).
void addOnce(std::vector<rulebook::Sentence>& sentences, const rulebook::Sentence& sentence);

}  // namespace hearth::air
