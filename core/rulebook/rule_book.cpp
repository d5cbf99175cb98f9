// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rule_book.h"

#include "core/rulebook/firm_value.h"

#include <cstddef>

namespace hearth::rulebook {

namespace {

bool mayJudgeOn(const Entry& entry, calendar::Date on) {
    return (!entry.appliesFrom || *entry.appliesFrom <= on) && (!entry.appliesTo || on <= *entry.appliesTo);
}

/// Whether `entry` came after `other`: what always applied came first.
bool isNewer(const Entry& entry, const Entry& other) {
    return entry.appliesFrom && (!other.appliesFrom || *entry.appliesFrom > *other.appliesFrom);
}

/// Of the entries of exactly that key the newest, and only of those in force where a day is given.
const Entry* newestOf(const std::vector<Entry>& entries, const RuleKey& key,
                      std::optional<calendar::Date> on = std::nullopt) {
    const Entry* newest = nullptr;
    for (const auto& entry : entries) {
        if (entry.key == key && (!on || mayJudgeOn(entry, *on)) &&
            (newest == nullptr || isNewer(entry, *newest))) {
            newest = &entry;
        }
    }
    return newest;
}

}  // namespace

Result<void> RuleBook::lay(const FirmEntry& firm) {
    const Entry* meant = meantOn(firm.key, firm.confirmedOn);
    const std::string code(ruleText(firm.key.rule));
    if (meant == nullptr) {
        return fail(ErrorCode::RuleUnknown, {code});
    }
    if (const auto wrong = faultOf(firm.key.rule, firm.value)) {
        return fail(ErrorCode::RuleValueUnusable, {code, std::string(*wrong)});
    }
    Entry& entry = m_entries[static_cast<std::size_t>(meant - m_entries.data())];
    entry.value = firm.value;
    entry.provenance = Provenance::Firm;
    entry.confirmedBy = firm.confirmedBy;
    entry.confirmedOn = firm.confirmedOn;
    entry.fromCopy = firm.fromCopy;
    return {};
}

const Entry* RuleBook::find(const RuleKey& key) const {
    const Entry* ofGas = newestOf(m_entries, key);
    return ofGas != nullptr ? ofGas : newestOf(m_entries, {key.rule, key.edition, std::nullopt});
}

const Entry* RuleBook::find(const RuleKey& key, calendar::Date on) const {
    // An entry of the gas itself that is not in force does not let the one for any gas speak instead.
    const bool hasOfGas = newestOf(m_entries, key) != nullptr;
    return newestOf(m_entries, hasOfGas ? key : RuleKey{key.rule, key.edition, std::nullopt}, on);
}

const Entry* RuleBook::meantOn(const RuleKey& key, calendar::Date on) const {
    const Entry* inForce = newestOf(m_entries, key, on);
    return inForce != nullptr ? inForce : newestOf(m_entries, key);
}

}  // namespace hearth::rulebook
