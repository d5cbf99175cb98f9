// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/question.h"

#include "ui/input/editor.h"
#include "ui/shell/kit.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace hearth::ui::shell {

namespace {

constexpr int kQuestionWidth = 460;

QVBoxLayout* dialogLines(QDialog* dialog, const QString& title) {
    dialog->setWindowTitle(title);
    dialog->setMinimumWidth(kQuestionWidth);
    auto* lines = new QVBoxLayout(dialog);
    lines->setContentsMargins(3 * look::kGap, 3 * look::kGap, 3 * look::kGap, 2 * look::kGap);
    lines->setSpacing(2 * look::kGap);
    lines->addWidget(headingText(title, dialog));
    return lines;
}

}  // namespace

Question::Question(const QString& title, const QString& text, const QStringList& answers, int safe,
                   QWidget* over)
    : QDialog(over) {
    auto* lines = dialogLines(this, title);
    lines->addWidget(bodyText(text, this));
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    row->addStretch(1);
    lines->addLayout(row);
    for (int i = 0; i < answers.size(); ++i) {
        auto* button = new KeyButton(answers[i], i == safe ? ButtonKind::Primary : ButtonKind::Plain, this);
        button->setObjectName(QStringLiteral("answer%1").arg(i));
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, i] {
            m_answer = i;
            accept();
        });
        if (i == safe) {
            button->setDefault(true);
            button->setFocus();
        }
    }
}

void Question::keyPressEvent(QKeyEvent* event) {
    if (isEnter(*event)) {
        return;  // only a button with the focus is pressed by Enter, never one that is out of sight
    }
    QDialog::keyPressEvent(event);
}

TextQuestion::TextQuestion(const QString& title, const QString& label, QWidget* over, Shown shown)
    : QDialog(over), m_field(input::makeTextEditor(this)), m_shown(shown) {
    auto* lines = dialogLines(this, title);
    m_field->setLabel(label);
    m_field->setObjectName(QStringLiteral("answerField"));
    m_field->focusTarget()->installEventFilter(this);
    if (auto* line = qobject_cast<QLineEdit*>(m_field->focusTarget());
        shown == Shown::No && line != nullptr) {
        line->setEchoMode(QLineEdit::Password);
    }
    lines->addWidget(m_field);
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    row->addStretch(1);
    lines->addLayout(row);
    auto* take = new KeyButton(tr("Go on"), ButtonKind::Primary, this);
    take->setObjectName(QStringLiteral("takeButton"));
    connect(take, &QPushButton::clicked, this, [this] { this->take(); });
    row->addWidget(take);
    auto* leave = new KeyButton(tr("Leave it"), ButtonKind::Plain, this);
    leave->setObjectName(QStringLiteral("leaveButton"));
    leave->showKey(QStringLiteral("Esc"));
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    row->addWidget(leave);
    focusOn(m_field);
}

QString TextQuestion::text() const {
    return m_shown == Shown::No ? m_field->text() : m_field->text().trimmed();
}

void TextQuestion::take() {
    if (text().isEmpty()) {
        m_field->setProblem(tr("Something has to stand here."));
        focusOn(m_field);
        return;
    }
    accept();
}

bool TextQuestion::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && isEnter(*static_cast<QKeyEvent*>(event))) {
        take();
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void TextQuestion::keyPressEvent(QKeyEvent* event) {
    if (isEnter(*event)) {
        return;
    }
    QDialog::keyPressEvent(event);
}

}  // namespace hearth::ui::shell
