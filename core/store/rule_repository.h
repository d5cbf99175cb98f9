// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "core/store/session.h"

#include <vector>

/// The firm's word on rule book entries: only ever added to. Everything throws Failure.
namespace hearth::store {

/// The shipped entries with the firm's newest word on each. A word on a rule that this program does not know
/// is kept and left out.
[[nodiscard]] rulebook::RuleBook readRuleBook(const Connection& db);
/// Throws RuleUnknown and RuleValueUnusable before anything is kept.
void saveFirmEntry(Session& session, const rulebook::FirmEntry& entry);
/// Oldest first.
[[nodiscard]] std::vector<rulebook::FirmEntry> readRuleHistory(const Connection& db,
                                                               const rulebook::RuleKey& key);

}  // namespace hearth::store
