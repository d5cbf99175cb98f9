// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/openers.h"
#include "ui/shell/place.h"

#include <vector>

class QStackedLayout;

namespace hearth::ui::shell {
class LineList;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

class VisitSheet;
class VisitSheetModel;

/// Visits: the list, open drafts first; Enter opens one as its sheet, Escape comes back to the list.
class VisitsPlace : public shell::Place, public shell::VisitOpener {
    Q_OBJECT
  public:
    explicit VisitsPlace(const shell::Context& context, QWidget* parent = nullptr);
    ~VisitsPlace() override;

    [[nodiscard]] QString title() const override { return tr("Visits"); }
    void refresh() override;
    void commit() override;
    void takeFocus() override;
    [[nodiscard]] rulebook::Gas gas() const override;
    [[nodiscard]] std::optional<reg::Country> country() const override;
    void search(const QString& text) override;
    void openVisit(reg::VisitId id) override;

    /// The sheet in view; nothing while the list is.
    [[nodiscard]] VisitSheet* sheet() const;
    [[nodiscard]] VisitSheetModel* model() const { return m_model; }
    [[nodiscard]] shell::LineList* list() const { return m_list; }

  private:
    void build();
    void showList();
    void fillList();
    [[nodiscard]] QString stateOfOpen(const reg::Visit& visit, bool judges) const;
    void refuse(const Error& error);

    shell::Context m_context;
    VisitSheetModel* m_model = nullptr;
    QStackedLayout* m_pages = nullptr;
    QWidget* m_listPage = nullptr;
    shell::Text* m_refused = nullptr;
    shell::LineList* m_list = nullptr;
    VisitSheet* m_sheet = nullptr;
    QString m_search;
    std::vector<reg::VisitId> m_visits;  // by line
};

}  // namespace hearth::ui::visit
