// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/input/bed.h"

#include <QApplication>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace hearth::testing {

Bed::Bed() : m_column(&m_window) {}

ui::input::Editor* Bed::add(ui::input::Editor* editor, const QString& label) {
    editor->setParent(&m_window);
    editor->setLabel(label);
    m_column.addWidget(editor);
    QObject::connect(editor, &ui::input::Editor::committed, &m_window,
                     [this](const QString& text) { committed << text; });
    QObject::connect(editor, &ui::input::Editor::edited, &m_window, [this] { ++edits; });
    return editor;
}

void Bed::show() {
    m_window.resize(480, 300);
    m_window.show();
    m_window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window, 20000));
}

void Bed::focus(ui::input::Editor* editor) {
    editor->focusTarget()->setFocus(Qt::TabFocusReason);
    EXPECT_EQ(QApplication::focusWidget(), editor->focusTarget());
}

void Bed::type(const QString& text) {
    for (const QChar letter : text) {
        QWidget* at = QApplication::focusWidget();
        ASSERT_NE(at, nullptr);
        QTest::sendKeyEvent(QTest::Click, at, Qt::Key_unknown, QString(letter), Qt::NoModifier);
    }
}

void Bed::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QWidget* at = QApplication::focusWidget();
    ASSERT_NE(at, nullptr);
    QTest::keyClick(at, key, modifiers);
}

void Bed::wheel(QWidget* over, int steps) {
    const QPointF middle = over->rect().center();
    QWheelEvent event(middle, over->mapToGlobal(middle), QPoint(), QPoint(0, 120 * steps), Qt::NoButton,
                      Qt::NoModifier, Qt::NoScrollPhase, false);
    QSpontaneKeyEvent::setSpontaneous(&event);  // only a person's wheel is passed on to what scrolls
    qApp->notify(over, &event);                 // sendEvent() makes it the program's own again
}

QString problemOf(const ui::input::Editor* editor) {
    const auto* label = editor->findChild<QLabel*>(QStringLiteral("fieldProblem"));
    return label != nullptr && label->isVisible() ? label->text() : QString();
}

}  // namespace hearth::testing
