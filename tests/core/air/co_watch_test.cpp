// SPDX-License-Identifier: GPL-3.0-or-later
// The readings are invented; which are offered is counted by hand.
#include "core/air/co_watch.h"

#include "core/rulebook/values.h"
#include "tests/core/air/air_samples.h"

#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using samples::minutes;
using samples::ppm;

std::vector<CoReading> eachMinute(const std::vector<double>& levels) {
    std::vector<CoReading> readings;
    for (const double level : levels) {
        readings.push_back({minutes(static_cast<double>(readings.size()) + 3.0), ppm(level)});
    }
    return readings;
}

using Numbers = std::vector<std::size_t>;

TEST(CoWatch, OffersTheFirstOfEachStretchAndTheHighest) {
    const auto readings = eachMinute({1, 2, 9, 4, 3, 5, 6, 9, 2, 1, 0});
    EXPECT_EQ(offeredOf(readings, minutes(5)), (Numbers{0, 2, 5, 10}));
    EXPECT_EQ(offeredOf(readings, minutes(1)).size(), readings.size());
    EXPECT_EQ(offeredOf(readings, minutes(60)), (Numbers{0, 2}));
    EXPECT_EQ(offeredOf(readings, minutes(0)), Numbers{2}) << "the highest alone";
    EXPECT_EQ(offeredOf(eachMinute({7, 2, 3}), minutes(2)), (Numbers{0, 2})) << "the highest is the first";
    EXPECT_TRUE(offeredOf({}, minutes(5)).empty());
}

TEST(CoWatch, OffersNothingOfAStretchInWhichNothingCame) {
    auto readings = eachMinute({1, 2, 3, 4, 5, 6});
    for (std::size_t i = 3; i < readings.size(); ++i) {
        readings[i].at = readings[i].at + minutes(11.5);  // 14.5, 15.5, 16.5 after the first
    }
    EXPECT_EQ(offeredOf(readings, minutes(5)), (Numbers{0, 3, 4, 5}));
}

TEST(CoWatch, FindsTheHighest) {
    EXPECT_EQ(highestOf(eachMinute({1, 9, 9, 2})), 1U);
    EXPECT_EQ(highestOf({}), std::nullopt);
}

// What the levels are is the rule book's: those that have a value, and no others.
TEST(CoWatch, KnowsTheLevelsOfTheRuleBookAlone) {
    const auto shipped = rulebook::RuleBook::shipped();
    const auto rules = samples::airRules(shipped);
    std::vector<rulebook::Rule> known;
    for (const auto& entry : coLevelsInForce(rules)) {
        known.push_back(entry.key.rule);
        EXPECT_EQ(rules.known(entry.key.rule)->value, entry.value);
    }
    using rulebook::Rule;
    EXPECT_EQ(known, (std::vector{Rule::RoomCoDangerFrom, Rule::RoomCoRaisedFrom, Rule::RoomCoShortLimit,
                                  Rule::RoomCoLongLimit}))
        << "the action levels ship empty";
}

}  // namespace
}  // namespace hearth::air
