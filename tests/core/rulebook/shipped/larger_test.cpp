// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/firm_value.h"
#include "core/rulebook/rule_book.h"
#include "core/rulebook/values.h"

#include <gtest/gtest.h>
#include <optional>

namespace hearth::rulebook {
namespace {

struct LargerRow {
    Rule rule;
    std::optional<Gas> gas;
    double value;
    Provenance provenance;
};

void expectRow(const LargerRow& row) {
    const auto book = RuleBook::shipped();
    const Entry* entry = book.find({row.rule, Edition::General, row.gas});
    ASSERT_NE(entry, nullptr) << ruleText(row.rule);
    ASSERT_TRUE(entry->isKnown()) << ruleText(row.rule);
    EXPECT_DOUBLE_EQ(figureOf(*entry)->value.toDouble(), row.value) << ruleText(row.rule);
    EXPECT_EQ(entry->provenance, row.provenance) << ruleText(row.rule);
    EXPECT_NE(entry->standard.find("IGE/UP/1"), std::string::npos) << "names its standard";
}

// Institution's own pages on IGE/UP/1A and IGE/UP/1; 150 mm from memory.
TEST(ShippedLarger, Scopes) {
    const auto gas = Gas::NaturalGas;
    expectRow({Rule::Up1aVolume, gas, 1, Provenance::Published});
    expectRow({Rule::Up1aOperatingPressure, gas, 40, Provenance::Published});
    expectRow({Rule::Up1aPipe, gas, 150, Provenance::Memory});
    expectRow({Rule::Up1SupplyPressure, {}, 16, Provenance::Published});
    EXPECT_EQ(RuleBook::shipped().find({Rule::Up1aVolume, Edition::General, Gas::Propane}), nullptr)
        << "IGE/UP/1A is for natural gas";
}

// From memory of IGE/UP/1 Edition 2.
TEST(ShippedLarger, FactorsAndLeaksFromMemory) {
    const auto memory = Provenance::Memory;
    const LargerRow rows[] = {
        {Rule::TimeFactorGas, Gas::NaturalGas, 42, memory},
        {Rule::TimeFactorAir, Gas::NaturalGas, 67, memory},
        {Rule::TimeFactorGas, Gas::Propane, 102, memory},
        {Rule::TimeFactorAir, Gas::Propane, 221, memory},
        {Rule::TimeFactorGas, Gas::Butane, 128, memory},
        {Rule::TimeFactorAir, Gas::Butane, 305, memory},
        {Rule::TimeFactorRoom, {}, 2.8, memory},
        {Rule::TimeFactorLargeRoom, {}, 0.047, memory},
        {Rule::LeakFactorGas, Gas::Propane, 0.059, memory},
        {Rule::LeakFactorAir, Gas::NaturalGas, 0.094, memory},
        {Rule::LeakNew, Gas::NaturalGas, 0.0014, memory},
        {Rule::LeakTypeA, Gas::NaturalGas, 0.0014, memory},
        {Rule::LeakTypeB, Gas::NaturalGas, 0.0005, memory},
        {Rule::LeakTypeC, Gas::NaturalGas, 0.03, memory},
        {Rule::LargerLeastTime, {}, 2, memory},
        {Rule::LargerLetByShare, {}, 0.5, memory},
        {Rule::StrengthOperatingLow, {}, 2.5, memory},
        {Rule::StrengthLowBand, {}, 100, memory},
        {Rule::StrengthSettleLow, {}, 5, memory},
        {Rule::StrengthHoldLow, {}, 5, memory},
    };
    for (const auto& row : rows) {
        expectRow(row);
    }
}

// A maintenance firm's policy page on IGE/UP/1A: read second-hand.
TEST(ShippedLarger, StrengthNamesBothFigures) {
    expectRow({Rule::StrengthIncidental, {}, 1.1, Provenance::Secondary});
    expectRow({Rule::StrengthFallLow, {}, 0, Provenance::Secondary});
    expectRow({Rule::LargerTestShare, {}, 1, Provenance::Secondary});
    const auto book = RuleBook::shipped();
    EXPECT_NE(book.find({Rule::StrengthFallLow})->doubt.find("20 %"), std::string::npos);
    EXPECT_NE(book.find({Rule::StrengthOperatingLow})->doubt.find("1.1"), std::string::npos);
}

TEST(ShippedLarger, WhatWasNotReadIsEmpty) {
    const auto book = RuleBook::shipped();
    const Rule anyGas[] = {Rule::LongestWater,       Rule::LongestDense,
                           Rule::LongestMercury,     Rule::LongestOneDecimal,
                           Rule::LongestTwoDecimals, Rule::LongestOneDecimalWide,
                           Rule::LongestNoDecimal,   Rule::LargeRoomLeast,
                           Rule::LeakOutside,        Rule::LeakBuried,
                           Rule::LargerLetByTime,    Rule::LargerSettleTime,
                           Rule::StrengthMiddleBand, Rule::StrengthSettleHigh,
                           Rule::StrengthHoldMiddle, Rule::StrengthOperatingHigh,
                           Rule::StrengthFallMiddle, Rule::StrengthFallHigh};
    for (const auto rule : anyGas) {
        ASSERT_NE(book.find({rule}), nullptr) << ruleText(rule);
        EXPECT_FALSE(book.find({rule})->isKnown()) << ruleText(rule);
    }
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        for (const auto rule :
             {Rule::LeakNew, Rule::LeakTypeA, Rule::LeakTypeB, Rule::LeakTypeC, Rule::LeakFactorAir}) {
            const Entry* entry = book.find({rule, Edition::General, gas});
            ASSERT_NE(entry, nullptr) << ruleText(rule);
            EXPECT_FALSE(entry->isKnown()) << ruleText(rule);
        }
    }
    EXPECT_FALSE(book.find({Rule::TimeFactorGas, Edition::General, Gas::LpgAir})->isKnown());
}

// Standards state these times in minutes: 5 typed into a field of seconds would be a far shorter test.
TEST(ShippedLarger, TimesAreOfferedInMinutes) {
    for (const auto rule : {Rule::LongestWater, Rule::LargerLetByTime, Rule::LargerSettleTime,
                            Rule::StrengthSettleHigh, Rule::StrengthHoldHigh}) {
        EXPECT_EQ(usualUnitOf(rule), quantity::UnitCode::Minute) << ruleText(rule);
    }
}

TEST(ShippedLarger, AFirmMayConfirmThatNoFallIsAllowed) {
    const Value none = quantity::Figure{quantity::Decimal(0, 0), quantity::UnitCode::None};
    EXPECT_FALSE(faultOf(Rule::StrengthFallLow, none));
    EXPECT_TRUE(faultOf(Rule::StrengthIncidental, none)) << "a factor of nought would test nothing";
}

}  // namespace
}  // namespace hearth::rulebook
