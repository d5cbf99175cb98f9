// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/civil_date.h"
#include "core/rulebook/rule_book.h"
#include "core/rulebook/standard.h"

namespace hearth::rulebook {

/// The rule book as it stands for one test: one edition, one gas, one day. Keeps a reference to the book.
class RulesInForce {
  public:
    RulesInForce(const RuleBook& book, Edition edition, Gas gas, calendar::Date on)
        : m_book(book), m_edition(edition), m_gas(gas), m_on(on) {}

    /// The entry of the edition, or the one that belongs to no edition; also when it is empty, so that it can
    /// be named as missing. Nothing when the book has none that may judge on that day.
    [[nodiscard]] const Entry* find(Rule rule) const;
    /// The same, and only when it has a value.
    [[nodiscard]] const Entry* known(Rule rule) const;
    /// An edition's entry whatever the day, for information only.
    [[nodiscard]] const Entry* inEdition(Rule rule, Edition edition) const;

    [[nodiscard]] Edition edition() const { return m_edition; }
    [[nodiscard]] Gas gas() const { return m_gas; }
    [[nodiscard]] calendar::Date on() const { return m_on; }

  private:
    const RuleBook& m_book;
    Edition m_edition;
    Gas m_gas;
    calendar::Date m_on;
};

}  // namespace hearth::rulebook
