// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/pipe_tree.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <set>

namespace hearth::reg {
namespace {

PipeSectionId id(int number) {
    return {UuidBytes{0, 0, 0, 0, 0, 0, 0, static_cast<std::uint8_t>(number)}};
}

PipeSection section(int number, int after = 0) {
    PipeSection pipe;
    pipe.id = id(number);
    pipe.position = number - 1;
    if (after > 0) {
        pipe.after = id(after);
    }
    return pipe;
}

const DrawnSection& drawn(const DrawnTree& tree, std::size_t index) {
    return *std::find_if(tree.sections.begin(), tree.sections.end(),
                         [&](const DrawnSection& one) { return one.index == index; });
}

TEST(PipeTree, ARunStaysInOneRow) {
    const DrawnTree tree = drawTree({section(1), section(2, 1), section(3, 2)});
    EXPECT_EQ(tree.rows, 1);
    EXPECT_EQ(tree.columns, 3);
    EXPECT_EQ(drawn(tree, 2).column, 2);
    EXPECT_FALSE(drawn(tree, 0).isEnd);
    EXPECT_TRUE(drawn(tree, 2).isEnd);
}

TEST(PipeTree, ABranchGetsARowOfItsOwn) {
    // 1 goes on to 2, which branches to 3 and 4.
    const DrawnTree tree = drawTree({section(1), section(2, 1), section(3, 2), section(4, 2)});
    EXPECT_EQ(tree.rows, 2);
    EXPECT_EQ(drawn(tree, 2).row, 0);
    EXPECT_EQ(drawn(tree, 3).row, 1);
    EXPECT_EQ(drawn(tree, 3).fromRow, 0);
    EXPECT_EQ(drawn(tree, 3).column, drawn(tree, 2).column);
}

TEST(PipeTree, EverySectionIsDrawnOnceAndNoTwoInOnePlace) {
    const std::vector<std::vector<PipeSection>> lists{
        {},
        {section(1)},
        {section(1), section(2), section(3)},
        {section(1, 2), section(2, 1), section(3, 1)},  // a ring with a tail
        {section(1, 1)},                                // feeds itself
        {section(1, 9), section(2, 1)},                 // fed by what is not there
        {section(3, 1), section(1), section(2, 1), section(4, 3), section(5, 3)},
    };
    for (const auto& list : lists) {
        const DrawnTree tree = drawTree(list);
        std::set<std::size_t> indexes;
        std::set<std::pair<int, int>> places;
        for (const DrawnSection& one : tree.sections) {
            indexes.insert(one.index);
            places.insert({one.row, one.column});
            EXPECT_LT(one.row, tree.rows);
            EXPECT_LT(one.column, tree.columns);
        }
        EXPECT_EQ(indexes.size(), list.size());
        EXPECT_EQ(places.size(), list.size());
    }
}

// Laws of the drawing, for 300 trees by lot: what goes on stands one column on; a row is one run without a
// gap, with one end; a line down to a branch passes no row that has anything as far left as itself.
TEST(PipeTree, NoLineCrossesAnother) {
    std::mt19937 lot(20261126);
    for (int round = 0; round < 300; ++round) {
        std::vector<PipeSection> list{section(1)};
        for (int number = 2; number <= 2 + round % 25; ++number) {
            list.push_back(section(number, static_cast<int>(lot() % static_cast<unsigned>(number))));
        }
        std::shuffle(list.begin(), list.end(), lot);
        const DrawnTree tree = drawTree(list);
        std::map<int, std::set<int>> columns;
        std::map<int, int> ends;
        for (const DrawnSection& one : tree.sections) {
            columns[one.row].insert(one.column);
            ends[one.row] += one.isEnd ? 1 : 0;
            const auto& after = list[one.index].after;
            const auto feeder =
                std::find_if(tree.sections.begin(), tree.sections.end(),
                             [&](const auto& other) { return after && list[other.index].id == *after; });
            EXPECT_EQ(one.column, feeder == tree.sections.end() ? 0 : feeder->column + 1);
            EXPECT_EQ(one.fromRow, feeder == tree.sections.end() ? 0 : feeder->row);
        }
        for (const auto& [row, of] : columns) {
            EXPECT_EQ(static_cast<int>(of.size()), *of.rbegin() - *of.begin() + 1) << row;
            EXPECT_EQ(ends[row], 1) << row;
        }
        for (const DrawnSection& one : tree.sections) {
            for (int row = one.fromRow + 1; row < one.row; ++row) {
                EXPECT_GE(*columns[row].begin(), one.column);
            }
        }
    }
}

TEST(PipeTree, NothingMayGoOnFromItselfOrFromWhatItFeeds) {
    const std::vector<PipeSection> list{section(1), section(2, 1), section(3, 2)};
    EXPECT_TRUE(mayFollow(list, id(3), id(1)));
    EXPECT_FALSE(mayFollow(list, id(1), id(3)));
    EXPECT_FALSE(mayFollow(list, id(2), id(2)));
    EXPECT_FALSE(mayFollow(list, id(2), id(9)));
}

TEST(PipeTree, WhatWentOnFromARemovedSectionGoesOnFromItsFeeder) {
    const auto left = without({section(1), section(2, 1), section(3, 2)}, 1);
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(left[1].id, id(3));
    EXPECT_EQ(left[1].after, id(1));
    EXPECT_EQ(left[1].position, 1);
    EXPECT_FALSE(without({section(1), section(2, 1)}, 0)[0].after);
}

}  // namespace
}  // namespace hearth::reg
