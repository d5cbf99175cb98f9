// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/band.h"

#include "ui/shell/kit.h"

#include <QFontMetrics>
#include <QPainter>

namespace hearth::ui::shell {

Band::Band(const QString& text, look::Role ground, look::Role ink, QWidget* parent)
    : QWidget(parent), m_text(text), m_ground(ground), m_ink(ink) {
    setFixedHeight(QFontMetrics(strongFont()).height() + look::kGap);
    setAccessibleName(text);
    setToolTip(text);
}

void Band::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(m_ground, currentScheme()));
    painter.setPen(look::colour(m_ink, currentScheme()));
    painter.setFont(strongFont());
    const QRect box = rect().adjusted(2 * look::kGap, 0, -2 * look::kGap, 0);
    painter.drawText(box, Qt::AlignVCenter | Qt::AlignLeft,
                     QFontMetrics(painter.font()).elidedText(m_text, Qt::ElideRight, box.width()));
}

}  // namespace hearth::ui::shell
