// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/openers.h"
#include "ui/shell/place.h"

class QStackedLayout;

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::premises {

class ImportAssistant;
class PremisesSheet;

/// Where the firm works, and for whom: a list with search, and the sheet of one premises, edited in place.
class PremisesPlace : public shell::Place, public shell::PremisesOpener {
    Q_OBJECT
  public:
    explicit PremisesPlace(const shell::Context& context, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Premises"); }
    [[nodiscard]] QString searchHint() const override { return tr("Find premises"); }
    void refresh() override;
    void commit() override;
    void takeFocus() override;
    void takeFound() override;
    [[nodiscard]] rulebook::Gas gas() const override;
    [[nodiscard]] std::optional<reg::Country> country() const override;
    void search(const QString& text) override;
    void openPremises(reg::PremisesId id) override;
    /// An empty sheet; it becomes premises with the first field that is kept.
    void startNew();
    /// Opens the assistant that takes over a spreadsheet; with a path it begins with that file.
    void startImport(const QString& path = {});

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void fillList();
    void show(int row);
    void sayMore(bool isMore);
    void addFileButtons(std::vector<QWidget*>& left, QWidget* browse);
    void endImport();

    shell::Context m_context;
    QString m_search;
    bool m_saysMore = false;
    shell::LineList* m_list = nullptr;
    PremisesSheet* m_sheet = nullptr;
    QStackedLayout* m_views = nullptr;  // the list with its sheet, or the assistant
    ImportAssistant* m_import = nullptr;
    QString m_beforeNew;  // the line that was in view when new premises were begun
};

}  // namespace hearth::ui::premises
