// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QGridLayout>
#include <QPointer>
#include <QWidget>

#include <vector>

namespace hearth::ui::shell {

/// Fields in a grid of equal columns, filled row by row.
class Fields : public QWidget {
  public:
    Fields(int columns, QWidget* parent);
    void add(QWidget* field, int span = 1);
    /// The next field begins a new row.
    void breakRow();

  protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Cell {
        QPointer<QWidget> field;
        int span = 1;
        bool beginsRow = false;
        int row = -1;  // where it stands in the grid; -1: not there
        int column = 0;
    };
    /// Those in view one after the other: what is not asked leaves no hole.
    void arrange();
    void levelLabels();

    QGridLayout* m_grid;
    int m_columns;
    bool m_beginsRow = false;
    std::vector<Cell> m_cells;
};

}  // namespace hearth::ui::shell
