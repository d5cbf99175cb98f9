// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rule_repository.h"

#include "tests/core/store/store_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::Decimal;
using quantity::UnitCode;
using rulebook::Rule;
using rulebook::RuleKey;

class RuleRepository : public StoreTest {
  protected:
    /// The shipped figure of a key with another value.
    [[nodiscard]] rulebook::FirmEntry word(const std::string& value) const {
        return {key, quantity::Figure{valueOf(Decimal::parse(value)), UnitCode::Millibar}, "Tamsin Ember",
                calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)},
                "own copy, table 5"};
    }
    const RuleKey key{Rule::NoMovementElectronic, {}, {}};
};

TEST_F(RuleRepository, aFreshStoreHasTheShippedBook) {
    const auto book = valueOf(store->ruleBook());
    const auto shipped = rulebook::RuleBook::shipped();
    EXPECT_TRUE(std::equal(book.entries().begin(), book.entries().end(), shipped.entries().begin(),
                           shipped.entries().end()));
}

TEST_F(RuleRepository, theFirmsNewestWordCountsAndTheOldOnesAreKept) {
    const auto* shipped = valueOf(store->ruleBook()).find(key);
    ASSERT_NE(shipped, nullptr);
    valueOf(store->save(word("0.20")));
    valueOf(store->save(word("0.25")));
    reopen();
    const auto book = valueOf(store->ruleBook());
    const auto* entry = book.find(key);
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->provenance, rulebook::Provenance::Firm);
    EXPECT_EQ(rulebook::figureOf(*entry)->value.text(), "0.25");
    EXPECT_EQ(entry->confirmedBy, "Tamsin Ember");
    EXPECT_THAT(valueOf(store->ruleHistory(key)), ::testing::ElementsAre(word("0.20"), word("0.25")));
}

TEST_F(RuleRepository, keepsBandsAndRanges) {
    const auto day = calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};
    const std::vector<rulebook::Band> bands{{Decimal(10, 3), Decimal(40, 1)},
                                            {Decimal(20, 3), Decimal(20, 1)}};
    const RuleKey bandsKey{Rule::DropByVolume, rulebook::Edition::Up1bEd4, rulebook::Gas::NaturalGas};
    const rulebook::FirmEntry banded{bandsKey, bands, "T", day, ""};
    valueOf(store->save(banded));
    EXPECT_THAT(valueOf(store->ruleHistory(bandsKey)), ::testing::ElementsAre(banded));
    EXPECT_EQ(valueOf(store->ruleBook()).find(bandsKey)->value, rulebook::Value(bands));
}

TEST_F(RuleRepository, refusesAWordThatTheBookCannotTake) {
    auto wrong = word("1");
    wrong.value = std::vector<rulebook::Band>{};
    EXPECT_FALSE(store->save(wrong));
    EXPECT_TRUE(valueOf(store->ruleHistory(key)).empty());
}

TEST_F(RuleRepository, aWordOnARuleOfTomorrowIsKeptAndLeftOut) {
    valueOf(store->save(word("0.25")));
    store.reset();
    ASSERT_EQ(sqlOn(path(),
                    "INSERT INTO firm_entries SELECT randomblob(16), 99, 'flue_height', edition, gas, value, "
                    "confirmed_by, confirmed_on, from_copy, saved_by, saved_at FROM firm_entries"),
              "");
    EXPECT_NE(sqlOn(path(), "UPDATE firm_entries SET value = 'null'"), "");
    EXPECT_NE(sqlOn(path(), "DELETE FROM firm_entries"), "");
    reopen();
    EXPECT_TRUE(store->ruleBook());
    store.reset();
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM firm_entries"), "2");
}

}  // namespace
}  // namespace hearth::store
