// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/sentence.h"

#include <gtest/gtest.h>
#include <set>
#include <string_view>

namespace hearth::rulebook {
namespace {

TEST(SayCodes, AreAllThereAndAllDifferent) {
    std::set<std::string_view> texts;
    for (const auto say : allSays()) {
        EXPECT_FALSE(sayText(say).empty());
        EXPECT_TRUE(texts.insert(sayText(say)).second) << sayText(say);
    }
    // The last of the enumeration: a code added behind it without a row in the table would be missed
    // otherwise.
    EXPECT_EQ(texts.size(), static_cast<std::size_t>(Say::PurgeNoSteadyFlame) + 1);
    EXPECT_EQ(sayText(Say::LetByNone), "let_by_none");
}

}  // namespace
}  // namespace hearth::rulebook
