// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/text_editors.h"

#include "tests/ui/input/bed.h"

#include <QApplication>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using testing::Bed;

TEST(LineEditor, commitsOnceWhenLeftAndOnlyWhenChanged) {
    Bed bed;
    Editor* editor = bed.add(makeTextEditor(nullptr), QStringLiteral("Name"));
    Editor* next = bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    bed.show();
    bed.focus(editor);
    Bed::type(QStringLiteral("Llŷr ap Tŵm Wiśniewski"));
    EXPECT_TRUE(bed.committed.isEmpty());
    EXPECT_EQ(bed.edits, 22);
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed, QStringList{QStringLiteral("Llŷr ap Tŵm Wiśniewski")});
    EXPECT_EQ(QApplication::focusWidget(), next->focusTarget());
    bed.focus(editor);
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed.size(), 1);
}

TEST(LineEditor, showsTheBeginningOfWhatIsLongerThanTheField) {
    Bed bed;
    Editor* editor = bed.add(makeTextEditor(nullptr), QStringLiteral("Where"));
    bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    const auto* line = qobject_cast<QLineEdit*>(editor->focusTarget());
    ASSERT_NE(line, nullptr);
    editor->setText(QStringLiteral("in the meter box outside, left of the door"));
    EXPECT_EQ(line->cursorPosition(), 0);
    bed.show();
    bed.focus(editor);
    Bed::press(Qt::Key_End);
    Bed::type(QStringLiteral(" at the back"));
    EXPECT_GT(line->cursorPosition(), 40) << "where it is typed while it is typed";
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(line->cursorPosition(), 0);
}

TEST(LongTextEditor, shiftAndEnterStartsALineAndTabLeaves) {
    Bed bed;
    Editor* editor = bed.add(makeLongTextEditor(nullptr, 3), QStringLiteral("Remarks"));
    Editor* next = bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    bed.show();
    bed.focus(editor);
    Bed::type(QStringLiteral("one"));
    Bed::press(Qt::Key_Return, Qt::ShiftModifier);
    Bed::type(QStringLiteral("two"));
    EXPECT_EQ(editor->text(), QStringLiteral("one\ntwo"));
    Bed::press(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), next->focusTarget());
    EXPECT_EQ(bed.committed, QStringList{QStringLiteral("one\ntwo")});
    EXPECT_TRUE(editor->focusTarget()->accessibleDescription().contains(QStringLiteral("Shift+Enter")));
}

TEST(LongTextEditor, isAsHighAsItsLines) {
    Bed bed;
    Editor* three = bed.add(makeLongTextEditor(nullptr, 3), QStringLiteral("three"));
    Editor* six = bed.add(makeLongTextEditor(nullptr, 6), QStringLiteral("six"));
    EXPECT_GT(six->focusTarget()->height(), three->focusTarget()->height() * 1.5);
}

}  // namespace
}  // namespace hearth::ui::input
