// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/openers.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::records {

class RecordSheet;

/// The issued records: a list with search, and the pages of one.
class RecordsPlace : public shell::Place, public shell::RecordOpener {
    Q_OBJECT
  public:
    explicit RecordsPlace(const shell::Context& context, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Records"); }
    [[nodiscard]] QString searchHint() const override { return tr("Find records"); }
    void refresh() override;
    void takeFocus() override;
    void search(const QString& text) override;
    void openRecord(store::RecordId id) override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void fillList();
    void show(int row);
    void check();

    shell::Context m_context;
    QString m_search;
    shell::LineList* m_list = nullptr;
    RecordSheet* m_sheet = nullptr;
    std::vector<store::RecordId> m_ids;
};

}  // namespace hearth::ui::records
