// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_judge.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"

#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Provenance;
using rulebook::Say;
using samples::cm2;
using samples::vent;

rulebook::Entry entryBy(Provenance provenance) {
    rulebook::Entry entry;
    entry.key = {rulebook::Rule::VentOpenFluedPerKilowatt};
    entry.value = quantity::Figure{quantity::Decimal(5, 0), quantity::UnitCode::None};
    entry.provenance = provenance;
    return entry;
}

TEST(VentJudge, VentsThroughAnInsideWallCountLess) {
    const auto inside = vent(90, VentLeadsTo::ThroughOneWall);
    const auto further = vent(30, VentLeadsTo::ThroughMoreWalls);
    EXPECT_NEAR(areaThere({vent(50), inside, further}, 1.5)->value, 50 + 60 + 20, 1e-9);
    EXPECT_EQ(areaThere({}, 1.5)->value, 0.0);
    auto measured = vent(30);
    measured.uncertainty = cm2(3);
    auto other = vent(60, VentLeadsTo::ThroughOneWall);
    other.uncertainty = cm2(6);
    EXPECT_NEAR(areaThere({measured, other}, 1.5)->u, 5.0, 1e-9);  // root of 3^2 + (6 / 1.5)^2
    auto unsaid = vent(50);
    unsaid.leadsTo.reset();
    EXPECT_FALSE(areaThere({unsaid}, 1.5));
    EXPECT_EQ(lackOfVents({unsaid}).front().say, Say::VentLeadsMissing);
    unsaid.freeArea = {};
    EXPECT_EQ(lackOfVents({unsaid}).front().say, Say::VentVentsMissing);
    unsaid.freeArea = Given<quantity::Area>::unusable();
    EXPECT_EQ(lackOfVents({unsaid}).front().say, Say::ReadingUnusable);
    EXPECT_TRUE(lackOfVents({vent(50)}).empty());
}

TEST(VentJudge, CountingKeepsTheFactorsEntryOnlyWhereAWallIsThere) {
    const auto book = rulebook::RuleBook::shipped();
    const auto rules = samples::airRules(book);
    KnownRules known(rules);
    std::vector<rulebook::Sentence> steps;
    EXPECT_EQ(countVents({vent(50)}, known, steps).there->value, 50.0);
    EXPECT_TRUE(known.entries().empty());
    EXPECT_TRUE(steps.empty());
    EXPECT_NEAR(countVents({vent(90, VentLeadsTo::ThroughOneWall)}, known, steps).there->value, 60, 1e-9);
    EXPECT_EQ(known.entries().size(), 1u);
    EXPECT_EQ(steps.front().say, Say::VentStepThroughWall);
    // A factor below 1 would make a vent larger than it is.
    const auto wrong =
        samples::bookWith(rulebook::Rule::VentThroughWallFactor, 0.5, quantity::UnitCode::None);
    const auto wrongRules = samples::airRules(wrong);
    KnownRules wrongly(wrongRules);
    const auto counted = countVents({vent(90, VentLeadsTo::ThroughOneWall)}, wrongly, steps);
    EXPECT_FALSE(counted.there);
    EXPECT_EQ(counted.missing.front().say, Say::LimitMissing);
}

TEST(VentJudge, AVentOfNoSaidLevelIsAtNone) {
    auto high = vent(10);
    high.level = VentLevel::High;
    auto low = vent(20);
    low.level = VentLevel::Low;
    const std::vector<Vent> all{high, low, vent(30)};
    ASSERT_EQ(ventsAt(all, VentLevel::High).size(), 1u);
    EXPECT_EQ(*ventsAt(all, VentLevel::High).front().freeArea, cm2(10));
    EXPECT_EQ(*ventsAt(all, VentLevel::Low).front().freeArea, cm2(20));
}

TEST(VentJudge, TheStateOfVents) {
    struct Case {
        std::optional<bool> blocked, closable, flyScreen, sleeved;
        Outcome outcome;
        Say say;
    };
    const Case cases[] = {
        {false, false, false, true, Outcome::Pass, Say::VentIsSound},
        {false, false, false, std::nullopt, Outcome::Pass, Say::VentIsSound},
        {true, false, false, true, Outcome::Fail, Say::VentBlocked},
        {false, true, false, true, Outcome::Fail, Say::VentClosable},
        {false, false, true, true, Outcome::Fail, Say::VentFlyScreen},
        {std::nullopt, std::nullopt, true, true, Outcome::Fail, Say::VentFlyScreen},
        {false, false, false, false, Outcome::LookAgain, Say::VentNotSleeved},
        {std::nullopt, false, false, true, Outcome::NoVerdict, Say::VentStateUnknown},
        {false, std::nullopt, false, true, Outcome::NoVerdict, Say::VentStateUnknown},
        {false, false, std::nullopt, false, Outcome::NoVerdict, Say::VentStateUnknown},
    };
    for (const auto& c : cases) {
        auto one = vent(50);
        one.blocked = c.blocked;
        one.closable = c.closable;
        one.flyScreen = c.flyScreen;
        one.sleeved = c.sleeved;
        const auto finding = ventState({vent(50), one});
        EXPECT_EQ(finding.outcome, c.outcome) << static_cast<int>(c.say);
        EXPECT_EQ(finding.why.say, c.say);
    }
}

TEST(VentJudge, ANeededAreaIsHeldLikeAnyLimit) {
    const auto judged = [](double there, double u, double need, Provenance provenance) {
        rulebook::Finding finding{FindingKind::VentFreeArea};
        judgeArea(finding, {entryBy(provenance)}, cm2(need), {there, u});
        return finding;
    };
    EXPECT_EQ(judged(60, 0, 50, Provenance::Published).outcome, Outcome::Pass);
    EXPECT_EQ(judged(50, 0, 50, Provenance::Published).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(40, 0, 50, Provenance::Published).outcome, Outcome::Fail);
    EXPECT_EQ(judged(54, 3, 50, Provenance::Published).why.say, Say::VentNear);
    EXPECT_EQ(judged(60, 0, 50, Provenance::Memory).why.say, Say::LimitFromMemory);
    EXPECT_EQ(judged(40, 0, 50, Provenance::Memory).outcome, Outcome::Fail);
    EXPECT_EQ(judged(0, 0, 0, Provenance::Published).why.say, Say::VentNotNeeded);
    rulebook::Finding bare{FindingKind::VentFreeArea};
    judgeArea(bare, {}, cm2(10), {20, 0});
    EXPECT_EQ(bare.outcome, Outcome::NoVerdict);
}

TEST(VentJudge, WhatIsMissingComesFirst) {
    rulebook::Finding finding{FindingKind::VentFreeArea};
    concludeLacking(finding, {{Say::VentInputMissing}, {Say::VentVentsMissing}});
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(finding.why.say, Say::VentInputMissing);
    EXPECT_TRUE(rulebook::says(finding, Say::VentVentsMissing));
    rulebook::Finding nothing{FindingKind::VentFreeArea};
    concludeLacking(nothing, {});
    EXPECT_EQ(nothing.outcome, Outcome::NoVerdict);
    EXPECT_EQ(leastKnown({entryBy(Provenance::Published), entryBy(Provenance::Memory),
                          entryBy(Provenance::Secondary)})
                  .provenance,
              Provenance::Memory);
}

}  // namespace
}  // namespace hearth::air
