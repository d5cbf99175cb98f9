// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"

#include <QApplication>
#include <QKeyEvent>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>
#include <stdexcept>

/// Typing as a person does: into whatever has the focus.
namespace hearth::testing {

/// Waits for it: what closed may have had it, and a busy machine gives it back late.
inline QWidget* focus() {
    constexpr int kFocusWait = 20000;  // milliseconds
    QWidget* widget = QApplication::focusWidget();
    if (widget == nullptr &&
        QTest::qWaitFor([] { return QApplication::focusWidget() != nullptr; }, kFocusWait)) {
        widget = QApplication::focusWidget();
    }
    if (widget == nullptr) {
        throw std::runtime_error("nothing has the focus");
    }
    return widget;
}

inline void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(focus(), static_cast<Qt::Key>(key), modifiers);
    QApplication::processEvents();
}

/// Letters one by one; any letter, not only Latin-1 (QTest::keyClicks aborts on others).
inline void type(const QString& text) {
    for (const QChar letter : text) {
        const int key = letter.unicode() < 0x80 ? letter.toUpper().unicode() : 0;
        QKeyEvent down(QEvent::KeyPress, key, Qt::NoModifier, QString(letter));
        QApplication::sendEvent(focus(), &down);
        QKeyEvent up(QEvent::KeyRelease, key, Qt::NoModifier, QString(letter));
        QApplication::sendEvent(focus(), &up);
    }
}

/// Types into the focused field and goes on with Enter.
inline void typeLine(const QString& text) {
    type(text);
    press(Qt::Key_Return);
}

/// The child of that object name; throws when there is none, and so fails the test.
template <class T = QWidget>
T* child(QWidget* parent, const char* name) {
    T* found = parent->findChild<T*>(QString::fromLatin1(name));
    if (found == nullptr) {
        throw std::runtime_error(std::string("no such widget: ") + name);
    }
    return found;
}

inline ui::input::Editor* editor(QWidget* parent, const char* name) {
    return child<ui::input::Editor>(parent, name);
}

/// Puts the focus on a field as Tab would, and selects what stands in it.
inline void enterField(ui::input::Editor* field) {
    if (!field->isActiveWindow()) {  // a list that has closed does not give it back on the offscreen platform
        field->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(field->window(), 20000));
    }
    field->focusTarget()->setFocus(Qt::TabFocusReason);
    EXPECT_TRUE(field->focusTarget()->hasFocus()) << field->objectName().toStdString();
}

/// Replaces what stands in a field of text and commits it.
inline void fillField(ui::input::Editor* field, const QString& text) {
    enterField(field);
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    typeLine(text);
}

}  // namespace hearth::testing
