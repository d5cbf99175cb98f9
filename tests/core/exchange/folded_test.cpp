// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/folded.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

/// Decompositions: UnicodeData.txt; what has none (ł, ø, ß) as it is commonly typed.
TEST(Folded, comparesAsPeopleRead) {
    EXPECT_EQ(folded("  Tŷ GŴYN, 14-A "), "ty gwyn 14 a");
    EXPECT_EQ(folded("O'Neill O’Neill"), "oneill oneill");
    EXPECT_EQ(folded("Łódź Ørsted Straße"), "lodz orsted strase");
    EXPECT_EQ(folded("E-mail\u00a0address:"), "e mail address");
    EXPECT_EQ(folded("“Café” – №1"), "cafe №1");
    EXPECT_EQ(folded("Київ"), "Київ");
    EXPECT_EQ(folded(""), "");
    EXPECT_EQ(foldedWords("Flat 2, 14A High St"),
              (std::vector<std::string>{"flat", "2", "14a", "high", "st"}));
    EXPECT_TRUE(foldedWords(" - ").empty());
}

TEST(Folded, tidiesBlanks) {
    EXPECT_EQ(tidied(" \ta \u00a0 b\r\nc "), "a b c");
    EXPECT_EQ(tidied(" \n"), "");
}

}  // namespace
}  // namespace hearth::exchange
