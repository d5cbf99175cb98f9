// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/say.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <string_view>

namespace hearth::rulebook {
namespace {

TEST(SayCodes, AreAllThereAndAllDifferent) {
    std::set<std::string_view> texts;
    for (const auto say : allSays()) {
        EXPECT_FALSE(sayText(say).empty());
        EXPECT_TRUE(texts.insert(sayText(say)).second) << sayText(say);
    }
    // The last of each group: a code added behind the very last without a row in the table would be missed
    // otherwise.
    const auto last = std::max({
        Say::PurgeNoSteadyFlame,
        // --- gas
        Say::NetworkAtLimit,
        // --- end of gas
        // --- pipework
        // --- end of pipework
        // --- larger
        Say::StrengthPartsOn,
        // --- end of larger
        // --- burner
        Say::Reg26DoesNotApply,
        // --- end of burner
        // --- combustion
        Say::EfficiencyLatentCeiling,
        // --- end of combustion
        // --- air
        Say::CohbSensitive,
        // --- end of air
        // --- deadlines
        Say::RecordKeptOn,
        // --- end of deadlines
        // --- competence
        Say::CategoryWillRunOut,
        // --- end of competence
    });
    EXPECT_EQ(texts.size(), static_cast<std::size_t>(last) + 1);
    EXPECT_EQ(sayText(Say::LetByNone), "let_by_none");
}

}  // namespace
}  // namespace hearth::rulebook
