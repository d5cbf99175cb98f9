// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/field_editor.h"

#include "ui/look/look.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QStyle>
#include <QVBoxLayout>
#include <QWheelEvent>

namespace hearth::ui::input {

namespace {

/// Style sheets look at properties only when told.
void restyle(QWidget* widget) {
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

bool isPlainEnter(const QKeyEvent& event) {
    const bool isEnter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    return isEnter && (event.modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
}

/// Some desktops let a line of text delete to its end by this.
bool isSheetKey(const QKeyEvent& event) {
    return event.key() == Qt::Key_K && event.modifiers() == Qt::ControlModifier;
}

}  // namespace

void FieldEditor::adopt(QWidget* field) {
    m_field = field;
    m_label = new QLabel(this);
    m_label->setObjectName(QStringLiteral("fieldLabel"));
    m_label->setProperty("ink", QStringLiteral("soft"));
    m_label->setFont(look::font(look::TypeRole::Label));
    m_label->setTextFormat(Qt::PlainText);
    m_label->setWordWrap(true);
    m_label->setAlignment(Qt::AlignLeft | Qt::AlignBottom);  // above its field where a row gives it more room
    m_label->hide();
    m_problem = new QLabel(this);
    m_problem->setObjectName(QStringLiteral("fieldProblem"));
    m_problem->setProperty("ink", QStringLiteral("fail"));
    m_problem->setFont(look::font(look::TypeRole::Small));
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->setWordWrap(true);
    m_problem->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(look::kGap / 2);
    column->addWidget(m_label);
    column->addWidget(field);
    column->addWidget(m_problem);
    column->addStretch();
    field->setFont(look::font(look::TypeRole::Body));
    field->installEventFilter(this);
    field->setFocusPolicy(Qt::StrongFocus);  // a list would take the focus from the wheel
    setFocusPolicy(Qt::StrongFocus);         // QWidget::setTabOrder() leaves out what takes none itself
    setFocusProxy(field);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
}

void FieldEditor::setLabel(const QString& label, const QString& context) {
    m_labelText = label;
    m_context = context;
    m_label->setText(label);
    m_label->setVisible(!label.isEmpty());
    refreshNames();
}

void FieldEditor::setProblem(const QString& sentence) {
    if (sentence == m_problem->text()) {
        return;  // a style is worked out anew for a change alone: forms say at each key that nothing is wrong
    }
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
    m_field->setProperty("problem", !sentence.isEmpty());
    restyle(m_field);
    refreshNames();
}

void FieldEditor::refreshNames() {
    QStringList parts;
    for (const QString& part : {m_context, m_labelText, unitName()}) {
        if (!part.isEmpty()) {
            parts << part;
        }
    }
    m_field->setAccessibleName(parts.join(QStringLiteral(", ")));
    QStringList said;
    for (const QString& part : {m_problem->text(), toolTip(), hint()}) {
        if (!part.isEmpty()) {
            said << part;
        }
    }
    m_field->setAccessibleDescription(said.join(QStringLiteral(" ")));
}

bool FieldEditor::event(QEvent* event) {
    const bool done = Editor::event(event);
    if (event->type() == QEvent::ToolTipChange) {
        refreshNames();
    }
    return done;
}

void FieldEditor::markCommitted() {
    m_committedText = text();
    m_committedUnit = unit();
}

void FieldEditor::commit() {
    settle();
    const bool isSame = text() == m_committedText && (unit() == m_committedUnit || text().isEmpty());
    markCommitted();
    if (!isSame) {
        Q_EMIT committed(m_committedText);
    }
}

void FieldEditor::restore() {
    setUnit(m_committedUnit);
    const QString before = m_committedText;
    showText(before);
    Q_EMIT edited();
}

bool FieldEditor::answerKey(QKeyEvent* event) {
    if (isPlainEnter(*event)) {
        commit();
        focusNextPrevChild(true);
        return true;
    }
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isSheetKey(*event) || (isEnter && event->modifiers().testFlag(Qt::ControlModifier))) {
        event->ignore();  // the window's
        return true;
    }
    const bool isChanged = text() != m_committedText || unit() != m_committedUnit;
    if (event->key() == Qt::Key_Escape && event->modifiers() == Qt::NoModifier && isChanged) {
        restore();
        return true;
    }
    return false;
}

bool FieldEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_field) {
        return Editor::eventFilter(watched, event);
    }
    switch (event->type()) {
        case QEvent::ShortcutOverride:
            if (isSheetKey(*static_cast<QKeyEvent*>(event))) {
                event->ignore();
                return true;
            }
            return false;
        case QEvent::KeyPress:
            return answerKey(static_cast<QKeyEvent*>(event));
        case QEvent::FocusOut:
            // A list of one's own (units, a calendar) is not leaving the field.
            if (static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) {
                commit();
            }
            return false;
        case QEvent::Wheel:
            event->ignore();  // on to whatever scrolls
            return true;
        default:
            return false;
    }
}

void FieldEditor::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange && m_field != nullptr) {
        refreshNames();
    }
    Editor::changeEvent(event);
}

}  // namespace hearth::ui::input
