// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/deadlines.h"

#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <string>

namespace hearth::calendar {
namespace {

constexpr auto kBritain = CheckLaw::GreatBritain;
constexpr auto kIreland = CheckLaw::NorthernIreland;

Date on(const char* iso) {
    return fromIso(iso).value();
}

struct WindowCase {
    const char* deadline;
    const char* earliest;
    const char* strict;
    const char* certain;
};

// Regulation 36A(1): two months ending with the deadline. The strict days 2 April and 1 July are the worked
// examples of the notes on the law; guidance's day is one before. 6 February for 6 April: a law firm's
// article of 2018.
TEST(CheckWindow, OpensTwoMonthsBeforeTheDeadline) {
    const WindowCase cases[] = {
        {"2026-06-01", "2026-04-01", "2026-04-02", "2026-04-02"},
        {"2026-08-31", "2026-06-30", "2026-07-01", "2026-07-01"},
        {"2019-04-06", "2019-02-06", "2019-02-07", "2019-02-07"},
        {"2027-02-28", "2026-12-28", "2026-12-29",
         "2027-01-01"},  // short month end: three doubtful days more
        {"2028-02-29", "2027-12-29", "2027-12-30", "2028-01-01"},
        {"2028-02-28", "2027-12-28", "2027-12-29", "2027-12-29"},  // not the month's end in a leap year
        {"2026-09-30", "2026-07-30", "2026-07-31", "2026-08-01"},
        {"2026-04-30", "2026-02-28", "2026-03-01", "2026-03-01"},
    };
    for (const auto& c : cases) {
        const auto window = checkWindow(on(c.deadline), kBritain);
        ASSERT_TRUE(window);
        EXPECT_EQ(isoText(window->earliest), c.earliest) << c.deadline;
        EXPECT_EQ(isoText(window->strict), c.strict) << c.deadline;
        EXPECT_EQ(isoText(window->certain), c.certain) << c.deadline;
        EXPECT_EQ(window->deadline, on(c.deadline));
    }
    EXPECT_FALSE(checkWindow(on("2026-06-01"), kIreland));
}

TEST(CheckTiming, OfEachDay) {
    const auto deadline = on("2027-02-28");
    EXPECT_EQ(checkTiming(deadline, on("2026-12-27"), kBritain), CheckTiming::BeforeWindow);
    EXPECT_EQ(checkTiming(deadline, on("2026-12-28"), kBritain), CheckTiming::Boundary);
    EXPECT_EQ(checkTiming(deadline, on("2026-12-31"), kBritain), CheckTiming::Boundary);
    EXPECT_EQ(checkTiming(deadline, on("2027-01-01"), kBritain), CheckTiming::InWindow);
    EXPECT_EQ(checkTiming(deadline, deadline, kBritain), CheckTiming::InWindow);
    EXPECT_EQ(checkTiming(deadline, on("2027-03-01"), kBritain), CheckTiming::Late);
    EXPECT_EQ(checkTiming(deadline, on("2027-01-15"), kIreland), CheckTiming::InTime);
    EXPECT_EQ(checkTiming(deadline, on("2027-03-01"), kIreland), CheckTiming::Late);
}

struct AfterCase {
    const char* name;
    const char* deadline;
    const char* check;
    const char* next;
    DeadlineReason reason;
};

constexpr AfterCase kWorked[] = {
    {"in the window", "2026-06-01", "2026-04-15", "2027-06-01", DeadlineReason::CheckedInWindow},
    {"early", "2026-06-01", "2026-03-20", "2027-03-20", DeadlineReason::CheckedEarly},
    {"nine days late", "2026-06-01", "2026-06-10", "2027-06-10", DeadlineReason::CheckedLate},
    {"month's end", "2026-08-31", "2026-07-01", "2027-08-31", DeadlineReason::CheckedInWindow},
};

TEST(DeadlineAfter, FollowsTheWorkedExamples) {
    testing::Agreement agreement("Next deadline after a check, worked examples",
                                 "worked from regulation 36A(1) and (4), SI 2018/139", "days", 0.0);
    for (const auto& c : kWorked) {
        const auto next = deadlineAfter(on(c.deadline), on(c.check), kBritain);
        agreement.hold(c.name, daysBetween(on(c.next), next.date), 0);
        EXPECT_EQ(next.reason, c.reason) << c.name;
        EXPECT_EQ(next.base, on(c.check)) << c.name;
        EXPECT_EQ(next.before, on(c.deadline)) << c.name;
        EXPECT_FALSE(next.isUndecided()) << c.name;
    }
}

// Checked on 10 February 2018, again on 5 January 2019: due 10 February 2020.
TEST(DeadlineAfter, FollowsThePublishedExample) {
    testing::Agreement agreement("Next deadline after a check in the window, published example",
                                 "\"The Changes to Gas Safety Rules You Need to Know About\"", "days", 0.0);
    const CheckedItem item{{}, {}, {on("2018-02-10"), on("2019-01-05")}, {}, {}, kBritain};
    const auto next = deadlineOf(item);
    ASSERT_TRUE(next);
    agreement.hold("10 Feb 2018, 5 Jan 2019", daysBetween(on("2020-02-10"), next->date), 0);
    EXPECT_EQ(next->before, on("2019-02-10"));
}

TEST(DeadlineAfter, GivesBothDatesAtTheWindowsEdge) {
    const auto next = deadlineAfter(on("2026-06-01"), on("2026-04-01"), kBritain);
    EXPECT_EQ(next.reason, DeadlineReason::CheckedAtWindowsEdge);
    EXPECT_EQ(next.date, on("2027-04-01"));
    EXPECT_EQ(next.latest, on("2027-06-01"));
}

// From memory: Northern Ireland has no regulation 36A.
TEST(DeadlineAfter, InNorthernIrelandCountsFromTheCheck) {
    const auto next = deadlineAfter(on("2026-06-01"), on("2026-05-20"), kIreland);
    EXPECT_EQ(next.date, on("2027-05-20"));
    EXPECT_EQ(next.reason, DeadlineReason::CheckedInTime);
}

TEST(FirstDeadline, IsTheLaterOfInstallationAndLease) {
    EXPECT_EQ(firstDeadline(on("2025-06-01"), {})->date, on("2026-06-01"));
    EXPECT_EQ(firstDeadline(on("2024-02-29"), {})->date, on("2025-02-28")) << "no such day: the month's last";
    EXPECT_EQ(firstDeadline(on("2025-06-01"), on("2025-09-01"))->reason, DeadlineReason::Installed);
    const auto lease = firstDeadline(on("2020-06-01"), on("2026-09-01"));
    EXPECT_EQ(lease->date, on("2026-09-01"));
    EXPECT_EQ(lease->reason, DeadlineReason::LeaseBegins);
    EXPECT_FALSE(firstDeadline({}, {}));
}

TEST(ExtendedFirstDeadline, ComesWithTheOthersOnce) {
    testing::Agreement agreement("One extension of a new appliance's first check",
                                 "HSE, \"Gas safety checks - what if...?\" (14 months at most)", "days", 0.0);
    const auto extended = extendedFirstDeadline(on("2026-03-10"), on("2027-06-01"), kBritain);
    ASSERT_TRUE(extended);
    agreement.hold("installed 10 Mar 2026", daysBetween(on("2027-05-10"), extended->date), 0);
    EXPECT_EQ(extended->before, on("2027-03-10"));
    EXPECT_EQ(extendedFirstDeadline(on("2026-03-10"), on("2027-04-20"), kBritain)->date, on("2027-04-20"))
        << "not beyond the others' own deadline";
    EXPECT_FALSE(extendedFirstDeadline(on("2026-03-10"), on("2027-03-01"), kBritain)) << "due before it";
    EXPECT_FALSE(extendedFirstDeadline(on("2026-03-10"), on("2027-08-01"), kBritain)) << "too late to meet";
    EXPECT_FALSE(extendedFirstDeadline(on("2026-03-10"), on("2027-06-01"), kIreland));
}

TEST(DeadlineAfterExtension, IsNotGuessed) {
    const auto next = deadlineAfterExtension(on("2026-03-10"), on("2027-04-15"), on("2027-06-01"));
    EXPECT_EQ(next.reason, DeadlineReason::CheckedExtended);
    EXPECT_EQ(next.date, on("2028-03-10"));
    EXPECT_EQ(next.latest, on("2028-06-01"));
}

TEST(DeadlineOf, UsesTheExtensionOnlyForTheFirstCheck) {
    CheckedItem item{on("2026-03-10"), {}, {}, on("2027-06-01"), {}, kBritain};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::Extended);
    EXPECT_EQ(deadlineOf(item)->date, on("2027-05-10"));
    item.checks = {on("2027-04-15")};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::CheckedExtended);
    item.checks = {on("2027-05-11")};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::CheckedLate);
    EXPECT_EQ(deadlineOf(item)->date, on("2028-05-11"));
    item.checks = {on("2027-02-01")};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::CheckedInWindow) << "in time without it";
    EXPECT_EQ(deadlineOf(item)->date, on("2028-03-10"));
    item.checks = {on("2027-02-01"), on("2028-04-10")};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::CheckedLate) << "no second extension";
}

TEST(DeadlineOf, FollowsBothReadingsOfABoundaryUntilTheyMeet) {
    CheckedItem item{{}, {}, {on("2025-06-01"), on("2026-04-01")}, {}, {}, kBritain};
    EXPECT_EQ(deadlineOf(item)->date, on("2027-04-01"));
    EXPECT_EQ(deadlineOf(item)->latest, on("2027-06-01"));
    // In the window of the first, late for it by the other reading: still two dates.
    item.checks.push_back(on("2027-04-20"));
    EXPECT_EQ(deadlineOf(item)->date, on("2028-04-20"));
    EXPECT_EQ(deadlineOf(item)->latest, on("2028-06-01"));
    // Early for both: one date again.
    item.checks.push_back(on("2028-01-10"));
    EXPECT_EQ(deadlineOf(item)->date, on("2029-01-10"));
    EXPECT_FALSE(deadlineOf(item)->isUndecided());
}

TEST(DeadlineOf, BeforeALeaseIsUndecidedAndAGoneItemHasNone) {
    CheckedItem item{on("2015-01-01"), on("2026-09-01"), {on("2026-08-10")}, {}, {}, kBritain};
    EXPECT_EQ(deadlineOf(item)->reason, DeadlineReason::CheckedBeforeLease);
    EXPECT_EQ(deadlineOf(item)->date, on("2027-08-10"));
    EXPECT_EQ(deadlineOf(item)->latest, on("2027-09-01"));
    item.removed = on("2026-10-01");
    EXPECT_FALSE(deadlineOf(item));
    EXPECT_FALSE(deadlineOf({}));
    const CheckedItem first{{}, {}, {on("2026-01-05")}, {}, {}, kBritain};
    EXPECT_EQ(deadlineOf(first)->reason, DeadlineReason::FirstKnownCheck);
}

// The leap day's anniversary stays on 28 February once it is there; no source confirms it.
TEST(DeadlineOf, LeapDayFallsBackAndStays) {
    CheckedItem item{on("2024-02-29"), {}, {on("2025-02-20"), on("2026-02-20"), on("2027-02-20")}, {}, {},
                     kBritain};
    EXPECT_EQ(deadlineOf(item)->date, on("2028-02-28"));
}

/// A history of checks none of which is late, and each deadline on its way.
struct Walk {
    std::vector<Date> checks;
    std::vector<Deadline> deadlines;
};

Walk walkInTime(std::mt19937& random) {
    Walk walk;
    std::uniform_int_distribution<int> start(0, 5000);
    std::uniform_int_distribution<int> early(0, 200);
    Date check = addDays(on("2018-04-06"), start(random));
    Deadline deadline{addMonths(check, 12), DeadlineReason::FirstKnownCheck, check, {}, {}};
    for (int i = 0; i < 12; ++i) {
        walk.checks.push_back(check);
        walk.deadlines.push_back(deadline);
        check = addDays(deadline.date, -early(random));
        deadline = deadlineAfter(deadline.date, check, kBritain);
    }
    return walk;
}

TEST(DeadlineLaws, ChecksInTimeAreNeverMoreThanFourteenMonthsApart) {
    std::mt19937 random(7);
    for (int i = 0; i < 2000; ++i) {
        const auto walk = walkInTime(random);
        for (std::size_t k = 1; k < walk.checks.size(); ++k) {
            EXPECT_LE(walk.checks[k], addMonths(walk.checks[k - 1], 14)) << isoText(walk.checks[k - 1]);
        }
    }
}

TEST(DeadlineLaws, TheWindowKeepsTheAnniversaryAndAResetCountsFromTheCheck) {
    std::mt19937 random(11);
    std::uniform_int_distribution<int> day(0, 4000);
    std::uniform_int_distribution<int> apart(-40, 400);
    for (int i = 0; i < 20000; ++i) {
        const auto deadline = addDays(on("2019-01-01"), day(random));
        const auto check = addDays(deadline, -apart(random));
        const auto next = deadlineAfter(deadline, check, kBritain);
        switch (checkTiming(deadline, check, kBritain)) {
            case CheckTiming::InWindow:
                EXPECT_EQ(next.date, addMonths(deadline, 12));
                break;
            case CheckTiming::BeforeWindow:
            case CheckTiming::Late:
                EXPECT_EQ(next.date, addMonths(check, 12));
                EXPECT_FALSE(next.isUndecided());
                break;
            case CheckTiming::Boundary:
                EXPECT_EQ(next.date, addMonths(check, 12));
                EXPECT_EQ(next.latest, addMonths(deadline, 12));
                break;
            case CheckTiming::InTime:
                FAIL() << "there is a window in Great Britain";
        }
    }
}

TEST(DeadlineLaws, TheOrderOfTypingDoesNotMatter) {
    std::mt19937 random(13);
    for (int i = 0; i < 500; ++i) {
        CheckedItem item{{}, {}, walkInTime(random).checks, {}, {}, kBritain};
        const auto inOrder = deadlineOf(item);
        std::shuffle(item.checks.begin(), item.checks.end(), random);
        EXPECT_EQ(deadlineOf(item), inOrder);
    }
}

}  // namespace
}  // namespace hearth::calendar
