// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rule_book.h"
#include "ui/shell/openers.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class LineList;
}

// Not ui::rulebook: within hearth::ui that name would hide the core's.
namespace hearth::ui::rules {

class EntrySheet;

/// The whole rule book: every limit with its value, source and provenance; the firm confirms or replaces one
/// from its own copy.
class RuleBookPlace : public shell::Place, public shell::RuleOpener {
    Q_OBJECT
  public:
    explicit RuleBookPlace(const shell::Context& context, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Rule book"); }
    [[nodiscard]] QString searchHint() const override { return tr("Find rules"); }
    [[nodiscard]] bool findsEverything() const override { return false; }
    void refresh() override;
    void takeFocus() override;
    void search(const QString& text) override;
    void openRule(const rulebook::RuleKey& key) override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void fillList();
    void show(int row);
    [[nodiscard]] bool isFound(const rulebook::Entry& entry) const;

    shell::Context m_context;
    QString m_search;
    shell::LineList* m_list = nullptr;
    EntrySheet* m_sheet = nullptr;
    std::vector<rulebook::Entry> m_entries;  // of the list's lines
};

}  // namespace hearth::ui::rules
