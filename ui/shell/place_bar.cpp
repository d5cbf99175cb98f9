// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/place_bar.h"

#include "ui/shell/kit.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace hearth::ui::shell {

namespace {
constexpr int kUnderline = 3;
constexpr int kShortName = 8;  // letters of a place's name that stay where the window is narrow

int barHeight() {
    return QFontMetrics(look::font(look::TypeRole::Body)).height() + 3 * look::kGap + 2;
}
}  // namespace

PlaceTab::PlaceTab(const QString& title, int number, QWidget* parent) : QAbstractButton(parent) {
    setText(title);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setFont(look::font(look::TypeRole::Body));
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    setAccessibleName(title);
    setAccessibleDescription(QStringLiteral("Ctrl+%1").arg(number));
    setToolTip(QStringLiteral("%1, Ctrl+%2").arg(title).arg(number));
}

QSize PlaceTab::sizeHint() const {
    return {QFontMetrics(strongFont()).horizontalAdvance(text()) + 3 * look::kGap, barHeight()};
}

/// Letters may be large and the window small: the names move together, then only their ends are cut.
QSize PlaceTab::minimumSizeHint() const {
    const QFontMetrics metrics(strongFont());
    const int name = std::min(metrics.horizontalAdvance(text()), kShortName * metrics.averageCharWidth());
    return {name + look::kGap, barHeight()};
}

void PlaceTab::paintEvent(QPaintEvent*) {
    using look::Role;
    QPainter painter(this);
    const auto scheme = currentScheme();
    painter.setFont(isChecked() ? strongFont() : look::font(look::TypeRole::Body));
    painter.setPen(look::colour(isChecked() ? Role::Key : Role::Ink, scheme));
    painter.drawText(rect(), Qt::AlignCenter,
                     painter.fontMetrics().elidedText(text(), Qt::ElideRight, width() - look::kGap / 2));
    if (isChecked()) {
        painter.fillRect(QRect(0, height() - kUnderline, width(), kUnderline),
                         look::colour(Role::Key, scheme));
    }
    if (hasFocus()) {
        painter.setPen(QPen(look::colour(Role::Focus, scheme), 2));
        painter.drawRect(rect().adjusted(3, 6, -4, -8));
    }
}

void PlaceTab::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

PlaceBar::PlaceBar(QWidget* parent)
    : QWidget(parent), m_tabsBox(new QHBoxLayout), m_rightBox(new QHBoxLayout) {
    setFixedHeight(barHeight());
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(look::kGap / 2, 0, 2 * look::kGap, 0);
    box->setSpacing(look::kGap);
    m_tabsBox->setSpacing(0);
    m_rightBox->setSpacing(2 * look::kGap);
    m_rightBox->addStretch(1);
    box->addLayout(m_tabsBox);
    box->addStretch(1);
    box->addLayout(m_rightBox, 4);
}

void PlaceBar::addPlace(const QString& title) {
    const int index = static_cast<int>(m_tabs.size());
    auto* tab = new PlaceTab(title, index + 1, this);
    tab->setObjectName(QStringLiteral("placeTab%1").arg(index + 1));
    m_tabsBox->addWidget(tab);
    m_tabs.push_back(tab);
    connect(tab, &QAbstractButton::clicked, this, [this, index] { Q_EMIT chosen(index); });
}

void PlaceBar::addAtRight(QWidget* widget) {
    const bool grows = widget->sizePolicy().horizontalPolicy() == QSizePolicy::Expanding;
    m_rightBox->addWidget(widget, grows ? 8 : 0);  // before the empty space beside it
}

void PlaceBar::setCurrent(int index) {
    for (std::size_t i = 0; i < m_tabs.size(); ++i) {
        m_tabs[i]->setChecked(static_cast<int>(i) == index);
    }
}

void PlaceBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(look::Role::Sheet, currentScheme()));
    painter.fillRect(QRect(0, height() - 1, width(), 1),
                     look::colour(look::Role::SheetEdge, currentScheme()));
}

}  // namespace hearth::ui::shell
