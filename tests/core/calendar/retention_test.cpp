// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/retention.h"

#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace hearth::calendar {
namespace {

Date day(const char* iso) {
    return fromIso(iso).value();
}

constexpr auto kGreatBritain = CheckLaw::GreatBritain;

// SI 2018/139: until two further checks; HSE: at least two years.
TEST(KeepRecord, UntilTwoFurtherChecksAndTwoYears) {
    std::vector<Date> checks{day("2024-06-01")};
    const auto keep = [&] { return keepRecord(day("2024-06-01"), checks, {}, kGreatBritain); };
    EXPECT_EQ(keep(), (Keep{{}, KeepReason::AwaitsFurtherChecks}));
    checks.push_back(day("2025-05-20"));
    EXPECT_EQ(keep(), (Keep{{}, KeepReason::AwaitsFurtherChecks}));
    checks.push_back(day("2025-05-20"));
    EXPECT_FALSE(keep().until) << "a second check on one day is no further one";
    checks.push_back(day("2026-05-10"));
    EXPECT_EQ(keep(), (Keep{day("2026-06-01"), KeepReason::TwoYears})) << "two checks came sooner";
    checks.back() = day("2026-06-20");
    EXPECT_EQ(keep(), (Keep{day("2026-06-20"), KeepReason::FurtherChecks}));
}

TEST(KeepRecord, OfARemovedItemTwoYearsFromItsLastCheck) {
    const std::vector<Date> checks{day("2024-06-01"), day("2025-05-20")};
    EXPECT_EQ(keepRecord(day("2024-06-01"), checks, day("2025-10-01"), kGreatBritain),
              (Keep{day("2027-05-20"), KeepReason::ItemRemoved}));
}

// From memory: Northern Ireland has two years.
TEST(KeepRecord, InNorthernIrelandTwoYears) {
    EXPECT_EQ(keepRecord(day("2024-02-29"), {}, {}, CheckLaw::NorthernIreland),
              (Keep{day("2026-02-28"), KeepReason::TwoYears}));
}

TEST(KeepRecord, DoesNotDependOnTheOrder) {
    std::mt19937 random(17);
    std::uniform_int_distribution<int> apart(0, 2500);
    for (int i = 0; i < 3000; ++i) {
        std::vector<Date> checks;
        for (int k = 0; k < 6; ++k) {
            checks.push_back(addDays(day("2018-04-06"), apart(random)));
        }
        const auto check = checks.front();
        const auto before = keepRecord(check, checks, {}, kGreatBritain);
        std::shuffle(checks.begin(), checks.end(), random);
        EXPECT_EQ(keepRecord(check, checks, {}, kGreatBritain), before);
        if (before.until) {
            EXPECT_GE(*before.until, addMonths(check, 24));
            EXPECT_GE(std::count_if(checks.begin(), checks.end(),
                                    [&](Date one) { return one > check && one <= *before.until; }),
                      2);
        }
    }
}

TEST(Copies, ReachTheTenantInTime) {
    testing::Agreement agreement("Tenant's copy, 28 days from the actual check", "HSE, \"Record keeping\"",
                                 "days", 0.0);
    agreement.hold("15 Apr 2026", daysBetween(day("2026-05-13"), tenantCopyBy(day("2026-04-15"))), 0);
    EXPECT_EQ(recordCurrentUntil(day("2026-04-15")), day("2027-04-15"));
    EXPECT_EQ(copyBy(CopyWay::WithinDays, day("2026-04-15"), {}), day("2026-05-13"));
    EXPECT_EQ(copyBy(CopyWay::BeforeMovingIn, day("2026-04-15"), day("2026-06-01")), day("2026-06-01"));
    EXPECT_FALSE(copyBy(CopyWay::BeforeMovingIn, day("2026-04-15"), {}));
    EXPECT_FALSE(copyBy(CopyWay::MayDisplay, day("2026-04-15"), {}));
}

// HSE "Record keeping": 28 days is where a display will do.
TEST(Copies, MayBeDisplayedForShortStays) {
    EXPECT_EQ(copyWay({true, 28, true}), CopyWay::MayDisplay);
    EXPECT_EQ(copyWay({true, 29, true}), CopyWay::BeforeMovingIn);
    EXPECT_EQ(copyWay({false, 365, true}), CopyWay::WithinDays);
    EXPECT_EQ(copyWay({false, 365, false}), CopyWay::MayDisplayWithStatement);
    EXPECT_EQ(copyWay({false, {}, {}}), CopyWay::WithinDays) << "a copy in hand is always right";
    EXPECT_FALSE(copyWay({})) << "nothing is known";
}

}  // namespace
}  // namespace hearth::calendar
