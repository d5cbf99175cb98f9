// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rule_book.h"

#include "core/rulebook/firm_value.h"

#include <algorithm>

namespace hearth::rulebook {

namespace {

bool mayJudgeOn(const Entry& entry, calendar::Date on) {
    return (!entry.appliesFrom || *entry.appliesFrom <= on) && (!entry.appliesTo || on <= *entry.appliesTo);
}

}  // namespace

Result<void> RuleBook::lay(const FirmEntry& firm) {
    const auto entry = std::find_if(m_entries.begin(), m_entries.end(),
                                    [&](const Entry& shipped) { return shipped.key == firm.key; });
    const std::string code(ruleText(firm.key.rule));
    if (entry == m_entries.end()) {
        return fail(ErrorCode::RuleUnknown, {code});
    }
    if (const auto wrong = faultOf(firm.key.rule, firm.value)) {
        return fail(ErrorCode::RuleValueUnusable, {code, std::string(*wrong)});
    }
    entry->value = firm.value;
    entry->provenance = Provenance::Firm;
    entry->confirmedBy = firm.confirmedBy;
    entry->confirmedOn = firm.confirmedOn;
    entry->fromCopy = firm.fromCopy;
    return {};
}

const Entry* RuleBook::find(const RuleKey& key) const {
    const Entry* forAnyGas = nullptr;
    for (const auto& entry : m_entries) {
        if (entry.key.rule != key.rule || entry.key.edition != key.edition) {
            continue;
        }
        if (entry.key.gas == key.gas) {
            return &entry;
        }
        if (!entry.key.gas) {
            forAnyGas = &entry;
        }
    }
    return forAnyGas;
}

const Entry* RuleBook::find(const RuleKey& key, calendar::Date on) const {
    const Entry* entry = find(key);
    return entry != nullptr && mayJudgeOn(*entry, on) ? entry : nullptr;
}

}  // namespace hearth::rulebook
