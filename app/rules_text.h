// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "ui/words/words.h"

#include <QStringList>

namespace hearth::app {

enum class RulesShown { All, Unconfirmed };

/// Whether an entry waits for the firm's own copy: it has no value, or what it has is neither published nor
/// confirmed by the firm nor the maker's.
[[nodiscard]] bool isUnconfirmed(const rulebook::Entry& entry);

/// The rule book as a table for a terminal, one entry a line: rule, edition, gas, value, provenance, and
/// where it was read with what is doubtful about it. Lines that hold each of `narrowing`, in whatever case;
/// empty when there are none.
[[nodiscard]] QString rulesText(const rulebook::RuleBook& book, RulesShown shown,
                                const QStringList& narrowing, const ui::words::Words& words);

}  // namespace hearth::app
