// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/change_words.h"

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

TEST(ChangeWords, sayThatARecordWasLetGoAndUntilWhenItWasKept) {
    store::Change change;
    change.table = "record_headers";
    change.field = "payload";
    change.after = "2032-11-25 six_years";
    EXPECT_EQ(
        changeSentence(words::Words(QStringLiteral("en")), change),
        QStringLiteral("A record was let go: it had been kept until 25 Nov 2032, and its number stays"));
}

TEST(ChangeWords, sayOfASignatureThatItWasDrawnAndNotHow) {
    store::Change change;
    change.table = "hand_signatures";
    change.field = "strokes";
    change.after = "1.0,2.0 3.0,4.0";
    EXPECT_EQ(changeSentence(words::Words(QStringLiteral("en")), change),
              QStringLiteral("What was drawn as a signature: (drawn) instead of nothing"));
}

}  // namespace
}  // namespace hearth::ui::shell
