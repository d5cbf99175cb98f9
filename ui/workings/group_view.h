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

/// The fields of one group of a question, made from the catalogue: those asked once as a form; rows of few
/// fields as a table with its heads; rows of many as a form each. An empty row stands below those that hold
/// something.
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

  private:
    /// A row of the table or a form of its own.
    struct Row {
        QLabel* name = nullptr;
        FlowGrid* form = nullptr;  // none in a table
        std::vector<input::Editor*> editors;
    };
    void addHeads();
    void addRow();
    void removeLastRow();
    [[nodiscard]] bool lastRowMayGo() const;
    input::Editor* addField(QWidget* parent, int row, reg::Item item);
    void show(const WorkField& field);
    void keep(const FieldAt& at, input::Editor* editor);
    bool showAsked();
    [[nodiscard]] bool isTable() const;
    [[nodiscard]] bool isOnce() const { return m_group.group == judging::Group::Once; }

    WorkingsModel& m_model;
    const shell::Context& m_context;
    judging::AskedGroup m_group;
    QVBoxLayout* m_lines;
    QGridLayout* m_table = nullptr;
    std::vector<QLabel*> m_heads;
    std::vector<Row> m_rows;
    std::vector<WorkField> m_fields;
};

}  // namespace hearth::ui::workings
