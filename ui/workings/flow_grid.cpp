// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/flow_grid.h"

#include "ui/look/look.h"

#include <QWidget>

#include <algorithm>

namespace hearth::ui::workings {

namespace {

constexpr int kBetweenFields = look::kGap + look::kGap / 2;

}  // namespace

int FlowGrid::spanFor(int fieldWidth, int formWidth) {
    const int column = (formWidth + kBetweenFields) / kColumns;  // with its gap
    const int columns = (fieldWidth + kBetweenFields + column - 1) / std::max(column, 1);
    return std::clamp(columns, 1, kColumns);
}

FlowGrid::FlowGrid() {
    setContentsMargins(0, 0, 0, 0);
    setHorizontalSpacing(kBetweenFields);
    setVerticalSpacing(kBetweenFields);
    for (int column = 0; column < kColumns; ++column) {
        setColumnStretch(column, 1);
        setColumnMinimumWidth(column, 1);
    }
}

void FlowGrid::place(const std::vector<Cell>& cells) {
    emptyOut(this);
    int row = 0;
    int column = 0;
    for (const Cell& cell : cells) {
        if (cell.field->isHidden()) {
            continue;
        }
        if (column > 0 && (cell.startsLine || column + cell.span > kColumns)) {
            ++row;
            column = 0;
        }
        addWidget(cell.field, row, column, 1, cell.span, Qt::AlignTop);
        column += cell.span;
    }
}

void emptyOut(QGridLayout* grid) {
    while (QLayoutItem* item = grid->takeAt(0)) {
        delete item;
    }
}

}  // namespace hearth::ui::workings
