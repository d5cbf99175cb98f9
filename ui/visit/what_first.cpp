// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/what_first.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace hearth::ui::visit {

namespace {

constexpr int kBar = 4;
constexpr int kPad = 2 * look::kGap;

QWidget* makeSteps(const QStringList& steps, QWidget* parent) {
    auto* box = new QWidget(parent);
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(look::kGap / 2);
    grid->setHorizontalSpacing(look::kGap);
    grid->setColumnStretch(1, 1);
    for (int row = 0; row < static_cast<int>(steps.size()); ++row) {
        auto* number = new shell::Text(QString::number(row + 1), look::TypeRole::Body, look::Role::Fail, box);
        auto* step = shell::bodyText(steps[row], box);
        grid->addWidget(number, row, 0, Qt::AlignTop);
        grid->addWidget(step, row, 1);
        number->setVisible(steps.size() > 1);
    }
    return box;
}

}  // namespace

WhatFirst::WhatFirst(QWidget* parent) : QWidget(parent), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(kPad + kBar, kPad, kPad, kPad);
    m_lines->setSpacing(look::kGap);
    m_title = new shell::Text({}, look::TypeRole::Heading, look::Role::Fail, this);
    m_title->setWordWrap(true);
    m_done = new shell::KeyButton({}, shell::ButtonKind::Danger, this);
    m_done->hide();
    m_lines->addWidget(m_title);
    m_lines->addWidget(m_done, 0, Qt::AlignLeft);
    connect(m_done, &QPushButton::clicked, this, &WhatFirst::done);
    hide();
}

bool WhatFirst::setSteps(const QString& title, const QStringList& steps) {
    const bool wanted = !title.isEmpty() || !steps.isEmpty();
    if (wanted && (title != m_shownTitle || steps != m_shown)) {
        delete m_steps;
        m_steps = makeSteps(steps, this);
        m_lines->insertWidget(1, m_steps);
        m_title->setText(title);
        setAccessibleName(title);
        setAccessibleDescription(steps.join(u'\n'));
        m_shownTitle = title;
        m_shown = steps;
    }
    const bool appears = wanted && isHidden();
    setVisible(wanted);
    return appears;
}

void WhatFirst::setDoneButton(const QString& text) {
    m_done->setWords(text);
    m_done->setVisible(!text.isEmpty());
}

QString WhatFirst::title() const {
    return isHidden() ? QString() : m_shownTitle;
}

void WhatFirst::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto scheme = shell::currentScheme();
    painter.fillRect(rect(), look::colour(look::Role::FailGround, scheme));
    painter.fillRect(0, 0, kBar, height(), look::colour(look::Role::Fail, scheme));
}

}  // namespace hearth::ui::visit
