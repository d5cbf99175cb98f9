// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/judging/asked.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using asked::Sheet;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

const Sheet kExaminedAll{{Item::ExaminedFlue, choice::kGood},
                         {Item::ExaminedAir, choice::kGood},
                         {Item::ExaminedPressure, choice::kInOrder},
                         {Item::ExaminedOperation, choice::kGood}};

Outcome examinedOutcome(const Sheet& sheet) {
    return asked::outcomeOf(asked::answerTo(Question::Regulation26, sheet), FindingKind::Regulation26)
        .value();
}

// Source: Gas Safety (Installation and Use) Regulations 1998, regulation 26(9).
TEST(Regulation26Answer, IsSatisfiedByEachMatterAndNotByFewer) {
    EXPECT_EQ(examinedOutcome(kExaminedAll), Outcome::Pass);
    for (const auto& typed : kExaminedAll) {
        EXPECT_EQ(examinedOutcome(asked::without(kExaminedAll, typed.item)), Outcome::NoVerdict)
            << reg::infoOf(typed.item).code;
        EXPECT_EQ(examinedOutcome(asked::with(kExaminedAll, {{typed.item, "x?"}})), Outcome::NoVerdict)
            << reg::infoOf(typed.item).code;
        EXPECT_EQ(examinedOutcome(asked::with(kExaminedAll, {{typed.item, choice::kWrong}})), Outcome::Fail)
            << reg::infoOf(typed.item).code;
    }
    const auto heat = asked::with(asked::without(kExaminedAll, Item::ExaminedPressure),
                                  {{Item::ExaminedHeatInput, choice::kInOrder}});
    EXPECT_EQ(examinedOutcome(heat), Outcome::Pass) << "either is enough";
}

TEST(Regulation26Answer, BothReadingsWhereBothAreNecessary) {
    for (const auto* said : {"yes", "x?"}) {
        const auto one = asked::with(kExaminedAll, {{Item::ExaminedBoth, said}});
        EXPECT_EQ(examinedOutcome(one), Outcome::NoVerdict) << said;
        EXPECT_EQ(examinedOutcome(asked::with(one, {{Item::ExaminedHeatInput, choice::kInOrder}})),
                  Outcome::Pass);
    }
    EXPECT_EQ(examinedOutcome(asked::with(kExaminedAll, {{Item::ExaminedBoth, "no"}})), Outcome::Pass);
}

// (ca): combustion alone needs the reason why neither could be read.
TEST(Regulation26Answer, CombustionAloneNeedsTheReason) {
    const auto combustion = asked::with(asked::without(kExaminedAll, Item::ExaminedPressure),
                                        {{Item::ExaminedPressure, choice::kNotTaken},
                                         {Item::ExaminedHeatInput, choice::kNotTaken},
                                         {Item::ExaminedCombustion, choice::kInOrder}});
    const auto got = asked::answerTo(Question::Regulation26, combustion);
    EXPECT_EQ(asked::outcomeOf(got, FindingKind::Regulation26), Outcome::NoVerdict);
    EXPECT_TRUE(asked::saysOf(got, FindingKind::Regulation26, Say::Reg26NoReason));
    for (const auto why : {choice::kNoMeter, choice::kMeterNotReached, choice::kDisplayDead}) {
        EXPECT_EQ(examinedOutcome(asked::with(combustion, {{Item::WhyNeither, why}})), Outcome::Pass) << why;
    }
    const auto other = asked::with(combustion, {{Item::WhyNeither, choice::kOther}});
    EXPECT_EQ(examinedOutcome(other), Outcome::NoVerdict);
    EXPECT_EQ(examinedOutcome(asked::with(other, {{Item::WhyNeitherTaken, "the meter is behind a wall"}})),
              Outcome::Pass);
}

TEST(Regulation26Answer, NothingPassesWhereItDoesNotApply) {
    EXPECT_EQ(examinedOutcome({{Item::ExaminedNotAsked, choice::kDisconnected}}), Outcome::LookAgain);
    EXPECT_EQ(examinedOutcome(asked::with(kExaminedAll, {{Item::ExaminedNotAsked, choice::kAskedAll}})),
              Outcome::Pass);
}

}  // namespace
}  // namespace hearth::judging
