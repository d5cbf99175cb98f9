// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/words/languages.h"
#include "ui/words/words.h"

#include <map>

namespace hearth::ui::words {
namespace {

TEST(Items, EachHasALabelOfItsOwn) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        std::map<QString, std::string_view> seen;
        for (const auto& info : reg::itemCatalogue()) {
            const QString label = words.item(info.item);
            EXPECT_FALSE(label.isEmpty()) << info.code;
            EXPECT_TRUE(testing::isTranslated(label, words)) << info.code;
            EXPECT_TRUE(seen.emplace(label, info.code).second) << info.code << " and " << seen[label];
            const QString help = words.itemHelp(info.item);
            EXPECT_TRUE(help.isEmpty() || testing::isTranslated(help, words)) << info.code;
            EXPECT_TRUE(help.isEmpty() || help.contains(u'.')) << info.code;
        }
    }
}

TEST(Items, EachChoiceHasALabelOfItsOwn) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto& info : reg::itemCatalogue()) {
            std::map<QString, std::string_view> seen;
            for (const auto& choice : info.choices) {
                const QString label = words.choice(info.item, std::string(choice.code));
                EXPECT_FALSE(label.isEmpty()) << choice.code;
                EXPECT_TRUE(seen.emplace(label, choice.code).second) << choice.code;
                const bool properName = info.item == reg::Item::TestEdition;
                EXPECT_TRUE(properName || testing::isTranslated(label, words))
                    << info.code << ' ' << choice.code;
            }
        }
    }
}

TEST(Items, ACodeOfANewerProgramIsShownAsItStands) {
    EXPECT_EQ(Words().choice(reg::Item::TestWork, "half_new"), QStringLiteral("half_new"));
}

TEST(Items, SayTheWordsOfTheTrade) {
    const Words words;
    EXPECT_EQ(words.item(reg::Item::LetByStart), QStringLiteral("Let-by, start"));
    EXPECT_EQ(words.choice(reg::Item::TestEdition, "ed4"), QStringLiteral("IGEM/UP/1B Edition 4"));
    EXPECT_EQ(words.choice(reg::Item::TestAppliances, "connected"), QStringLiteral("connected, all off"));
}

}  // namespace
}  // namespace hearth::ui::words
