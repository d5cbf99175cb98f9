// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/first_start.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/shell/rule_answer.h"
#include "ui/shell/value_fields.h"
#include "ui/words/pseudo_translator.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::focus;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using hearth::testing::typeLine;
using rulebook::RuleBook;

class FirstStartTest : public ::testing::Test {
  protected:
    FirstStartTest()
        : clock(hearth::testing::fixedClock("2026-11-25")), start(words, clock, RuleBook::shipped()) {
        hearth::testing::activate(&start);
    }
    void goOn() { press(Qt::Key_Return, Qt::ControlModifier); }
    void typeFirm() {
        press(Qt::Key_Return);  // the first door has the focus
        for (const char* line : {"Ashdown & Pike Heating", "000000", "3 Kiln Yard", "", "Thornmere",
                                 "TH1 4AB", "01234 000000"}) {
            typeLine(QString::fromLatin1(line));
        }
    }
    void typeEngineerAndGauge() {
        goOn();
        typeLine(QStringLiteral("R. Ashdown"));
        typeLine(QStringLiteral("0000001"));
        press(Qt::Key_Return);  // an electronic gauge
        for (const char* line : {"gauge no. 1", "EG-100", "0.01", "0,1", "3/12/2026"}) {
            typeLine(QString::fromLatin1(line));
        }
    }
    [[nodiscard]] RuleAnswer* answerFor(rulebook::Rule rule) {
        for (auto* answer : start.findChildren<RuleAnswer*>()) {
            if (answer->key().rule == rule) {
                return answer;
            }
        }
        return nullptr;
    }

    words::Words words;
    FixedClock clock;
    FirstStart start;
};

TEST_F(FirstStartTest, offersTwoDoorsWithTheCaution) {
    EXPECT_EQ(start.page(), 0);
    EXPECT_EQ(focus()->objectName(), QStringLiteral("ownFirmDoor"));
    EXPECT_EQ(child<QLabel>(&start, "cautionText")->text(),
              words.caution(rulebook::Gas::NaturalGas, reg::Country::England, {}));
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    EXPECT_EQ(start.door(), FirstStart::Door::Demonstration);
    EXPECT_EQ(start.result(), QDialog::Accepted);
}

TEST_F(FirstStartTest, theThirdDoorIsABackup) {
    child<QPushButton>(&start, "backupDoor")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(start.door(), FirstStart::Door::Backup);
    EXPECT_EQ(start.result(), QDialog::Accepted);
}

TEST_F(FirstStartTest, escapeLeavesWithoutADoor) {
    press(Qt::Key_Escape);
    EXPECT_EQ(start.door(), FirstStart::Door::None);
    EXPECT_EQ(start.result(), QDialog::Rejected);
    EXPECT_FALSE(start.isVisible());
}

TEST_F(FirstStartTest, aFirmIsSetUpByKeysAlone) {
    typeFirm();
    typeEngineerAndGauge();
    goOn();
    ASSERT_EQ(start.page(), 3);
    // The first daily entry is known: "S" is "same in my copy".
    auto* first = start.findChildren<RuleAnswer*>().first();
    ASSERT_TRUE(first->choice()->isAncestorOf(focus()));
    type(QStringLiteral("s"));
    EXPECT_EQ(first->answer(), RuleAnswer::Answer::Same);
    goOn();
    ASSERT_EQ(start.door(), FirstStart::Door::OwnFirm);
    const shell::SetUp& setUp = start.setUp();
    EXPECT_EQ(setUp.firm.name, "Ashdown & Pike Heating");
    EXPECT_EQ(setUp.firm.registrationNumber, "000000");
    EXPECT_EQ(setUp.firm.address, (reg::Address{"3 Kiln Yard", "", "Thornmere", "TH1 4AB"}));
    EXPECT_EQ(setUp.firm.telephone, "01234 000000");
    EXPECT_FALSE(setUp.firm.demonstration);
    ASSERT_TRUE(setUp.engineer);
    EXPECT_EQ(setUp.engineer->cardNumber, "0000001");
    ASSERT_TRUE(setUp.gauge);
    EXPECT_EQ(setUp.gauge->kind, reg::InstrumentKind::ElectronicGauge);
    EXPECT_EQ(setUp.gauge->resolution, (quantity::Typed{"0.01", quantity::UnitCode::Millibar}));
    EXPECT_EQ(setUp.gauge->accuracy.text, "0,1") << "kept as typed";
    EXPECT_EQ(setUp.gauge->calibrationDue, calendar::fromIso("2026-12-03"));
    ASSERT_EQ(setUp.confirmed.size(), 1U);
    EXPECT_EQ(setUp.confirmed[0].key, first->key());
    EXPECT_EQ(setUp.confirmed[0].confirmedBy, "R. Ashdown");
    EXPECT_EQ(setUp.confirmed[0].confirmedOn, clock.today("Europe/London"));
}

TEST_F(FirstStartTest, whatWasSetUpIsInTheStore) {
    typeFirm();
    typeEngineerAndGauge();
    goOn();
    for (auto* answer : start.findChildren<RuleAnswer*>()) {
        answer->choice()->focusTarget()->setFocus();
        type(QStringLiteral("s"));  // those without a value have no such answer and stay at later
    }
    goOn();
    hearth::testing::TempDir folder;
    const auto store = need(store::Store::create(folder / "firm.hearth", start.setUp().firm, clock));
    need(writeSetUp(*store, start.setUp()));
    EXPECT_EQ(need(store->firm()), start.setUp().firm);
    EXPECT_EQ(need(store->engineers()).at(0).name, "R. Ashdown");
    EXPECT_EQ(need(store->instruments()).at(0).serial, "EG-100");
    const auto book = need(store->ruleBook());
    int confirmed = 0;
    for (const auto& entry : book.entries()) {
        confirmed += entry.provenance == rulebook::Provenance::Firm ? 1 : 0;
    }
    EXPECT_EQ(confirmed, static_cast<int>(start.setUp().confirmed.size()));
    EXPECT_GT(confirmed, 0);
}

TEST_F(FirstStartTest, theConfirmingStepShowsEveryDailyEntryWithValueSourceAndQuality) {
    typeFirm();
    goOn();
    goOn();
    ASSERT_EQ(start.page(), 3);
    const auto book = RuleBook::shipped();
    const auto answers = start.findChildren<RuleAnswer*>();
    int row = 0;
    for (const auto& entry : book.entries()) {
        if (!entry.daily) {
            continue;
        }
        ASSERT_LT(row, answers.size());
        auto* answer = answers[row++];
        EXPECT_EQ(answer->key(), entry.key);
        EXPECT_EQ(answer->answer(), RuleAnswer::Answer::Later) << "nothing is confirmed by default";
        QString shown;
        for (const auto* label : answer->findChildren<QLabel*>()) {
            shown += label->text() + u'\n';
        }
        EXPECT_TRUE(shown.contains(words.ruleValue(entry)));
        EXPECT_TRUE(shown.contains(ruleStanding(words, entry)));
        EXPECT_TRUE(!entry.isKnown() || shown.contains(words.provenance(entry.provenance)));
        EXPECT_TRUE(shown.contains(words::qstring(entry.source)));
    }
    EXPECT_EQ(row, answers.size());
    EXPECT_GE(row, 3);
}

TEST_F(FirstStartTest, anotherValueThanTheShippedOneIsTypedAndASlipIsSaid) {
    typeFirm();
    goOn();
    goOn();
    auto* answer = answerFor(rulebook::Rule::NoMovementElectronic);
    ASSERT_NE(answer, nullptr);
    answer->choice()->focusTarget()->setFocus();
    type(QStringLiteral("a"));
    ASSERT_EQ(answer->answer(), RuleAnswer::Answer::Other);
    auto* field = answer->fields()->first();
    hearth::testing::fillField(field, QStringLiteral("two"));
    goOn();
    EXPECT_EQ(start.page(), 3) << "went on with a value that can't be read";
    EXPECT_EQ(field->text(), QStringLiteral("two"));
    hearth::testing::fillField(field, QStringLiteral("-1"));
    goOn();
    EXPECT_EQ(start.page(), 3) << "went on with a negative limit";
    hearth::testing::fillField(field, QStringLiteral("0,15"));
    goOn();
    ASSERT_EQ(start.door(), FirstStart::Door::OwnFirm);
    ASSERT_EQ(start.setUp().confirmed.size(), 1U);
    const auto* figure = std::get_if<quantity::Figure>(&start.setUp().confirmed[0].value);
    ASSERT_NE(figure, nullptr);
    EXPECT_EQ(figure->value.text(), "0.15");
    EXPECT_EQ(start.setUp().confirmed[0].confirmedBy, "Ashdown & Pike Heating") << "no engineer was named";
}

TEST_F(FirstStartTest, aFirmWithoutANameDoesNotGoOn) {
    press(Qt::Key_Return);
    goOn();
    EXPECT_EQ(start.page(), 1);
    EXPECT_EQ(focus(), editor(&start, "setUpFirmName")->focusTarget());
    press(Qt::Key_Escape);
    EXPECT_EQ(start.page(), 0);
}

TEST_F(FirstStartTest, aDateThatCannotBeReadIsKeptAndSaid) {
    typeFirm();
    goOn();
    hearth::testing::fillField(editor(&start, "setUpDue"), QStringLiteral("soon"));
    goOn();
    EXPECT_EQ(start.page(), 2);
    EXPECT_EQ(editor(&start, "setUpDue")->text(), QStringLiteral("soon"));
}

TEST_F(FirstStartTest, everyPageCanBeWalkedThrough) {
    const auto nothing = [] { return std::string(); };
    hearth::testing::expectWalkable(&start, nothing);
    start.showPage(0);  // back to the first door
    typeFirm();
    for (int page = 1; page <= 3; ++page) {
        start.showPage(page);
        hearth::testing::expectWalkable(&start, nothing);
        EXPECT_EQ(start.page(), page);
    }
}

TEST(FirstStartInTheLongestLanguage, fitsASmallScreen) {
    words::PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    const words::Words words(QStringLiteral("en_XA"));
    const FixedClock clock = hearth::testing::fixedClock("2026-11-25");
    FirstStart start(words, clock, RuleBook::shipped());
    hearth::testing::activate(&start);
    for (int page = 0; page <= 3; ++page) {
        start.showPage(page);
        hearth::testing::expectFits(&start, {1024, 600});
    }
    QCoreApplication::removeTranslator(&pseudo);
}

}  // namespace
}  // namespace hearth::ui::shell
