// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/named_gases.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::gas {
namespace {

TEST(NamedGases, HaveCodesOfTheirOwnAndSayWhereTheyWereRead) {
    std::set<std::string_view> codes;
    for (const auto& gas : namedGases()) {
        EXPECT_TRUE(codes.insert(gas.code).second) << gas.code;
        EXPECT_EQ(namedGas(gas.code), &gas);
        EXPECT_FALSE(gas.name.empty()) << gas.code;
        EXPECT_FALSE(gas.source.empty()) << gas.code;
        double sum = 0.0;
        for (const auto component : kComponents) {
            sum += gas.composition.of(component);
        }
        EXPECT_NEAR(sum, 1.0, 1e-12) << gas.code;
    }
    EXPECT_EQ(codes.size(), 10u);
    EXPECT_EQ(namedGas("g99"), nullptr);
    EXPECT_EQ(namedGas(""), nullptr);
}

// Of the test gases only G23 was read (a page of BS EN 437:2003+A1:2009).
TEST(NamedGases, OnlyWhatWasReadIsPublished) {
    for (const auto& gas : namedGases()) {
        EXPECT_EQ(gas.provenance == rulebook::Provenance::Published, gas.code == "g23") << gas.code;
    }
}

TEST(NamedGases, OneStandsForEachFamilyThatHasOne) {
    EXPECT_EQ(usualGas(rulebook::Gas::NaturalGas), namedGas("natural_typical"));
    EXPECT_EQ(usualGas(rulebook::Gas::Propane), namedGas("propane"));
    EXPECT_EQ(usualGas(rulebook::Gas::Butane), namedGas("butane"));
    EXPECT_EQ(usualGas(rulebook::Gas::LpgAir), nullptr);
    EXPECT_TRUE(namedGas("propane")->composition == namedGas("g31")->composition);
    EXPECT_TRUE(namedGas("butane")->composition == namedGas("g30")->composition);
}

}  // namespace
}  // namespace hearth::gas
