// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/line_splitter.h"

#include <gtest/gtest.h>
#include <random>
#include <string>
#include <vector>

namespace hearth::exchange {
namespace {

/// The lines of `bytes`, handed over in pieces of `piece` bytes.
std::vector<std::string> split(LineSplitter& splitter, std::string_view bytes, std::size_t piece) {
    std::vector<std::string> lines;
    while (!bytes.empty()) {
        splitter.feed(bytes.substr(0, piece), [&](std::string_view line) { lines.emplace_back(line); });
        bytes.remove_prefix(std::min(piece, bytes.size()));
    }
    return lines;
}

TEST(LineSplitter, TakesEveryLineEndThereIs) {
    const std::vector<std::string> wanted{"20.51", "20.50", "20.49", "20.48"};
    for (std::size_t piece = 1; piece < 30; ++piece) {
        LineSplitter splitter;
        EXPECT_EQ(split(splitter, "20.51\r\n20.50\n\n20.49\r20.48\n\r20.4", piece), wanted) << piece;
        EXPECT_EQ(splitter.held(), 4U);
    }
}

TEST(LineSplitter, ThrowsAwayTheTailThatItBeginsWith) {
    LineSplitter splitter;
    splitter.begin();
    EXPECT_TRUE(splitter.isBeginning());
    EXPECT_EQ(split(splitter, "0.51\n20.50\n", 3), std::vector<std::string>{"20.50"});
    EXPECT_FALSE(splitter.isBeginning());
    EXPECT_EQ(splitter.thrownAway(), 0U);
    split(splitter, "20", 2);
    splitter.begin();  // the wire was lost in the middle of a line, and comes back in the middle of another
    EXPECT_EQ(split(splitter, ".49\n20.48\n", 2), std::vector<std::string>{"20.48"});
}

TEST(LineSplitter, HoldsNoMoreThanALineOfOneThatNeverEnds) {
    LineSplitter splitter;
    const std::string chunk(1000, 'x');
    for (int i = 0; i < 1000; ++i) {
        EXPECT_TRUE(split(splitter, chunk, 97).empty());
        ASSERT_LE(splitter.held(), LineSplitter::kLongestLine);
    }
    EXPECT_EQ(splitter.thrownAway(), 1U);
    EXPECT_EQ(split(splitter, "\n20.50\n", 7), std::vector<std::string>{"20.50"});
}

TEST(LineSplitter, TakesTheLongestLineAndNoLonger) {
    LineSplitter splitter;
    const std::string longest(LineSplitter::kLongestLine, '1');
    EXPECT_EQ(split(splitter, longest + "\n" + longest + "1\n2\n", 64),
              (std::vector<std::string>{longest, "2"}));
    EXPECT_EQ(splitter.thrownAway(), 1U);
}

TEST(LineSplitter, GivesTheSameLinesHoweverTheyCome) {
    std::mt19937 random(8);
    std::uniform_int_distribution<int> byte(0, 30);
    for (int round = 0; round < 200; ++round) {
        std::string bytes;
        for (int i = 0; i < 2000; ++i) {
            const int one = byte(random);
            bytes += one == 0 ? '\n' : one == 1 ? '\r' : static_cast<char>(one * 8 + 3);
        }
        LineSplitter whole;
        LineSplitter parted;
        const auto wanted = split(whole, bytes, bytes.size());
        EXPECT_EQ(split(parted, bytes, 1 + static_cast<std::size_t>(byte(random))), wanted);
        EXPECT_EQ(parted.thrownAway(), whole.thrownAway());
        EXPECT_GT(wanted.size(), 50U);
    }
}

}  // namespace
}  // namespace hearth::exchange
