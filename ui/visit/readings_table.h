// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"
#include "ui/visit/stage_timer.h"

#include <QWidget>

#include <functional>
#include <vector>

class QGridLayout;

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::visit {

/// Readings as taken: a row a stage with its start, its end, the change between them and the times of day.
class ReadingsTable : public QWidget {
    Q_OBJECT
  public:
    /// `make` makes the field of an item on the part that the table belongs to.
    using MakeField = std::function<SheetField*(QWidget* parent, reg::Item item)>;
    ReadingsTable(const SheetContext& context, reg::SubjectRef test, const MakeField& make, QWidget* parent);

    /// Changes, and the row of the repeat where it is wanted.
    void refresh(bool retestWanted);
    /// What stands as the change of a stage: "−0.04 mbar"; empty while a reading is missing.
    [[nodiscard]] QString changeOf(Stage stage) const;

  Q_SIGNALS:
    /// Somebody begins to type the end reading of a stage.
    void endBegun(hearth::ui::visit::Stage stage);

  private:
    struct Row {
        Stage stage = Stage::LetBy;
        QWidget* name = nullptr;
        std::vector<input::Editor*> editors;
        shell::Text* change = nullptr;
    };
    void addHeads();
    void addRow(Stage stage, const QString& name, const MakeField& make);
    [[nodiscard]] QString change(reg::Item start, reg::Item end) const;

    SheetContext m_context;
    reg::SubjectRef m_test;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
};

}  // namespace hearth::ui::visit
