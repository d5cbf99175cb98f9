// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/commonly_seen.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::ui::words {
namespace {

// Published: the GB gas register names a gas escape, spillage from a flued appliance and bad combustion of a
// flueless one as immediately dangerous, and a concealed flue without hatches as at risk.
TEST(CommonlySeen, SaysWhatIsPublished) {
    const auto first = commonlySeen().first(3);
    for (const CommonlySeen& line : first) {
        EXPECT_STREQ(line.usual, "immediately dangerous");
        EXPECT_EQ(line.confidence, SeenConfidence::Published);
    }
    EXPECT_EQ(commonlySeen().size(), 45U);
    std::set<std::string> different;
    for (const CommonlySeen& line : commonlySeen()) {
        EXPECT_TRUE(different.insert(line.what).second) << line.what;
    }
}

TEST(CommonlySeen, EachLineSaysHowSureItIs) {
    EXPECT_TRUE(commonlySeenText(commonlySeen()[0]).contains(QStringLiteral("(published)")));
    EXPECT_TRUE(commonlySeenText(commonlySeen()[14]).contains(QStringLiteral("doubtful")));
}

TEST(CommonlySeen, FindsWhatSharesWords) {
    const auto spills = commonlySeenLike(QStringLiteral("The fire spills products into the room."), 3);
    ASSERT_FALSE(spills.empty());
    EXPECT_EQ(spills.front(), &commonlySeen()[1]);
    EXPECT_LE(spills.size(), 3U);
    EXPECT_TRUE(commonlySeenLike(QString(), 3).empty());
    EXPECT_TRUE(commonlySeenLike(QStringLiteral("xyzzy"), 3).empty());
}

}  // namespace
}  // namespace hearth::ui::words
