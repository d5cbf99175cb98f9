// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/doubts.h"

#include "core/rulebook/conclude.h"
#include "tests/core/judging/asked.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using quantity::UnitCode;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

const calendar::Date kDoubtsDay{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

Finding doubtsFinding(Outcome outcome) {
    return rulebook::plainFinding(FindingKind::InletPressure, outcome, Say::PressureGood);
}

TEST(Doubts, WithoutAGasNothingPassesOrFailsByIt) {
    Worksheet sheet(Question::Pressures, kDoubtsDay);
    const Asking unsaid(sheet, asked::shippedBook());
    EXPECT_FALSE(isGasSaid(unsaid));
    for (const auto outcome : {Outcome::Pass, Outcome::Fail, Outcome::LookAgain}) {
        const auto finding = byTheGas(unsaid, doubtsFinding(outcome));
        EXPECT_EQ(finding.outcome, Outcome::LookAgain);
        EXPECT_EQ(finding.why.say, Say::GasNotSaid);
        EXPECT_TRUE(rulebook::says(finding, Say::PressureGood));
    }
    EXPECT_EQ(byTheGas(unsaid, doubtsFinding(Outcome::NoVerdict)), doubtsFinding(Outcome::NoVerdict));
    sheet.put(Group::Once, 0, Item::GasFamily, "propane");
    const Asking said(sheet, asked::shippedBook());
    EXPECT_TRUE(isGasSaid(said));
    EXPECT_EQ(byTheGas(said, doubtsFinding(Outcome::Pass)), doubtsFinding(Outcome::Pass));
}

TEST(Doubts, AMakersFigureThatCantBeUsedLeavesAFailureAloneStanding) {
    for (const auto outcome : {Outcome::Pass, Outcome::LookAgain, Outcome::NoVerdict}) {
        const auto finding = withoutMakers(doubtsFinding(outcome));
        EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
        EXPECT_EQ(finding.why.say, Say::MakersFigureUnclear);
        EXPECT_TRUE(finding.limits.empty());
    }
    const auto failed = withoutMakers(doubtsFinding(Outcome::Fail));
    EXPECT_EQ(failed.outcome, Outcome::Fail);
    EXPECT_TRUE(rulebook::says(failed, Say::MakersFigureUnclear));
}

TEST(Doubts, ARangeNeedsBothEndsInOrderAndInOneUnit) {
    const auto typed = [](const char* least, UnitCode lowUnit, const char* most, UnitCode highUnit) {
        Worksheet sheet(Question::Combustion, kDoubtsDay);
        sheet.put(Group::Once, 0, Item::MakerCo2Least, least, lowUnit);
        sheet.put(Group::Once, 0, Item::MakerCo2Most, most, highUnit);
        return rangeTyped(sheet.readings(Group::Once), Item::MakerCo2Least, Item::MakerCo2Most);
    };
    const auto percent = UnitCode::Percent;
    const auto good = typed("8.5", percent, "9.5", percent);
    ASSERT_TRUE(good.range);
    EXPECT_FALSE(good.isUnclear);
    EXPECT_EQ(good.range->least.text(), "8.5");
    EXPECT_EQ(good.range->most.text(), "9.5");
    EXPECT_FALSE(typed("", percent, "", percent).isUnclear);
    EXPECT_TRUE(typed("8.5", percent, "", percent).isUnclear);
    EXPECT_TRUE(typed("", percent, "9.5", percent).isUnclear);
    EXPECT_TRUE(typed("8.5", percent, "9,x", percent).isUnclear);
    EXPECT_TRUE(typed("9.5", percent, "8.5", percent).isUnclear);
    EXPECT_TRUE(typed("8.5", percent, "95000", UnitCode::Ppm).isUnclear);
    EXPECT_FALSE(typed("8.5", percent, "95000", UnitCode::Ppm).range);
}

TEST(Doubts, WhatCantBeUsedIsSaidOnce) {
    Worksheet sheet(Question::Pressures, kDoubtsDay);
    sheet.put(Group::Once, 0, Item::GaugeAccuracy, "-1");
    sheet.put(Group::Once, 0, Item::InletLeast, "x?");
    sheet.put(Group::Once, 0, Item::InletMost, "22");
    Asking asking(sheet, asked::shippedBook());
    EXPECT_TRUE(isUnclear(asking.once, Item::GaugeAccuracy));
    EXPECT_TRUE(isUnclear(asking.once, Item::InletLeast));
    EXPECT_FALSE(isUnclear(asking.once, Item::InletMost));
    EXPECT_FALSE(isUnclear(asking.once, Item::BurnerLeast));
    sayUnclear(asking, FindingKind::InletPressure,
               {Item::GaugeAccuracy, Item::InletLeast, Item::InletMost, Item::BurnerLeast});
    ASSERT_EQ(asking.answer.findings.size(), 2U);
    EXPECT_EQ(asking.answer.findings.front().about, std::vector{Item::GaugeAccuracy});
    EXPECT_EQ(asking.answer.findings.back().about, std::vector{Item::InletLeast});
    EXPECT_EQ(asking.answer.findings.back().finding.outcome, Outcome::NoVerdict);
}

}  // namespace
}  // namespace hearth::judging
