// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/premises/import_columns_part.h"
#include "ui/premises/import_plan_part.h"
#include "ui/premises/import_work.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::premises {

/// Taking over somebody's spreadsheet in four steps: the file, its columns, what would happen, done. Nothing
/// is written before the third is left, and one undo takes all of it back.
class ImportAssistant : public QWidget {
    Q_OBJECT
  public:
    explicit ImportAssistant(const shell::Context& context, QWidget* parent);
    /// Begins with choosing a file.
    void start();
    /// Begins with this one.
    void startWith(const QString& path);
    /// Commits the field under the cursor.
    void commit();
    void takeFocus();

  Q_SIGNALS:
    /// Escape, or the last step left.
    void closed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    enum class Step { File, Columns, Plan, Done };
    void go(Step step);
    void chooseFile();
    void read();
    void readAgain();
    void planColumns();
    /// False: it could not be planned, and why was told.
    bool plan();
    void takeOver();
    void undo();
    void writeRest();
    [[nodiscard]] QWidget* page(Step step);
    [[nodiscard]] QWidget* filePage();
    [[nodiscard]] QWidget* donePage();
    void addButtons(Step step, QVBoxLayout* lines);

    shell::Context m_context;
    ImportWork m_work;
    Step m_step = Step::File;
    bool m_undone = false;
    shell::Sheet* m_sheet;
    QWidget* m_page = nullptr;
    ImportColumnsPart* m_columns = nullptr;
    ImportPlanPart* m_planned = nullptr;
};

}  // namespace hearth::ui::premises
