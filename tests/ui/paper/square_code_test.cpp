// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/square_code.h"

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

bool isDark(const SquareCode& code, int x, int y) {
    for (const QRect& run : code.runs) {
        if (run.contains(x, y)) {
            return true;
        }
    }
    return false;
}

/// ISO/IEC 18004, 6.3.3: a finder pattern is a dark square of 7 modules round a light one of 5 round a dark
/// one of 3.
void expectFinder(const SquareCode& code, int left, int top) {
    for (int y = 0; y < 7; ++y) {
        for (int x = 0; x < 7; ++x) {
            const int ring = std::max(std::abs(x - 3), std::abs(y - 3));
            EXPECT_EQ(isDark(code, left + x, top + y), ring != 2) << x << "," << y;
        }
    }
}

TEST(SquareCode, hasTheFindersOfTheStandard) {
    const SquareCode code = squareCode("QKD-000017 1 " + QByteArray(64, 'a'));
    // ISO/IEC 18004: 17 + 4 modules a version; 77 bytes at level M need version 5 (84 bytes), 37 modules.
    ASSERT_EQ(code.size, 37);
    expectFinder(code, 0, 0);
    expectFinder(code, code.size - 7, 0);
    expectFinder(code, 0, code.size - 7);
}

TEST(SquareCode, runsAreInOrderAndApart) {
    const SquareCode code = squareCode("a short text");
    ASSERT_GT(code.runs.size(), 20);
    for (qsizetype i = 1; i < code.runs.size(); ++i) {
        const QRect& before = code.runs[i - 1];
        const QRect& run = code.runs[i];
        EXPECT_TRUE(run.y() > before.y() || run.x() > before.right() + 1);
        EXPECT_EQ(run.height(), 1);
        EXPECT_TRUE(QRect(0, 0, code.size, code.size).contains(run));
    }
}

TEST(SquareCode, aTextThatNoCodeHoldsGivesNone) {
    // ISO/IEC 18004: version 40, level M holds 2331 bytes.
    EXPECT_EQ(squareCode(QByteArray(2331, 'x')).size, 177);
    EXPECT_EQ(squareCode(QByteArray(2332, 'x')).size, 0);
}

}  // namespace
}  // namespace hearth::ui::paper
