// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/due_state.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <set>

namespace hearth::calendar {
namespace {

Date dueDay(const char* iso) {
    return fromIso(iso).value();
}

TEST(DueStates, HaveCodesThatComeBack) {
    std::set<std::string_view> codes;
    for (const auto state : kDueStates) {
        codes.insert(codeOf(state));
        EXPECT_EQ(dueStateFromCode(codeOf(state)), state);
    }
    EXPECT_EQ(codes.size(), kDueStates.size());
    EXPECT_FALSE(dueStateFromCode("soon"));
    EXPECT_FALSE(dueStateFromCode(""));
}

// The deadline of the worked example, 1 June 2026: its window's first safe day is 2 April.
TEST(OpensOn, IsTheFirstDayThatCountsByEveryReading) {
    EXPECT_EQ(opensOn(dueDay("2026-06-01"), CheckDuty::Let, CheckLaw::GreatBritain), dueDay("2026-04-02"));
    EXPECT_EQ(opensOn(dueDay("2027-02-28"), CheckDuty::Let, CheckLaw::GreatBritain), dueDay("2027-01-01"));
    EXPECT_EQ(opensOn(dueDay("2026-06-01"), CheckDuty::Let, CheckLaw::NorthernIreland), dueDay("2026-04-01"));
    EXPECT_EQ(opensOn(dueDay("2026-06-01"), CheckDuty::OwnInterval, CheckLaw::GreatBritain),
              dueDay("2026-04-01"));
}

struct StateCase {
    const char* today;
    const char* booked;  // null: nothing
    DueState state;
};

// Common practice, no source: the order of the work list; the window of the worked example.
TEST(DueStateOn, EachDayOfTheRound) {
    const StateCase cases[] = {
        {"2026-02-01", nullptr, DueState::Later},
        {"2026-03-02", nullptr, DueState::Later},  // 31 days before it opens
        {"2026-03-03", nullptr, DueState::OpeningSoon},
        {"2026-04-01", nullptr, DueState::OpeningSoon},
        {"2026-04-02", nullptr, DueState::WindowOpen},
        {"2026-05-17", nullptr, DueState::WindowOpen},
        {"2026-05-18", nullptr, DueState::LastTwoWeeks},
        {"2026-06-01", nullptr, DueState::LastTwoWeeks},  // on the day itself it is in time
        {"2026-06-02", nullptr, DueState::Overdue},
        {"2026-02-01", "2026-04-20", DueState::Booked},
        {"2026-05-20", "2026-06-01", DueState::Booked},
        {"2026-05-20", "2026-06-02", DueState::LastTwoWeeks},  // booked too late: settles nothing
        {"2026-06-02", "2026-06-05", DueState::Overdue},
    };
    for (const auto& c : cases) {
        DueDates dates{CheckDuty::Let, dueDay("2026-06-01"), dueDay("2026-04-02"), {}};
        if (c.booked != nullptr) {
            dates.booked = dueDay(c.booked);
        }
        EXPECT_EQ(dueState(dates, dueDay(c.today)), c.state) << c.today;
    }
}

TEST(DueStateOn, WithoutADeadlineOrADuty) {
    EXPECT_EQ(dueState({CheckDuty::Let, {}, {}, dueDay("2026-06-01")}, dueDay("2026-05-01")),
              DueState::NotKnown);
    EXPECT_EQ(dueState({CheckDuty::NotKnown, {}, {}, {}}, dueDay("2026-05-01")), DueState::NotKnown);
    EXPECT_EQ(dueState({CheckDuty::None, dueDay("2020-01-01"), {}, {}}, dueDay("2026-05-01")),
              DueState::NoDuty);
}

TEST(DueStateOn, OnlyMovesOnAsDaysPass) {
    std::mt19937 random(3);
    std::uniform_int_distribution<int> day(0, 4000);
    for (int i = 0; i < 300; ++i) {
        const Date deadline = addDays(dueDay("2020-01-01"), day(random));
        const DueDates dates{
            CheckDuty::Let, deadline, opensOn(deadline, CheckDuty::Let, CheckLaw::GreatBritain), {}};
        auto before = DueState::Later;
        for (int left = 150; left >= -3; --left) {
            const auto state = dueState(dates, addDays(deadline, -left));
            EXPECT_LE(static_cast<int>(state), static_cast<int>(before)) << isoText(deadline) << left;
            before = state;
        }
        EXPECT_EQ(before, DueState::Overdue);
    }
}

TEST(FirstDue, IsTheEarliestAndOfTwoTheFirst) {
    const auto at = [](const char* iso) {
        return std::optional(Deadline{dueDay(iso), DeadlineReason::Installed, dueDay(iso), {}, {}});
    };
    const std::optional<Deadline> none;
    EXPECT_FALSE(firstDue({}));
    EXPECT_FALSE(firstDue(std::vector{none, none}));
    EXPECT_EQ(firstDue(std::vector{none, at("2026-06-01"), at("2026-05-01"), at("2026-05-01")}), 2U);
}

// Regulation 35 sets no interval: the firm's own, counted from each actual check, whenever it was.
TEST(OwnDeadline, CountsFromTheLastCheckWithoutAWindow) {
    const std::vector checks{dueDay("2026-03-10"), dueDay("2025-04-01")};
    const auto deadline = ownDeadline(checks, 12);
    ASSERT_TRUE(deadline);
    EXPECT_EQ(deadline->date, dueDay("2027-03-10"));
    EXPECT_EQ(deadline->base, dueDay("2026-03-10"));
    EXPECT_EQ(deadline->reason, DeadlineReason::OwnInterval);
    EXPECT_EQ(ownDeadline(checks, 6)->date, dueDay("2026-09-10"));
    EXPECT_FALSE(ownDeadline({}, 12));
    EXPECT_FALSE(ownDeadline(checks, 0));
}

// The worked examples of the notes on the law, asked before the check is made.
TEST(IfChecked, SaysWhatTheCheckWouldDo) {
    const CheckedItem item{{}, {}, {dueDay("2025-06-01")}, {}, {}, CheckLaw::GreatBritain};
    const auto kept = ifChecked(item, dueDay("2026-04-15"));
    ASSERT_TRUE(kept && kept->now);
    EXPECT_EQ(kept->now->date, dueDay("2026-06-01"));
    EXPECT_EQ(kept->timing, CheckTiming::InWindow);
    EXPECT_EQ(kept->next.date, dueDay("2027-06-01"));
    const auto early = ifChecked(item, dueDay("2026-03-20"));
    EXPECT_EQ(early->timing, CheckTiming::BeforeWindow);
    EXPECT_EQ(early->next.date, dueDay("2027-03-20"));
    const auto late = ifChecked(item, dueDay("2026-06-10"));
    EXPECT_EQ(late->timing, CheckTiming::Late);
    EXPECT_EQ(late->next.date, dueDay("2027-06-10"));
    const auto edge = ifChecked(item, dueDay("2026-04-01"));
    EXPECT_EQ(edge->timing, CheckTiming::Boundary);
    EXPECT_EQ(edge->next.date, dueDay("2027-04-01"));
    EXPECT_EQ(edge->next.latest, dueDay("2027-06-01"));
    const auto first = ifChecked({}, dueDay("2026-04-15"));
    ASSERT_TRUE(first);
    EXPECT_FALSE(first->now);
    EXPECT_FALSE(first->timing);
    EXPECT_EQ(first->next.date, dueDay("2027-04-15"));
    EXPECT_FALSE(ifChecked({{}, {}, {}, {}, dueDay("2026-01-01"), {}}, dueDay("2026-04-15")));
}

TEST(IfChecked, IsWhatTheCheckDoesOnceItIsMade) {
    std::mt19937 random(5);
    std::uniform_int_distribution<int> day(0, 800);
    for (int i = 0; i < 2000; ++i) {
        CheckedItem item{{}, {}, {}, {}, {}, CheckLaw::GreatBritain};
        Date at = dueDay("2019-01-01");
        for (int k = 0; k < 3; ++k) {
            at = addDays(at, 1 + day(random) / 2);
            item.checks.push_back(at);
        }
        const Date check = addDays(at, 1 + day(random));
        const auto asked = ifChecked(item, check);
        item.checks.push_back(check);
        EXPECT_EQ(asked->next, *deadlineOf(item));
    }
}

// HSE's answer on tenants who prevent access: three attempts are looked for, and never end the duty.
TEST(NextStepAt, GoesOnTryingHoweverOftenNobodyOpened) {
    EXPECT_EQ(nextStep(DueState::WindowOpen, 0, false), NextStep::Book);
    EXPECT_EQ(nextStep(DueState::LastTwoWeeks, 0, false), NextStep::BookNow);
    EXPECT_EQ(nextStep(DueState::Overdue, 0, false), NextStep::BookNow);
    EXPECT_EQ(nextStep(DueState::Booked, 2, false), NextStep::Attend);
    EXPECT_EQ(nextStep(DueState::OpeningSoon, 0, false), NextStep::Prepare);
    EXPECT_EQ(nextStep(DueState::NotKnown, 0, false), NextStep::AskLastCheck);
    EXPECT_EQ(nextStep(DueState::Later, 0, false), NextStep::Nothing);
    EXPECT_EQ(nextStep(DueState::NoDuty, 5, false), NextStep::Nothing);
    for (const auto state : {DueState::WindowOpen, DueState::LastTwoWeeks, DueState::Overdue}) {
        EXPECT_EQ(nextStep(state, 1, false), NextStep::TryAgain);
        EXPECT_EQ(nextStep(state, kAttemptsLookedFor - 1, false), NextStep::TryAgain);
        EXPECT_EQ(nextStep(state, kAttemptsLookedFor, false), NextStep::TryAgainAndRecord);
        EXPECT_EQ(nextStep(state, 20, false), NextStep::TryAgainAndRecord);
        // A day that was agreed is kept, late or after attempts in vain: nobody is rung again for another.
        EXPECT_EQ(nextStep(state, 0, true), NextStep::Attend);
        EXPECT_EQ(nextStep(state, 3, true), NextStep::Attend);
    }
}

}  // namespace
}  // namespace hearth::calendar
