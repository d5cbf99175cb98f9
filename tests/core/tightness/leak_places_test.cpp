// SPDX-License-Identifier: GPL-3.0-or-later
// Worked by hand: leaks of branches add, none is below nought.
#include "core/tightness/leak_places.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>
#include <random>

namespace hearth::tightness {
namespace {

using quantity::Flow;
using quantity::kLitrePerHour;

Within95<Flow> leaking(double least, double most) {
    return {Flow((least + most) / 2.0, kLitrePerHour), Flow(least, kLitrePerHour), Flow(most, kLitrePerHour)};
}
double litresOf(Flow flow) {
    return flow.in(kLitrePerHour);
}

struct PlacesCase {
    const char* name;
    std::size_t places;
    std::vector<ReachedLeak> tests;
    LeakPlacesSay says;
    std::vector<std::pair<double, double>> bounds;  // of each group
};

class LeakPlacesCases : public ::testing::TestWithParam<PlacesCase> {};

TEST_P(LeakPlacesCases, AreAsWorkedByHand) {
    const auto& given = GetParam();
    const auto found = leakPlaces(given.tests, given.places);
    EXPECT_EQ(found.says, given.says);
    ASSERT_EQ(found.groups.size(), given.bounds.size());
    for (std::size_t i = 0; i < given.bounds.size(); ++i) {
        EXPECT_NEAR(litresOf(found.groups[i].least), given.bounds[i].first, 1e-6) << i;
        EXPECT_NEAR(litresOf(found.groups[i].most), given.bounds[i].second, 1e-6) << i;
    }
}

const std::vector<PlacesCase> kPlacesCases{
    {"nothing", 3, {}, LeakPlacesSay::NothingToCompare, {}},
    {"one test", 2, {{{true, true}, leaking(0.9, 1.1)}}, LeakPlacesSay::NothingToCompare, {}},
    {"twice the same",
     2,
     {{{true, true}, leaking(0.9, 1.1)}, {{true, true}, leaking(0.8, 1.2)}},
     LeakPlacesSay::NothingToCompare,
     {}},
    // the first place alone leaks nothing that shows: the second has all of it, but for those 0.05
    {"the branch that was shut",
     2,
     {{{true, true}, leaking(0.9, 1.1)}, {{true, false}, leaking(-0.05, 0.05)}},
     LeakPlacesSay::OneLeaks,
     {{0.0, 0.05}, {0.85, 1.1}}},
    {"what stayed open",
     2,
     {{{true, true}, leaking(0.9, 1.1)}, {{true, false}, leaking(0.95, 1.15)}},
     LeakPlacesSay::OneLeaks,
     {{0.95, 1.1}, {0.0, 0.15}}},
    {"both",
     2,
     {{{true, true}, leaking(1.9, 2.1)}, {{true, false}, leaking(0.9, 1.1)}},
     LeakPlacesSay::SeveralLeak,
     {{0.9, 1.1}, {0.8, 1.2}}},
    {"too coarse to say which",
     2,
     {{{true, true}, leaking(0.2, 1.2)}, {{true, false}, leaking(-0.5, 0.5)}},
     LeakPlacesSay::Somewhere,
     {{0.0, 0.5}, {0.0, 1.2}}},
    {"none shown",
     2,
     {{{true, true}, leaking(-0.1, 0.2)}, {{true, false}, leaking(-0.1, 0.1)}},
     LeakPlacesSay::NoneShown,
     {{0.0, 0.1}, {0.0, 0.2}}},
    {"the part leaks more than the whole",
     2,
     {{{true, true}, leaking(0.1, 0.2)}, {{true, false}, leaking(0.5, 0.7)}},
     LeakPlacesSay::Disagree,
     {}},
    // three branches, each shut in turn. From a + c >= 0.95, b + c >= 0.95 and a + b <= 0.05: c >= 0.925
    {"the third of three",
     3,
     {{{true, true, true}, leaking(0.95, 1.05)},
      {{false, true, true}, leaking(0.95, 1.05)},
      {{true, false, true}, leaking(0.95, 1.05)},
      {{true, true, false}, leaking(-0.05, 0.05)}},
     LeakPlacesSay::OneLeaks,
     {{0.0, 0.05}, {0.0, 0.05}, {0.925, 1.05}}},
};
INSTANTIATE_TEST_SUITE_P(ByHand, LeakPlacesCases, ::testing::ValuesIn(kPlacesCases));

TEST(LeakPlaces, TellsTogetherWhatNoTestTellsApart) {
    const std::vector<ReachedLeak> tests{{{true, true, true, false}, leaking(0.9, 1.1)},
                                         {{true, false, false, false}, leaking(-0.1, 0.1)}};
    const auto found = leakPlaces(tests, 4);
    ASSERT_EQ(found.groups.size(), 2U);
    EXPECT_EQ(found.groups[1].places, (std::vector<std::size_t>{1, 2}));
    EXPECT_TRUE(found.groups[1].surelyLeaks());
    EXPECT_EQ(found.notReached, std::vector<std::size_t>{3});
}

/// Whatever leaks there are, tests whose intervals hold them give bounds that hold them; and one test more
/// makes none wider.
TEST(LeakPlaces, HoldTheTruthAndNeverGrowWiderByATest) {
    std::mt19937 random(20261126);
    std::uniform_real_distribution<double> leak(0.0, 3.0);
    std::uniform_real_distribution<double> away(0.01, 0.8);
    std::bernoulli_distribution half(0.5);
    constexpr std::size_t kPlaces = 4;
    int compared = 0;
    for (int round = 0; round < 500; ++round) {
        std::vector<double> truth(kPlaces);
        for (auto& one : truth) {
            one = half(random) ? leak(random) : 0.0;
        }
        std::vector<ReachedLeak> tests;
        for (int test = 0; test < 5; ++test) {
            std::vector<bool> reaches(kPlaces);
            double sum = 0.0;
            for (std::size_t place = 0; place < kPlaces; ++place) {
                reaches[place] = half(random);
                sum += reaches[place] ? truth[place] : 0.0;
            }
            tests.push_back({reaches, leaking(sum - away(random), sum + away(random))});
        }
        const auto before = leakPlaces(std::span(tests).first(4), kPlaces);
        const auto found = leakPlaces(tests, kPlaces);
        for (const auto& group : found.groups) {
            double sum = 0.0;
            for (const auto place : group.places) {
                sum += truth[place];
            }
            EXPECT_LE(litresOf(group.least), sum + 1e-6);
            EXPECT_GE(litresOf(group.most), sum - 1e-6);
            ++compared;
            for (const auto& earlier : before.groups) {
                if (earlier.places == group.places) {
                    EXPECT_GE(litresOf(group.least), litresOf(earlier.least) - 1e-6);
                    EXPECT_LE(litresOf(group.most), litresOf(earlier.most) + 1e-6);
                }
            }
        }
        EXPECT_NE(found.says, LeakPlacesSay::Disagree);
        EXPECT_TRUE(couldAllHold(tests, kPlaces));
    }
    EXPECT_GT(compared, 500);
}

// By hand: intervals of what reached the same must meet; a part can't leak more than the whole; none is below
// nought.
TEST(CouldAllHold, WhereSomeLeaksMakeThemAll) {
    const std::vector<bool> whole{true, true};
    const std::vector<bool> part{true, false};
    const auto hold = [](std::vector<ReachedLeak> tests) { return couldAllHold(tests, 2); };
    EXPECT_TRUE(hold({}));
    EXPECT_TRUE(hold({{whole, leaking(0.9, 1.1)}}));
    EXPECT_FALSE(hold({{whole, leaking(-1.1, -0.9)}})) << "gains gas";
    EXPECT_TRUE(hold({{whole, leaking(0.9, 1.1)}, {whole, leaking(1.0, 1.2)}}));
    EXPECT_FALSE(hold({{whole, leaking(0.9, 1.1)}, {whole, leaking(-0.1, 0.1)}})) << "mended in between";
    EXPECT_FALSE(hold({{part, leaking(0.9, 1.1)}, {whole, leaking(-0.1, 0.1)}}));
    EXPECT_TRUE(hold({{part, leaking(-0.1, 0.1)}, {whole, leaking(0.9, 1.1)}}));
}

}  // namespace
}  // namespace hearth::tightness
