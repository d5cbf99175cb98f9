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

Entry dated(int value, const char* from, const char* to) {
    Entry entry = withGas(Gas::NaturalGas, value);
    entry.appliesFrom = calendar::fromIso(from);
    entry.appliesTo = calendar::fromIso(to);
    return entry;
}

/// 3 m3 up to the end of 2024, 2 m3 in 2025 and 2026, 1 m3 from 2028: nothing in 2027. In no order.
RuleBook changing() {
    return RuleBook({dated(2, "2025-01-01", "2026-12-31"), dated(1, "2028-01-01", ""),
                     dated(3, "", "2024-12-31"), withGas({}, 9)});
}

int valueIn(const Entry* entry) {
    return entry == nullptr ? 0 : static_cast<int>(figureOf(*entry)->value.mantissa());
}

const RuleKey kChanging{Rule::ScopeVolume, Edition::General, Gas::NaturalGas};

TEST(RuleBookFind, OfSeveralEntriesOneKeyTakesTheOneInForce) {
    const auto book = changing();
    EXPECT_EQ(valueIn(book.find(kChanging, day("2001-06-01"))), 3);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2024-12-31"))), 3);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2025-01-01"))), 2);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2026-12-31"))), 2);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2028-01-01"))), 1);
    EXPECT_EQ(valueIn(book.find(kChanging)), 1) << "the newest, where no day is asked for";
    EXPECT_EQ(book.find(kChanging, day("2027-06-01")), nullptr)
        << "a time without a limit has none; the one for any gas does not stand in";
    EXPECT_EQ(valueIn(book.find({Rule::ScopeVolume, Edition::General, Gas::Butane}, day("2027-06-01"))), 9);
}

FirmEntry wordOn(const char* iso, int value) {
    return {kChanging, Figure{Decimal(value, 0), UnitCode::CubicMetre}, "Ada Marlow", day(iso), "own copy"};
}

TEST(RuleBookLay, OfSeveralEntriesOneKeyIsAboutTheOneInForceOnTheDayOfTheWord) {
    auto book = changing();
    ASSERT_TRUE(book.lay(wordOn("2024-06-01", 30)));
    ASSERT_TRUE(book.lay(wordOn("2026-06-01", 20)));
    EXPECT_EQ(valueIn(book.find(kChanging, day("2024-12-31"))), 30);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2025-01-01"))), 20);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2028-01-01"))), 1) << "the law changed after the firm spoke";
    EXPECT_EQ(book.find(kChanging, day("2028-01-01"))->provenance, Provenance::Published);
    EXPECT_EQ(book.find(kChanging, day("2025-01-01"))->appliesTo, day("2026-12-31")) << "its time stays";
    EXPECT_EQ(valueIn(book.find({Rule::ScopeVolume})), 9) << "the one for any gas is another key";
}

TEST(RuleBookLay, OfSeveralEntriesNoneOfThemInForceTakesTheNewest) {
    auto book = changing();
    EXPECT_EQ(valueIn(book.meantOn(kChanging, day("2027-06-01"))), 1);
    EXPECT_EQ(valueIn(book.meantOn(kChanging, day("2026-06-01"))), 2);
    EXPECT_EQ(book.meantOn({Rule::ScopePipe}, day("2026-06-01")), nullptr);
    ASSERT_TRUE(book.lay(wordOn("2027-06-01", 10)));
    EXPECT_EQ(valueIn(book.find(kChanging, day("2028-01-01"))), 10);
    EXPECT_EQ(valueIn(book.find(kChanging, day("2026-06-01"))), 2);
}

}  // namespace
}  // namespace hearth::rulebook
