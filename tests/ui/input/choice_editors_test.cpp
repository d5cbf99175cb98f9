// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_editors.h"

#include "tests/ui/input/bed.h"

#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QTest>

#include <gtest/gtest.h>

namespace hearth::ui::input {
namespace {

using testing::Bed;

std::vector<ChoiceItem> answers() {
    return {{QStringLiteral("connected"), QStringLiteral("connected, all off")},
            {QStringLiteral("isolated"), QStringLiteral("isolated at their valves")},
            {QStringLiteral("none"), QStringLiteral("none connected")},
            {QStringLiteral("unclear"), QStringLiteral("not clear")},    // n is taken: o
            {QStringLiteral("other"), QStringLiteral("another &way")}};  // w by the sign
}

struct OneChoice {
    Bed bed;
    Editor* editor = bed.add(makeChoiceEditor(nullptr, answers()), QStringLiteral("Appliances"));
    Editor* next = bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    OneChoice() {
        bed.show();
        bed.focus(editor);
    }
};

TEST(ChoiceEditor, aLetterChoosesAndCommitsAtOnce) {
    const std::pair<const char*, const char*> letters[] = {
        {"c", "connected"}, {"i", "isolated"}, {"N", "none"}, {"o", "unclear"}, {"w", "other"}};
    for (const auto& [letter, code] : letters) {
        OneChoice one;
        Bed::type(QString::fromLatin1(letter));
        EXPECT_EQ(one.editor->text().toStdString(), code);
        EXPECT_EQ(one.bed.committed, QStringList{QString::fromLatin1(code)});
        Bed::press(Qt::Key_Return);
        EXPECT_EQ(QApplication::focusWidget(), one.next->focusTarget());
        EXPECT_EQ(one.bed.committed.size(), 1);
    }
}

TEST(ChoiceEditor, anotherLetterDoesNothing) {
    OneChoice one;
    Bed::type(QStringLiteral("z"));
    EXPECT_EQ(one.editor->text(), QString());
    EXPECT_TRUE(one.bed.committed.isEmpty());
}

TEST(ChoiceEditor, arrowsMoveAndCommitWhenLeft) {
    OneChoice one;
    Bed::press(Qt::Key_Right);
    EXPECT_EQ(one.editor->text(), QStringLiteral("connected"));
    Bed::press(Qt::Key_Right);
    Bed::press(Qt::Key_Down);
    EXPECT_EQ(one.editor->text(), QStringLiteral("none"));
    Bed::press(Qt::Key_Left);
    EXPECT_EQ(one.editor->text(), QStringLiteral("isolated"));
    EXPECT_TRUE(one.bed.committed.isEmpty());
    Bed::press(Qt::Key_Tab);
    EXPECT_EQ(one.bed.committed, QStringList{QStringLiteral("isolated")});
}

TEST(ChoiceEditor, deleteTakesTheChoiceAway) {
    OneChoice one;
    one.editor->setText(QStringLiteral("none"));
    Bed::press(Qt::Key_Delete);
    EXPECT_EQ(one.editor->text(), QString());
    Bed::press(Qt::Key_Tab);
    EXPECT_EQ(one.bed.committed, QStringList{QString()});
}

TEST(ChoiceEditor, escapeBringsBackTheChoice) {
    OneChoice one;
    one.editor->setText(QStringLiteral("none"));
    Bed::press(Qt::Key_Left);
    Bed::press(Qt::Key_Escape);
    EXPECT_EQ(one.editor->text(), QStringLiteral("none"));
}

TEST(ChoiceEditor, aClickChooses) {
    OneChoice one;
    QWidget* field = one.editor->focusTarget();
    QTest::mouseClick(field, Qt::LeftButton, Qt::NoModifier, QPoint(12, 14));
    EXPECT_EQ(one.bed.committed, QStringList{QStringLiteral("connected")});
}

TEST(ChoiceEditor, aCodeThatItDoesNotKnowIsKept) {
    OneChoice one;
    one.editor->setText(QStringLiteral("from_a_newer_program"));
    Bed::press(Qt::Key_Tab);
    EXPECT_EQ(one.editor->text(), QStringLiteral("from_a_newer_program"));
    EXPECT_TRUE(one.bed.committed.isEmpty());
}

TEST(ChoiceEditor, wrapsWhereItIsNarrow) {
    OneChoice one;
    const auto* field = one.editor->focusTarget();
    EXPECT_GT(field->heightForWidth(200), 2 * field->heightForWidth(2000));
}

TEST(ChoiceEditor, isAsHighAsItsRowsInAPage) {
    Bed bed;
    Editor* editor = bed.add(makeChoiceEditor(nullptr, answers()), QStringLiteral("Appliances"));
    bed.show();
    bed.window().resize(200, 400);
    QApplication::processEvents();
    const auto* field = editor->focusTarget();
    ASSERT_GT(field->heightForWidth(field->width()), field->heightForWidth(2000)) << "nothing wraps here";
    EXPECT_GE(field->height(), field->heightForWidth(field->width())) << "the last row is cut off";
}

TEST(ChoiceEditor, choosingMovesNothing) {
    OneChoice one;
    const auto* field = one.editor->focusTarget();
    const int before = field->heightForWidth(420);
    for (const ChoiceItem& choice : answers()) {
        one.editor->setText(choice.code);
        EXPECT_EQ(field->heightForWidth(420), before);
    }
}

TEST(ChoiceEditor, tellsAScreenReaderWhatIsChosenAndHow) {
    OneChoice one;
    auto* accessible = QAccessible::queryAccessibleInterface(one.editor->focusTarget());
    ASSERT_NE(accessible, nullptr);
    EXPECT_EQ(accessible->role(), QAccessible::ComboBox);
    EXPECT_EQ(accessible->text(QAccessible::Name), QStringLiteral("Appliances"));
    EXPECT_EQ(accessible->text(QAccessible::Value), QString());
    one.editor->setText(QStringLiteral("none"));
    EXPECT_EQ(accessible->text(QAccessible::Value), QStringLiteral("none connected"));
    EXPECT_TRUE(accessible->text(QAccessible::Description).contains(QStringLiteral("W another way")));
}

/// Several may be chosen: a letter or Space takes one or gives it back, arrows only move.
TEST(SeveralEditor, lettersAndSpaceChooseAndTakeAway) {
    Bed bed;
    auto* editor = bed.add(makeSeveralEditor(nullptr, {{QStringLiteral("a"), QStringLiteral("apples")},
                                                       {QStringLiteral("b"), QStringLiteral("beans")},
                                                       {QStringLiteral("c"), QStringLiteral("cress")}}),
                           QStringLiteral("Rows"));
    bed.show();
    bed.focus(editor);
    Bed::type(QStringLiteral("ca"));
    EXPECT_EQ(editor->text(), QStringLiteral("a c"));  // in the order of the choices
    Bed::press(Qt::Key_Right);
    EXPECT_EQ(editor->text(), QStringLiteral("a c"));
    Bed::type(QStringLiteral(" "));
    EXPECT_EQ(editor->text(), QStringLiteral("a b c"));
    Bed::type(QStringLiteral("a"));
    EXPECT_EQ(editor->text(), QStringLiteral("b c"));
    EXPECT_EQ(bed.committed.size(), 4);
    EXPECT_EQ(bed.committed.back(), QStringLiteral("b c"));
    const auto* interface = QAccessible::queryAccessibleInterface(editor->focusTarget());
    ASSERT_NE(interface, nullptr);
    EXPECT_EQ(interface->text(QAccessible::Value), QStringLiteral("beans, cress"));
}

TEST(ListEditor, choosesByKeysAndCommitsWhenLeft) {
    Bed bed;
    Editor* editor = bed.add(makeListEditor(nullptr, answers()), QStringLiteral("Appliances"));
    bed.add(makeTextEditor(nullptr), QStringLiteral("Next"));
    bed.show();
    EXPECT_EQ(editor->text(), QString());
    bed.focus(editor);
    Bed::press(Qt::Key_Down);
    Bed::press(Qt::Key_Down);
    EXPECT_EQ(editor->text(), QStringLiteral("isolated"));
    EXPECT_TRUE(bed.committed.isEmpty());
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed, QStringList{QStringLiteral("isolated")});
    bed.focus(editor);
    Bed::press(Qt::Key_Delete);
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed, (QStringList{QStringLiteral("isolated"), QString()}));
}

TEST(ListEditor, typingFindsByTheBeginningThenByAWord) {
    struct Case {
        const char* typed;
        const char* found;
    };
    const std::vector<ChoiceItem> tubes{{QStringLiteral("copper_22"), QStringLiteral("Copper 22 mm")},
                                        {QStringLiteral("copper_28"), QStringLiteral("Copper 28 mm")},
                                        {QStringLiteral("steel_28"), QStringLiteral("Steel 28 mm")},
                                        {QStringLiteral("other"), QStringLiteral("another, copper too")}};
    const Case cases[] = {
        {"c", "copper_22"},    {"cc", "copper_28"}, {"copper 28", "copper_28"},  {"28", "copper_28"},
        {"STEEL", "steel_28"}, {"to", "other"},     {"copper 28x", "copper_28"}, {"zz", ""},
        {"s28", "steel_28"}};
    for (const auto& [typed, found] : cases) {
        Bed bed;
        Editor* editor = bed.add(makeListEditor(nullptr, tubes), QStringLiteral("Tube"));
        bed.show();
        bed.focus(editor);
        for (const char letter : std::string(typed)) {
            QTest::keyClick(editor->focusTarget(), letter);
        }
        EXPECT_EQ(editor->text(), QString::fromLatin1(found)) << typed;
        EXPECT_TRUE(bed.committed.isEmpty());
        EXPECT_EQ(QApplication::activePopupWidget(), nullptr) << typed;
    }
}

TEST(ListEditor, tellsAScreenReaderWhatIsAskedAndWhatIsChosen) {
    Bed bed;
    Editor* editor = bed.add(makeListEditor(nullptr, answers()), QStringLiteral("Appliances"));
    editor->setText(QStringLiteral("none"));
    auto* accessible = QAccessible::queryAccessibleInterface(editor->focusTarget());
    ASSERT_NE(accessible, nullptr);
    EXPECT_EQ(accessible->role(), QAccessible::ComboBox);
    EXPECT_EQ(accessible->text(QAccessible::Name), QStringLiteral("Appliances"));
    EXPECT_EQ(accessible->text(QAccessible::Value), QStringLiteral("none connected"));
}

TEST(ListEditor, showsInWordsWhatNobodyHasSaidWhereItHasWordsForIt) {
    std::vector<ChoiceItem> choices = answers();
    choices.insert(choices.begin(), {QString(), QStringLiteral("not said yet")});
    Bed bed;
    Editor* editor = bed.add(makeListEditor(nullptr, choices), QStringLiteral("Appliances"));
    bed.show();
    const auto shown = [&] {
        return QAccessible::queryAccessibleInterface(editor->focusTarget())->text(QAccessible::Value);
    };
    EXPECT_EQ(shown(), QStringLiteral("not said yet"));
    editor->setText(QStringLiteral("none"));
    EXPECT_EQ(shown(), QStringLiteral("none connected"));
    editor->setText(QString());
    EXPECT_EQ(shown(), QStringLiteral("not said yet"));
    editor->setText(QStringLiteral("none"));
    bed.focus(editor);
    Bed::press(Qt::Key_Delete);
    EXPECT_EQ(shown(), QStringLiteral("not said yet"));
    EXPECT_EQ(editor->text(), QString());
}

TEST(ListEditor, asksForALongListWhenItIsEntered) {
    Bed bed;
    int asked = 0;
    std::vector<ChoiceItem> now{{QString(), QStringLiteral("all")},
                                {QStringLiteral("a"), QStringLiteral("Ash")}};
    auto* before = bed.add(makeTextEditor(nullptr), QStringLiteral("Before"));
    auto* editor = bed.add(makeListEditor(nullptr, {{QString(), QStringLiteral("all")}},
                                          [&] {
                                              ++asked;
                                              return now;
                                          }),
                           QStringLiteral("Landlord"));
    bed.show();
    bed.focus(before);
    EXPECT_EQ(asked, 0) << "nobody opened it";
    bed.focus(editor);
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(editor->text(), QString());
    Bed::type(QStringLiteral("a"));
    Bed::type(QStringLiteral("s"));
    Bed::press(Qt::Key_Return);
    EXPECT_EQ(bed.committed, QStringList{QStringLiteral("a")});
    bed.focus(before);
    now.push_back({QStringLiteral("b"), QStringLiteral("Birch")});
    bed.focus(editor);
    EXPECT_EQ(editor->text(), QStringLiteral("a")) << "what was chosen stays chosen";
    editor->setText(QStringLiteral("b"));
    EXPECT_EQ(qobject_cast<QComboBox*>(editor->focusTarget())->currentText(), QStringLiteral("Birch"));
    EXPECT_EQ(asked, 2);
    now.push_back({QStringLiteral("c"), QStringLiteral("Cedar")});
    editor->setText(QStringLiteral("c"));
    EXPECT_EQ(qobject_cast<QComboBox*>(editor->focusTarget())->currentText(), QStringLiteral("Cedar"));
}

TEST(ListEditor, aCodeThatItDoesNotKnowIsShownAndKept) {
    Bed bed;
    Editor* editor = bed.add(makeListEditor(nullptr, answers()), QStringLiteral("Appliances"));
    editor->setText(QStringLiteral("from_a_newer_program"));
    EXPECT_EQ(editor->text(), QStringLiteral("from_a_newer_program"));
    EXPECT_EQ(qobject_cast<QComboBox*>(editor->focusTarget())->currentText(),
              QStringLiteral("from_a_newer_program"));
}

}  // namespace
}  // namespace hearth::ui::input
