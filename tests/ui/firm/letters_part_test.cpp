// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/letters_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/support/walker.h"
#include "ui/words/letter_words.h"

#include <QFile>
#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::editor;
using hearth::testing::enterField;
using hearth::testing::fillField;
using hearth::testing::FirmBench;
using hearth::testing::need;
using hearth::testing::press;
using hearth::testing::type;
using reg::LetterKind;

class LettersPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto firm = need(bench.store->firm());
        firm.telephone = "01632 960055";
        need(bench.store->saveFirm(firm));
        part = std::make_unique<LettersPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] QString said(const char* name) const { return child<QLabel>(part.get(), name)->text(); }
    [[nodiscard]] QString problem() const { return text()->focusTarget()->accessibleDescription(); }
    [[nodiscard]] input::Editor* text() const { return editor(part.get(), "letterText"); }
    [[nodiscard]] reg::Firm firm() const { return need(bench.store->firm()); }
    /// By the first letter of its name, as at the keyboard.
    void take(int key) {
        enterField(editor(part.get(), "letterKind"));
        press(key);
    }

    FirmBench bench;
    std::unique_ptr<LettersPart> part;
};

TEST_F(LettersPartTest, showsTheShippedTextsFilledForTheDemonstration) {
    QFile scenario(QStringLiteral(HEARTH_SOURCE_DIR "/resources/demo/scenario.json"));
    ASSERT_TRUE(scenario.open(QIODevice::ReadOnly));
    const QString demonstration = QString::fromUtf8(scenario.readAll());
    const std::pair<int, LetterKind> kinds[] = {{Qt::Key_R, LetterKind::Reminder},
                                                {Qt::Key_N, LetterKind::NoAccess},
                                                {Qt::Key_C, LetterKind::Covering}};
    for (const auto& [key, kind] : kinds) {
        take(key);
        EXPECT_EQ(text()->text(), words::shippedLetter(bench.words, kind));
        EXPECT_EQ(said("letterState"), QStringLiteral("This is the text that we ship."));
        EXPECT_FALSE(child<QPushButton>(part.get(), "shippedLetterButton")->isEnabled());
        const QString letter = said("letterPreview");
        EXPECT_FALSE(letter.contains(u'{')) << letter.toStdString();
        EXPECT_TRUE(letter.contains(QStringLiteral("Dear Sallowby Lettings,"))) << letter.toStdString();
        EXPECT_TRUE(letter.contains(QStringLiteral("01632 960055"))) << letter.toStdString();
        EXPECT_TRUE(letter.endsWith(QStringLiteral("Ashdown & Pike Heating"))) << letter.toStdString();
        for (const auto placeholder : reg::placeholdersOf(kind)) {
            const QString braced =
                u'{' + QString::fromStdString(std::string(reg::codeOf(placeholder))) + u'}';
            EXPECT_TRUE(said("letterPlaceholders").contains(braced)) << braced.toStdString();
        }
    }
    for (const char* of :
         {"Sallowby Lettings", "Flat 1, Wrenlow Maltings", "Barge Lane", "Nether Wrenlow", "QW7 1AC"}) {
        EXPECT_TRUE(demonstration.contains(QString::fromLatin1(of))) << of;
    }
}

TEST_F(LettersPartTest, keepsTheFirmsOwnTextAndGoesBack) {
    enterField(text());
    press(Qt::Key_A, Qt::ControlModifier);
    type(QStringLiteral("Dear {customer}, by {due}. {firm}"));
    EXPECT_EQ(said("letterPreview"),
              QStringLiteral("Dear Sallowby Lettings, by 20 January 2027. Ashdown & Pike Heating"))
        << "while it is typed: 25 November 2026 and 56 days";
    EXPECT_EQ(firm().reminderText, "");
    press(Qt::Key_Return);
    EXPECT_EQ(firm().reminderText, "Dear {customer}, by {due}. {firm}");
    EXPECT_EQ(firm().noAccessText, "");
    EXPECT_EQ(said("letterState"), QStringLiteral("This is your own text."));

    child<QPushButton>(part.get(), "shippedLetterButton")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(firm().reminderText, "");
    EXPECT_EQ(text()->text(), words::shippedLetter(bench.words, LetterKind::Reminder));
    ASSERT_TRUE(need(bench.store->undo()).has_value());
    part->refresh();
    EXPECT_EQ(text()->text(), QStringLiteral("Dear {customer}, by {due}. {firm}"));
}

TEST_F(LettersPartTest, saysAWrongPlaceholderByNameAndLosesNothing) {
    const QString wrong = QStringLiteral("Dear {custmer},");
    fillField(text(), wrong);
    EXPECT_EQ(firm().reminderText, "");
    EXPECT_TRUE(problem().contains(QStringLiteral("“custmer”"))) << problem().toStdString();
    EXPECT_TRUE(said("letterPreview").contains(QStringLiteral("“custmer”")));
    take(Qt::Key_N);
    EXPECT_FALSE(problem().contains(QStringLiteral("custmer"))) << problem().toStdString();
    take(Qt::Key_R);
    EXPECT_EQ(text()->text(), wrong);
    EXPECT_TRUE(problem().contains(QStringLiteral("“custmer”"))) << problem().toStdString();
    fillField(text(), QStringLiteral("Dear {customer},"));
    EXPECT_EQ(firm().reminderText, "Dear {customer},");
    EXPECT_FALSE(problem().contains(QStringLiteral("custmer"))) << problem().toStdString();
}

TEST_F(LettersPartTest, theShippedTextIsNotKeptAsTheFirmsOwn) {
    fillField(text(), QStringLiteral("mine"));
    EXPECT_EQ(firm().reminderText, "mine");
    enterField(text());
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    EXPECT_EQ(firm().reminderText, "");
    EXPECT_EQ(text()->text(), words::shippedLetter(bench.words, LetterKind::Reminder))
        << "an empty letter is none";
}

TEST_F(LettersPartTest, saysWhatTheFirmHasNotEntered) {
    auto without = firm();
    without.telephone.clear();
    need(bench.store->saveFirm(without));
    part->refresh();
    EXPECT_TRUE(said("letterPreview").contains(QStringLiteral("“telephone”")))
        << said("letterPreview").toStdString();
}

TEST_F(LettersPartTest, hasUniqueNames) {
    hearth::testing::expectUniqueNames(part.get());
    hearth::testing::expectEveryStopOnce(part.get());
}

}  // namespace
}  // namespace hearth::ui::firm
