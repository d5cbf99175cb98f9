// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/duties.h"

#include <gtest/gtest.h>
#include <set>
#include <string>

namespace hearth::calendar {
namespace {

Date dutyDay(const char* iso) {
    return fromIso(iso).value();
}

TEST(Duties, EachNamesARuleOrSaysThatThereIsNone) {
    for (const auto kind : kDutyKinds) {
        EXPECT_FALSE(sourceOf(kind).empty()) << static_cast<int>(kind);
    }
    EXPECT_NE(sourceOf(DutyKind::SafetyCheck).find("36(3)(a)"), std::string::npos);
    EXPECT_NE(sourceOf(DutyKind::FittingReport).find("11(2)"), std::string::npos);
    EXPECT_NE(sourceOf(DutyKind::Service).find("common practice"), std::string::npos);
}

TEST(Duties, EachHasACodeOfItsOwn) {
    std::set<std::string_view> codes;
    for (const auto kind : kDutyKinds) {
        codes.insert(codeOf(kind));
    }
    EXPECT_EQ(codes.size(), kDutyKinds.size());
    EXPECT_EQ(codeOf(DutyKind::OpenNotice), "open_notice");
    EXPECT_NE(sourceOf(DutyKind::OpenNotice).find("IGEM/G/11"), std::string::npos);
}

// Common practice, no source: yearly, unless the maker says otherwise.
TEST(ServiceDue, CountsFromTheLastServiceElseFromTheInstallation) {
    const Duty fromInstallation{DutyKind::Service, dutyDay("2026-03-10"), dutyDay("2025-03-10")};
    EXPECT_EQ(serviceDue({}, dutyDay("2025-03-10")), fromInstallation);
    const Duty fromService{DutyKind::Service, dutyDay("2027-02-28"), dutyDay("2026-02-28")};
    EXPECT_EQ(serviceDue(dutyDay("2026-02-28"), dutyDay("2025-03-10")), fromService);
    EXPECT_EQ(serviceDue(dutyDay("2026-02-28"), {}, 24)->by, dutyDay("2028-02-28"));
    EXPECT_FALSE(serviceDue({}, {}));
}

// HSE "Record keeping": 28 days; before occupation; prominently displayed for a stay of 28 days or less.
TEST(CopyDue, FollowsTheOccupation) {
    const Occupation existing{false, 365, true};
    const Duty copy{DutyKind::TenantCopy, dutyDay("2026-05-13"), dutyDay("2026-04-15")};
    EXPECT_EQ(copyDue(existing, dutyDay("2026-04-15"), {}), copy);
    const Occupation newTenant{true, 365, true};
    const auto before = copyDue(newTenant, dutyDay("2026-04-15"), dutyDay("2026-06-20"));
    ASSERT_TRUE(before);
    EXPECT_EQ(before->kind, DutyKind::CopyBeforeMovingIn);
    EXPECT_EQ(before->by, dutyDay("2026-06-20"));
    EXPECT_EQ(before->from, dutyDay("2026-06-20"));
    EXPECT_FALSE(copyDue(newTenant, dutyDay("2026-04-15"), {}));  // nobody knows when they come
    const Occupation shortStay{false, 14, true};
    EXPECT_EQ(copyDue(shortStay, dutyDay("2026-04-15"), {})->kind, DutyKind::Display);
    // A landlord guild's page on display: no relevant appliance in any room that the tenant occupies.
    const Occupation noneInRooms{false, 365, false};
    const auto hangs = copyDue(noneInRooms, dutyDay("2026-04-15"), {});
    EXPECT_EQ(hangs->kind, DutyKind::DisplayWithStatement);
    // Regulation 36(7), from memory: from when a copy would have been due. By hand: 28 days.
    EXPECT_EQ(hangs->by, dutyDay("2026-05-13"));
    EXPECT_EQ(hangs->from, dutyDay("2026-04-15"));
    const Occupation toCome{true, 365, false};
    EXPECT_EQ(copyDue(toCome, dutyDay("2026-04-15"), dutyDay("2026-04-20"))->by, dutyDay("2026-04-20"));
    EXPECT_FALSE(copyDue(toCome, dutyDay("2026-04-15"), {})) << "the day of moving in is not known";
    EXPECT_FALSE(copyDue({{}, {}, false}, dutyDay("2026-04-15"), {})) << "nor whether they live there yet";
    EXPECT_FALSE(copyDue({}, dutyDay("2026-04-15"), {}));
}

// Building Regulations 2010, regulations 20 and 40; RIDDOR 2013, regulation 11(2).
TEST(NoticesDue, AreDutiesWithTheDayThatTheyCountFrom) {
    const Date done = dutyDay("2026-01-30");
    const Duty notice{DutyKind::BuildingNotice, dutyDay("2026-03-01"), done};
    EXPECT_EQ(noticeDue(done, Nation::Wales), notice);
    EXPECT_FALSE(noticeDue(done, Nation::Scotland));
    const Duty information{DutyKind::OperatingInformation, dutyDay("2026-02-04"), done};
    EXPECT_EQ(informationDue(done, Nation::England), information);
    EXPECT_FALSE(informationDue(done, Nation::NorthernIreland));
    const Duty report{DutyKind::FittingReport, dutyDay("2026-02-13"), done};
    EXPECT_EQ(reportDue(done, Nation::Scotland), report);
    EXPECT_FALSE(reportDue(done, Nation::NorthernIreland));
}

}  // namespace
}  // namespace hearth::calendar
