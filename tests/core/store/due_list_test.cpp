// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/due_fixture.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>

namespace hearth::store {
namespace {

using calendar::DueState;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// A list with one premises in each state, on 25 November 2026.
class DueList : public DueTest {
  protected:
    void SetUp() override {
        DueTest::SetUp();
        valueOf(store->save(reg::CheckPlan{{}, sample.premises.id, calendar::CheckDuty::None, 0, {}}));
        later = letFlat("1 later", "QB2 2BB");
        checkedBefore(later, day(2026, 11, 1));
        overdue = letFlat("2 overdue");
        checkedBefore(overdue, day(2025, 11, 24));
        near = letFlat("3 near");
        checkedBefore(near, day(2025, 12, 9));
        open = letFlat("4 open");
        checkedBefore(open, day(2026, 1, 20));
        booked = letFlat("5 booked");
        checkedBefore(booked, day(2025, 12, 20));
        static_cast<void>(bookedOn(booked, day(2026, 12, 1)));
        soon = letFlat("6 soon");
        checkedBefore(soon, day(2026, 2, 15));
        unknown = letFlat("7 unknown");
    }
    LetFlat later;
    LetFlat overdue;
    LetFlat near;
    LetFlat open;
    LetFlat booked;
    LetFlat soon;
    LetFlat unknown;
};

TEST_F(DueList, comesInTheOrderOfWhatNeedsDoingNext) {
    EXPECT_THAT(listed(),
                ElementsAre("2 overdue", "3 near", "4 open", "5 booked", "6 soon", "1 later", "7 unknown"));
    expectDerived();
}

TEST_F(DueList, countsEachState) {
    const auto counts = valueOf(store->dueCounts({}, today));
    for (const auto state : calendar::kDueStates) {
        EXPECT_EQ(counts.at(state), 1) << calendar::codeOf(state);
    }
}

TEST_F(DueList, isSortedAsAsked) {
    EXPECT_THAT(listed({}, DueSort::Address),
                ElementsAre("1 later", "2 overdue", "3 near", "4 open", "5 booked", "6 soon", "7 unknown"));
    EXPECT_THAT(listed({}, DueSort::Deadline),
                ElementsAre("2 overdue", "3 near", "5 booked", "4 open", "6 soon", "1 later", "7 unknown"));
    EXPECT_EQ(listed({}, DueSort::Postcode).back(), "1 later");
    EXPECT_THAT(listed({}, DueSort::LastCheck),
                ElementsAre("7 unknown", "2 overdue", "3 near", "5 booked", "4 open", "6 soon", "1 later"));
    EXPECT_EQ(listed({}, DueSort::Landlord).size(), 7U);
}

TEST_F(DueList, narrowsByEachFilter) {
    DueFilter filter;
    filter.states = {DueState::Booked, DueState::Overdue};
    EXPECT_THAT(listed(filter), ElementsAre("2 overdue", "5 booked"));
    EXPECT_THAT(listed(filter, DueSort::Address), ElementsAre("2 overdue", "5 booked"));
    filter = {};
    filter.states = {DueState::NoDuty};
    EXPECT_EQ(listed(filter).size(), 1U);
    filter = {};
    filter.outward = "QB2";
    EXPECT_THAT(listed(filter), ElementsAre("1 later"));
    filter = {};
    filter.engineer = sample.engineer.id;
    EXPECT_THAT(listed(filter), ElementsAre("5 booked"));
    filter = {};
    filter.text = "ope";
    EXPECT_THAT(listed(filter), ElementsAre("4 open"));
    filter = {};
    filter.landlord = landlord.id;
    EXPECT_EQ(listed(filter).size(), 7U);
    filter.landlord = sample.customer.id;
    EXPECT_THAT(listed(filter), IsEmpty());
    filter = {};
    filter.agent = landlord.id;
    EXPECT_THAT(listed(filter), IsEmpty());
}

TEST_F(DueList, comesInPagesWithoutALapOrAHole) {
    for (const auto sort : {DueSort::Need, DueSort::Deadline, DueSort::Address, DueSort::Postcode,
                            DueSort::Landlord, DueSort::LastCheck}) {
        const auto all = listed({}, sort);
        for (int size = 1; size <= 3; ++size) {
            std::vector<std::string> paged;
            for (int first = 0; first < 9; first += size) {
                for (const auto& line : valueOf(store->duePage({}, sort, today, first, size))) {
                    paged.push_back(line.address.line1);
                }
            }
            EXPECT_EQ(paged, all);
        }
    }
}

TEST_F(DueList, isTheSameFromEitherEnd) {
    DueFilter everything;
    everything.states.assign(calendar::kDueStates.begin(), calendar::kDueStates.end());
    DueFilter word;
    word.text = "o";
    for (int i = 0; i < 5; ++i) {  // sections of more than one, of like deadlines
        checkedBefore(letFlat("8 overdue " + std::to_string(i)), day(2025, 11, 20));
    }
    for (const auto& filter : {DueFilter{}, everything, word}) {
        const auto counts = valueOf(store->dueCounts(filter, today));
        for (const auto sort : {DueSort::Need, DueSort::Deadline, DueSort::Address, DueSort::Postcode,
                                DueSort::Landlord, DueSort::LastCheck}) {
            const auto all = valueOf(store->duePage(filter, sort, today, 0, 100));
            for (int size = 1; size <= 4; ++size) {
                std::vector<reg::PremisesId> paged;
                std::vector<reg::PremisesId> expected;
                for (int first = 0; first < static_cast<int>(all.size()) + 2; first += size) {
                    for (const auto& line :
                         valueOf(store->duePage(filter, sort, today, first, size, counts))) {
                        paged.push_back(line.premises);
                    }
                }
                for (const auto& line : all) {
                    expected.push_back(line.premises);
                }
                EXPECT_EQ(paged, expected);
            }
        }
    }
}

TEST_F(DueList, countsTheOverdueThatAreBooked) {
    DueFilter word;
    word.text = "overdue";
    EXPECT_EQ(valueOf(store->dueCounts({}, today)).overdueBooked, 0);
    static_cast<void>(bookedOn(overdue, day(2026, 11, 27)));
    EXPECT_EQ(valueOf(store->dueCounts({}, today)).overdueBooked, 1);
    EXPECT_EQ(valueOf(store->dueCounts(word, today)).overdueBooked, 1);
    EXPECT_EQ(valueOf(store->dueCounts({}, today)).at(DueState::Booked), 1) << "that is another";
    EXPECT_EQ(valueOf(store->dueCounts({}, day(2026, 11, 28))).overdueBooked, 0) << "the day is past";
}

TEST_F(DueList, aBookingThatNobodyEndedDoesNotHideTheNext) {
    const auto flat = letFlat("8 booked twice");
    checkedBefore(flat, day(2025, 12, 20));
    static_cast<void>(bookedOn(flat, day(2026, 11, 26)));
    clock.advance(std::chrono::hours(24));
    static_cast<void>(bookedOn(flat, day(2027, 1, 8)));
    EXPECT_EQ(lineOf(flat).booking->date, day(2026, 11, 26)) << "its day is not past";
    clock.advance(std::chrono::hours(24));
    const auto last = bookedOn(flat, day(2027, 1, 9));
    EXPECT_EQ(lineOf(flat).booking->date, day(2027, 1, 9)) << "late, yet the only one that is to come";
    expectDerived();
    ASSERT_TRUE(store->cancelBooking(last, "rang off"));
    EXPECT_EQ(lineOf(flat).booking->date, day(2026, 11, 26)) << "nobody has booked since its day";
}

TEST_F(DueList, offersWhatCanBeFilteredBy) {
    const auto choices = [&](DueBy by) { return valueOf(store->dueChoices(by, today)); };
    const auto landlords = choices(DueBy::Landlord);
    ASSERT_EQ(landlords.size(), 1U);
    EXPECT_EQ(landlords.front().name, "Orla Quill");
    EXPECT_EQ(landlords.front().premises, 7);
    const auto engineers = choices(DueBy::Engineer);
    ASSERT_EQ(engineers.size(), 1U);
    EXPECT_EQ(engineers.front().id, sample.engineer.id.bytes);
    const auto areas = choices(DueBy::Area);
    ASSERT_EQ(areas.size(), 2U);
    EXPECT_EQ(areas.front().name, "QA1");
    EXPECT_EQ(areas.front().premises, 6);
    EXPECT_THAT(choices(DueBy::Agent), IsEmpty());
}

TEST_F(DueList, saysWhatTurnedOverdueSinceADay) {
    EXPECT_THAT(valueOf(store->overdueSince(today, today)), IsEmpty());
    const auto lines = valueOf(store->overdueSince(day(2026, 11, 24), today));
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines.front().address.line1, "2 overdue");
    EXPECT_EQ(valueOf(store->overdueSince(day(2026, 11, 24), day(2026, 12, 10))).size(), 2U);
}

TEST_F(DueList, showsWhatTheStripNeeds) {
    clock.set(Instant(std::chrono::sys_days(day(2026, 11, 20))));
    valueOf(
        store->keepSent({{near.premises, landlord.id, "reminder", reg::Channel::Letter, "x", "Dear", {}}}));
    NoAccess what;
    what.attempt.premises = near.premises;
    static_cast<void>(valueOf(store->logNoAccess(what)));
    const auto line = lineOf(near);
    EXPECT_EQ(line.state, DueState::LastTwoWeeks);
    EXPECT_EQ(line.deadline, day(2026, 12, 9));
    EXPECT_EQ(line.opens, day(2026, 10, 10));
    EXPECT_EQ(line.lastCheck, day(2025, 12, 9));
    EXPECT_EQ(line.base, day(2025, 12, 9));
    EXPECT_EQ(line.reason, calendar::DeadlineReason::FirstKnownCheck);
    EXPECT_EQ(line.applianceKind, "condensing_boiler");
    EXPECT_EQ(line.appliancePlace, "kitchen");
    EXPECT_EQ(line.landlordName, "Orla Quill");
    EXPECT_THAT(line.letters, ElementsAre(day(2026, 11, 20)));
    EXPECT_THAT(line.attempts, ElementsAre(day(2026, 11, 20)));
    EXPECT_FALSE(line.booking);
    const auto other = lineOf(booked);
    ASSERT_TRUE(other.booking);
    EXPECT_EQ(other.booking->date, day(2026, 12, 1));
    EXPECT_EQ(other.booking->engineerName, "Tamsin Ember");
    EXPECT_FALSE(other.booking->afterDeadline);
    EXPECT_EQ(lineOf(unknown).unknown, 1);
}

TEST_F(DueList, leavesOutWhatLiesInTheBin) {
    const auto binned = valueOf(store->putIntoBin("premises", near.premises.bytes, "3 near"));
    EXPECT_EQ(listed().size(), 6U);
    expectDerived();
    valueOf(store->bringBack(binned));
    EXPECT_EQ(listed().size(), 7U);
    static_cast<void>(valueOf(store->putIntoBin("appliances", near.boiler.bytes, "boiler")));
    expectDerived();
    EXPECT_EQ(lineOf(near).appliance, std::nullopt);
}

/// The states by SQL are those of the pure function, on many days and for all kinds of dates.
TEST_F(DueList, asksSqlForTheStatesThatTheCalendarHas) {
    std::mt19937 random(29);
    std::uniform_int_distribution<int> back(1, 420);
    std::uniform_int_distribution<int> ahead(-20, 120);
    for (int i = 0; i < 60; ++i) {
        const auto flat = letFlat("r" + std::to_string(i));
        checkedBefore(flat, calendar::addDays(today, -back(random)));
        if (i % 2 == 0) {
            static_cast<void>(bookedOn(flat, calendar::addDays(today, ahead(random))));
        }
        if (i % 5 == 0) {
            valueOf(store->save(
                reg::CheckPlan{{}, flat.premises, calendar::CheckDuty::OwnInterval, 1 + i / 5, {}}));
        }
    }
    for (int shift = -30; shift <= 400; shift += 7) {
        const auto on = calendar::addDays(today, shift);
        DueCounts expected;
        DueFilter all;
        all.states.assign(calendar::kDueStates.begin(), calendar::kDueStates.end());
        const auto lines = valueOf(store->duePage(all, DueSort::Need, on, 0, 1000));
        ASSERT_EQ(lines.size(), 68U) << "each premises once";
        for (const auto& line : lines) {
            ++expected.of.at(static_cast<std::size_t>(line.state));
        }
        EXPECT_EQ(valueOf(store->dueCounts(all, on)).of, expected.of) << calendar::isoText(on);
        EXPECT_TRUE(std::is_sorted(lines.begin(), lines.end(),
                                   [](const DueLine& a, const DueLine& b) { return a.state < b.state; }));
    }
}

TEST_F(DueList, isFoundWrongWhenSomebodyChangedIt) {
    store.reset();
    EXPECT_EQ(sqlOn(path(), "UPDATE due_premises SET deadline = deadline + 1 WHERE deadline IS NOT NULL"),
              "");
    EXPECT_EQ(valueOf(Store::inspect(path())).staleDue, 6);
    reopen();
    EXPECT_EQ(valueOf(store->staleInDue()), 6);
    valueOf(store->mendDue());
    expectDerived();
    store.reset();
    EXPECT_EQ(sqlOn(path(), "DELETE FROM due_premises; DELETE FROM settings WHERE name = 'due_form'"), "");
    reopen();  // of another program's form: made anew
    expectDerived();
    EXPECT_EQ(listed().size(), 7U);
}

}  // namespace
}  // namespace hearth::store
