// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/workings_place.h"

#include "tests/ui/workings/workings_bench.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"
#include "ui/words/question_words.h"
#include "ui/workings/work_editor.h"
#include "ui/workings/work_sheet.h"

#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>
#include <set>

namespace hearth::ui::workings {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;
using judging::Question;

class WorkingsPlaceTest : public hearth::testing::WorkingsBench {};

TEST_F(WorkingsPlaceTest, OffersEveryQuestionAndShowsWhatItDoesBeforeAnythingIsTyped) {
    start();
    const auto questions = judging::questions();
    ASSERT_EQ(list()->count(), static_cast<int>(questions.size()));
    EXPECT_EQ(focus(), list());
    for (const auto& info : questions) {
        EXPECT_EQ(title(), words::question(bench.words, info.question));
        EXPECT_TRUE(said().contains(words::questionHelp(bench.words, info.question))) << info.code;
        EXPECT_TRUE(
            said().contains(bench.words.caution(rulebook::Gas::NaturalGas, reg::Country::England, {})));
        EXPECT_TRUE(sheet()->paper()->notes().empty()) << info.code << ": a wall of no verdict";
        press(Qt::Key_Down);
    }
}

TEST_F(WorkingsPlaceTest, EveryFieldOfEveryQuestionHasItsEditorAndItsName) {
    start();
    for (const auto& info : judging::questions()) {
        place->openQuestion(info.question);
        QApplication::processEvents();
        for (const auto& group : info.groups) {
            for (const reg::Item item : group.items) {
                const QString name = fieldName({group.group, 0, item});
                auto* field = place->findChild<input::Editor*>(name);
                ASSERT_NE(field, nullptr) << info.code << ' ' << name.toStdString();
                EXPECT_TRUE(field->focusTarget()->accessibleName().contains(bench.words.item(item)));
            }
        }
        hearth::testing::expectUniqueNames(window.get());
    }
}

TEST_F(WorkingsPlaceTest, EveryQuestionCanBeWalkedThrough) {
    start();
    const auto state = [this] { return bench.state(); };
    for (const auto& info : judging::questions()) {
        SCOPED_TRACE(std::string(info.code));
        window->resize(1280, 800);
        place->openQuestion(info.question);
        QApplication::processEvents();
        hearth::testing::expectWalkable(window.get(), state);
    }
}

TEST_F(WorkingsPlaceTest, RubbishInEachFieldIsKeptToTheLetterAndSaid) {
    start();
    for (const auto& info : judging::questions()) {
        place->openQuestion(info.question);
        for (const WorkField& field : fields()) {
            const auto kind = reg::infoOf(field.at.item).kind;
            const bool canBeWrong = kind == reg::ItemKind::Number || kind == reg::ItemKind::Date;
            if (!field.editor->isVisible() || field.editor->focusTarget()->inherits("QComboBox") ||
                !field.editor->focusTarget()->inherits("QLineEdit")) {
                continue;
            }
            fillField(field.editor, QStringLiteral("1.2.3 rubbish"));
            EXPECT_EQ(field.editor->text(), QStringLiteral("1.2.3 rubbish")) << info.code;
            EXPECT_EQ(problemOf(field.at.item, field.editor->text(), bench.words).isEmpty(), !canBeWrong);
            if (canBeWrong) {
                EXPECT_TRUE(field.editor->focusTarget()->accessibleDescription().contains(
                    problemOf(field.at.item, field.editor->text(), bench.words)))
                    << info.code;
            }
        }
        press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
        EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("1.2.3 rubbish"))) << info.code;
    }
}

TEST_F(WorkingsPlaceTest, NumbersEverywhereAreAnsweredAndWalkedThrough) {
    start();
    const auto state = [this] { return bench.state(); };
    for (const auto& info : judging::questions()) {
        SCOPED_TRACE(std::string(info.code));
        window->resize(1280, 800);
        place->openQuestion(info.question);
        for (const WorkField& field : fields()) {
            if (field.editor->focusTarget()->inherits("QLineEdit") && field.editor->isVisible()) {
                fillField(field.editor, QStringLiteral("2"));
            }
        }
        QApplication::processEvents();
        hearth::testing::expectWalkable(window.get(), state);
    }
}

TEST_F(WorkingsPlaceTest, WhatWasTypedIsThereAgainAfterAnotherQuestion) {
    start(Question::RoomCo);
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("12,5"));
    place->openQuestion(Question::GasRate);
    EXPECT_EQ(place->findChild<input::Editor*>(QStringLiteral("4-1-room_co.reading")), nullptr);
    place->openQuestion(Question::RoomCo);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QStringLiteral("12,5"));
}

TEST_F(WorkingsPlaceTest, WhatIsUnderTheCursorIsKeptWhenAnotherPlaceComesIntoView) {
    start(Question::RoomCo);
    enterField(editor(place, "4-1-room_co.reading"));
    type(QStringLiteral("12"));
    window->showPlace(0);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QStringLiteral("12"));
    EXPECT_TRUE(inView("4-2-room_co.reading"));
}

TEST_F(WorkingsPlaceTest, ARowAppearsAsSoonAsTheLastHoldsSomethingAndEnterGoesOnIntoIt) {
    start(Question::RoomCo);
    EXPECT_FALSE(inView("4-2-room_co.at"));
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("3"));
    ASSERT_TRUE(inView("4-2-room_co.at"));
    EXPECT_EQ(focus(), editor(place, "4-2-room_co.at")->focusTarget());
    EXPECT_FALSE(inView("4-3-room_co.at"));
    fillField(editor(place, "4-1-room_co.reading"), QString());
    QApplication::processEvents();
    EXPECT_FALSE(inView("4-3-room_co.at"));
    EXPECT_TRUE(inView("4-1-room_co.at")) << "one empty row stays";
}

TEST_F(WorkingsPlaceTest, ANewRowTakesTheUnitOfTheOneAbove) {
    start(Question::Pipes);
    fillField(editor(place, "1-1-section.length"), QStringLiteral("12 ft"));
    EXPECT_EQ(editor(place, "1-1-section.length")->text(), QStringLiteral("12"));
    EXPECT_EQ(editor(place, "1-2-section.length")->unit(), quantity::UnitCode::Foot);
}

TEST_F(WorkingsPlaceTest, NoMoreRowsThanTheQuestionTakes) {
    start(Question::Ventilation);
    const auto& vents = judging::infoOf(Question::Ventilation).groups.back();
    for (int row = 1; row <= vents.most; ++row) {
        fillField(editor(place, QStringLiteral("3-%1-vent.area").arg(row).toLatin1().constData()),
                  QStringLiteral("50"));
    }
    EXPECT_FALSE(inView(QStringLiteral("3-%1-vent.area").arg(vents.most + 1).toLatin1().constData()));
}

TEST_F(WorkingsPlaceTest, WhatIsOfNoUseIsNotAskedAndWhatHoldsSomethingStays) {
    start(Question::GasRate);
    EXPECT_FALSE(inView("rate.dial"));
    fillField(editor(place, "rate.index_start"), QStringLiteral("1204.318"));
    enterField(editor(place, "rate.meter"));
    press(Qt::Key_I);
    QApplication::processEvents();
    EXPECT_TRUE(inView("rate.dial"));
    EXPECT_TRUE(inView("rate.index_start")) << "it holds something";
    EXPECT_FALSE(inView("rate.index_end"));
    hearth::testing::expectEveryStopOnce(window.get());
}

TEST_F(WorkingsPlaceTest, ClearingIsTakenBackByKey) {
    start(Question::RoomCo);
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("9"));
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QString());
    EXPECT_FALSE(inView("4-2-room_co.reading"));
    EXPECT_EQ(child<QPushButton>(place, "clearButton")->text(), QStringLiteral("Bring it back"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QStringLiteral("9"));
    press(Qt::Key_L, Qt::ControlModifier);
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QStringLiteral("9")) << "the button does it too";
}

TEST_F(WorkingsPlaceTest, TakingBackReachesTheStoreOnlyWhenTheSheetHasNothing) {
    auto firm = need(bench.store->firm());
    firm.telephone = "01632 960001";  // of the range for fiction
    need(bench.store->saveFirm(firm));
    start(Question::RoomCo);
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("9"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(editor(place, "4-1-room_co.reading")->text(), QString());
    EXPECT_EQ(need(bench.store->firm()).telephone, "01632 960001");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->firm()).telephone, "");
}

TEST_F(WorkingsPlaceTest, CopiesTheQuestionAndWhatWasTyped) {
    start(Question::RoomCo);
    EXPECT_FALSE(child<QPushButton>(place, "copyButton")->isEnabled());
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("9"));
    enterField(editor(place, "4-2-room_co.at"));
    type(QStringLiteral("5"));  // not left yet
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.startsWith(words::question(bench.words, Question::RoomCo)));
    EXPECT_TRUE(text.contains(QStringLiteral("Reading 1 · CO: 9\u00a0ppm"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Reading 2 · After: 5\u00a0min"))) << text.toStdString();
}

TEST_F(WorkingsPlaceTest, IsTakenOverIntoAVisitByKeysAndTakenBack) {
    const auto visit = bench.startVisit(bench.addPremises("14 Tanner's Row"));
    start(Question::Pressures);
    const auto textOf = [&](reg::Item item) {
        std::string text;
        for (const auto& entry : need(bench.store->visitFile(visit)).entries) {
            text += entry.item == item ? entry.text : "";
        }
        return text;
    };
    fillField(editor(place, "pressure.meter_working"), QStringLiteral("20.6"));
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_EQ(focus(), child<shell::LineList>(place, "openVisitsList"));
    hearth::testing::expectUniqueNames(window.get());
    press(Qt::Key_Return);
    EXPECT_TRUE(textOf(reg::Item::VisitRemarks).find("20.6") != std::string::npos);
    EXPECT_EQ(textOf(reg::Item::WorkingPressure), "20.6");
    EXPECT_TRUE(said().contains(QStringLiteral("14 Tanner's Row"))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("working pressure"))) << "what was done is said";
    EXPECT_TRUE(sheet()->isVisible());
    EXPECT_TRUE(sheet()->isAncestorOf(focus())) << "on with the field that was left";
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(textOf(reg::Item::VisitRemarks), "");
    EXPECT_FALSE(child<QLabel>(window.get(), "statusText")->text().contains(u'\n')) << "cut off in the line";
    EXPECT_EQ(editor(place, "pressure.meter_working")->text(), QStringLiteral("20.6"));
}

TEST_F(WorkingsPlaceTest, EscapeLeavesTheChoiceOfAVisitWithNothingTakenOver) {
    const auto visit = bench.startVisit(bench.addPremises("14 Tanner's Row"));
    start(Question::RoomCo);
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("9"));
    press(Qt::Key_T, Qt::ControlModifier);
    press(Qt::Key_Escape);
    EXPECT_TRUE(sheet()->isVisible());
    EXPECT_TRUE(need(bench.store->visitFile(visit)).entries.empty());
}

TEST_F(WorkingsPlaceTest, WithNoOpenVisitItSaysSo) {
    start(Question::RoomCo);
    fillField(editor(place, "4-1-room_co.reading"), QStringLiteral("9"));
    press(Qt::Key_T, Qt::ControlModifier);
    EXPECT_EQ(child<shell::LineList>(place, "openVisitsList")->count(), 0);
    EXPECT_EQ(focus(), child<QPushButton>(place, "backToSheetButton"));
    press(Qt::Key_Return);
    EXPECT_TRUE(sheet()->isVisible());
}

TEST_F(WorkingsPlaceTest, AReadOnlyStoreTakesNothingOverAndSaysWhy) {
    const auto reader = need(store::Store::open(bench.path(), store::Access::Read, bench.clock));
    auto parts = bench.parts();
    shell::MainWindow reading({*reader, parts.clock, parts.words, parts.dialogs, parts.printing, parts.issue,
                               parts.scheme, nullptr});
    auto* shown = new WorkingsPlace(reading.context());
    reading.setPlaces({shown});
    hearth::testing::activate(&reading);
    shown->openQuestion(Question::RoomCo);
    fillField(editor(shown, "4-1-room_co.reading"), QStringLiteral("9"));
    EXPECT_FALSE(child<QPushButton>(shown, "takeOverButton")->isEnabled());
    EXPECT_EQ(child<QLabel>(shown, "whyNotText")->text(), bench.words.error(reader->whyReadOnly()));
    EXPECT_TRUE(child<QPushButton>(shown, "copyButton")->isEnabled());
}

TEST_F(WorkingsPlaceTest, SearchFindsQuestionsByTheirWordsAndTheirFields) {
    start();
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("elbows"));
    ASSERT_EQ(list()->count(), 1);
    EXPECT_EQ(list()->line(0).key, QStringLiteral("pipes"));
    press(Qt::Key_Down);
    EXPECT_EQ(title(), words::question(bench.words, Question::Pipes));
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("xyzzy"));
    EXPECT_EQ(list()->count(), 0);
    EXPECT_EQ(title(), words::question(bench.words, Question::Pipes)) << "the sheet stays";
}

TEST_F(WorkingsPlaceTest, TheMarginSaysWhyItIsEmpty) {
    start(Question::RoomCo);
    const auto hint = [this] { return child<QLabel>(place, "workingsHint")->text(); };
    const QString before = hint();
    EXPECT_TRUE(before.contains(QStringLiteral("as soon as something is typed")));
    fillField(editor(place, "room_co.distance"), QStringLiteral("yes"));
    fillField(editor(place, "4-1-room_co.place"), QStringLiteral("room"));
    EXPECT_TRUE(!child<QLabel>(place, "workingsHint")->isVisible() || hint() != before);
}

TEST_F(WorkingsPlaceTest, WhatHelpsWithAFieldIsShownWhileTheKeyboardIsInIt) {
    start(Question::GasRate);
    const auto* help = child<QLabel>(place, "fieldHelpText");
    enterField(editor(place, "appliance.tolerance"));
    EXPECT_EQ(help->text(), bench.words.itemHelp(reg::Item::ApplianceTolerance));
    enterField(editor(place, "rate.time"));
    EXPECT_EQ(help->text(), QString());
}

TEST_F(WorkingsPlaceTest, BackInTheWindowTheWorkGoesOnInTheFieldThatWasLeft) {
    start(Question::GasRate);
    enterField(editor(place, "rate.time"));
    window->showPlace(0);
    EXPECT_EQ(focus(), editor(place, "rate.time")->focusTarget());
    list()->setFocus();
    window->showPlace(0);
    EXPECT_EQ(focus(), list());
}

TEST_F(WorkingsPlaceTest, WhatIsReadOnSiteHasItsUnitFromTheStart) {
    start(Question::HotWater);
    EXPECT_EQ(editor(place, "water.flow")->unit(), quantity::UnitCode::LitrePerMinute);
    place->openQuestion(Question::Larger);
    EXPECT_EQ(editor(place, "purge.largest_pipe")->unit(), quantity::UnitCode::Millimetre);
}

TEST_F(WorkingsPlaceTest, ReadingsInARoomAreATableInTheSmallestWindowToo) {
    start(Question::RoomCo);
    window->resize(1024, 600);
    QApplication::processEvents();
    EXPECT_FALSE(child<QLabel>(editor(place, "4-1-room_co.place"), "fieldLabel")->isVisible());
}

TEST_F(WorkingsPlaceTest, RowsAreATableWhereThereIsRoomAndFormsWhereThereIsNone) {
    start(Question::Ventilation);
    auto* area = editor(place, "3-1-vent.area");
    const auto labelOf = [](input::Editor* field) { return child<QLabel>(field, "fieldLabel")->isVisible(); };
    window->resize(1600, 900);
    QApplication::processEvents();
    EXPECT_FALSE(labelOf(area)) << "its head stands above the column";
    const QString name = area->focusTarget()->accessibleName();
    EXPECT_TRUE(name.startsWith(QStringLiteral("Vent 1, "))) << name.toStdString();
    enterField(area);
    type(QStringLiteral("50"));
    window->resize(1024, 600);
    QApplication::processEvents();
    EXPECT_TRUE(labelOf(area));
    EXPECT_EQ(area->focusTarget()->accessibleName(), name);
    EXPECT_EQ(focus(), area->focusTarget());
    EXPECT_EQ(area->text(), QStringLiteral("50"));
    hearth::testing::expectEveryStopOnce(window.get());
}

TEST_F(WorkingsPlaceTest, NothingIsWiderThanTheSmallestWindowInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    start();
    for (const auto& info : judging::questions()) {
        place->openQuestion(info.question);
        hearth::testing::expectFits(window.get(), {1024, 600});
        QApplication::processEvents();
        EXPECT_LE(sheet()->paper()->width(), sheet()->viewport()->width()) << info.code;
    }
    QCoreApplication::removeTranslator(&pseudo);
}

TEST_F(WorkingsPlaceTest, WhatToDoFirstGoesByTheGasOfTheSheet) {
    start(Question::GasRate);
    enterField(editor(place, "gas.family"));
    press(Qt::Key_P);
    EXPECT_EQ(place->gas(), rulebook::Gas::Propane);
    EXPECT_TRUE(said().contains(bench.words.caution(rulebook::Gas::Propane, reg::Country::England, {})));
}

}  // namespace
}  // namespace hearth::ui::workings
