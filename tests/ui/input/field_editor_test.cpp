// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/field_editor.h"

#include "tests/ui/input/bed.h"

#include <QApplication>
#include <QComboBox>
#include <QScrollArea>
#include <QScrollBar>
#include <QSet>
#include <QShortcut>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using testing::Bed;
using testing::problemOf;

std::vector<ChoiceItem> threeChoices() {
    return {{QStringLiteral("new"), QStringLiteral("new")},
            {QStringLiteral("existing"), QStringLiteral("existing")},
            {QStringLiteral("part"), QStringLiteral("part of it")}};
}

/// One of each kind, empty, in one window.
struct Every {
    Bed bed;
    QList<Editor*> editors;

    Every() {
        const auto add = [this](Editor* editor, const QString& label) { editors << bed.add(editor, label); };
        add(makeTextEditor(nullptr), QStringLiteral("Reference"));
        add(makeLongTextEditor(nullptr, 3), QStringLiteral("Remarks"));
        add(makeQuantityEditor(nullptr, quantity::UnitFamily::Pressure), QStringLiteral("Start"));
        add(makeChoiceEditor(nullptr, threeChoices()), QStringLiteral("Work"));
        add(makeListEditor(nullptr, threeChoices()), QStringLiteral("Extent"));
        add(makeDateEditor(nullptr), QStringLiteral("Date"));
        add(makeTimeEditor(nullptr), QStringLiteral("At"));
        bed.show();
    }
};

TEST(FieldEditor, tabVisitsEachFieldOnceInBothDirections) {
    Every every;
    every.bed.focus(every.editors.first());
    for (int i = 1; i <= every.editors.size(); ++i) {
        Bed::press(Qt::Key_Tab);
        EXPECT_EQ(QApplication::focusWidget(), every.editors[i % every.editors.size()]->focusTarget());
    }
    for (qsizetype i = every.editors.size() - 1; i >= 0; --i) {
        Bed::press(Qt::Key_Backtab, Qt::ShiftModifier);
        EXPECT_EQ(QApplication::focusWidget(), every.editors[i]->focusTarget());
    }
    EXPECT_TRUE(every.bed.committed.isEmpty());
}

TEST(FieldEditor, whatHelpsWithTheFieldIsToldToScreenReaders) {
    Every every;
    for (Editor* editor : every.editors) {
        editor->setToolTip(QStringLiteral("What helps."));
        editor->setProblem(QStringLiteral("What is wrong."));
        const QString said = editor->focusTarget()->accessibleDescription();
        EXPECT_TRUE(said.startsWith(QStringLiteral("What is wrong. What helps."))) << said.toStdString();
    }
}

TEST(FieldEditor, enterGoesToTheNextField) {
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter}) {
        Every every;
        every.bed.focus(every.editors.first());
        for (qsizetype i = 1; i < every.editors.size(); ++i) {
            Bed::press(key, key == Qt::Key_Enter ? Qt::KeypadModifier : Qt::NoModifier);
            EXPECT_EQ(QApplication::focusWidget(), every.editors[i]->focusTarget());
        }
        EXPECT_TRUE(every.bed.committed.isEmpty());
    }
}

TEST(FieldEditor, controlAndEnterIsLeftToTheWindow) {
    Every every;
    QShortcut shortcut(QKeySequence(Qt::CTRL | Qt::Key_Return), &every.bed.window());
    int heard = 0;
    QObject::connect(&shortcut, &QShortcut::activated, &every.bed.window(), [&heard] { ++heard; });
    for (Editor* editor : every.editors) {
        every.bed.focus(editor);
        const QString before = editor->text();
        Bed::press(Qt::Key_Return, Qt::ControlModifier);
        EXPECT_EQ(QApplication::focusWidget(), editor->focusTarget());
        EXPECT_EQ(editor->text(), before);
    }
    EXPECT_EQ(heard, every.editors.size());
}

TEST(FieldEditor, theWheelChangesNothingAndScrollsThePage) {
    Every every;
    const QStringList values{QStringLiteral("A-7"),      QStringLiteral("two\nlines"),
                             QStringLiteral("20.50"),    QStringLiteral("existing"),
                             QStringLiteral("existing"), QStringLiteral("2026-11-25"),
                             QStringLiteral("09:46")};
    QScrollArea area;
    area.resize(300, 120);
    area.setWidgetResizable(true);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    for (qsizetype i = 0; i < values.size(); ++i) {
        every.editors[i]->setText(values[i]);
        column->addWidget(every.editors[i]);
    }
    area.setWidget(page);
    area.show();
    area.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&area, 20000));
    for (qsizetype i = 0; i < values.size(); ++i) {
        for (const bool isFocused : {false, true}) {
            if (isFocused) {
                every.bed.focus(every.editors[i]);
            }
            area.verticalScrollBar()->setValue(0);
            for (const int steps : {-1, 1, -3}) {
                Bed::wheel(every.editors[i]->focusTarget(), steps);
            }
            EXPECT_EQ(every.editors[i]->text(), values[i]);
            EXPECT_GT(area.verticalScrollBar()->value(), 0) << "field " << i << " swallowed the wheel";
        }
    }
    EXPECT_TRUE(every.bed.committed.isEmpty());
    EXPECT_EQ(every.bed.edits, 0);
}

TEST(FieldEditor, namesAreUniqueAndSayTheUnit) {
    Every every;
    every.editors[2]->setLabel(QStringLiteral("Start"), QStringLiteral("Let-by"));
    QSet<QString> names;
    for (Editor* editor : every.editors) {
        const QString name = editor->focusTarget()->accessibleName();
        EXPECT_FALSE(name.isEmpty());
        EXPECT_FALSE(names.contains(name)) << name.toStdString();
        names.insert(name);
    }
    EXPECT_TRUE(names.contains(QStringLiteral("Let-by, Start, mbar")));
    every.editors[2]->setUnit(quantity::UnitCode::Pascal);
    EXPECT_EQ(every.editors[2]->focusTarget()->accessibleName(), QStringLiteral("Let-by, Start, Pa"));
}

TEST(FieldEditor, aProblemIsSaidBelowMarkedAndDescribed) {
    Every every;
    for (Editor* editor : every.editors) {
        const QString hint = editor->focusTarget()->accessibleDescription();
        editor->setProblem(QStringLiteral("This can't be read."));
        EXPECT_EQ(problemOf(editor), QStringLiteral("This can't be read."));
        EXPECT_TRUE(editor->focusTarget()->property("problem").toBool());
        EXPECT_TRUE(
            editor->focusTarget()->accessibleDescription().startsWith(QStringLiteral("This can't be read.")));
        editor->setProblem(QString());
        EXPECT_EQ(problemOf(editor), QString());
        EXPECT_FALSE(editor->focusTarget()->property("problem").toBool());
        EXPECT_EQ(editor->focusTarget()->accessibleDescription(), hint);
    }
}

TEST(FieldEditor, escapeBringsBackWhatWasThere) {
    Every every;
    Editor* reference = every.editors[0];
    reference->setText(QStringLiteral("A-7"));
    every.bed.focus(reference);
    Bed::type(QStringLiteral("typed by mistake"));
    Bed::press(Qt::Key_Escape);
    EXPECT_EQ(reference->text(), QStringLiteral("A-7"));
    Bed::press(Qt::Key_Tab);
    EXPECT_TRUE(every.bed.committed.isEmpty());
}

TEST(FieldEditor, escapeWithNothingToBringBackIsTheWindows) {
    Every every;
    QShortcut shortcut(QKeySequence(Qt::Key_Escape), &every.bed.window());
    every.bed.focus(every.editors[0]);
    QKeyEvent event(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
    event.setAccepted(false);
    QApplication::sendEvent(every.editors[0]->focusTarget(), &event);
    EXPECT_FALSE(event.isAccepted());
}

TEST(FieldEditor, commitIsAsLeavingTheField) {
    Every every;
    every.bed.focus(every.editors[0]);
    Bed::type(QStringLiteral("A-8"));
    every.editors[0]->commit();
    EXPECT_EQ(every.bed.committed, QStringList{QStringLiteral("A-8")});
    Bed::press(Qt::Key_Tab);
    EXPECT_EQ(every.bed.committed.size(), 1);
}

TEST(FieldEditor, losingTheWindowCommitsToo) {
    Every every;
    every.bed.focus(every.editors[0]);
    Bed::type(QStringLiteral("A-9"));
    QWidget other;
    other.show();
    other.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&other, 20000));
    EXPECT_EQ(every.bed.committed, QStringList{QStringLiteral("A-9")});
}

TEST(FieldEditor, showingAValueSaysNothing) {
    Every every;
    for (Editor* editor : every.editors) {
        editor->setText(QStringLiteral("new"));
        editor->setText(QString());
        EXPECT_EQ(editor->text(), QString());
    }
    EXPECT_TRUE(every.bed.committed.isEmpty());
    EXPECT_EQ(every.bed.edits, 0);
}

TEST(FieldEditor, garbageIsKeptToTheLetter) {
    Every every;
    const QString garbage = QStringLiteral("xyz Łŷ ?! 12,34.5");
    for (Editor* editor : every.editors) {
        if (qobject_cast<QComboBox*>(editor->focusTarget()) != nullptr ||
            editor->focusTarget()->inherits("hearth::ui::input::ChoiceField")) {
            continue;  // takes no free text
        }
        every.bed.committed.clear();
        every.bed.focus(editor);
        Bed::type(garbage);
        Bed::press(Qt::Key_Tab);
        EXPECT_EQ(editor->text(), garbage);
        EXPECT_EQ(every.bed.committed, QStringList{garbage});
        editor->setText(garbage);
        EXPECT_EQ(editor->text(), garbage);
    }
}

TEST(FieldEditor, readOnlyTakesNoKeys) {
    Every every;
    for (Editor* editor : every.editors) {
        editor->setReadOnly(true);
        editor->focusTarget()->setFocus();
        if (QApplication::focusWidget() != editor->focusTarget()) {
            continue;  // a list that can't be chosen from takes no focus
        }
        Bed::type(QStringLiteral("n"));
        Bed::press(Qt::Key_Down);
        Bed::press(Qt::Key_Down, Qt::AltModifier);
        Bed::press(Qt::Key_Delete);
        EXPECT_EQ(editor->text(), QString());
    }
    EXPECT_TRUE(every.bed.committed.isEmpty());
}

}  // namespace
}  // namespace hearth::ui::input
