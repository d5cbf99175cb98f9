// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/news_bar.h"

#include "ui/shell/kit.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QPainter>

namespace hearth::ui::shell {

NewsBar::NewsBar(QWidget* parent) : QWidget(parent), m_room(new QWidget(this)) {
    setObjectName(QStringLiteral("newsBar"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(2 * look::kGap, look::kGap / 2, 2 * look::kGap, look::kGap / 2);
    box->setSpacing(look::kGap);
    m_room->setAttribute(Qt::WA_TransparentForMouseEvents);
    box->addWidget(m_room, 1);
    const auto add = [this, box](const QString& words, const QKeySequence& key, const char* name) {
        auto* button = new KeyButton(words, key, ButtonKind::Plain, this);
        button->setObjectName(QString::fromLatin1(name));
        box->addWidget(button);
        return button;
    };
    connect(add(tr("Show them"), QKeySequence(Qt::Key_F8), "showNewsButton"), &QPushButton::clicked, this,
            &NewsBar::shown);
    connect(add(tr("Put away"), QKeySequence(Qt::SHIFT | Qt::Key_F8), "putNewsAwayButton"),
            &QPushButton::clicked, this, &NewsBar::putAway);
    hide();
}

void NewsBar::tell(const QString& text) {
    m_text = text;
    setAccessibleName(text);
    setToolTip(text);
    setVisible(true);
    update();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void NewsBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(look::Role::LookAgainGround, currentScheme()));
    painter.setPen(look::colour(look::Role::LookAgain, currentScheme()));
    painter.setFont(look::font(look::TypeRole::Body));
    const QRect room = m_room->geometry();
    painter.drawText(room, Qt::AlignVCenter | Qt::AlignLeft,
                     QFontMetrics(painter.font()).elidedText(m_text, Qt::ElideRight, room.width()));
}

}  // namespace hearth::ui::shell
