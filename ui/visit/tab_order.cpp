// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/tab_order.h"

#include "ui/shell/kit.h"

#include <QWidget>

namespace hearth::ui::visit {

std::vector<QWidget*> chainTabStops(QWidget* root) {
    std::vector<QWidget*> stops;
    // findChildren() goes depth first, children in the order in which they were made.
    for (QWidget* widget : root->findChildren<QWidget*>()) {
        const bool isStop =
            (widget->focusPolicy() & Qt::TabFocus) == Qt::TabFocus && widget->focusProxy() == nullptr;
        if (!isStop || widget->window() != root->window()) {  // a list that opens is a window of its own
            continue;
        }
        stops.push_back(widget);
    }
    shell::chainTabs(stops);
    return stops;
}

}  // namespace hearth::ui::visit
