// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QAccessible>
#include <QAccessibleInterface>
#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <QWheelEvent>
#include <QWidget>

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

/// A walk through a window as somebody without a mouse or without sight makes it: what has to hold in every
/// window.
namespace hearth::testing {

/// What a screen reader calls it.
inline std::string spokenName(QWidget* widget) {
    QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(widget);
    return interface == nullptr ? std::string() : interface->text(QAccessible::Name).toStdString();
}

inline std::string described(QWidget* widget) {
    return std::string(widget->metaObject()->className()) + " '" + widget->objectName().toStdString() +
           "' \"" + spokenName(widget) + '"';
}

inline bool isTabStop(const QWidget* widget) {
    return widget->isEnabled() && widget->isVisible() && widget->focusProxy() == nullptr &&
           (widget->focusPolicy() & Qt::TabFocus) == Qt::TabFocus;
}

/// Every enabled control in view that the keyboard should reach.
inline std::vector<QWidget*> tabStops(QWidget* window) {
    std::vector<QWidget*> stops;
    for (QWidget* widget : window->findChildren<QWidget*>()) {
        if (isTabStop(widget)) {
            stops.push_back(widget);
        }
    }
    return stops;
}

/// Shows the window and makes it the active one, so that keys reach it.
inline void activate(QWidget* window) {
    window->show();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window, 20000));
}

/// The stops in the order in which Tab (or Shift+Tab) comes to them, once round from `from`.
inline std::vector<QWidget*> walk(QWidget* window, QWidget* from,
                                  Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    std::vector<QWidget*> order;
    from->setFocus(Qt::TabFocusReason);
    const std::size_t enough = 2 * tabStops(window).size() + 2;
    QWidget* at = QApplication::focusWidget();
    while (at != nullptr && order.size() < enough) {
        order.push_back(at);
        QTest::keyClick(at, modifiers.testFlag(Qt::ShiftModifier) ? Qt::Key_Backtab : Qt::Key_Tab, modifiers);
        at = QApplication::focusWidget();
        if (at == order.front()) {
            break;
        }
    }
    return order;
}

/// Tab visits every enabled control once, and Shift+Tab comes back the same way.
inline void expectEveryStopOnce(QWidget* window) {
    const auto stops = tabStops(window);
    ASSERT_FALSE(stops.empty());
    const auto forwards = walk(window, stops.front());
    std::map<QWidget*, int> visits;
    for (QWidget* widget : forwards) {
        ++visits[widget];
    }
    for (QWidget* stop : stops) {
        EXPECT_EQ(visits[stop], 1) << "Tab comes " << visits[stop] << " times to " << described(stop);
    }
    auto backwards = walk(window, stops.front(), Qt::ShiftModifier);
    std::reverse(backwards.begin() + (backwards.empty() ? 0 : 1), backwards.end());
    EXPECT_EQ(forwards, backwards) << "Shift+Tab comes back another way";
}

/// Every control that takes the focus has a name, and no two have the same.
inline void expectUniqueNames(QWidget* window) {
    std::map<std::string, QWidget*> names;
    for (QWidget* stop : tabStops(window)) {
        const std::string name = spokenName(stop);
        EXPECT_FALSE(name.empty()) << described(stop) << " has no accessible name";
        const auto [other, isNew] = names.emplace(name, stop);
        EXPECT_TRUE(isNew) << described(stop) << " is called like " << described(other->second);
    }
}

/// Everything that a person can read in the window's fields and buttons.
inline std::vector<std::string> valuesIn(QWidget* window) {
    std::vector<std::string> values;
    for (QWidget* widget : window->findChildren<QWidget*>()) {
        std::string value;
        if (const auto* line = qobject_cast<QLineEdit*>(widget)) {
            value = line->text().toStdString();
        } else if (const auto* plain = qobject_cast<QPlainTextEdit*>(widget)) {
            value = plain->toPlainText().toStdString();
        } else if (const auto* button = qobject_cast<QAbstractButton*>(widget)) {
            value = button->isChecked() ? "checked" : "";
        } else if (const QVariant current = widget->property("currentText"); current.isValid()) {
            value = current.toString().toStdString();
        }
        values.push_back(value);
    }
    return values;
}

/// The wheel over a field, focused or not, never changes a value.
inline void expectWheelChangesNothing(QWidget* window) {
    const auto before = valuesIn(window);
    for (QWidget* stop : tabStops(window)) {
        for (const bool focused : {false, true}) {
            if (focused) {
                stop->setFocus();
            }
            for (const int turn : {120, -120}) {
                const QPointF at = QRectF(stop->rect()).center();
                QWheelEvent wheel(at, stop->mapToGlobal(at), {}, {0, turn}, Qt::NoButton, Qt::NoModifier,
                                  Qt::NoScrollPhase, false);
                QSpontaneKeyEvent::setSpontaneous(&wheel);  // as from a person: passed on to what scrolls
                qApp->notify(stop, &wheel);                 // sendEvent() makes it the program's own again
            }
        }
        ASSERT_EQ(valuesIn(window), before) << "the wheel changed something at " << described(stop);
    }
}

/// Enter in every text field leaves `state` (what the store holds, as text) as it was: it goes on to the next
/// field.
inline void expectEnterHarmless(QWidget* window, const std::function<std::string()>& state) {
    const std::string before = state();
    for (QWidget* stop : tabStops(window)) {
        if (qobject_cast<QLineEdit*>(stop) == nullptr && qobject_cast<QPlainTextEdit*>(stop) == nullptr) {
            continue;
        }
        stop->setFocus();
        QTest::keyClick(stop, Qt::Key_Return);
        ASSERT_TRUE(window->isVisible()) << "Enter closed the window in " << described(stop);
        ASSERT_EQ(state(), before) << "Enter changed the store in " << described(stop);
    }
}

/// The window can be as small as that (goal: 1024 x 600, in the longest language).
inline void expectFits(QWidget* window, QSize size) {
    const QSize least = window->minimumSizeHint().expandedTo(window->minimumSize());
    EXPECT_LE(least.width(), size.width());
    EXPECT_LE(least.height(), size.height());
    window->resize(size);
    QApplication::processEvents();
    EXPECT_EQ(window->size(), size);
}

/// All of it.
inline void expectWalkable(QWidget* window, const std::function<std::string()>& state) {
    expectEveryStopOnce(window);
    expectUniqueNames(window);
    expectWheelChangesNothing(window);
    expectEnterHarmless(window, state);
    expectFits(window, {1024, 600});
}

}  // namespace hearth::testing
