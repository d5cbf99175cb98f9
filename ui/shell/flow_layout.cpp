// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/flow_layout.h"

#include <QWidget>

#include <cstddef>

namespace hearth::ui::shell {

FlowLayout::FlowLayout(QWidget* parent, int gap) : QLayout(parent), m_gap(gap) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (auto* item : m_items) {
        delete item;
    }
}

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item != nullptr) {
        m_items.erase(m_items.begin() + index);
    }
    return item;
}

QSize FlowLayout::sizeHint() const {
    int width = 0;
    for (const auto* item : m_items) {
        width += item->isEmpty() ? 0 : item->sizeHint().width() + m_gap;
    }
    return {width, minimumSize().height()};
}

QSize FlowLayout::minimumSize() const {
    QSize least;
    for (const auto* item : m_items) {
        least = least.expandedTo(item->isEmpty() ? QSize() : item->minimumSize());
    }
    return least;
}

void FlowLayout::setGeometry(const QRect& box) {
    QLayout::setGeometry(box);
    (void)flow(box, true);
}

int FlowLayout::flow(const QRect& box, bool place) const {
    int x = box.left();
    int y = box.top();
    int high = 0;
    for (auto* item : m_items) {
        if (item->isEmpty()) {
            continue;
        }
        const QSize size = item->sizeHint();
        if (x > box.left() && x + size.width() > box.left() + box.width()) {
            x = box.left();
            y += high + m_gap;
            high = 0;
        }
        if (place) {
            item->setGeometry({{x, y}, size});
        }
        x += size.width() + m_gap;
        high = qMax(high, size.height());
    }
    return y + high - box.top();
}

}  // namespace hearth::ui::shell
