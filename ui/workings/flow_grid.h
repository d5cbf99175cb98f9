// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGridLayout>

#include <vector>

namespace hearth::ui::workings {

/// Fields side by side in twelve equal columns, one line after another. What is hidden leaves no gap.
class FlowGrid : public QGridLayout {
  public:
    static constexpr int kColumns = 12;
    /// How many columns of a form hold a field.
    [[nodiscard]] static int spanFor(int fieldWidth, int formWidth);

    struct Cell {
        QWidget* field;
        int span;  // of the twelve columns
        bool startsLine = false;
    };

    FlowGrid();
    /// Instead of what it holds.
    void place(const std::vector<Cell>& cells);
};

/// Takes everything out; the widgets themselves stay.
void emptyOut(QGridLayout* grid);

}  // namespace hearth::ui::workings
