// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "ui/input/editor.h"
#include "ui/words/words.h"

#include <QWidget>

#include <optional>

namespace hearth::ui::shell {

class ValueFields;

/// One entry of the rule book, to be held against one's own copy of the standard: what it says, where that
/// was read and how good that is, and the answer: the same, another value, or later.
class RuleAnswer : public QWidget {
    Q_OBJECT
  public:
    enum class Answer { Later, Same, Other };

    RuleAnswer(const words::Words& words, const rulebook::Entry& entry, QWidget* parent);
    [[nodiscard]] const rulebook::RuleKey& key() const { return m_entry.key; }
    [[nodiscard]] Answer answer() const { return m_answer; }
    /// What the firm says by it. Nothing for later, and nothing when the value typed can't be used
    /// (isUsable() says so and puts the focus there).
    [[nodiscard]] std::optional<rulebook::Value> value();
    [[nodiscard]] bool isUsable();
    [[nodiscard]] input::Editor* choice() const { return m_choice; }
    [[nodiscard]] ValueFields* fields() const { return m_fields; }

  private:
    void choose(const QString& code);

    rulebook::Entry m_entry;
    Answer m_answer = Answer::Later;
    input::Editor* m_choice = nullptr;
    ValueFields* m_fields = nullptr;
};

/// How an entry is known: its provenance in a word; for an empty one, that the firm has to enter it.
[[nodiscard]] QString ruleStanding(const words::Words& words, const rulebook::Entry& entry);

/// When an entry applies: "from 6 April 2025"; empty when always.
[[nodiscard]] QString ruleTimes(const words::Words& words, const rulebook::Entry& entry);

/// Rule, edition and gas in one line, for headings and lists: "Scope: volume · IGEM/UP/1B Edition 4 · natural
/// gas".
[[nodiscard]] QString ruleHeading(const words::Words& words, const rulebook::RuleKey& key);

}  // namespace hearth::ui::shell
