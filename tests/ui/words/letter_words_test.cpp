// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/letter_words.h"

#include "tests/ui/words/languages.h"

#include <gtest/gtest.h>

namespace hearth::ui::words {
namespace {

TEST(LetterWords, ShippedTextsHoldTheirPlaceholdersInEveryLanguage) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto kind : reg::kLetterKinds) {
            const QString text = shippedLetter(words, kind);
            EXPECT_TRUE(testing::isTranslated(text, words)) << text;
            EXPECT_TRUE(testing::isFilled(text)) << text;
            EXPECT_TRUE(reg::checkLetter(kind, text.toStdString()).has_value()) << text;
            for (const char* wanted : {"{customer}", "{premises}", "{telephone}", "{firm}"}) {
                EXPECT_TRUE(text.contains(QString::fromLatin1(wanted))) << wanted << " is not in " << text;
            }
            EXPECT_EQ(text.contains(QStringLiteral("{due}")), kind == reg::LetterKind::Reminder);
            EXPECT_EQ(text.contains(QStringLiteral("{attempted}")), kind == reg::LetterKind::NoAccess);
            EXPECT_EQ(text.contains(QStringLiteral("{worked}")), kind == reg::LetterKind::Covering);
        }
    }
}

TEST(LetterWords, AReminderNamesTheDayWhereOneIsKnown) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto day : {ReminderDay::ToCome, ReminderDay::Past, ReminderDay::NotKnown}) {
            const QString text = shippedReminder(words, day);
            EXPECT_TRUE(testing::isTranslated(text, words)) << text;
            EXPECT_TRUE(testing::isFilled(text)) << text;
            EXPECT_TRUE(reg::checkLetter(reg::LetterKind::Reminder, text.toStdString()).has_value()) << text;
            EXPECT_EQ(text.contains(QStringLiteral("{due}")), day != ReminderDay::NotKnown) << text;
        }
        EXPECT_NE(shippedReminder(words, ReminderDay::ToCome), shippedReminder(words, ReminderDay::Past));
    }
}

TEST(LetterWords, EveryKindAndPlaceholderIsCalledSomething) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto kind : reg::kLetterKinds) {
            EXPECT_TRUE(testing::isTranslated(letterKind(words, kind), words));
            EXPECT_FALSE(letterKind(words, kind).isEmpty());
            for (const auto each : reg::placeholdersOf(kind)) {
                EXPECT_TRUE(testing::isTranslated(placeholder(words, each), words));
                EXPECT_FALSE(placeholder(words, each).isEmpty());
            }
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
