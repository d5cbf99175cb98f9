// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/fittings_text.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

struct TypedFittings {
    const char* typed;
    Fittings counts;  // elbows, bends, bends of 45 degrees, tees
};

TEST(FittingsText, isReadInFullAndInShort) {
    const TypedFittings cases[] = {
        {"3 elbows 1 tee", {3, 0, 0, 1}},
        {"3e 1t", {3, 0, 0, 1}},
        {"3 Elbows, 1 Tee", {3, 0, 0, 1}},
        {"elbow", {1, 0, 0, 0}},
        {"e t", {1, 0, 0, 1}},
        {"2b+1t", {0, 2, 0, 1}},
        {"2 bends 1 bend", {0, 3, 0, 0}},
        {"1 45", {0, 0, 1, 0}},
        {"45", {0, 0, 1, 0}},
        {"45 bend", {0, 0, 1, 0}},
        {"2 45 bends 1 e", {1, 0, 2, 0}},
        {"3x45 1b", {0, 1, 3, 0}},
        {"2 45\u00B0 1t", {0, 0, 2, 1}},
        {"1 45\u00B0 bend", {0, 0, 1, 0}},
        {"45b 1e", {1, 0, 1, 0}},
        {"12e", {12, 0, 0, 0}},
        {"none", {}},
        {"0", {}},
        {" None ", {}},
        {"0 elbows", {}},
    };
    for (const auto& one : cases) {
        const auto read = readFittings(one.typed);
        EXPECT_TRUE(read.said) << one.typed;
        EXPECT_FALSE(read.unreadable) << one.typed;
        EXPECT_FALSE(read.typed) << one.typed;
        EXPECT_EQ(read.counts.elbows, one.counts.elbows) << one.typed;
        EXPECT_EQ(read.counts.bends, one.counts.bends) << one.typed;
        EXPECT_EQ(read.counts.bends45, one.counts.bends45) << one.typed;
        EXPECT_EQ(read.counts.tees, one.counts.tees) << one.typed;
    }
}

TEST(FittingsText, mayBeALengthWithItsUnit) {
    for (const auto& [typed, metres] : {std::pair("1.5 m", 1.5), {"1,5m", 1.5}, {"0 m", 0.0}}) {
        const auto read = readFittings(typed);
        ASSERT_TRUE(read.typed) << typed;
        EXPECT_TRUE(read.said);
        EXPECT_TRUE(read.counts.none());
        EXPECT_NEAR(read.typed->in(quantity::kMetre), metres, 1e-12) << typed;
    }
}

// Nothing is taken for something else, and nothing for none.
TEST(FittingsText, nothingIsNotSaidAndNonsenseIsUnreadable) {
    for (const auto* typed : {"", "  ", ",", " + "}) {
        EXPECT_FALSE(readFittings(typed).said) << typed;
        EXPECT_FALSE(readFittings(typed).unreadable) << typed;
    }
    for (const auto* typed : {"3", "1.5", "3 elbows 2", "3E1", "three elbows", "elbow?", "-1 e", "-2 m",
                              "3 g", "45 elbows", "45e t5", "1000 e", "999e 999e", "99999999999999999999 e",
                              "1.5 e", "none 1e", "3 litres", "\xC2\xB0", "1e 1.5 m"}) {
        const auto read = readFittings(typed);
        EXPECT_FALSE(read.said) << typed;
        EXPECT_TRUE(read.unreadable) << typed;
        EXPECT_TRUE(read.counts.none()) << typed;
        EXPECT_FALSE(read.typed) << typed;
    }
}

}  // namespace
}  // namespace hearth::pipework
