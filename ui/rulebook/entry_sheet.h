// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class LineList;
class ValueFields;
}  // namespace hearth::ui::shell

namespace hearth::ui::rules {

class BandsForm;

/// One entry of the rule book: what it says, where it was read, what is doubtful; what the firm says of it,
/// and its history.
class EntrySheet : public shell::Sheet {
    Q_OBJECT
  public:
    EntrySheet(const shell::Context& context, QWidget* parent);
    void show(const rulebook::Entry& entry);
    void showNothing();
    void takeFocus();

  Q_SIGNALS:
    void saved();

  private:
    void addFacts();
    void addForm();
    void addHistory();
    void fillFacts();
    void fillForm();
    void fillHistory();
    void addFact(const QString& caption, const QString& text);
    void confirmSame();
    void saveOther();
    void save(const rulebook::Value& value);
    [[nodiscard]] bool hasName();
    /// Of several entries of one key for their own times, the firm's word is about the one in force.
    [[nodiscard]] bool isMeantToday() const;

    shell::Context m_context;
    rulebook::Entry m_entry{};
    bool m_meantToday = true;
    shell::Text* m_title = nullptr;
    shell::Text* m_value = nullptr;
    QWidget* m_facts = nullptr;
    QGridLayout* m_factGrid = nullptr;
    QWidget* m_form = nullptr;
    input::Editor* m_by = nullptr;
    input::Editor* m_copy = nullptr;
    shell::Text* m_when = nullptr;
    shell::KeyButton* m_same = nullptr;
    shell::ValueFields* m_fields = nullptr;
    BandsForm* m_bands = nullptr;
    shell::KeyButton* m_save = nullptr;
    QWidget* m_historyPart = nullptr;
    shell::LineList* m_history = nullptr;
};

}  // namespace hearth::ui::rules
