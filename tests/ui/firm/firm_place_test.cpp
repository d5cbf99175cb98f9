// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/firm_place.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;

class FirmPlaceTest : public ::testing::Test {
  protected:
    void start() {
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new FirmPlace(window->context());
        window->setPlaces({place});
        hearth::testing::activate(window.get());
    }

    FirmBench bench;
    std::unique_ptr<shell::MainWindow> window;
    FirmPlace* place = nullptr;
};

TEST_F(FirmPlaceTest, theFirmsFieldsAreKeptAndTakenBack) {
    start();
    fillField(editor(place, "registrationNumber"), QStringLiteral("000001"));
    EXPECT_EQ(need(bench.store->firm()).registrationNumber, "000001");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->firm()).registrationNumber, "000000");
    EXPECT_EQ(editor(place, "registrationNumber")->text(), QStringLiteral("000000"));
}

TEST_F(FirmPlaceTest, anEngineerIsAddedByKeysAndKeptWithTheName) {
    start();
    child<QPushButton>(place, "addEngineerButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(need(bench.store->engineers()).size(), 1U);
    for (const char* line : {"T. Pike", "0000002", "1/2/2028"}) {
        typeLine(QString::fromLatin1(line));
    }
    const auto engineers = need(bench.store->engineers());
    ASSERT_EQ(engineers.size(), 2U);
    const auto pike = std::find_if(engineers.begin(), engineers.end(),
                                   [](const reg::Engineer& engineer) { return engineer.name == "T. Pike"; });
    ASSERT_NE(pike, engineers.end());
    EXPECT_EQ(pike->cardNumber, "0000002");
    EXPECT_EQ(pike->cardExpires, calendar::fromIso("2028-02-01"));
}

TEST_F(FirmPlaceTest, aDateThatCannotBeReadIsKeptAsTypedAndCountsAsNone) {
    start();
    auto* due = editor(place, "calibrationDue");
    fillField(due, QStringLiteral("next spring"));
    EXPECT_EQ(due->text(), QStringLiteral("next spring"));
    EXPECT_EQ(need(bench.store->instruments()).at(0).calibrationDue, std::nullopt) << "no date passes a test";
    EXPECT_FALSE(due->focusTarget()->accessibleDescription().isEmpty());
    place->refresh();
    EXPECT_EQ(due->text(), QStringLiteral("next spring")) << "as after another start";
    EXPECT_FALSE(due->focusTarget()->accessibleDescription().isEmpty());
    fillField(due, QStringLiteral("3 Dec 2026"));
    EXPECT_EQ(need(bench.store->instruments()).at(0).calibrationDue, calendar::fromIso("2026-12-03"));
}

TEST_F(FirmPlaceTest, opensWhereARecordLacksSomething) {
    using record::Field;
    start();
    const std::string gauge = bench.gauge.id.text();
    const std::string engineer = need(bench.store->engineers()).at(0).id.text();
    const struct {
        Field field;
        std::string of;
        const char* editor;
    } cases[] = {
        {Field::FirmName, {}, "firmName"},
        {Field::FirmAddress, {}, "line1"},
        {Field::FirmRegistration, {}, "registrationNumber"},
        {Field::EngineerName, engineer, "engineerName1"},
        {Field::EngineerCard, engineer, "engineerCard1"},
        {Field::InstrumentSerial, gauge, "instrumentSerial"},
        {Field::InstrumentCalibration, gauge, "calibrationDue"},
    };
    for (const auto& c : cases) {
        place->openFirm(c.field, c.of);
        EXPECT_EQ(QApplication::focusWidget(), editor(place, c.editor)->focusTarget())
            << record::fieldCode(c.field);
    }
}

TEST_F(FirmPlaceTest, anInstrumentIsAddedByKeys) {
    start();
    child<QPushButton>(place, "addInstrumentButton")->setFocus();
    press(Qt::Key_Return);
    typeLine(QStringLiteral("water gauge"));
    const auto instruments = need(bench.store->instruments());
    ASSERT_EQ(instruments.size(), 2U);
    auto* list = child<shell::LineList>(place, "instrumentsList");
    EXPECT_EQ(list->count(), 2);
    EXPECT_EQ(list->line(list->currentRow()).title, QStringLiteral("water gauge"));
    place->search(QStringLiteral("water"));
    EXPECT_EQ(list->count(), 1);
}

TEST_F(FirmPlaceTest, theListSaysWhenCalibrationIsDue) {
    bench.gauge.calibrationDue = calendar::addDays(bench.clock.today("Europe/London"), -1);
    need(bench.store->save(bench.gauge));
    start();
    auto* list = child<shell::LineList>(place, "instrumentsList");
    EXPECT_EQ(list->line(0).rightDetail, QStringLiteral("calibration ran out"));
}

TEST_F(FirmPlaceTest, aCopyIsWrittenReadAgainAndSaidWhere) {
    start();
    const auto target = bench.folder() / "copy.hearth";
    bench.dialogs.files = {QString::fromStdString(target.string())};
    child<QPushButton>(place, "copyStoreButton")->click();
    const auto said = child<QLabel>(place, "backedUpText")->text();
    EXPECT_TRUE(said.contains(QString::fromStdString(target.string()))) << said.toStdString();
    EXPECT_EQ(bench.dialogs.proposed, QStringList{QStringLiteral("hearthledger backup 2026-11-25.hearth")});
    const auto copy = need(store::Store::open(target, store::Access::Read, bench.clock));
    EXPECT_EQ(need(copy->firm()).name, bench.firm.name);
}

TEST_F(FirmPlaceTest, aCopyThatFailsIsShownNotLogged) {
    start();
    bench.dialogs.files = {QString::fromStdString((bench.folder() / "no" / "such" / "copy.hearth").string())};
    child<QPushButton>(place, "copyStoreButton")->click();
    auto* said = child<QLabel>(place, "backedUpText");
    EXPECT_TRUE(said->isVisible());
    EXPECT_FALSE(said->text().startsWith(QStringLiteral("Backed up"))) << said->text().toStdString();
}

TEST_F(FirmPlaceTest, theStoreIsCheckedAndItsPathSaid) {
    start();
    EXPECT_EQ(child<QLabel>(place, "storePath")->text(), QString::fromStdString(bench.path().string()));
    child<QPushButton>(place, "checkStoreButton")->setFocus();
    press(Qt::Key_Return);
    const auto health = child<QLabel>(place, "healthText")->text();
    EXPECT_TRUE(health.contains(QStringLiteral("sound"))) << health.toStdString();
}

TEST_F(FirmPlaceTest, canBeWalkedThrough) {
    start();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
    child<QPushButton>(place, "addEngineerButton")->click();
    hearth::testing::expectWalkable(window.get(), [this] { return bench.state(); });
    press(Qt::Key_F12);
    EXPECT_TRUE(child<QWidget>(window.get(), "emergencyPanel")->isVisible());
}

TEST_F(FirmPlaceTest, fitsASmallScreenInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    start();
    hearth::testing::expectFits(window.get(), {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

}  // namespace
}  // namespace hearth::ui::firm
