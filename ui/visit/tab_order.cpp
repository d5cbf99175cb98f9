// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/tab_order.h"

#include <QWidget>

namespace hearth::ui::visit {

void chainTabStops(QWidget* root) {
    QWidget* before = nullptr;
    // findChildren() goes depth first, children in the order in which they were made.
    for (QWidget* widget : root->findChildren<QWidget*>()) {
        const bool isStop =
            (widget->focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget->focusProxy() == nullptr;
        if (!isStop) {
            continue;
        }
        if (before != nullptr) {
            QWidget::setTabOrder(before, widget);
        }
        before = widget;
    }
}

}  // namespace hearth::ui::visit
