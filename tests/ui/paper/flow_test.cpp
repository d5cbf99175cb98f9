// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/flow.h"

#include <gtest/gtest.h>
#include <numeric>
#include <random>

namespace hearth::ui::paper {
namespace {

Group lines(int count, double height, Keep keep = Keep::Together) {
    Group group;
    group.keep = keep;
    for (int i = 0; i < count; ++i) {
        group.slices.push_back({height, {}});
    }
    return group;
}

Group heading() {
    Group group = lines(1, 8);
    group.staysWithNext = true;
    return group;
}

std::size_t slicesOf(const FlowPage& page, const Group& group) {
    std::size_t count = 0;
    for (const Placed& placed : page.slices) {
        count += placed.group == &group ? 1U : 0U;
    }
    return count;
}

TEST(Flow, nothingIsOneEmptyPage) {
    const auto pages = flow({}, {100, 100});
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_TRUE(pages[0].slices.empty());
}

TEST(Flow, whatFitsExactlyStaysOnThePage) {
    const std::vector<Group> groups{lines(10, 10)};
    EXPECT_EQ(flow(groups, {100, 100}).size(), 1U);
}

TEST(Flow, aGroupThatIsKeptTogetherGoesOverWhole) {
    const std::vector<Group> groups{lines(7, 10), lines(4, 10)};
    const auto pages = flow(groups, {100, 100});
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(slicesOf(pages[1], groups[1]), 4U);
    EXPECT_EQ(pages[1].slices[0].y, 0);
}

TEST(Flow, aGroupTallerThanAPageFlows) {
    const std::vector<Group> groups{lines(25, 10)};
    const auto pages = flow(groups, {50, 100});
    ASSERT_EQ(pages.size(), 3U);
    EXPECT_EQ(pages[0].slices.size(), 5U);
    EXPECT_EQ(pages[1].slices.size(), 10U);
    EXPECT_EQ(pages[2].slices.size(), 10U);
}

TEST(Flow, aHeadingIsNeverLeftBehind) {
    for (int before = 0; before <= 12; ++before) {
        const std::vector<Group> groups{lines(before, 10), heading(), lines(20, 10, Keep::Flowing)};
        for (const FlowPage& page : flow(groups, {100, 100})) {
            const std::size_t headings = slicesOf(page, groups[1]);
            EXPECT_TRUE(headings == 0 || slicesOf(page, groups[2]) >= 2) << "after " << before;
        }
    }
}

TEST(Flow, aHeadingStaysWithAGroupThatBarelyExceedsAPageWithIt) {
    const std::vector<Group> groups{heading(), lines(10, 10)};
    const auto pages = flow(groups, {100, 100});
    EXPECT_EQ(slicesOf(pages[0], groups[0]), 1U);
    EXPECT_GE(slicesOf(pages[0], groups[1]), 2U);
}

TEST(Flow, leavesNoSingleLineOfAText) {
    for (int before = 0; before < 10; ++before) {
        for (int count = 4; count < 25; ++count) {
            const std::vector<Group> groups{lines(before, 10), lines(count, 10, Keep::Flowing)};
            for (const FlowPage& page : flow(groups, {100, 100})) {
                EXPECT_NE(slicesOf(page, groups[1]), 1U) << before << " lines, then " << count;
            }
        }
    }
}

TEST(Flow, repeatsTheHeadOnEveryFurtherPage) {
    const auto head = std::make_shared<const Group>(lines(2, 5));
    std::vector<Group> groups{*head};
    for (int i = 0; i < 30; ++i) {
        groups.push_back(lines(1, 10));
        groups.back().head = head;
    }
    const auto pages = flow(groups, {100, 100});
    ASSERT_GT(pages.size(), 3U);
    for (std::size_t i = 1; i < pages.size(); ++i) {
        EXPECT_EQ(pages[i].slices[0].group, head.get());
        EXPECT_EQ(slicesOf(pages[i], *head), 2U);
        EXPECT_GT(pages[i].slices.size(), 2U);
    }
}

TEST(Flow, aHeadTooTallForItsPageIsNotRepeated) {
    const auto head = std::make_shared<const Group>(lines(6, 10));
    std::vector<Group> groups{lines(12, 10, Keep::Flowing)};
    groups[0].head = head;
    for (const FlowPage& page : flow(groups, {100, 100})) {
        EXPECT_EQ(slicesOf(page, *head), 0U);
    }
}

TEST(Flow, aLineTallerThanAPageStillGoesDown) {
    const std::vector<Group> groups{lines(3, 150)};
    EXPECT_EQ(flow(groups, {100, 100}).size(), 3U);
}

TEST(Flow, aPartingLineIsLeftOutAtTheTopOfAPageOnly) {
    std::vector<Group> groups{lines(5, 10), lines(2, 10), lines(5, 10)};
    groups[1].slices[0].isForBetween = true;
    groups[2].slices[0].isForBetween = true;
    const auto pages = flow(groups, {100, 100});
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(slicesOf(pages[0], groups[1]), 2U);
    EXPECT_EQ(slicesOf(pages[1], groups[2]), 4U);
    EXPECT_EQ(pages[1].slices[0].y, 0);
}

/// Whatever the groups: every slice stands once, in order, within its page.
TEST(Flow, losesNothingAndOverflowsNothing) {
    std::mt19937 random(7);
    const auto number = [&random](int from, int to) {
        return std::uniform_int_distribution<int>(from, to)(random);
    };
    for (int round = 0; round < 300; ++round) {
        const auto head = std::make_shared<const Group>(lines(number(1, 3), number(3, 9)));
        std::vector<Group> groups;
        for (int i = number(0, 40); i > 0; --i) {
            groups.push_back(
                lines(number(0, 30), number(2, 12), number(0, 1) == 0 ? Keep::Together : Keep::Flowing));
            groups.back().spaceBefore = number(0, 9);
            groups.back().staysWithNext = number(0, 3) == 0;
            if (number(0, 2) == 0) {
                groups.back().head = head;
            }
        }
        const BodyHeights heights{static_cast<double>(number(60, 200)), 250};
        std::vector<const Slice*> placed;
        const auto pages = flow(groups, heights);
        for (std::size_t p = 0; p < pages.size(); ++p) {
            double y = 0;
            for (const Placed& one : pages[p].slices) {
                EXPECT_GE(one.y, y - 1e-9);
                y = one.y + one.slice->height;
                if (one.group != head.get()) {
                    placed.push_back(one.slice);
                }
            }
            EXPECT_LE(y, (p == 0 ? heights.first : heights.others) + 1e-3);
        }
        std::vector<const Slice*> wanted;
        for (const Group& group : groups) {
            for (const Slice& slice : group.slices) {
                wanted.push_back(&slice);
            }
        }
        EXPECT_EQ(placed, wanted);
    }
}

}  // namespace
}  // namespace hearth::ui::paper
