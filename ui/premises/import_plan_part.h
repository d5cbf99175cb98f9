// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/premises/import_work.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

class QCheckBox;

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::premises {

/// What an import would do, row by row, with what is doubtful about each; what is to happen is chosen here.
class ImportPlanPart : public QWidget {
    Q_OBJECT
  public:
    ImportPlanPart(const shell::Context& context, ImportWork& work, QWidget* parent);
    /// Shows the plan as it is now.
    void refresh();
    void takeFocus();

  Q_SIGNALS:
    /// Something was chosen: plan again, then refresh().
    void chosen();

  private:
    void addButtons(QVBoxLayout* lines);
    void showRow();
    void choose(exchange::RowChoice choice);
    void chooseForAllDoubtful();
    [[nodiscard]] const exchange::PlannedRow* current() const;

    shell::Context m_context;
    ImportWork& m_work;
    shell::Text* m_summary;
    shell::Text* m_file;
    input::Editor* m_duplicates;
    QCheckBox* m_onlyDoubtful;
    shell::LineList* m_rows;
    shell::Text* m_row;
    shell::KeyButton* m_take;
    shell::KeyButton* m_leave;
    shell::KeyButton* m_takeAll;
    std::vector<std::size_t> m_shown;  // rows of the plan, by line of the list
};

}  // namespace hearth::ui::premises
