// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_sheet.h"

#include "tests/ui/workings/workings_bench.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>

#include <algorithm>

namespace hearth::ui::workings {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::focus;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;
using judging::Question;

class WorkSheetTest : public hearth::testing::WorkingsBench {};

TEST_F(WorkSheetTest, CtrlEnterGoesPastEmptyFieldsToTheNextRowOrPart) {
    start(Question::Pipes);
    const auto at = [this](const char* field) { return editor(place, field)->focusTarget(); };
    enterField(editor(place, "gas.family"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(focus(), at("1-1-section.name"));
    enterField(editor(place, "1-1-section.length"));
    type(QStringLiteral("4"));  // not left yet
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(focus(), at("1-2-section.name"));
    EXPECT_EQ(editor(place, "1-1-section.length")->text(), QStringLiteral("4"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(focus(), fields().front().editor->focusTarget()) << "after the last the first";
}

TEST_F(WorkSheetTest, TheListIsReachedFromTheSheetAndTheSheetFromTheList) {
    start(Question::RoomCo);
    press(Qt::Key_K, Qt::ControlModifier);
    EXPECT_EQ(focus(), list());
    EXPECT_EQ(list()->line(list()->currentRow()).key, QStringLiteral("room_co"));
    press(Qt::Key_Return);
    EXPECT_TRUE(sheet()->isAncestorOf(focus()));
    press(Qt::Key_Escape);
    EXPECT_EQ(focus(), list());
}

TEST_F(WorkSheetTest, TheListIsReachedFromOutsideThePlaceToo) {
    start(Question::RoomCo);
    child<QLineEdit>(window.get(), "searchField")->setFocus();
    press(Qt::Key_K, Qt::ControlModifier);
    EXPECT_EQ(focus(), list());
}

TEST_F(WorkSheetTest, EnterInTheLastFieldStaysOnTheSheetAndSaysSo) {
    start();
    for (const auto& info : judging::questions()) {
        SCOPED_TRACE(std::string(info.code));
        place->openQuestion(info.question);
        QApplication::processEvents();
        QWidget* last = fields().back().editor->focusTarget();
        last->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Enter, Qt::KeypadModifier);
        EXPECT_EQ(focus(), last);
        EXPECT_TRUE(said().contains(QStringLiteral("The last field.")));
        window->say({});
    }
}

TEST_F(WorkSheetTest, EnterInTheLastFieldGoesOnWhereOneHasComeOfIt) {
    start(Question::RoomCo);
    enterField(fields().back().editor);
    typeLine(QStringLiteral("3"));
    EXPECT_EQ(focus(), editor(place, "4-2-room_co.at")->focusTarget());
}

TEST_F(WorkSheetTest, TheLastFieldShowsTheFiguresBelowIt) {
    start(Question::GasRate);
    window->resize(1024, 600);
    fillField(editor(place, "rate.time"), QStringLiteral("120"));
    enterField(fields().back().editor);
    QApplication::processEvents();
    const auto* result = child<QWidget>(sheet()->paper(), "workingsResult");
    const int bottom = result->mapTo(sheet()->viewport(), QPoint(0, result->height())).y();
    EXPECT_LE(bottom, sheet()->viewport()->height());
}

TEST_F(WorkSheetTest, PageKeysChangeNoChoice) {
    start(Question::Pipes);
    auto* tube = editor(place, "1-1-section.tube");
    tube->setText(QStringLiteral("copper_22"));
    enterField(tube);
    press(Qt::Key_PageDown);
    press(Qt::Key_PageUp);
    EXPECT_EQ(tube->text(), QStringLiteral("copper_22"));
}

TEST_F(WorkSheetTest, AFindingThatWaitsForReadingsNamesTheirFields) {
    start(Question::Gas);
    enterField(editor(place, "gas.family"));
    type(QStringLiteral("n"));
    const auto& notes = sheet()->paper()->notes();
    const auto waiting = std::find_if(notes.begin(), notes.end(), [](const auto* note) {
        return note->judged().finding.why.say == rulebook::Say::ReadingMissing;
    });
    ASSERT_NE(waiting, notes.end());
    const QString empty = bench.words.item(reg::Item::GasHeatValue);
    EXPECT_TRUE((*waiting)->accessibleDescription().contains(QStringLiteral("Still empty: ") + empty));
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("Still empty: ") + empty));
}

}  // namespace
}  // namespace hearth::ui::workings
