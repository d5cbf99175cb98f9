// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/appliance_kind.h"

#include <gtest/gtest.h>
#include <set>

namespace hearth::burner {
namespace {

constexpr int kLastApplianceKind = static_cast<int>(ApplianceKind::Other);

TEST(ApplianceKinds, CodesAreDifferentAndComeBack) {
    std::set<std::string_view> texts;
    for (int i = 0; i <= kLastApplianceKind; ++i) {
        const auto kind = static_cast<ApplianceKind>(i);
        EXPECT_TRUE(texts.insert(applianceKindText(kind)).second);
        EXPECT_EQ(applianceKindFromText(applianceKindText(kind)), kind);
    }
    EXPECT_EQ(applianceKindText(ApplianceKind::GasFire), "gas_fire");
    EXPECT_FALSE(applianceKindFromText("boiler"));
}

// A fire held to a boiler's figure, or a boiler to a fire's, would be a wrong limit: no entry serves two
// kinds.
TEST(ApplianceKinds, EachHasAnEntryOfItsOwn) {
    std::set<rulebook::Rule> rules;
    for (int i = 0; i <= kLastApplianceKind; ++i) {
        const auto kind = static_cast<ApplianceKind>(i);
        const auto rule = ratioRuleOf(kind);
        EXPECT_EQ(rule.has_value(), kind != ApplianceKind::Hotplate && kind != ApplianceKind::Other);
        if (rule) {
            EXPECT_TRUE(rules.insert(*rule).second) << applianceKindText(kind);
        }
    }
}

// The trade's procedure for condensing boilers: CO as well as the ratio, at both rates. Facts on flues:
// common practice, no source.
TEST(ApplianceKinds, OnlyCondensingBoilersAreHeldToCarbonMonoxideAndBothRates) {
    for (int i = 0; i <= kLastApplianceKind; ++i) {
        const auto kind = static_cast<ApplianceKind>(i);
        const bool condensing = kind == ApplianceKind::CondensingBoiler;
        EXPECT_EQ(carbonMonoxideRuleOf(kind).has_value(), condensing);
        EXPECT_EQ(needsBothRates(kind), condensing);
    }
    EXPECT_TRUE(hasFlue(ApplianceKind::GasFire));
    EXPECT_TRUE(hasFlue(ApplianceKind::CondensingBoiler));
    EXPECT_FALSE(hasFlue(ApplianceKind::FluelessSpaceHeater));
    EXPECT_FALSE(hasFlue(ApplianceKind::Grill));
}

}  // namespace
}  // namespace hearth::burner
