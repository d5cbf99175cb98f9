// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/search_field.h"

#include "ui/look/look.h"

#include <QKeyEvent>

namespace hearth::ui::shell {

namespace {
constexpr int kNarrow = 110;
constexpr int kWide = 260;
}  // namespace

SearchField::SearchField(QWidget* parent) : QLineEdit(parent) {
    setObjectName(QStringLiteral("searchField"));
    setFont(look::font(look::TypeRole::Body));
    setMinimumWidth(kNarrow);
    setMaximumWidth(kWide);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SearchField::setHint(const QString& hint) {
    const QString name = hint.isEmpty() ? tr("Search") : hint;
    setPlaceholderText(name + QStringLiteral("  Ctrl+F"));
    setAccessibleName(name);
}

void SearchField::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Escape:
            clear();
            Q_EMIT textEdited({});
            Q_EMIT left();
            return;
        case Qt::Key_Down:
            Q_EMIT down();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            Q_EMIT enter();
            return;
        default:
            QLineEdit::keyPressEvent(event);
    }
}

void SearchField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason) {
        Q_EMIT focusLost();
    }
}

}  // namespace hearth::ui::shell
