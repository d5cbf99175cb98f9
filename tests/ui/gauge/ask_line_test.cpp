// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/ask_line.h"

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

TEST(AskLine, ReadsWhatIsWrittenOut) {
    EXPECT_EQ(askBytes(QString()), QByteArray());
    EXPECT_EQ(askBytes(QStringLiteral("READ?\\r\\n")), QByteArray("READ?\r\n"));
    EXPECT_EQ(askBytes(QStringLiteral("\\x02\\tM\\\\\\xfF")), QByteArray("\x02\tM\\\xff"));
    EXPECT_EQ(askBytes(QStringLiteral("\\x00")), QByteArray(1, '\0'));
    EXPECT_EQ(askBytes(QStringLiteral("\u00B0")), QByteArray("\xc2\xb0"));
}

TEST(AskLine, RefusesWhatIsNone) {
    for (const char* text : {"\\", "READ\\", "\\q", "\\x", "\\x1", "\\xg0", "\\x+1", "\\x 1", "\\R"}) {
        EXPECT_FALSE(askBytes(QString::fromLatin1(text))) << text;
    }
    EXPECT_TRUE(askBytes(QString(kLongestAsk, QLatin1Char('x'))));
    EXPECT_FALSE(askBytes(QString(kLongestAsk + 1, QLatin1Char('x'))));
}

TEST(AskLine, EveryByteIsWrittenSoThatItIsReadAgain) {
    for (int byte = 0; byte < 256; ++byte) {
        const QByteArray one(1, static_cast<char>(byte));
        EXPECT_EQ(askBytes(askText(one)), one) << byte;
        for (const QChar letter : askText(one)) {
            EXPECT_TRUE(letter.unicode() >= 0x20 && letter.unicode() < 0x7f) << byte;
        }
    }
}

}  // namespace
}  // namespace hearth::ui::gauge
