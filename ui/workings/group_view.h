// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"
#include "ui/workings/flow_grid.h"
#include "ui/workings/workings_model.h"

#include <QWidget>

#include <vector>

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace hearth::ui::workings {

struct WorkField {
    FieldAt at;
    input::Editor* editor;
};

/// The fields of one group of a question, made from the catalogue: those asked once as a form; rows as a
/// table with its heads where it is wide enough for that, else as a form each. An empty row stands below
/// those that hold something.
class GroupView : public QWidget {
    Q_OBJECT
  public:
    GroupView(WorkingsModel& model, const shell::Context& context, const judging::AskedGroup& group,
              QWidget* parent);

    [[nodiscard]] const std::vector<WorkField>& fields() const { return m_fields; }
    /// Shows what the sheet holds.
    void refill();
    /// After something was typed: rows come and go, fields that are of no use hide. True when the stops of
    /// the Tab key are others now.
    bool refresh();
    /// How wide the fields may be together.
    void setRoom(int width);

  private:
    struct Row {
        QLabel* name = nullptr;  // none where there is but one
        FlowGrid* form = nullptr;
        std::vector<input::Editor*> editors;
    };
    void addHeads();
    void addRow();
    void removeLastRow();
    [[nodiscard]] bool lastRowMayGo() const;
    void addField(Row& row, int number, reg::Item item);
    void nameField(const WorkField& field);
    void nameRows();
    void show(const WorkField& field);
    void keep(const FieldAt& at, input::Editor* editor);
    bool showAsked();
    void arrange();
    void arrangeTable();
    void arrangeForm(const Row& row);
    [[nodiscard]] QString rowName(int row) const;
    [[nodiscard]] bool isOnce() const { return m_group.group == judging::Group::Once; }

    WorkingsModel& m_model;
    const shell::Context& m_context;
    judging::AskedGroup m_group;
    QVBoxLayout* m_lines;
    QGridLayout* m_table = nullptr;  // empty while each row is a form
    bool m_isTable = false;
    int m_room = 0;
    std::vector<QLabel*> m_heads;
    std::vector<Row> m_rows;
    std::vector<WorkField> m_fields;
};

}  // namespace hearth::ui::workings
