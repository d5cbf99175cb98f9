// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_editors.h"

#include "ui/input/choice_accessible.h"

#include <QComboBox>
#include <QKeyEvent>

namespace hearth::ui::input {

ChoiceEditor::ChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices)
    : FieldEditor(parent), m_choice(new ChoiceField(this, choices)) {
    installChoiceAccessible();
    adopt(m_choice);
    connect(m_choice, &ChoiceField::moved, this, &ChoiceEditor::edited);
    connect(m_choice, &ChoiceField::picked, this, [this] {
        Q_EMIT edited();
        commit();
    });
}

void ChoiceEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

ListEditor::ListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices)
    : FieldEditor(parent), m_list(new QComboBox(this)) {
    installChoiceAccessible();
    adopt(m_list);
    for (const ChoiceItem& choice : choices) {
        QString label = choice.label;
        m_list->addItem(label.remove(u'&'), choice.code);
    }
    m_list->setCurrentIndex(-1);
    m_list->setMaxVisibleItems(16);
    m_list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_list->setMinimumContentsLength(12);
    connect(m_list, &QComboBox::activated, this, [this] {
        Q_EMIT edited();
        if (!m_list->hasFocus()) {
            commit();
        }
    });
}

QString ListEditor::text() const {
    return m_list->currentData().toString();
}

void ListEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

void ListEditor::showText(const QString& text) {
    int index = text.isEmpty() ? -1 : m_list->findData(text);
    if (index < 0 && !text.isEmpty()) {
        m_list->addItem(text, text);
        index = m_list->count() - 1;
    }
    m_list->setCurrentIndex(index);
}

void ListEditor::setReadOnly(bool readOnly) {
    m_list->setEnabled(!readOnly);
}

bool ListEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Delete || key == Qt::Key_Backspace) {
            m_list->setCurrentIndex(-1);
            Q_EMIT edited();
            return true;
        }
    }
    return FieldEditor::eventFilter(watched, event);
}

Editor* makeChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices) {
    return new ChoiceEditor(parent, choices);
}

Editor* makeListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices) {
    return new ListEditor(parent, choices);
}

}  // namespace hearth::ui::input
