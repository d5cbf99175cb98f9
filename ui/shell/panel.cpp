// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/panel.h"

#include "ui/shell/kit.h"

#include <QKeyEvent>

namespace hearth::ui::shell {

Panel::Panel(QWidget* parent) : QWidget(parent), m_sheet(new Sheet(this)) {
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, look::kGap);
    around->addWidget(m_sheet);
}

QVBoxLayout* Panel::lines() const {
    return m_sheet->lines();
}

QWidget* Panel::closeButton() {
    auto* close = new KeyButton(tr("Close"), ButtonKind::Plain, this);
    close->setObjectName(QStringLiteral("closePanelButton"));
    close->showKey(QStringLiteral("Esc"));  // the panel's own key, so that it works from a field too
    connect(close, &QPushButton::clicked, this, &Panel::closed);
    return close;
}

void Panel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace hearth::ui::shell
