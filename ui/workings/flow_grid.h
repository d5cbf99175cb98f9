// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <vector>

class QGridLayout;

namespace hearth::ui::workings {

/// Fields side by side in twelve equal columns, one line after another. What is hidden leaves no gap.
class FlowGrid : public QWidget {
  public:
    explicit FlowGrid(QWidget* parent);
    /// `span`: of the twelve columns.
    void add(QWidget* field, int span);
    /// After fields were shown or hidden.
    void arrange();

    static constexpr int kColumns = 12;

  private:
    struct Cell {
        QWidget* field;
        int span;
    };
    QGridLayout* m_grid;
    std::vector<Cell> m_cells;
};

}  // namespace hearth::ui::workings
