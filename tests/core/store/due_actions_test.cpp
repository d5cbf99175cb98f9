// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/due_fixture.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using calendar::DueState;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class DueActing : public DueTest {
  protected:
    void SetUp() override {
        DueTest::SetUp();
        flat = letFlat("1 Weir Bank");
        checkedBefore(flat, day(2025, 12, 20));
    }
    [[nodiscard]] reg::Booking wanted(calendar::Date date, const std::string& from = {},
                                      const std::string& until = {}) const {
        reg::Booking booking;
        booking.premises = flat.premises;
        booking.engineer = sample.engineer.id;
        booking.date = date;
        booking.from = from;
        booking.until = until;
        return booking;
    }
    [[nodiscard]] std::vector<ClashKind> clashes(const reg::Booking& booking) const {
        std::vector<ClashKind> kinds;
        for (const auto& clash : valueOf(store->clashesOf(booking, today))) {
            kinds.push_back(clash.kind);
        }
        return kinds;
    }
    LetFlat flat;
};

TEST_F(DueActing, booksMovesAndCancelsWithASequenceThatCalendarsFollow) {
    const auto id = bookedOn(flat, day(2026, 12, 1), "09:30", "10:30");
    EXPECT_EQ(lineOf(flat).state, DueState::Booked);
    valueOf(store->moveBooking(id, day(2026, 12, 3), "11:00", "12:00", {}));
    const auto moved = valueOf(store->bookings(flat.premises)).front();
    EXPECT_EQ(moved.id, id);
    EXPECT_EQ(moved.date, day(2026, 12, 3));
    EXPECT_EQ(moved.sequence, 1);
    valueOf(store->cancelBooking(id, "rang to say no"));
    const auto cancelled = valueOf(store->bookings(flat.premises)).front();
    EXPECT_EQ(cancelled.state, reg::BookingState::Cancelled);
    EXPECT_EQ(cancelled.sequence, 2);
    EXPECT_EQ(cancelled.note, "rang to say no");
    EXPECT_EQ(lineOf(flat).state, DueState::WindowOpen);
    EXPECT_EQ(errorOf(store->cancelBooking({store->newId()}, "")), ErrorCode::NotFound);
    expectDerived();
}

TEST_F(DueActing, booksManyAsOneStep) {
    const auto other = letFlat("2 Weir Bank");
    auto second = wanted(day(2026, 12, 1));
    second.premises = other.premises;
    EXPECT_THAT(valueOf(store->book({wanted(day(2026, 12, 1)), second})), SizeIs(2));
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_THAT(valueOf(store->bookings(flat.premises)), IsEmpty());
    EXPECT_THAT(valueOf(store->bookings(other.premises)), IsEmpty());
    auto nowhere = wanted(day(2026, 12, 1));
    nowhere.premises = {store->newId()};
    EXPECT_EQ(errorOf(store->book({wanted(day(2026, 12, 1)), nowhere})), ErrorCode::NotFound);
    EXPECT_THAT(valueOf(store->bookings(flat.premises)), IsEmpty());  // nothing of it
}

TEST_F(DueActing, showsClashes) {
    const auto other = letFlat("2 Weir Bank");
    static_cast<void>(bookedOn(other, day(2026, 12, 1), "09:30", "10:30"));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 1), "10:00", "11:00")), ElementsAre(ClashKind::Overlaps));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 1), "10:30", "11:00")), IsEmpty());
    EXPECT_THAT(clashes(wanted(day(2026, 12, 1), "08:30", "09:30")), IsEmpty());
    EXPECT_THAT(clashes(wanted(day(2026, 12, 1))), ElementsAre(ClashKind::SameDay));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 2), "11:00", "10:00")), ElementsAre(ClashKind::TimesCrossed));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 5))), ElementsAre(ClashKind::Weekend));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 25))),
                ElementsAre(ClashKind::BankHoliday, ClashKind::AfterDeadline));
    EXPECT_THAT(clashes(wanted(day(2030, 1, 8))),
                ElementsAre(ClashKind::HolidaysUnknown, ClashKind::AfterDeadline));
    static_cast<void>(bookedOn(flat, day(2026, 12, 8)));
    EXPECT_THAT(clashes(wanted(day(2026, 12, 9))), ElementsAre(ClashKind::BookedAlready));
    const auto later = letFlat("3 Weir Bank");
    checkedBefore(later, day(2026, 6, 1));
    auto early = wanted(day(2026, 12, 9));
    early.premises = later.premises;
    EXPECT_THAT(clashes(early), ElementsAre(ClashKind::BeforeWindow));
    early.date = day(2027, 4, 1);
    EXPECT_THAT(clashes(early), ElementsAre(ClashKind::Boundary));
}

TEST_F(DueActing, holdsBookingsAgainstTheBankHolidaysThatTheFirmTookIn) {
    EXPECT_EQ(valueOf(store->bankHolidays()), calendar::shippedBankHolidays());
    auto table = calendar::shippedBankHolidays();
    table.source = "a newer list";
    table.taken = today;
    table.lastYear = 2030;
    table.holidays.push_back({day(2030, 1, 8), "A day of thanks", true, true, true, true});
    valueOf(store->saveBankHolidays(table));
    EXPECT_EQ(valueOf(store->bankHolidays()), table);
    EXPECT_THAT(clashes(wanted(day(2030, 1, 8))),
                ElementsAre(ClashKind::BankHoliday, ClashKind::AfterDeadline));
    EXPECT_THAT(clashes(wanted(day(2030, 1, 9))), ElementsAre(ClashKind::AfterDeadline));
    valueOf(store->saveBankHolidays(std::nullopt));
    EXPECT_EQ(valueOf(store->bankHolidays()), calendar::shippedBankHolidays());
    valueOf(store->saveSetting("due.bank_holidays", "no table"));
    EXPECT_EQ(errorOf(store->bankHolidays()), ErrorCode::StoreDamaged);
}

TEST_F(DueActing, keepsWhatWasSaidAndSentWordForWord) {
    const auto call = valueOf(store->logCall(
        {flat.premises, landlord.id, "01632 960000", "asked for a day", "will ring back", {}}));
    const auto ids = valueOf(store->keepSent({{flat.premises,
                                               landlord.id,
                                               "reminder",
                                               reg::Channel::Email,
                                               "orla@quill.example",
                                               "Dear Orla\n\n…",
                                               {}}}));
    const auto letters = valueOf(store->letters(flat.premises));
    ASSERT_THAT(letters, SizeIs(2));
    for (const auto& letter : letters) {
        if (letter.id == call) {
            EXPECT_EQ(letter.kind, "call");
            EXPECT_EQ(letter.channel, reg::Channel::Telephone);
            EXPECT_EQ(letter.result, "will ring back");
        } else {
            EXPECT_EQ(letter.id, ids.front());
            EXPECT_EQ(letter.text, "Dear Orla\n\n…");
            EXPECT_EQ(letter.at, clock.now());
        }
    }
}

TEST_F(DueActing, logsNoAccessWithItsPhotographAndTheBooking) {
    const auto booking = bookedOn(flat, day(2026, 11, 25), "09:30", "10:30");
    NoAccess what;
    what.attempt.premises = flat.premises;
    what.attempt.who = "Tamsin Ember";
    what.attempt.left = "card through the door";
    what.booking = booking;
    what.photograph = NewAttachment{"", {}, "door.jpg", "image/jpeg", "a door", "", false, ""};
    const auto id = valueOf(store->logNoAccess(what));
    EXPECT_EQ(valueOf(store->bookings(flat.premises)).front().state, reg::BookingState::NoAccess);
    EXPECT_THAT(valueOf(store->attachmentsOf(id.bytes)), SizeIs(1));
    auto file = valueOf(store->dueFile(flat.premises, today));
    EXPECT_EQ(file.step, calendar::NextStep::TryAgain);
    what.booking.reset();
    static_cast<void>(valueOf(store->logNoAccess(what)));
    static_cast<void>(valueOf(store->logNoAccess(what)));
    EXPECT_EQ(valueOf(store->dueFile(flat.premises, today)).step, calendar::NextStep::TryAgainAndRecord);
    what.booking = reg::BookingId{store->newId()};
    EXPECT_EQ(errorOf(store->logNoAccess(what)), ErrorCode::NotFound);
    EXPECT_THAT(valueOf(store->accessAttempts(flat.premises)), SizeIs(3));
}

TEST_F(DueActing, copiesAFlatWithoutWhatBelongsToItAlone) {
    auto boiler = valueOf(store->appliance(flat.boiler));
    boiler.make = "Brightwell";
    boiler.serial = "BW-1";
    boiler.installedOn = day(2025, 1, 1);
    valueOf(store->save(boiler));
    auto pipe = reg::PipeSection{{store->newId()}, flat.installation, {}, 0, "copper_22", {}, {}, "boiler"};
    pipe.appliance = flat.boiler;
    const auto branch =
        reg::PipeSection{{store->newId()}, flat.installation, pipe.id, 1, "copper_15", {}, {}, "hob"};
    valueOf(store->savePipes(flat.installation, {pipe, branch}));
    valueOf(store->save(reg::Role{{}, flat.premises, sample.customer.id, reg::RoleKind::Tenant}));
    std::vector<AlikePremises> alike;
    for (int i = 2; i <= 31; ++i) {
        alike.push_back({{"Flat " + std::to_string(i), "1 Weir Bank", "Ashby", "QA1 1AA"}, ""});
    }
    const auto made = valueOf(store->copyPremises(flat.premises, alike));
    ASSERT_THAT(made, SizeIs(30));
    const auto file = valueOf(store->dueFile(made.back(), today));
    EXPECT_EQ(file.line.address.line1, "Flat 31");
    EXPECT_EQ(file.line.landlordName, "Orla Quill");
    EXPECT_EQ(file.line.state, DueState::NotKnown);  // checks are not copied
    ASSERT_THAT(file.items, SizeIs(1));
    EXPECT_EQ(file.items.front().appliance->make, "Brightwell");
    EXPECT_EQ(file.items.front().appliance->serial, "");
    EXPECT_FALSE(file.items.front().appliance->installedOn);
    EXPECT_THAT(valueOf(store->holders(made.back())), SizeIs(1));
    const auto installation = valueOf(store->installations(made.back())).front();
    const auto pipes = valueOf(store->pipes(installation.id));
    ASSERT_THAT(pipes, SizeIs(2));
    EXPECT_EQ(pipes.back().after, pipes.front().id);
    EXPECT_NE(pipes.front().id, pipe.id);
    EXPECT_EQ(pipes.front().appliance, file.items.front().appliance->id)
        << "the copy's boiler, not the first's";
    expectDerived();
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_EQ(listed().size(), 2U);
}

TEST_F(DueActing, remindsByTheCadenceAndOnceAStage) {
    EXPECT_EQ(calendar::cadenceText(valueOf(store->cadence())), "8 4 2 1");
    // 20 December: the 4 weeks' day is 22 November
    auto due = valueOf(store->remindersDue({}, today));
    ASSERT_THAT(due, SizeIs(1));
    EXPECT_EQ(due.front().stage, 2);
    EXPECT_EQ(due.front().party->name, "Orla Quill");
    EXPECT_EQ(due.front().role, reg::RoleKind::Landlord);
    EXPECT_EQ(due.front().channel, reg::Channel::Letter);
    EXPECT_EQ(due.front().sentTo, "7 Weir Bank, Ashby, QA9 9ZZ");
    EXPECT_EQ(due.front().refusal, ReminderRefusal::None);
    valueOf(store->keepSent({{flat.premises,
                              landlord.id,
                              "reminder",
                              reg::Channel::Letter,
                              due.front().sentTo,
                              "Dear Orla",
                              {}}}));
    EXPECT_THAT(valueOf(store->remindersDue({}, today)), IsEmpty());
    EXPECT_THAT(valueOf(store->remindersDue({}, day(2026, 12, 6))), SizeIs(1));
    EXPECT_THAT(valueOf(store->remindersFor({flat.premises}, today)).front().sentBefore,
                ElementsAre(day(2026, 11, 25)));
    EXPECT_FALSE(valueOf(store->remindersDue({}, day(2026, 12, 6))).front().booking);
    const auto late = bookedOn(flat, day(2026, 12, 21));
    EXPECT_TRUE(valueOf(store->remindersFor({flat.premises}, today)).front().booking->afterDeadline);
    valueOf(store->cancelBooking(late, "moved"));
    const auto booked = bookedOn(flat, day(2026, 12, 18));
    for (const auto& found : {valueOf(store->remindersDue({}, day(2026, 12, 6))),
                              valueOf(store->remindersFor({flat.premises}, today))}) {
        ASSERT_THAT(found, SizeIs(1));
        ASSERT_TRUE(found.front().booking);
        EXPECT_EQ(found.front().booking->id, booked);
        EXPECT_FALSE(found.front().booking->afterDeadline);
    }
    valueOf(store->saveCadence({3}));
    EXPECT_EQ(valueOf(store->cadence()), calendar::Cadence{3});
}

TEST_F(DueActing, remindsNobodyWhoObjectedOrGaveNoGround) {
    const auto refusal = [&] { return valueOf(store->remindersFor({flat.premises}, today)).front(); };
    landlord.sendBy = reg::SendBy::Email;
    valueOf(store->save(landlord));
    EXPECT_EQ(refusal().channel, reg::Channel::Email);
    EXPECT_EQ(refusal().sentTo, "orla@quill.example");
    landlord.reminderWithdrawn = day(2026, 11, 1);
    valueOf(store->save(landlord));
    EXPECT_EQ(refusal().refusal, ReminderRefusal::Objected);
    // then the agent, whose duty it is too
    reg::Party agent;
    agent.id = {store->newId()};
    agent.name = "Weir Lettings";
    valueOf(store->save(agent));
    valueOf(store->save(reg::Role{{}, flat.premises, agent.id, reg::RoleKind::Agent}));
    EXPECT_EQ(refusal().refusal, ReminderRefusal::Objected);  // nowhere to write to
    agent.address = {"2 Bell Row", "", "Ashby", "QA2 2BB"};
    valueOf(store->save(agent));
    EXPECT_EQ(refusal().refusal, ReminderRefusal::None);
    EXPECT_EQ(refusal().party->name, "Weir Lettings");
    // a customer needs a ground
    valueOf(store->save(reg::EarlierCheck{{}, sample.premises.id, {}, day(2025, 12, 1), "", "", {}}));
    const auto customers = [&] { return valueOf(store->remindersFor({sample.premises.id}, today)).front(); };
    EXPECT_EQ(customers().refusal, ReminderRefusal::NoGround);
    auto customer = sample.customer;
    customer.reminderBasis = reg::ReminderBasis::EarlierWork;
    valueOf(store->save(customer));
    EXPECT_NE(customers().refusal, ReminderRefusal::NoGround);
}

TEST_F(DueActing, plansADayByTimeAndArea) {
    const auto a = letFlat("10 Ash", "QA1 1AA");
    const auto b = letFlat("20 Beck", "QB2 2BB");
    const auto c = letFlat("30 Clay", "QB2 2BC");
    const auto d = letFlat("40 Dale", "QA1 1AB");
    static_cast<void>(bookedOn(b, day(2026, 12, 1), "13:00", "14:00"));
    static_cast<void>(bookedOn(a, day(2026, 12, 1), "09:00", "10:00"));
    static_cast<void>(bookedOn(c, day(2026, 12, 1)));
    static_cast<void>(bookedOn(d, day(2026, 12, 1)));
    std::vector<std::string> stops;
    for (const auto& stop : valueOf(store->dayRound(sample.engineer.id, day(2026, 12, 1)))) {
        stops.push_back(stop.line.address.line1);
    }
    EXPECT_THAT(stops, ElementsAre("10 Ash", "40 Dale", "20 Beck", "30 Clay"));
    EXPECT_THAT(valueOf(store->dayRound({}, day(2026, 12, 1))), IsEmpty());
    EXPECT_THAT(valueOf(store->dayRound(sample.engineer.id, day(2026, 12, 2))), IsEmpty());
}

TEST_F(DueActing, looksAtTheWhole) {
    const auto late = letFlat("2 Weir Bank");
    checkedBefore(late, day(2025, 6, 1));
    static_cast<void>(checkedByUs(late, day(2026, 6, 10)));  // nine days late
    const auto kept = letFlat("3 Weir Bank");
    checkedBefore(kept, day(2025, 6, 1));
    NoAccess what;
    what.attempt.premises = kept.premises;
    what.attempt.at = Instant(std::chrono::sys_days(day(2026, 4, 10)));
    static_cast<void>(valueOf(store->logNoAccess(what)));
    static_cast<void>(checkedByUs(kept, day(2026, 4, 15)));
    const auto overdue = letFlat("4 Weir Bank");
    checkedBefore(overdue, day(2025, 11, 1));
    static_cast<void>(bookedOn(flat, day(2026, 12, 1)));
    const auto whole = valueOf(store->dueOverview(today));
    ASSERT_THAT(whole.months, SizeIs(13));
    EXPECT_EQ(whole.months.front().due, 1);  // overdue
    EXPECT_EQ(whole.months.at(1).month, 11U);
    EXPECT_EQ(whole.months.at(1).due, 0);
    EXPECT_EQ(whole.months.at(2).due, 1);
    EXPECT_EQ(whole.months.at(2).booked, 1);
    EXPECT_EQ(whole.months.at(8).due, 2);  // June: both anniversaries
    EXPECT_EQ(whole.kept.checks, 2);
    EXPECT_EQ(whole.kept.late, 1);
    EXPECT_EQ(whole.kept.inWindow, 1);
    EXPECT_EQ(whole.kept.rounds, 2);
    EXPECT_EQ(whole.kept.firstTimeAccess, 1);
    ASSERT_THAT(whole.landlords, SizeIs(1));
    EXPECT_EQ(whole.landlords.front().premises, 4);
    EXPECT_EQ(whole.landlords.front().overdue, 1);
    EXPECT_EQ(whole.landlords.front().booked, 1);
    static_cast<void>(bookedOn(overdue, day(2026, 12, 2)));
    EXPECT_EQ(valueOf(store->dueOverview(today)).landlords.front().booked, 2) << "too late, and booked";
}

}  // namespace
}  // namespace hearth::store
