// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/flow_grid.h"

#include "ui/look/look.h"

#include <QWidget>

#include <algorithm>

namespace hearth::ui::workings {

namespace {

constexpr int kBetweenFields = look::kGap + look::kGap / 2;

/// Where a column begins (or, of the twelfth, ends with its gap); whole pixels that add up to the width.
int columnLeft(int column, int formWidth) {
    return column * (formWidth + kBetweenFields) / FlowGrid::kColumns;
}

int heightOf(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

}  // namespace

int FlowGrid::spanFor(int fieldWidth, int formWidth) {
    for (int span = 1; span < kColumns; ++span) {
        if (columnLeft(span, formWidth) - kBetweenFields >= fieldWidth) {
            return span;
        }
    }
    return kColumns;
}

void FlowGrid::place(const std::vector<Cell>& cells) {
    emptyOut(this);
    for (const Cell& cell : cells) {
        if (!cell.field->isHidden()) {
            addChildWidget(cell.field);
            m_placed.push_back({std::make_unique<QWidgetItem>(cell.field), cell.span, cell.startsLine});
        }
    }
    invalidate();
}

void FlowGrid::addItem(QLayoutItem* item) {
    m_placed.push_back({std::unique_ptr<QLayoutItem>(item), kColumns, true});
}

QLayoutItem* FlowGrid::itemAt(int index) const {
    return index >= 0 && index < count() ? m_placed[static_cast<std::size_t>(index)].item.get() : nullptr;
}

QLayoutItem* FlowGrid::takeAt(int index) {
    if (index < 0 || index >= count()) {
        return nullptr;
    }
    QLayoutItem* item = m_placed[static_cast<std::size_t>(index)].item.release();
    m_placed.erase(m_placed.begin() + index);
    return item;
}

void FlowGrid::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    std::vector<Put> puts;
    layOut(rect, &puts);
    // A field that gets another size may have the grid filled anew, or be gone.
    for (const Put& put : puts) {
        if (put.field) {
            put.field->setGeometry(put.where);
        }
    }
}

int FlowGrid::layOut(const QRect& rect, std::vector<Put>* puts) const {
    int top = rect.top();
    int column = 0;
    int lineHeight = 0;
    for (const Placed& placed : m_placed) {
        if (column > 0 && (placed.startsLine || column + placed.span > kColumns)) {
            top += lineHeight + kBetweenFields;
            column = 0;
            lineHeight = 0;
        }
        const int left = columnLeft(column, rect.width());
        const int width = columnLeft(column + placed.span, rect.width()) - kBetweenFields - left;
        const int height = heightOf(*placed.item, width);
        if (puts != nullptr) {
            puts->push_back({placed.item->widget(), QRect(rect.left() + left, top, width, height)});
        }
        lineHeight = std::max(lineHeight, height);
        column += placed.span;
    }
    return top + lineHeight - rect.top();
}

void emptyOut(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        delete item;
    }
}

}  // namespace hearth::ui::workings
