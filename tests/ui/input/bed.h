// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"

#include <QLabel>
#include <QStringList>
#include <QVBoxLayout>
#include <QWidget>

namespace hearth::testing {

/// A window with editors below each other, and a listener to what they say.
class Bed {
  public:
    Bed();

    /// Puts an editor into the window with a label, and listens to it.
    ui::input::Editor* add(ui::input::Editor* editor, const QString& label);
    /// Shows the window and waits until it is active.
    void show();
    /// Focus as Tab would give it.
    void focus(ui::input::Editor* editor);

    /// Types into whatever has the focus; any letter (QTest::keyClicks aborts beyond Latin-1).
    static void type(const QString& text);
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    /// Turns the wheel over a widget.
    static void wheel(QWidget* over, int steps);

    [[nodiscard]] QWidget& window() { return m_window; }
    /// Committed texts in order, and how often something was edited.
    QStringList committed;
    int edits = 0;

  private:
    QWidget m_window;
    QVBoxLayout m_column;
};

/// What stands below the field; empty where nothing is shown.
[[nodiscard]] QString problemOf(const ui::input::Editor* editor);

}  // namespace hearth::testing
