// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rulebook/rulebook_place.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/line_list.h"
#include "ui/words/pseudo_translator.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::rules {
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
using rulebook::Edition;
using rulebook::Entry;
using rulebook::Gas;
using rulebook::Provenance;
using rulebook::Rule;
using rulebook::RuleKey;

const RuleKey kBands{Rule::DropByVolume, Edition::Up1bEd4, Gas::NaturalGas};

class RuleBookPlaceTest : public ::testing::Test {
  protected:
    void start() {
        window = std::make_unique<shell::MainWindow>(bench.parts());
        place = new RuleBookPlace(window->context());
        window->setPlaces({place});
        hearth::testing::activate(window.get());
    }
    [[nodiscard]] shell::LineList* list() const { return child<shell::LineList>(place, "rulesList"); }
    /// As a person does, so that the sheet follows.
    void moveTo(int row) const { list()->setCurrentIndex(list()->model()->index(row, 0)); }
    [[nodiscard]] Entry stored(const RuleKey& key) const {
        const auto book = need(bench.store->ruleBook());
        const auto* entry = book.find(key);
        EXPECT_NE(entry, nullptr);
        return *entry;
    }
    [[nodiscard]] RuleKey keyOf(Rule rule) const {
        const auto book = rulebook::RuleBook::shipped();
        for (const auto& entry : book.entries()) {
            if (entry.key.rule == rule && entry.isKnown()) {
                return entry.key;
            }
        }
        ADD_FAILURE() << "no such rule with a value";
        return {rule};
    }
    [[nodiscard]] QString shownText() const {
        QApplication::processEvents();  // labels that are made while the sheet is in view are shown by then
        QString text;
        for (const auto* label : child<QWidget>(place, "entrySheet")->findChildren<QLabel*>()) {
            text += label->isVisible() ? label->text() + u'\n' : QString();
        }
        return text;
    }
    void typeBands(const std::vector<std::pair<const char*, const char*>>& bands) {
        editor(place, "bandVolume1")->focusTarget()->setFocus();
        for (const auto& [volume, drop] : bands) {
            typeLine(QString::fromLatin1(volume));
            typeLine(QString::fromLatin1(drop));
            QApplication::processEvents();
        }
    }
    [[nodiscard]] QString slip(int row) const {
        return child<QLabel>(place, ("bandSlip" + std::to_string(row)).c_str())->text();
    }
    [[nodiscard]] QCheckBox* tick(int row) const {
        return child<QCheckBox>(place, ("bandMeant" + std::to_string(row)).c_str());
    }

    FirmBench bench;
    std::unique_ptr<shell::MainWindow> window;
    RuleBookPlace* place = nullptr;
};

TEST_F(RuleBookPlaceTest, showsEveryEntryWithValueAndProvenance) {
    start();
    const auto book = rulebook::RuleBook::shipped();
    ASSERT_EQ(list()->count(), static_cast<int>(book.entries().size()));
    for (int row = 0; row < list()->count(); ++row) {
        const Entry& entry = book.entries()[static_cast<std::size_t>(row)];
        EXPECT_EQ(list()->line(row).title, bench.words.rule(entry.key.rule));
        EXPECT_EQ(list()->line(row).right, bench.words.ruleValue(entry));
        EXPECT_EQ(list()->line(row).rightDetail, entry.isKnown() ? bench.words.provenance(entry.provenance)
                                                                 : QStringLiteral("for the firm to enter"));
    }
}

TEST_F(RuleBookPlaceTest, anEntrySaysWhereItWasReadWhatIsDoubtfulAndWhatItsProvenanceMeans) {
    start();
    const auto book = rulebook::RuleBook::shipped();
    for (int row = 0; row < list()->count(); ++row) {
        const Entry& entry = book.entries()[static_cast<std::size_t>(row)];
        moveTo(row);
        const QString text = shownText();
        EXPECT_EQ(text.contains(bench.words.provenanceMeaning(entry.provenance)), entry.isKnown());
        EXPECT_TRUE(text.contains(words::qstring(entry.source))) << entry.source;
        EXPECT_TRUE(text.contains(words::qstring(entry.doubt))) << entry.doubt;
        EXPECT_TRUE(text.contains(words::qstring(entry.standard))) << entry.standard;
    }
}

// The lowest Wobbe index of network gas: one value up to 5 April 2025, another from the day after.
TEST_F(RuleBookPlaceTest, ofSeveralValuesForTheirOwnTimesOnlyTheOneInForceIsConfirmed) {
    start();
    const RuleKey key{Rule::NetworkWobbeLeast, rulebook::Edition::General, Gas::NaturalGas};
    window->openRule(key);
    EXPECT_EQ(child<QLabel>(place, "entryValue")->text(), bench.words.ruleValue(stored(key)));
    EXPECT_TRUE(child<QPushButton>(place, "confirmButton")->isVisible());
    const int inForce = list()->currentRow();
    moveTo(inForce - 1);
    EXPECT_EQ(list()->line(inForce - 1).title, bench.words.rule(key.rule));
    EXPECT_NE(list()->line(inForce - 1).key, list()->line(inForce).key);
    EXPECT_NE(list()->line(inForce - 1).detail, list()->line(inForce).detail);
    EXPECT_FALSE(child<QPushButton>(place, "confirmButton")->isVisible());
    EXPECT_TRUE(shownText().contains(QStringLiteral("Another value of this rule applies")));
    press(Qt::Key_G, Qt::ControlModifier);
    EXPECT_TRUE(need(bench.store->ruleHistory(key)).empty());
}

TEST_F(RuleBookPlaceTest, searchFindsWordsOfTheSheet) {
    start();
    press(Qt::Key_F, Qt::ControlModifier);
    type(QStringLiteral("electronic movement"));
    ASSERT_GE(list()->count(), 1);
    EXPECT_LT(list()->count(), 10);
    type(QStringLiteral(" xyzzy"));
    EXPECT_EQ(list()->count(), 0);
}

TEST_F(RuleBookPlaceTest, anEntryIsConfirmedByKeysWithNameAndCopy) {
    start();
    const RuleKey key = keyOf(Rule::NoMovementElectronic);
    const auto before = stored(key);
    ASSERT_NE(before.provenance, Provenance::Firm);
    window->openRule(key);
    EXPECT_TRUE(editor(place, "confirmedBy")->isAncestorOf(focus()));
    EXPECT_EQ(editor(place, "confirmedBy")->text(), QStringLiteral("R. Ashdown"));
    press(Qt::Key_Return);
    typeLine(QStringLiteral("my own copy, table 2"));
    press(Qt::Key_G, Qt::ControlModifier);
    const auto after = stored(key);
    EXPECT_EQ(after.provenance, Provenance::Firm);
    EXPECT_EQ(after.value, before.value);
    EXPECT_EQ(after.confirmedBy, "R. Ashdown");
    EXPECT_EQ(after.confirmedOn, bench.clock.today("Europe/London"));
    EXPECT_EQ(after.source, before.source) << "where it was first read stays readable";
    auto* history = child<shell::LineList>(place, "ruleHistoryList");
    ASSERT_EQ(history->count(), 1);
    EXPECT_EQ(history->line(0).detail, QStringLiteral("my own copy, table 2"));
}

TEST_F(RuleBookPlaceTest, nobodyConfirmsWithoutAName) {
    start();
    const RuleKey key = keyOf(Rule::NoMovementElectronic);
    window->openRule(key);
    fillField(editor(place, "confirmedBy"), QStringLiteral(" "));
    press(Qt::Key_G, Qt::ControlModifier);
    EXPECT_NE(stored(key).provenance, Provenance::Firm);
    EXPECT_TRUE(editor(place, "confirmedBy")->isAncestorOf(focus()));
}

TEST_F(RuleBookPlaceTest, aReplacedValueIsKeptWithItsHistory) {
    start();
    const RuleKey key = keyOf(Rule::NoMovementElectronic);
    for (const char* value : {"0.15", "0.1"}) {
        window->openRule(key);
        fillField(editor(place, "value0"), QString::fromLatin1(value));
        press(Qt::Key_S, Qt::ControlModifier);
    }
    EXPECT_EQ(rulebook::figureOf(stored(key))->value.text(), "0.1");
    EXPECT_EQ(need(bench.store->ruleHistory(key)).size(), 2U);
    EXPECT_EQ(child<shell::LineList>(place, "ruleHistoryList")->count(), 2);
    fillField(editor(place, "value0"), QStringLiteral("nothing"));
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(need(bench.store->ruleHistory(key)).size(), 2U) << "kept what can't be read";
    EXPECT_EQ(editor(place, "value0")->text(), QStringLiteral("nothing"));
}

// The figures of bands below are invented, to have something that rises and falls: they are no standard's.

TEST_F(RuleBookPlaceTest, theBandsShipEmptyAndAreEnteredAsAWhole) {
    start();
    window->openRule(kBands);
    EXPECT_FALSE(stored(kBands).isKnown());
    EXPECT_FALSE(child<QPushButton>(place, "confirmButton")->isVisible()) << "there is nothing to confirm";
    typeBands({{"0.01", "4"}, {"0.02", "2"}, {"0,04", "1"}});
    for (int row = 1; row <= 3; ++row) {
        EXPECT_EQ(slip(row), QString()) << row;
    }
    EXPECT_FALSE(stored(kBands).isKnown()) << "kept before it was saved";
    press(Qt::Key_S, Qt::ControlModifier);
    const auto after = stored(kBands);
    ASSERT_TRUE(after.isKnown());
    const auto& bands = std::get<std::vector<rulebook::Band>>(after.value);
    ASSERT_EQ(bands.size(), 3U);
    EXPECT_EQ(bands[2].upTo.text(), "0.04");
    EXPECT_EQ(bands[0].allowed.text(), "4");
    EXPECT_EQ(after.provenance, Provenance::Firm);
}

TEST_F(RuleBookPlaceTest, aSlipIsSaidBesideItsRowAndNothingIsSaved) {
    start();
    window->openRule(kBands);
    typeBands({{"0.01", "4"}, {"0.008", "3"}, {"0.04", "5"}, {"0.05", "0"}, {"0.06", "x"}});
    EXPECT_TRUE(slip(2).contains(QStringLiteral("volume"))) << slip(2).toStdString();
    EXPECT_TRUE(slip(3).contains(QStringLiteral("drop"))) << slip(3).toStdString();
    EXPECT_FALSE(slip(4).isEmpty());
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(stored(kBands).isKnown());
    EXPECT_TRUE(editor(place, "bandVolume2")->isAncestorOf(focus())) << "the first slip has the focus";
    EXPECT_EQ(editor(place, "bandDrop5")->text(), QStringLiteral("x")) << "what was typed is kept";
    EXPECT_FALSE(child<QLabel>(place, "bandsProblem")->text().isEmpty());
}

TEST_F(RuleBookPlaceTest, aDoubtNeedsATick) {
    start();
    window->openRule(kBands);
    typeBands({{"0.01", "4"}, {"0.02", "2"}, {"0.4", "1"}});  // ten times the leak of the others
    EXPECT_FALSE(tick(1)->isVisible());
    ASSERT_TRUE(tick(3)->isVisible()) << slip(3).toStdString();
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(stored(kBands).isKnown());
    EXPECT_EQ(focus(), tick(3));
    press(Qt::Key_Space);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(stored(kBands).isKnown());
}

TEST_F(RuleBookPlaceTest, aTickDoesNotOutliveItsDoubt) {
    start();
    window->openRule(kBands);
    typeBands({{"0.01", "4"}, {"0.02", "2"}, {"0.4", "1"}});
    tick(3)->setChecked(true);
    fillField(editor(place, "bandVolume3"), QStringLiteral("0.04"));
    EXPECT_FALSE(tick(3)->isVisible());
    fillField(editor(place, "bandVolume3"), QStringLiteral("0.9"));
    EXPECT_TRUE(tick(3)->isVisible());
    EXPECT_FALSE(tick(3)->isChecked());
}

TEST_F(RuleBookPlaceTest, litresAndPascalsAreTaken) {
    start();
    window->openRule(kBands);
    editor(place, "bandVolume1")->setUnit(quantity::UnitCode::Litre);
    editor(place, "bandDrop1")->setUnit(quantity::UnitCode::Pascal);
    typeBands({{"9.5", "400"}});
    press(Qt::Key_S, Qt::ControlModifier);
    const auto after = stored(kBands);
    ASSERT_TRUE(after.isKnown());
    const auto& bands = std::get<std::vector<rulebook::Band>>(after.value);
    EXPECT_EQ(bands[0].upTo.text(), "0.0095");
    EXPECT_EQ(bands[0].allowed.text(), "4");
}

TEST_F(RuleBookPlaceTest, anEmptyTableIsNotSaved) {
    start();
    window->openRule(kBands);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(stored(kBands).isKnown());
    EXPECT_FALSE(child<QLabel>(place, "bandsProblem")->text().isEmpty());
}

TEST_F(RuleBookPlaceTest, canBeWalkedThroughWithAndWithoutBands) {
    start();
    const auto state = [this] { return bench.state(); };
    hearth::testing::expectWalkable(window.get(), state);
    window->openRule(kBands);
    typeBands({{"0.01", "4"}, {"0.02", "2"}, {"0.4", "1"}});
    hearth::testing::expectWalkable(window.get(), state);
    EXPECT_FALSE(stored(kBands).isKnown());
    press(Qt::Key_F12);
    EXPECT_TRUE(child<QWidget>(window.get(), "emergencyPanel")->isVisible());
}

TEST_F(RuleBookPlaceTest, fitsASmallScreenInTheLongestLanguage) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    start();
    window->openRule(kBands);
    hearth::testing::expectFits(window.get(), {1024, 600});
    QCoreApplication::removeTranslator(&pseudo);
}

}  // namespace
}  // namespace hearth::ui::rules
