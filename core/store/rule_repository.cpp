// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rule_repository.h"

#include "core/record/rule_json.h"

#include <string_view>

namespace hearth::store {
namespace {

constexpr std::string_view kSelectEntries =
    "SELECT rule, edition, gas, value, confirmed_by, confirmed_on, from_copy FROM firm_entries ";

std::string gasCode(const rulebook::RuleKey& key) {
    return key.gas ? std::string(rulebook::gasText(*key.gas)) : std::string();
}

/// Nothing for a rule, edition or gas that this program does not know.
std::optional<rulebook::FirmEntry> firmEntryOf(const Columns& columns) {
    const auto rule = rulebook::ruleFromText(columns.text(0));
    const auto edition = rulebook::editionFromText(columns.text(1));
    const auto gas = rulebook::gasFromText(columns.text(2));
    if (!rule || !edition || (!gas && !columns.text(2).empty())) {
        return std::nullopt;
    }
    auto value = record::ruleValueFromJson(columns.text(3));
    const auto confirmedOn = calendar::fromIso(columns.text(5));
    if (!value || !confirmedOn) {
        columns.notUnderstood("firm_entries: " + columns.text(0));
    }
    return rulebook::FirmEntry{
        {*rule, *edition, gas}, std::move(*value), columns.text(4), *confirmedOn, columns.text(6)};
}

std::vector<rulebook::FirmEntry> readEntries(const Connection& db, std::string_view where,
                                             const Cells& values) {
    std::vector<rulebook::FirmEntry> entries;
    db.query(std::string(kSelectEntries) + std::string(where), values, [&](const Columns& columns) {
        if (auto entry = firmEntryOf(columns)) {
            entries.push_back(std::move(*entry));
        }
    });
    return entries;
}

}  // namespace

rulebook::RuleBook readRuleBook(const Connection& db) {
    auto book = rulebook::RuleBook::shipped();
    for (const auto& entry : readEntries(db, "ORDER BY position", {})) {
        const auto laid = book.lay(entry);
        if (!laid && laid.error().code != ErrorCode::RuleUnknown) {  // shipped no more, or not yet
            throw Failure(laid.error());
        }
    }
    return book;
}

void saveFirmEntry(Session& session, const rulebook::FirmEntry& entry) {
    auto book = rulebook::RuleBook::shipped();
    valueOrThrow(book.lay(entry));
    Transaction transaction(session.db);
    session.db.run(
        "INSERT INTO firm_entries (id, position, rule, edition, gas, value, confirmed_by, confirmed_on, "
        "from_copy, "
        "saved_by, saved_at) "
        "VALUES (?, (SELECT coalesce(max(position), 0) + 1 FROM firm_entries), ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {session.newId(), std::string(rulebook::ruleText(entry.key.rule)),
         std::string(rulebook::editionText(entry.key.edition)), gasCode(entry.key),
         record::ruleValueJson(entry.value), entry.confirmedBy, calendar::isoText(entry.confirmedOn),
         entry.fromCopy, session.actor, instantText(session.clock.now())});
    transaction.commit();
}

std::vector<rulebook::FirmEntry> readRuleHistory(const Connection& db, const rulebook::RuleKey& key) {
    return readEntries(db, "WHERE rule = ? AND edition = ? AND gas = ? ORDER BY position",
                       {std::string(rulebook::ruleText(key.rule)),
                        std::string(rulebook::editionText(key.edition)), gasCode(key)});
}

}  // namespace hearth::store
