// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/question_words.h"

#include "tests/ui/words/languages.h"

#include <set>

namespace hearth::ui::words {
namespace {

TEST(QuestionWords, everyQuestionAndFigureHasWordsOfItsOwn) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        std::set<QString> seen;
        for (const auto& info : judging::questions()) {
            const QString text = question(words, info.question);
            EXPECT_TRUE(testing::isTranslated(text, words)) << info.code;
            EXPECT_TRUE(seen.insert(text).second) << info.code;
            EXPECT_TRUE(testing::isTranslated(questionHelp(words, info.question), words)) << info.code;
            for (const auto& asked : info.groups) {
                if (asked.group != judging::Group::Once) {
                    EXPECT_TRUE(rowName(words, asked.group, 2).contains(u'3')) << info.code;
                }
            }
        }
        for (const auto what : judging::allDerived()) {
            const QString text = derived(words, what);
            EXPECT_TRUE(testing::isTranslated(text, words)) << judging::derivedText(what);
            EXPECT_TRUE(seen.insert(text).second) << judging::derivedText(what);
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
