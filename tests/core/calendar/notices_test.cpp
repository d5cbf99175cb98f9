// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"

#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::calendar {
namespace {

Date noticeDay(const char* iso) {
    return fromIso(iso).value();
}

TEST(Notices, CountFromCompletionAndFromKnowing) {
    testing::Agreement agreement("Building notice 30 days, operating information 5, dangerous fitting 14",
                                 "Building Regulations 2010 regs 20 and 40; RIDDOR 2013 reg 11(2)", "days",
                                 0.0);
    const auto completed = noticeDay("2026-11-25");
    const auto off = [](const char* theirs, std::optional<Date> ours) {
        return daysBetween(noticeDay(theirs), ours.value());
    };
    agreement.hold("notice", off("2026-12-25", buildingNoticeBy(completed, Nation::England)), 0);
    agreement.hold("information", off("2026-11-30", operatingInformationBy(completed, Nation::Wales)), 0);
    agreement.hold("report",
                   off("2026-12-04", dangerousFittingReportBy(noticeDay("2026-11-20"), Nation::Scotland)), 0);
}

// From memory: Scotland has building warrants, Northern Ireland its own regulations.
TEST(Notices, AreOnlyGivenWhereTheLawIsKnown) {
    const auto completed = noticeDay("2026-11-25");
    for (const auto nation : {Nation::Scotland, Nation::NorthernIreland}) {
        EXPECT_FALSE(buildingNoticeBy(completed, nation));
        EXPECT_FALSE(operatingInformationBy(completed, nation));
    }
    EXPECT_FALSE(dangerousFittingReportBy(completed, Nation::NorthernIreland));
    EXPECT_TRUE(dangerousFittingReportBy(completed, Nation::Wales));
}

TEST(Expiries, RunFromTheirDates) {
    EXPECT_EQ(calibrationDue(noticeDay("2025-11-30")), noticeDay("2026-11-30"));
    EXPECT_EQ(calibrationDue(noticeDay("2025-11-30"), 6), noticeDay("2026-05-30"));
    EXPECT_EQ(registrationEnds(noticeDay("2026-04-01")), noticeDay("2027-04-01"));
    EXPECT_EQ(competenceEnds(noticeDay("2024-02-29")), noticeDay("2029-02-28"));
    const auto due = noticeDay("2026-11-30");
    EXPECT_EQ(expiryOn(due, noticeDay("2026-10-30")), Expiry::Valid);
    EXPECT_EQ(expiryOn(due, noticeDay("2026-10-31")), Expiry::Soon);
    EXPECT_EQ(expiryOn(due, due), Expiry::Soon) << "on the day itself it still holds";
    EXPECT_EQ(expiryOn(due, noticeDay("2026-12-01")), Expiry::Expired);
}

}  // namespace
}  // namespace hearth::calendar
