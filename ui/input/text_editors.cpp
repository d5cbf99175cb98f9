// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/text_editors.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QTextOption>

namespace hearth::ui::input {

LineEditor::LineEditor(QWidget* parent) : FieldEditor(parent), m_line(new QLineEdit(this)) {
    adopt(m_line);
    connect(m_line, &QLineEdit::textEdited, this, &LineEditor::edited);
}

void LineEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

void LineEditor::showText(const QString& text) {
    if (m_line->text() != text) {
        m_line->setText(text);
        if (!m_line->hasFocus()) {
            m_line->home(false);  // of what is longer than the field its beginning is seen
        }
    }
}

void LineEditor::suggest(const QString& text) {
    if (m_suggested != text) {
        m_suggested = text;
        m_line->setPlaceholderText(text.isEmpty() ? QString() : shownAs(text) + QStringLiteral("  \u2192"));
        refreshNames();
    }
}

QString LineEditor::hint() const {
    return m_suggested.isEmpty()
               ? QString()
               : tr("Last time it was %1: the Right key takes it.").arg(shownAs(m_suggested));
}

bool LineEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_line && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool takes = key->key() == Qt::Key_Right && (key->modifiers() & ~Qt::KeypadModifier) == 0;
        if (takes && m_line->text().isEmpty() && !m_suggested.isEmpty() && !m_line->isReadOnly()) {
            showText(m_suggested);
            Q_EMIT edited();
            commit();
            Q_EMIT answered();
            return true;
        }
    }
    const bool done = FieldEditor::eventFilter(watched, event);
    if (watched == m_line && event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        // A menu, or another window, comes back to where the cursor was.
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason) {
            m_line->home(false);
        }
    }
    return done;
}

LongTextEditor::LongTextEditor(QWidget* parent, int lines)
    : FieldEditor(parent), m_area(new QPlainTextEdit(this)) {
    adopt(m_area);
    m_area->setTabChangesFocus(true);
    m_area->setWordWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    const int lineHeight = QFontMetrics(m_area->font()).lineSpacing();
    m_area->setFixedHeight(lineHeight * std::max(1, lines) + 18);
    connect(m_area, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_isShowing) {
            Q_EMIT edited();
        }
    });
}

void LongTextEditor::setText(const QString& text) {
    showText(text);
    markCommitted();
}

void LongTextEditor::showText(const QString& text) {
    if (m_area->toPlainText() == text) {
        return;
    }
    m_isShowing = true;
    m_area->setPlainText(text);
    m_isShowing = false;
}

QString LongTextEditor::hint() const {
    return tr("Shift+Enter starts a new line.");
}

Editor* makeTextEditor(QWidget* parent) {
    return new LineEditor(parent);
}

Editor* makeLongTextEditor(QWidget* parent, int lines) {
    return new LongTextEditor(parent, lines);
}

}  // namespace hearth::ui::input
