// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: none. Six years are common practice, for the Limitation Act 1980 (from memory).
#include "core/record/keeping.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

calendar::Date day(const char* iso) {
    return calendar::fromIso(iso).value();
}

TEST(Keeping, isSixYears) {
    EXPECT_EQ(keepUntil(RecordKind::TightnessAndPurge, day("2026-11-26")), day("2032-11-26"));
    EXPECT_EQ(keepUntil(RecordKind::TightnessAndPurge, day("2028-02-29")), day("2034-02-28"));
    EXPECT_EQ(keepLetterUntil(day("2026-11-26")), day("2032-11-26"));
}

TEST(Keeping, namesItsRule) {
    EXPECT_EQ(keepRuleOf(RecordKind::TightnessAndPurge), KeepRule::SixYears);
    EXPECT_EQ(keepRuleFromCode(keepRuleCode(KeepRule::SixYears)), KeepRule::SixYears);
    EXPECT_EQ(keepRuleFromCode("for_ever"), std::nullopt);
}

}  // namespace
}  // namespace hearth::record
