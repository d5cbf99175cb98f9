// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/fields.h"

#include "ui/look/look.h"

#include <QCoreApplication>
#include <QEvent>
#include <QFontMetrics>
#include <QLabel>
#include <QResizeEvent>

#include <algorithm>
#include <map>
#include <utility>

namespace hearth::ui::shell {

Fields::Fields(int columns, QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout(this)), m_columns(columns) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(2 * look::kGap);
    m_grid->setVerticalSpacing(look::kGap);
    for (int column = 0; column < columns; ++column) {
        m_grid->setColumnStretch(column, 1);
        m_grid->setColumnMinimumWidth(column, 1);
    }
}

void Fields::add(QWidget* field, int span) {
    m_cells.push_back({field, span, std::exchange(m_beginsRow, false)});
    if (field->parentWidget() != this) {
        field->setParent(this);
    }
    field->installEventFilter(this);
    arrange();
}

void Fields::breakRow() {
    m_beginsRow = true;
}

bool Fields::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) {
        arrange();
    } else if (const auto* resize = dynamic_cast<QResizeEvent*>(event);
               resize != nullptr && resize->size().width() != resize->oldSize().width()) {
        // Its label may now take fewer lines, or more: looked at once all of them have their widths.
        QCoreApplication::postEvent(this, new QEvent(QEvent::LayoutRequest));
    }
    return QWidget::eventFilter(watched, event);
}

/// A row has the number of the field that begins it: rows below one that goes stay where they are, and those
/// with nothing in them take no room.
void Fields::arrange() {
    int row = -1;
    int column = 0;
    for (std::size_t index = 0; index < m_cells.size(); ++index) {
        Cell& cell = m_cells[index];
        if (cell.field == nullptr) {
            continue;
        }
        // Of a window that is open, what was just made counts as hidden until it is shown.
        const bool isLeftOut =
            cell.field->isHidden() && cell.field->testAttribute(Qt::WA_WState_ExplicitShowHide);
        if (!isLeftOut && (row < 0 || cell.beginsRow || column + cell.span > m_columns)) {
            row = static_cast<int>(index);
            column = 0;
        }
        const int wantedRow = isLeftOut ? -1 : row;
        if (cell.row != wantedRow || (wantedRow >= 0 && cell.column != column)) {
            m_grid->removeWidget(cell.field);
            cell.row = wantedRow;
            cell.column = column;
            if (!isLeftOut) {
                m_grid->addWidget(cell.field, row, column, 1, cell.span, Qt::AlignTop);
            }
        }
        column += isLeftOut ? 0 : cell.span;
    }
}

bool Fields::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest) {
        levelLabels();
    }
    return done;
}

/// Where one label of a row takes two lines all get as much room, so that their fields stand level.
void Fields::levelLabels() {
    std::map<int, std::vector<QLabel*>> rows;
    for (const Cell& cell : m_cells) {
        auto* label =
            cell.field == nullptr || cell.row < 0
                ? nullptr
                : cell.field->findChild<QLabel*>(QStringLiteral("fieldLabel"), Qt::FindDirectChildrenOnly);
        if (label != nullptr && !label->isHidden()) {
            rows[cell.row].push_back(label);
        }
    }
    for (const auto& [row, labels] : rows) {
        int high = 0;
        for (const QLabel* label : labels) {
            // By its text: what it would ask for itself is never less than what it was given before.
            const QRect box = label->fontMetrics().boundingRect(QRect(0, 0, label->width(), QWIDGETSIZE_MAX),
                                                                Qt::TextWordWrap, label->text());
            high = std::max(high, labels.size() > 1 ? box.height() : 0);
        }
        for (QLabel* label : labels) {
            if (label->minimumHeight() != high) {
                label->setMinimumHeight(high);
            }
        }
    }
}

}  // namespace hearth::ui::shell
