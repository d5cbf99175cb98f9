// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/asked.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using asked::Sheet;
using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

/// 9 l/min by 50 K: with 4.18 kJ/(kg K) 31.35 kW.
Sheet waterRead() {
    return {{Item::HotWaterFlow, "9.00", UnitCode::LitrePerMinute},
            {Item::HotWaterCold, "10.0"},
            {Item::HotWaterHot, "60.0"},
            {Item::HotWaterFullRate, choice::kYes}};
}

Answer waterWith(const Sheet& change) {
    return asked::answerTo(Question::HotWater, asked::with(waterRead(), change));
}

std::vector<Outcome> waterOutcomes(const Sheet& change) {
    std::vector<Outcome> outcomes;
    for (const auto& judged : waterWith(change).findings) {
        if (judged.finding.kind == FindingKind::HotWater) {
            outcomes.push_back(judged.finding.outcome);
        }
    }
    return outcomes;
}

Sheet makersFlow(const char* flow, const char* rise) {
    return {{Item::HotWaterMakerFlow, flow, UnitCode::LitrePerMinute}, {Item::HotWaterMakerRise, rise}};
}

// Source: consumer page on boiler flow rates: 9 l/min from 10 to 60 degrees C is 31.5 kW with 4.2.
TEST(HotWaterAnswer, IsTheWorkedExample) {
    const auto got = waterWith({{Item::HotWaterNetInput, "33.0"}});
    EXPECT_NEAR(asked::valueOf(got, Derived::HotWaterOutput), 31.35, 0.01);
    EXPECT_NEAR(asked::valueOf(got, Derived::HeatBalance), 0.95, 0.001);
    EXPECT_EQ(asked::outcomeOf(got, FindingKind::HotWater), Outcome::NoVerdict);
    EXPECT_TRUE(asked::saysOf(got, FindingKind::HotWater, Say::HotWaterNoMaker));
}

TEST(HotWaterAnswer, IsHeldToTheMakersOutput) {
    EXPECT_EQ(waterOutcomes({{Item::HotWaterMakerOutput, "30"}}), std::vector{Outcome::Pass});
    EXPECT_EQ(waterOutcomes({{Item::HotWaterMakerOutput, "33"}}), std::vector{Outcome::Fail});
    const auto got = waterWith({{Item::HotWaterMakerOutput, "30"}, {Item::HotWaterMakerSource, "page 4"}});
    EXPECT_EQ(asked::findingOf(got, FindingKind::HotWater)->limits.front().source, "page 4");
    // 30 kW heats 9 x 30/31.35 l/min by the same 50 K.
    EXPECT_NEAR(asked::valueOf(got, Derived::HotWaterMakersFlowHere), 8.61, 0.005);
}

// 31.35 kW heats 9 x 50/35 = 12.86 l/min by 35 K.
TEST(HotWaterAnswer, IsHeldToTheMakersFlowAtItsRise) {
    EXPECT_NEAR(asked::valueOf(waterWith(makersFlow("12.0", "35")), Derived::HotWaterExpectedFlow), 12.86,
                0.005);
    EXPECT_EQ(waterOutcomes(makersFlow("12.0", "35")), std::vector{Outcome::Pass});
    EXPECT_EQ(waterOutcomes(makersFlow("14.0", "35")), std::vector{Outcome::Fail});
    EXPECT_EQ(waterOutcomes(asked::with(makersFlow("14.0", "35"), {{Item::HotWaterMakerOutput, "30"}})),
              (std::vector{Outcome::Pass, Outcome::Fail}))
        << "each figure by itself";
}

TEST(HotWaterAnswer, AMakersFigureThatIsNoneLeavesItOpen) {
    for (const auto& maker :
         {makersFlow("12.0", ""), makersFlow("", "35"), makersFlow("x?", "35"), makersFlow("12.0", "x?"),
          makersFlow("0", "35"), makersFlow("12.0", "0"), Sheet{{Item::HotWaterMakerOutput, "x?"}},
          Sheet{{Item::HotWaterMakerOutput, "0"}}}) {
        const auto got = waterWith(maker);
        EXPECT_EQ(asked::outcomeOf(got, FindingKind::HotWater), Outcome::NoVerdict);
        EXPECT_TRUE(asked::saysOf(got, FindingKind::HotWater, Say::MakersFigureUnclear));
    }
}

TEST(HotWaterAnswer, NeedsEachReading) {
    const Sheet maker{{Item::HotWaterMakerOutput, "30"}, {Item::HotWaterNetInput, "33.0"}};
    ASSERT_EQ(asked::outcomeOf(waterWith(maker), FindingKind::HeatBalance), Outcome::LookAgain);
    for (const auto item :
         {Item::HotWaterFlow, Item::HotWaterCold, Item::HotWaterHot, Item::HotWaterFullRate}) {
        for (const auto* text : {"", "x?"}) {
            const auto got = waterWith(asked::with(maker, {{item, text}}));
            EXPECT_EQ(asked::outcomeOf(got, FindingKind::HotWater), Outcome::NoVerdict)
                << reg::infoOf(item).code << text;
            EXPECT_EQ(asked::outcomeOf(got, FindingKind::HeatBalance), Outcome::NoVerdict)
                << reg::infoOf(item).code << text;
        }
    }
}

// Source of the usual range: common practice, no source. More out than in can't be.
TEST(HotWaterAnswer, HoldsTheOutputAgainstTheHeatInput) {
    EXPECT_EQ(asked::outcomeOf(waterWith({{Item::HotWaterNetInput, "25.0"}}), FindingKind::HeatBalance),
              Outcome::LookAgain);
    const auto unread = waterWith({{Item::HotWaterNetInput, "x?"}});
    EXPECT_TRUE(asked::saysOf(unread, FindingKind::HeatBalance, Say::ReadingUnusable));
    EXPECT_EQ(asked::findingOf(waterWith({}), FindingKind::HeatBalance), nullptr);
}

}  // namespace
}  // namespace hearth::judging
