// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/fittings.h"

#include "core/quantity/units.h"
#include "tests/core/pipework/samples.h"

#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

double metresOf(const FittingsLength& length) {
    return length.length ? length.length->in(quantity::kMetre) : -1.0;
}

TreeSection fitted(std::string_view tube, Fittings fittings) {
    auto section = samples::fromMeter(tube, 5.0);
    section.fittings = fittings;
    return section;
}

// Source: a trade forum's note on BS 6891:2015 (15 mm: elbow 0.40, bend 0.20, 45-degree bend 0.15; 22 mm:
// 0.60, 0.30, 0.20); a handout and a page on the 2005 edition (to 28 mm: elbow 0.5, bend 0.3, tee 0.5).
TEST(Fittings, areWorthWhatTheirEditionSays) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const FittingTable now(FittingsEdition::From2015, rules);
    const FittingTable before(FittingsEdition::Before2015, rules);
    EXPECT_NEAR(metresOf(fittingsLength(fitted("copper_15", {2, 1, 1, 0}), now)), 2 * 0.40 + 0.20 + 0.15,
                1e-12);
    EXPECT_NEAR(metresOf(fittingsLength(fitted("copper_22", {1, 2, 0, 0}), now)), 0.60 + 2 * 0.30, 1e-12);
    EXPECT_NEAR(metresOf(fittingsLength(fitted("copper_28", {1, 1, 0, 1}), before)), 0.5 + 0.3 + 0.5, 1e-12);
    EXPECT_EQ(fittingsStandard(FittingsEdition::From2015), "BS 6891:2015");
    EXPECT_EQ(now.edition(), FittingsEdition::From2015);
}

// A length that nobody has read is never nought.
TEST(Fittings, whatIsNotKnownMakesTheWholeUnknown) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const FittingTable now(FittingsEdition::From2015, rules);
    EXPECT_FALSE(fittingsLength(fitted("copper_15", {1, 0, 0, 1}), now).length)
        << "tees by direction were not read";
    EXPECT_FALSE(fittingsLength(fitted("copper_28", {1, 0, 0, 0}), now).length);
    EXPECT_FALSE(fittingsLength(fitted("steel_medium_25", {1, 0, 0, 0}), now).length);
    EXPECT_FALSE(fittingsLength(fitted("copper_15", {-1, 0, 0, 0}), now).length);
    EXPECT_EQ(metresOf(fittingsLength(fitted("steel_medium_25", {}), now)), 0.0);
}

TEST(Fittings, aTypedLengthStandsBeforeTheTable) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const FittingTable now(FittingsEdition::From2015, rules);
    auto section = fitted("copper_28", {3, 0, 0, 2});
    section.typedFittings = quantity::Length(4.2, quantity::kMetre);
    const auto length = fittingsLength(section, now);
    EXPECT_TRUE(length.typed);
    EXPECT_NEAR(metresOf(length), 4.2, 1e-12);
}

TEST(Fittings, ofWhichNothingIsSaidCountAsALeast) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const FittingTable now(FittingsEdition::From2015, rules);
    auto section = fitted("copper_28", {});
    EXPECT_TRUE(fittingsLength(section, now).said);
    section.fittingsSaid = false;
    EXPECT_FALSE(fittingsLength(section, now).said);
    EXPECT_EQ(metresOf(fittingsLength(section, now)), 0.0);
}

TEST(Fittings, haveARuleForCopperOnly) {
    EXPECT_EQ(fittingRule(*tubeByCode("copper_22"), FittingKind::Elbow, FittingsEdition::From2015),
              rulebook::Rule::Fitting22Elbow);
    EXPECT_EQ(fittingRule(*tubeByCode("copper_22"), FittingKind::Tee, FittingsEdition::Before2015),
              rulebook::Rule::FittingOldTee);
    EXPECT_EQ(fittingRule(*tubeByCode("pe11_32"), FittingKind::Elbow, FittingsEdition::From2015),
              std::nullopt);
}

// Source: textbook: a fitting is worth the same number of bores in any size.
TEST(Fittings, aTypedLengthGrowsWithTheBore) {
    auto section = samples::fromMeter("copper_15", 5.0);
    section.typedFittings = quantity::Length(1.36, quantity::kMetre);
    const auto larger = resized(section, *tubeByCode("copper_22"));
    EXPECT_EQ(larger.tube, tubeByCode("copper_22"));
    EXPECT_NEAR(larger.typedFittings->in(quantity::kMetre), 1.36 * 20.2 / 13.6, 1e-9);
}

}  // namespace
}  // namespace hearth::pipework
