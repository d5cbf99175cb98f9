// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tree.h"

#include "core/quantity/units.h"
#include "tests/core/pipework/samples.h"
#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace hearth::pipework {
namespace {

using quantity::kCubicMetre;
using quantity::Volume;
using samples::after;
using samples::fromMeter;
using samples::treeOf;

VolumeInput withMeter(std::string_view code) {
    VolumeInput input;
    input.meter = meterByCode(code);
    return input;
}

TEST(PipeTree, TakesSectionsInAnyOrder) {
    // 0 comes after 2, 2 after 1, 1 from the meter; 3 branches off 1.
    const auto tree = treeOf({after(2, "copper_15", 3), fromMeter("copper_28", 2), after(1, "copper_22", 4),
                              after(1, "copper_15", 5)});
    const auto order = tree.feedersFirst();
    ASSERT_EQ(order.size(), 4U);
    const auto place = [&](std::size_t section) { return std::find(order.begin(), order.end(), section); };
    for (std::size_t i = 0; i < 4; ++i) {
        if (const auto feeder = tree.sections()[i].after) {
            EXPECT_LT(place(*feeder), place(i)) << i;
        }
    }
    EXPECT_EQ(tree.route(0), (std::vector<std::size_t>{1, 2, 0}));
    EXPECT_TRUE(tree.isEnd(0));
    EXPECT_FALSE(tree.isEnd(1));
    EXPECT_FALSE(tree.isEnd(2));
    EXPECT_TRUE(tree.isEnd(3));
}

TEST(PipeTree, RefusesWhatIsNoTree) {
    const auto missing = Tree::make({fromMeter("copper_15", 1), after(7, "copper_15", 1)});
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error(), (Error{ErrorCode::PipeFeederMissing, {"2"}}));
    const auto itself = Tree::make({after(0, "copper_15", 1)});
    ASSERT_FALSE(itself);
    EXPECT_EQ(itself.error(), (Error{ErrorCode::PipeLoop, {"1"}}));
    const auto ring =
        Tree::make({fromMeter("copper_15", 1), after(2, "copper_15", 1), after(1, "copper_15", 1)});
    ASSERT_FALSE(ring);
    EXPECT_EQ(ring.error(), (Error{ErrorCode::PipeLoop, {"2"}}));
    ASSERT_TRUE(Tree::make({}));
}

TEST(PipeTree, NamesItsSections) {
    auto named = fromMeter("copper_15", 1);
    named.name = "hob";
    const auto tree = treeOf({named, after(0, "copper_15", 1)});
    EXPECT_EQ(tree.nameOf(0), "hob");
    EXPECT_EQ(tree.nameOf(1), "2");
}

TEST(PipeTree, ReplacesASectionButNotWhatFeedsIt) {
    auto tree = treeOf({fromMeter("copper_15", 1), after(0, "copper_15", 1)});
    tree.replace(1, fromMeter("copper_22", 2));
    EXPECT_EQ(tree.sections()[1].tube->code, "copper_22");
    EXPECT_EQ(tree.sections()[1].after, 0U);
}

TEST(PipeTree, VolumesOfTheWorkedExamples) {
    testing::Agreement agreement(
        "Installation volume of a tree of pipes",
        "Certification body's pocket guide Gas 2, worked example; the same rule on an exam "
        "revision page's figures",
        "m3", 5e-7);
    agreement.hold("G4 and 9 m of 15 mm in two branches",
                   volumeUnderTest(treeOf({fromMeter("copper_15", 4), after(0, "copper_15", 3),
                                           after(0, "copper_15", 2)}),
                                   withMeter("u6_g4"))
                       .total->in(kCubicMetre),
                   0.009386);
    agreement.hold(
        "E6 and 20 m of 22 mm",
        volumeUnderTest(treeOf({fromMeter("copper_22", 12), after(0, "copper_22", 8)}), withMeter("e6"))
            .total->in(kCubicMetre),
        0.00944);
}

TEST(PipeTree, VolumeUnderTestLeavesOutTheRest) {
    auto isolated = after(0, "copper_22", 10);
    isolated.underTest = false;
    const auto tree = treeOf({fromMeter("copper_15", 9), isolated});
    EXPECT_NEAR(volumeUnderTest(tree, withMeter("u6_g4")).total->in(kCubicMetre), 0.009386, 1e-9);
    EXPECT_NEAR(volumeOfAll(tree, withMeter("u6_g4")).total->in(kCubicMetre), 0.009386 + 10 * 0.00032 * 1.1,
                1e-9);
}

// Law: the volume of a tree is the sum of its sections', whatever the order and the branches.
TEST(PipeTreeProperty, VolumeIsAdditive) {
    std::mt19937 random(31);
    for (int round = 0; round < 100; ++round) {
        const auto sections = samples::randomSections(random, 12);
        const auto tree = treeOf(sections);
        double sum = 0;
        for (const auto& section : sections) {
            auto alone = section;
            alone.after.reset();
            sum += volumeOfAll(treeOf({alone}), withMeter("none")).total->in(kCubicMetre);
        }
        EXPECT_NEAR(volumeOfAll(tree, withMeter("none")).total->in(kCubicMetre), sum, 1e-12);
    }
}

}  // namespace
}  // namespace hearth::pipework
