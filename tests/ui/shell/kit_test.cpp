// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"

#include "core/rulebook/rule_book.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/change_words.h"
#include "ui/shell/line_list.h"
#include "ui/shell/value_fields.h"

#include <QLineEdit>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

using hearth::testing::press;
using hearth::testing::type;

TEST(KeyButton, isPressedByEnterSpaceAndItsKey) {
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* button =
        new KeyButton(QStringLiteral("Save"), QKeySequence(Qt::CTRL | Qt::Key_S), ButtonKind::Plain, &window);
    lines->addWidget(button);
    QSignalSpy clicked(button, &QPushButton::clicked);
    hearth::testing::activate(&window);
    button->setFocus();
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(clicked.count(), 3);
    button->setWords(QStringLiteral("Save all"));
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(clicked.count(), 4) << "new words have lost the key";
    EXPECT_EQ(button->accessibleName(), QStringLiteral("Save all"));
    EXPECT_EQ(button->accessibleDescription(), QStringLiteral("Ctrl+S")) << "the key is shown";
}

TEST(KeyButton, withoutAKeyAnswersToTheLetterThatIsMarked) {
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* button = new KeyButton(QStringLiteral("&Look round"), ButtonKind::Plain, &window);
    lines->addWidget(button);
    QSignalSpy clicked(button, &QPushButton::clicked);
    hearth::testing::activate(&window);
    button->setFocus();
    press(Qt::Key_L, Qt::AltModifier);
    EXPECT_EQ(clicked.count(), 1);
    EXPECT_EQ(button->accessibleName(), QStringLiteral("Look round"));
}

TEST(OrderTabs, followsTheLayoutsNotTheOrderOfMaking) {
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* third = new QLineEdit(&window);
    auto* first = new QLineEdit(&window);
    auto* row = new QHBoxLayout;
    auto* second = new QLineEdit(&window);
    row->addWidget(first);
    row->addWidget(second);
    lines->addLayout(row);
    lines->addWidget(third);
    orderTabs(&window);
    hearth::testing::activate(&window);
    EXPECT_EQ(hearth::testing::walk(&window, first), (std::vector<QWidget*>{first, second, third}));
}

TEST(OrderTabs, aFieldMovesWithItsEditor) {
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* after = new QLineEdit(&window);
    std::vector<QWidget*> expected;
    for (auto* editor : {input::makeTextEditor(&window), input::makeListEditor(&window, {}),
                         input::makeChoiceEditor(&window, {}), input::makeLongTextEditor(&window, 2),
                         input::makeQuantityEditor(&window, quantity::UnitFamily::Pressure)}) {
        lines->insertWidget(0, editor);  // against the order of making
        expected.insert(expected.begin(), editor->focusTarget());
    }
    lines->addWidget(after);
    expected.push_back(after);
    for (int again = 0; again < 2; ++again) {
        orderTabs(&window);
        hearth::testing::activate(&window);
        EXPECT_EQ(hearth::testing::walk(&window, expected.front()), expected);
        auto back = hearth::testing::walk(&window, expected.front(), Qt::ShiftModifier);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(back, expected);
    }
}

TEST(KeepOnCommit, whatCannotBeKeptStaysAsTypedWithTheReason) {
    const words::Words words;
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* field = input::makeTextEditor(&window);
    field->setLabel(QStringLiteral("Name"));
    lines->addWidget(field);
    bool full = true;
    keepOnCommit(field, words, [&full](const QString&) -> Result<void> {
        return full ? Result<void>(fail(ErrorCode::StoreFull, {"/x"})) : Result<void>();
    });
    hearth::testing::activate(&window);
    hearth::testing::fillField(field, QStringLiteral("abc"));
    EXPECT_EQ(field->text(), QStringLiteral("abc"));
    const QString problem = words.error({ErrorCode::StoreFull, {"/x"}});
    const auto said = [&window, &problem] {
        const auto labels = window.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->isVisible() && label->text() == problem;
        });
    };
    EXPECT_TRUE(said());
    full = false;
    hearth::testing::fillField(field, QStringLiteral("abcd"));
    EXPECT_FALSE(said()) << "the reason stays after it has been kept";
}

TEST(CommitField, keepsTheFieldUnderTheCursorAndTheCursor) {
    QWidget window;
    auto* lines = new QVBoxLayout(&window);
    auto* field = input::makeTextEditor(&window);
    lines->addWidget(field);
    QSignalSpy committed(field, &input::Editor::committed);
    hearth::testing::activate(&window);
    focusOn(field);
    type(QStringLiteral("abc"));
    commitField(&window);
    ASSERT_EQ(committed.count(), 1);
    EXPECT_EQ(committed.first().first().toString(), QStringLiteral("abc"));
    EXPECT_TRUE(field->focusTarget()->hasFocus());
    commitField(&window);
    EXPECT_EQ(committed.count(), 1) << "committed twice";
}

TEST(LineList, movesByArrowsAndOpensByEnter) {
    LineList list(QStringLiteral("Things"), QStringLiteral("Nothing"), nullptr);
    list.setLines({{QStringLiteral("a"), QStringLiteral("Ash")},
                   {QStringLiteral("b"), QStringLiteral("Birch"), QStringLiteral("a tree")},
                   {QStringLiteral("c"), QStringLiteral("Cherry")}});
    QSignalSpy moved(&list, &LineList::moved);
    QSignalSpy opened(&list, &LineList::opened);
    hearth::testing::activate(&list);
    list.setFocus();
    EXPECT_EQ(list.currentKey(), QStringLiteral("a")) << "the cursor starts on the first line";
    press(Qt::Key_Down);
    EXPECT_EQ(list.currentKey(), QStringLiteral("b"));
    press(Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.first().first().toInt(), 1);
    EXPECT_EQ(list.model()->index(1, 0).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("Birch, a tree"));
    moved.clear();
    list.setLines(
        {{QStringLiteral("b"), QStringLiteral("Birch")}, {QStringLiteral("d"), QStringLiteral("Date")}});
    EXPECT_EQ(list.currentKey(), QStringLiteral("b")) << "the cursor has lost its line";
    EXPECT_EQ(moved.count(), 0) << "nobody moved it";
    EXPECT_FALSE(list.setCurrentKey(QStringLiteral("zzz")));
}

TEST(ChangeWords, sayWhatWasChangedFromWhatToWhat) {
    const words::Words words;
    store::Change change;
    change.table = "installations";
    change.field = "meter_serial";
    change.before = "B2";
    change.after = "A1";
    EXPECT_EQ(changeSentence(words, change), QStringLiteral("Meter serial number: “A1” instead of “B2”"));
    change.field = "gas";
    change.before = "natural_gas";
    change.after = "propane";
    EXPECT_TRUE(changeSentence(words, change).contains(words.gas(rulebook::Gas::Propane)));
    change.field = std::string(reg::infoOf(reg::Item::TightStart).code);
    change.before.reset();
    change.after = "20.71";
    const QString entry = changeSentence(words, change);
    EXPECT_TRUE(entry.startsWith(words.item(reg::Item::TightStart))) << entry.toStdString();
    EXPECT_TRUE(entry.contains(QStringLiteral("nothing"))) << entry.toStdString();
}

TEST(ChangeWords, sayThatSomethingCameOrWentAndShowNoKeys) {
    const words::Words words;
    store::Change change;
    change.table = "installations";
    change.field = "id";
    change.after = "019723ab-0000-7000-8000-000000000001";
    EXPECT_EQ(changeSentence(words, change), QStringLiteral("Gas installation: added"));
    std::swap(change.before, change.after);
    EXPECT_EQ(changeSentence(words, change), QStringLiteral("Gas installation: taken away"));
    change.table = "roles";
    change.field = "party";
    change.after = "019723ab-0000-7000-8000-000000000002";
    EXPECT_EQ(changeSentence(words, change), QStringLiteral("Who holds the role: another than before"));
}

TEST(ChangeWords, doNotGiveAccessNotesAway) {
    const words::Words words;
    store::Change change;
    change.table = "premises";
    change.field = "access_notes";
    change.before = "key under the pot";
    change.after = "code 1234";
    const QString sentence = changeSentence(words, change);
    EXPECT_FALSE(sentence.contains(QStringLiteral("pot")));
    EXPECT_FALSE(sentence.contains(QStringLiteral("1234")));
}

TEST(ValueFields, aRangeIsTypedAsTwoEnds) {
    const words::Words words;
    const auto book = rulebook::RuleBook::shipped();
    const auto entries = book.entries();
    const auto range = std::find_if(entries.begin(), entries.end(), [](const rulebook::Entry& entry) {
        return rulebook::rangeOf(entry).has_value();
    });
    ASSERT_NE(range, entries.end());
    ValueFields fields(words, QStringLiteral("test"), nullptr);
    fields.show(*range);
    hearth::testing::activate(&fields);
    EXPECT_EQ(fields.value(), range->value) << "what is shown is what the entry says";
    const auto editors = fields.findChildren<input::Editor*>();
    ASSERT_EQ(editors.size(), 2);
    editors[0]->setText(QStringLiteral("30"));
    editors[1]->setText(QStringLiteral("20"));
    EXPECT_EQ(fields.value(), std::nullopt) << "the least is above the most";
    editors[1]->setText(QStringLiteral("thirty"));
    EXPECT_EQ(fields.value(), std::nullopt);
    EXPECT_EQ(editors[1]->text(), QStringLiteral("thirty"));
}

}  // namespace
}  // namespace hearth::ui::shell
