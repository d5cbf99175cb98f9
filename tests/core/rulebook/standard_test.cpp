// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/standard.h"

#include <gtest/gtest.h>

namespace hearth::rulebook {
namespace {

calendar::Date isoDay(std::string_view iso) {
    return *calendar::fromIso(iso);
}

struct EditionCase {
    const char* date;
    bool edition3;
    bool edition4;
    std::optional<Edition> only;
};

// Source: the gas register's bulletin on Communication 1903 (second edition, 15 April 2026): both editions
// until 30 September 2026, Edition 4 alone from 1 October 2026; published in March 2026 (the day is not
// known).
TEST(EditionsAllowed, FollowTheRegistersBulletin) {
    const EditionCase cases[] = {
        {"2012-06-01", true, false, Edition::Up1bEd3}, {"2026-02-28", true, false, Edition::Up1bEd3},
        {"2026-03-01", true, true, std::nullopt},      {"2026-09-30", true, true, std::nullopt},
        {"2026-10-01", false, true, Edition::Up1bEd4}, {"2030-01-01", false, true, Edition::Up1bEd4},
    };
    for (const auto& c : cases) {
        const auto allowed = editionsAllowedOn(isoDay(c.date));
        EXPECT_EQ(allowed.edition3, c.edition3) << c.date;
        EXPECT_EQ(allowed.edition4, c.edition4) << c.date;
        EXPECT_EQ(allowed.only(), c.only) << c.date;
        EXPECT_EQ(allowed.permits(Edition::Up1bEd3), c.edition3) << c.date;
        EXPECT_EQ(allowed.permits(Edition::Up1bEd4), c.edition4) << c.date;
        EXPECT_FALSE(allowed.permits(Edition::General));
    }
}

TEST(StandardCodes, ComeBackFromTheirTexts) {
    for (const auto gas : {Gas::NaturalGas, Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        EXPECT_EQ(gasFromText(gasText(gas)), gas);
    }
    for (const auto edition : {Edition::General, Edition::Up1bEd3, Edition::Up1bEd4}) {
        EXPECT_EQ(editionFromText(editionText(edition)), edition);
    }
    EXPECT_EQ(gasText(Gas::NaturalGas), "natural_gas");
    EXPECT_EQ(editionText(Edition::Up1bEd4), "up1b_ed4");
    EXPECT_FALSE(gasFromText("coal_gas"));
    EXPECT_FALSE(editionFromText(""));
}

}  // namespace
}  // namespace hearth::rulebook
