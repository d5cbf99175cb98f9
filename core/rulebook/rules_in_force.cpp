// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rules_in_force.h"

namespace hearth::rulebook {

namespace {

const Entry* ifKnown(const Entry* entry) {
    return entry != nullptr && entry->isKnown() ? entry : nullptr;
}

}  // namespace

const Entry* RulesInForce::find(Rule rule) const {
    const Entry* ofEdition = m_book.find({rule, m_edition, m_gas}, m_on);
    return ofEdition != nullptr ? ofEdition : m_book.find({rule, Edition::General, m_gas}, m_on);
}

const Entry* RulesInForce::known(Rule rule) const {
    return ifKnown(find(rule));
}

const Entry* RulesInForce::inEdition(Rule rule, Edition edition) const {
    return ifKnown(m_book.find({rule, edition, m_gas}));
}

}  // namespace hearth::rulebook
