// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/entry.h"

#include <gtest/gtest.h>
#include <set>
#include <string_view>

namespace hearth::rulebook {
namespace {

TEST(RuleCodes, AreDifferentAndComeBack) {
    std::set<std::string_view> texts;
    for (int i = 0; i <= static_cast<int>(Rule::AssumedTemperatureChange); ++i) {
        const auto rule = static_cast<Rule>(i);
        EXPECT_TRUE(texts.insert(ruleText(rule)).second) << ruleText(rule);
        EXPECT_EQ(ruleFromText(ruleText(rule)), rule);
    }
    EXPECT_EQ(ruleText(Rule::DropDiaphragm6At28), "drop_diaphragm_6_at_28");
    EXPECT_FALSE(ruleFromText("drop"));
}

TEST(EntryValue, ComesOutOnlyInItsShape) {
    Entry entry;
    EXPECT_FALSE(entry.isKnown());
    EXPECT_FALSE(figureOf(entry));
    EXPECT_FALSE(rangeOf(entry));

    entry.value = quantity::Figure{quantity::Decimal(2, 1), quantity::UnitCode::Millibar};
    EXPECT_TRUE(entry.isKnown());
    ASSERT_TRUE(figureOf(entry));
    EXPECT_EQ(figureOf(entry)->value, quantity::Decimal(2, 1));
    EXPECT_FALSE(rangeOf(entry));

    entry.value = Range{quantity::Decimal(7, 0), quantity::Decimal(10, 0), quantity::UnitCode::Millibar};
    ASSERT_TRUE(rangeOf(entry));
    EXPECT_EQ(rangeOf(entry)->most, quantity::Decimal(10, 0));
    EXPECT_FALSE(figureOf(entry));
}

}  // namespace
}  // namespace hearth::rulebook
