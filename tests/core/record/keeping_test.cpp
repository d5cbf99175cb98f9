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
    EXPECT_EQ(keepUntil(RecordKind::LandlordSafety, day("2026-11-26")), day("2032-11-26"));
    EXPECT_EQ(keepUntil(RecordKind::WarningNotice, day("2026-11-26")), day("2032-11-26"));
    EXPECT_EQ(keepLetterUntil(day("2026-11-26")), day("2032-11-26"));
}

TEST(Keeping, isNeverShorterThanTheShortest) {
    const auto issued = day("2026-11-26");
    const auto shortest = calendar::addMonths(issued, kShortestKeepingMonths);
    for (const auto kind : allKinds()) {
        EXPECT_GE(keepUntil(kind, issued), shortest) << kindCode(kind);
    }
    EXPECT_GE(keepLetterUntil(issued), shortest);
}

TEST(Keeping, namesItsRule) {
    EXPECT_EQ(keepRuleOf(RecordKind::TightnessAndPurge), KeepRule::SixYears);
    EXPECT_EQ(keepRuleOf(RecordKind::Commissioning), KeepRule::FifteenYears);
    for (const auto rule : {KeepRule::SixYears, KeepRule::FifteenYears}) {
        EXPECT_EQ(keepRuleFromCode(keepRuleCode(rule)), rule);
    }
    EXPECT_EQ(keepRuleFromCode("for_ever"), std::nullopt);
}

TEST(Keeping, isFifteenYearsForWhatIsKeptWithAThingInUse) {
    for (const auto kind :
         {RecordKind::Commissioning, RecordKind::LargerPipework, RecordKind::RoomInvestigation}) {
        EXPECT_EQ(keepUntil(kind, day("2026-11-26")), day("2041-11-26"));
    }
}

}  // namespace
}  // namespace hearth::record
