// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rules_in_force.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

const calendar::Date kNovember = *calendar::fromIso("2026-11-10");

TEST(RulesInForce, TakeTheEditionsEntryBeforeTheGeneralOne) {
    const auto book = RuleBook::shipped();
    const RulesInForce rules(book, Edition::Up1bEd4, Gas::NaturalGas, kNovember);
    ASSERT_NE(rules.find(Rule::TestPressure), nullptr);
    EXPECT_EQ(rules.find(Rule::TestPressure)->key.edition, Edition::Up1bEd4);
    ASSERT_NE(rules.find(Rule::NoMovementWater), nullptr);
    EXPECT_EQ(rules.find(Rule::NoMovementWater)->key.edition, Edition::General);
}

TEST(RulesInForce, KnowWhatIsEmptyAndWhatIsWithdrawn) {
    const auto book = RuleBook::shipped();
    const RulesInForce fourth(book, Edition::Up1bEd4, Gas::NaturalGas, kNovember);
    EXPECT_NE(fourth.find(Rule::DropByVolume), nullptr);
    EXPECT_EQ(fourth.known(Rule::DropByVolume), nullptr);
    EXPECT_EQ(fourth.find(Rule::DropDiaphragm6At28), nullptr);
    EXPECT_NE(fourth.inEdition(Rule::DropDiaphragm6At28, Edition::Up1bEd3), nullptr);
    EXPECT_EQ(fourth.inEdition(Rule::DropDiaphragm6At35, Edition::Up1bEd3), nullptr);

    const RulesInForce third(book, Edition::Up1bEd3, Gas::NaturalGas, kNovember);
    EXPECT_EQ(third.find(Rule::TestPressure), nullptr) << "withdrawn on 1 October 2026";
}

}  // namespace
}  // namespace hearth::rulebook
