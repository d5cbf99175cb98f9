// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/flow_grid.h"

#include "ui/look/look.h"

#include <QGridLayout>

namespace hearth::ui::workings {

FlowGrid::FlowGrid(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(look::kGap + look::kGap / 2);
    m_grid->setVerticalSpacing(look::kGap + look::kGap / 2);
    for (int column = 0; column < kColumns; ++column) {
        m_grid->setColumnStretch(column, 1);
        m_grid->setColumnMinimumWidth(column, 1);
    }
}

void FlowGrid::add(QWidget* field, int span) {
    m_cells.push_back({field, span});
}

void FlowGrid::arrange() {
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        delete item;  // the field itself stays
    }
    int row = 0;
    int column = 0;
    for (const Cell& cell : m_cells) {
        if (cell.field->isHidden()) {
            continue;
        }
        if (column + cell.span > kColumns) {
            ++row;
            column = 0;
        }
        m_grid->addWidget(cell.field, row, column, 1, cell.span, Qt::AlignTop);
        column += cell.span;
    }
}

}  // namespace hearth::ui::workings
