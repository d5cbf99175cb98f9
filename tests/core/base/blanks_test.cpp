// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/blanks.h"

#include <gtest/gtest.h>

namespace hearth {
namespace {

TEST(Blanks, areTakenOffBothEndsOnly) {
    struct Case {
        std::string_view text;
        std::string_view expected;
    };
    for (const auto& [text, expected] : {
             Case{"", ""}, Case{" \t\n", ""}, Case{"a b", "a b"}, Case{"  20.7 ", "20.7"},
             Case{"\u00A020.7\u202F", "20.7"},  // no-break spaces, as pasted from a document
             Case{"\u00A0", ""},
             Case{"m\u00B3", "m\u00B3"},  // the first byte of a superscript 3 is that of a no-break space
         }) {
        EXPECT_EQ(withoutOuterBlanks(text), expected) << '"' << text << '"';
    }
}

TEST(Blanks, aBlankIsAsLongAsItsBytes) {
    EXPECT_EQ(blankLength(" x"), 1U);
    EXPECT_EQ(blankLength("\u2009x"), 3U);
    EXPECT_EQ(blankLength("x "), 0U);
    EXPECT_EQ(blankLength(""), 0U);
}

}  // namespace
}  // namespace hearth
