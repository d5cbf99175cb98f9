// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/values_air.h"

#include "core/rulebook/rule_book.h"
#include "core/rulebook/values.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

TEST(AirFamilies, HoldForEveryRuleOfAirAndNoOther) {
    EXPECT_EQ(airFamilyOf(Rule::VentCookerSmall), quantity::UnitFamily::Area);
    EXPECT_EQ(airFamilyOf(Rule::RoomCoDangerFrom), quantity::UnitFamily::Trace);
    EXPECT_EQ(airFamilyOf(Rule::VentOpenFluedPerKilowatt), quantity::UnitFamily::None);
    EXPECT_EQ(usualUnitOf(Rule::RoomCoTimeFlued), quantity::UnitCode::Minute);
    EXPECT_FALSE(airFamilyOf(Rule::LetByTime));
    for (int i = static_cast<int>(Rule::VentAdventitiousInput);
         i <= static_cast<int>(Rule::RoomCoBloodLimit); ++i) {
        EXPECT_TRUE(airFamilyOf(static_cast<Rule>(i))) << ruleText(static_cast<Rule>(i));
    }
}

// What is not known must not decide: the action levels of the room test, the tight dwelling and the dryer.
TEST(AirEntries, WhatIsNotKnownShipsEmpty) {
    const auto book = RuleBook::shipped();
    for (const auto rule :
         {Rule::RoomCoNoActionMost, Rule::RoomCoLeaveFrom, Rule::RoomCoCookerPeakMost,
          Rule::RoomCoSampleHeight, Rule::RoomCoSampleDistance, Rule::RoomCoTimeFlued,
          Rule::RoomCoTimeFlueless, Rule::VentTightPerKilowatt, Rule::VentDryer, Rule::VentMakersArea}) {
        const Entry* entry = book.find({rule});
        ASSERT_NE(entry, nullptr) << ruleText(rule);
        EXPECT_FALSE(entry->isKnown()) << ruleText(rule);
        EXPECT_FALSE(entry->doubt.empty()) << ruleText(rule);
    }
}

}  // namespace
}  // namespace hearth::rulebook
