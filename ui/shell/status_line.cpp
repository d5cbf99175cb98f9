// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/status_line.h"

#include "ui/shell/kit.h"

#include <QAccessible>
#include <QHBoxLayout>

#include <chrono>

namespace hearth::ui::shell {

namespace {
constexpr std::chrono::seconds kStands{12};
constexpr int kHeight = 34;
}  // namespace

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent),
      m_said(new Text({}, look::TypeRole::Small, look::Role::Ink, this)),
      m_standing(new Text({}, look::TypeRole::Small, look::Role::Fail, this)) {
    setFixedHeight(kHeight);
    auto* box = new QHBoxLayout(this);
    box->setContentsMargins(2 * look::kGap, 0, look::kGap, 0);
    box->setSpacing(0);
    m_said->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_said->setObjectName(QStringLiteral("statusText"));
    box->addWidget(m_said, 1);
    m_standing->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_standing->setObjectName(QStringLiteral("standingText"));
    m_standing->hide();
    box->addWidget(m_standing, 1);
    // The keys are the window's own: here they are only shown.
    const auto add = [this, box](const QString& words, const QString& key, const QString& name) {
        auto* button = new KeyButton(words, ButtonKind::Quiet, this);
        button->showKey(key);
        button->setObjectName(name);
        box->addWidget(button);
        return button;
    };
    connect(add(tr("Take back"), QStringLiteral("Ctrl+Z"), QStringLiteral("undoButton")),
            &QPushButton::clicked, this, &StatusLine::undoPressed);
    connect(add(tr("Keys"), QStringLiteral("F1"), QStringLiteral("keysButton")), &QPushButton::clicked, this,
            &StatusLine::keysPressed);
    connect(add(tr("About"), {}, QStringLiteral("aboutButton")), &QPushButton::clicked, this,
            &StatusLine::aboutPressed);
    m_fade.setSingleShot(true);
    connect(&m_fade, &QTimer::timeout, m_said, &QLabel::clear);
    connect(&m_fade, &QTimer::timeout, this, [this] { m_said->setVisible(m_standing->text().isEmpty()); });
}

void StatusLine::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->show();
    m_said->setToolTip(sentence);
    m_said->setAccessibleName(sentence);
    m_fade.start(kStands);
    QAccessibleEvent alert(m_said, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void StatusLine::setStanding(const QString& sentence, Standing kind) {
    m_standing->setInk(kind == Standing::Trouble ? look::Role::Fail : look::Role::LookAgain);
    m_standing->setText(sentence.section(u'\n', 0, 0));
    m_standing->setToolTip(sentence);
    m_standing->setAccessibleName(sentence);
    m_standing->setVisible(!sentence.isEmpty());
    m_said->setVisible(sentence.isEmpty() || m_fade.isActive());
}

QString StatusLine::said() const {
    return m_said->text();
}

}  // namespace hearth::ui::shell
