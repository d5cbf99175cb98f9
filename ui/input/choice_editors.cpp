// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_editors.h"

#include "ui/input/choice_accessible.h"

#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>

#include <algorithm>
#include <utility>

namespace hearth::ui::input {

ChoiceEditor::ChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices,
                           ChoiceField::Choose choose)
    : FieldEditor(parent), m_choice(new ChoiceField(this, choices, choose)) {
    installChoiceAccessible();
    adopt(m_choice);
    connect(m_choice, &ChoiceField::moved, this, &ChoiceEditor::edited);
    connect(m_choice, &ChoiceField::picked, this, [this] {
        Q_EMIT edited();
        commit();
    });
    connect(m_choice, &ChoiceField::answered, this, &ChoiceEditor::answered);
}

void ChoiceEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

ListEditor::ListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices, Offer offer)
    : FieldEditor(parent), m_list(new QComboBox(this)), m_offer(std::move(offer)) {
    installChoiceAccessible();
    adopt(m_list);
    fill(choices);
    m_list->setCurrentIndex(unsaidIndex());
    m_list->setMaxVisibleItems(16);
    m_list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_list->setMinimumContentsLength(6);  // columns of fields stay alike in a narrow window
    connect(m_list, &QComboBox::activated, this, [this] {
        Q_EMIT edited();
        if (!m_list->hasFocus()) {
            commit();
        }
    });
}

void ListEditor::fill(const std::vector<ChoiceItem>& choices) {
    for (const ChoiceItem& choice : choices) {
        QString label = choice.label;
        m_list->addItem(label.remove(u'&'), choice.code);
    }
}

/// What was chosen stays chosen.
void ListEditor::askAnew() {
    const QString code = text();
    const auto choices = m_offer();
    m_list->clear();
    fill(choices);
    showCode(code);
}

void ListEditor::showCode(const QString& code) {
    int index = code.isEmpty() ? unsaidIndex() : m_list->findData(code);
    if (index < 0 && !code.isEmpty()) {
        m_list->addItem(code, code);
        index = m_list->count() - 1;
    }
    m_list->setCurrentIndex(index);
}

QString ListEditor::text() const {
    return m_list->currentData().toString();
}

void ListEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

void ListEditor::showText(const QString& text) {
    if (m_offer && !text.isEmpty() && m_list->findData(text) < 0) {
        askAnew();
    }
    showCode(text);
}

/// A list may have a choice of its own for what nobody has said; without one it stays blank.
int ListEditor::unsaidIndex() const {
    return m_list->findData(QString());
}

void ListEditor::setReadOnly(bool readOnly) {
    m_list->setEnabled(!readOnly);
}

bool ListEditor::eventFilter(QObject* watched, QEvent* event) {
    if (m_offer && watched == m_list && event->type() == QEvent::FocusIn &&
        static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) {
        askAnew();
    }
    if (watched == m_list && event->type() == QEvent::KeyPress &&
        answerListKey(*static_cast<QKeyEvent*>(event))) {
        return true;
    }
    return FieldEditor::eventFilter(watched, event);
}

bool ListEditor::answerListKey(const QKeyEvent& event) {
    if (event.key() == Qt::Key_Delete || event.key() == Qt::Key_Backspace) {
        m_typed.clear();
        m_list->setCurrentIndex(unsaidIndex());
        Q_EMIT edited();
        return true;
    }
    const QString letter = event.text();
    const bool isBare = (event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (!isBare || letter.isEmpty() || !letter.front().isPrint()) {
        return false;
    }
    if (!m_sinceLetter.isValid() || m_sinceLetter.hasExpired(QApplication::keyboardInputInterval())) {
        m_typed.clear();
    }
    if (m_typed.isEmpty() && letter == QStringLiteral(" ")) {
        return false;  // opens the list
    }
    find(letter);
    return true;
}

/// The same letter again and again goes through all that begin with it.
void ListEditor::find(const QString& letter) {
    m_sinceLetter.start();
    m_typed += letter;
    const int now = m_list->currentIndex();
    const bool isSame = m_typed.count(letter, Qt::CaseInsensitive) == m_typed.size();
    int index = found(m_typed, m_typed.size() == 1 ? now + 1 : std::max(now, 0));
    if (index < 0 && isSame) {
        index = found(letter, now + 1);
    }
    if (index >= 0 && index != now) {
        m_list->setCurrentIndex(index);
        Q_EMIT edited();
    }
}

int ListEditor::found(const QString& typed, int from) const {
    const int count = m_list->count();
    for (const QString& before : {QString(), QStringLiteral(" ")}) {
        for (int i = 0; i < count; ++i) {
            const int at = (from + i) % count;
            const QString label = m_list->itemText(at);
            if (before.isEmpty() ? label.startsWith(typed, Qt::CaseInsensitive)
                                 : label.contains(before + typed, Qt::CaseInsensitive)) {
                return at;
            }
        }
    }
    return -1;
}

Editor* makeChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices) {
    return new ChoiceEditor(parent, choices);
}

Editor* makeSeveralEditor(QWidget* parent, const std::vector<ChoiceItem>& choices) {
    return new ChoiceEditor(parent, choices, ChoiceField::Choose::Several);
}

Editor* makeListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices) {
    return new ListEditor(parent, choices);
}

Editor* makeListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices, Offer offer) {
    return new ListEditor(parent, choices, std::move(offer));
}

}  // namespace hearth::ui::input
