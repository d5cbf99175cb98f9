// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rule_book.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

calendar::Date day(std::string_view iso) {
    return *calendar::fromIso(iso);
}

FirmEntry firm(RuleKey key, Value value) {
    return {key, std::move(value), "Ada Marlow", day("2026-11-02"), "own copy, table 3"};
}

const RuleKey kNoMovement{Rule::NoMovementElectronic};

TEST(RuleBookLay, ReplacesValueAndProvenanceAndKeepsTheRest) {
    auto book = RuleBook::shipped();
    const Entry before = *book.find(kNoMovement);
    ASSERT_TRUE(book.lay(firm(kNoMovement, Figure{Decimal(15, 2), UnitCode::Millibar})));
    const Entry& after = *book.find(kNoMovement);
    EXPECT_EQ(figureOf(after)->value, Decimal(15, 2));
    EXPECT_EQ(after.provenance, Provenance::Firm);
    EXPECT_EQ(after.confirmedBy, "Ada Marlow");
    EXPECT_EQ(after.confirmedOn, day("2026-11-02"));
    EXPECT_EQ(after.fromCopy, "own copy, table 3");
    EXPECT_EQ(after.source, before.source);
    EXPECT_EQ(after.standard, before.standard);
    EXPECT_EQ(after.doubt, before.doubt);
    EXPECT_EQ(after.comparison, before.comparison);
}

TEST(RuleBookLay, TakesTheEmptyBandsOfEdition4) {
    auto book = RuleBook::shipped();
    const RuleKey key{Rule::DropByVolume, Edition::Up1bEd4, Gas::NaturalGas};
    ASSERT_FALSE(book.find(key)->isKnown());
    const std::vector<Band> bands{{Decimal(1, 2), Decimal(4, 0)}, {Decimal(35, 3), Decimal(1, 0)}};
    ASSERT_TRUE(book.lay(firm(key, bands)));
    EXPECT_EQ(book.find(key)->value, Value(bands));
}

TEST(RuleBookLay, RefusesWhatItDoesNotKnowAndWhatCannotBeUsed) {
    auto book = RuleBook::shipped();
    const auto before = book.entries().size();
    // The shipped entry is for any gas: one gas alone is another key.
    const auto unknown = book.lay(firm({Rule::NoMovementElectronic, Edition::General, Gas::Propane},
                                       Figure{Decimal(1, 1), UnitCode::Millibar}));
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error(), (Error{ErrorCode::RuleUnknown, {"no_movement_electronic"}}));
    const auto unusable = book.lay(firm(kNoMovement, Figure{Decimal(1, 1), UnitCode::Second}));
    ASSERT_FALSE(unusable);
    EXPECT_EQ(unusable.error(), (Error{ErrorCode::RuleValueUnusable, {"no_movement_electronic", "unit"}}));
    EXPECT_EQ(book.entries().size(), before);
    EXPECT_EQ(book.find(kNoMovement)->provenance, Provenance::Secondary);
}

Entry withGas(std::optional<Gas> gas, int value) {
    Entry entry;
    entry.key = {Rule::ScopeVolume, Edition::General, gas};
    entry.value = Figure{Decimal(value, 0), UnitCode::CubicMetre};
    return entry;
}

TEST(RuleBookFind, PrefersTheGasItself) {
    const RuleBook book({withGas({}, 1), withGas(Gas::Propane, 2)});
    EXPECT_EQ(figureOf(*book.find({Rule::ScopeVolume, Edition::General, Gas::Propane}))->value,
              Decimal(2, 0));
    EXPECT_EQ(figureOf(*book.find({Rule::ScopeVolume, Edition::General, Gas::Butane}))->value, Decimal(1, 0));
    EXPECT_EQ(figureOf(*book.find({Rule::ScopeVolume}))->value, Decimal(1, 0));
    EXPECT_EQ(book.find({Rule::ScopeVolume, Edition::Up1bEd3}), nullptr);
    EXPECT_EQ(book.find({Rule::ScopePipe}), nullptr);
}

TEST(RuleBookFind, KeepsToTheDates) {
    const auto book = RuleBook::shipped();
    const RuleKey third{Rule::TestPressure, Edition::Up1bEd3, Gas::NaturalGas};
    const RuleKey fourth{Rule::TestPressure, Edition::Up1bEd4, Gas::NaturalGas};
    EXPECT_NE(book.find(third, day("2026-09-30")), nullptr);
    EXPECT_EQ(book.find(third, day("2026-10-01")), nullptr);
    EXPECT_EQ(book.find(fourth, day("2026-02-28")), nullptr);
    EXPECT_NE(book.find(fourth, day("2026-03-01")), nullptr);
    EXPECT_NE(book.find(third), nullptr);
}

}  // namespace
}  // namespace hearth::rulebook
