// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/news_bar.h"

#include "ui/shell/kit.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QPainter>

namespace hearth::ui::shell {

NewsBar::NewsBar(QWidget* parent)
    : QWidget(parent), m_text(new Text({}, look::TypeRole::Body, look::Role::LookAgain, this)) {
    setObjectName(QStringLiteral("newsBar"));
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(2 * look::kGap, look::kGap / 2, 2 * look::kGap, look::kGap / 2);
    box->setSpacing(look::kGap);
    m_text->setObjectName(QStringLiteral("newsText"));
    m_text->setWordWrap(true);
    box->addWidget(m_text, 1);
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
    m_text->setText(text);
    m_text->setAccessibleName(text);
    setVisible(true);
    QAccessibleEvent alert(m_text, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString NewsBar::text() const {
    return m_text->text();
}

void NewsBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(look::Role::LookAgainGround, currentScheme()));
}

}  // namespace hearth::ui::shell
