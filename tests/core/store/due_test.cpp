// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/due_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using calendar::CheckDuty;
using calendar::DeadlineReason;
using calendar::DueState;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class DueOfPremises : public DueTest {
  protected:
    void SetUp() override {
        DueTest::SetUp();
        flat = letFlat("1 Weir Bank");
    }
    [[nodiscard]] DueFile file() const { return valueOf(store->dueFile(flat.premises, today)); }
    LetFlat flat;
};

TEST_F(DueOfPremises, followsTheRoles) {
    EXPECT_EQ(file().line.duty, CheckDuty::Let);
    EXPECT_EQ(file().line.state, DueState::NotKnown);
    EXPECT_EQ(file().step, calendar::NextStep::AskLastCheck);
    // a customer without more says nothing of who lives there
    EXPECT_EQ(valueOf(store->dueFile(sample.premises.id, today)).line.duty, CheckDuty::NotKnown);
    valueOf(store->save(reg::Role{{}, sample.premises.id, sample.customer.id, reg::RoleKind::HomeOwner}));
    EXPECT_EQ(valueOf(store->dueFile(sample.premises.id, today)).line.state, DueState::NoDuty);
    valueOf(store->save(reg::CheckPlan{{}, sample.premises.id, CheckDuty::Let, 0, {}}));
    EXPECT_EQ(valueOf(store->dueFile(sample.premises.id, today)).line.duty, CheckDuty::Let);
    expectDerived();
}

TEST_F(DueOfPremises, movesOnWithEachRecordOfOurs) {
    checkedBefore(flat, day(2025, 6, 1));
    EXPECT_EQ(file().line.deadline, day(2026, 6, 1));
    // the worked example: in the window, so the anniversary stays
    const auto record = checkedByUs(flat, day(2026, 4, 15));
    EXPECT_EQ(file().line.deadline, day(2027, 6, 1));
    EXPECT_EQ(file().line.reason, DeadlineReason::CheckedInWindow);
    EXPECT_EQ(file().line.lastCheck, day(2026, 4, 15));
    expectDerived();
    valueOf(store->voidRecord(record, "wrong house"));
    EXPECT_EQ(file().line.deadline, day(2026, 6, 1));
    EXPECT_THAT(file().checks, SizeIs(1));
    expectDerived();
}

TEST_F(DueOfPremises, countsARevisionOnce) {
    const auto first = checkedByUs(flat, day(2026, 4, 15));
    auto request = requestFor(*store, valueOf(store->record(first)).line.visit);
    request.kind = record::RecordKind::LandlordSafety;
    request.supersedes = first;
    request.reason = "a wrong make";
    static_cast<void>(valueOf(store->issue(request, pdfOf)));
    ASSERT_THAT(file().checks, SizeIs(1));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    expectDerived();
}

TEST_F(DueOfPremises, takesTheEngineersWordForWhatWasBeforeTheFirstRecord) {
    static_cast<void>(checkedByUs(flat, day(2026, 4, 15), "2025-06-01"));
    EXPECT_EQ(file().line.deadline, day(2027, 6, 1));
    ASSERT_THAT(file().items, SizeIs(1));
    EXPECT_THAT(file().items.front().history.checks, ElementsAre(day(2025, 6, 1), day(2026, 4, 15)));
}

TEST_F(DueOfPremises, isThatOfTheEarliestApplianceAndSaysWhich) {
    reg::Appliance fire;
    fire.id = {store->newId()};
    fire.installation = flat.installation;
    fire.kind = "gas_fire";
    fire.place = "front room";
    fire.installedOn = day(2025, 12, 20);
    valueOf(store->save(fire));
    static_cast<void>(checkedByUs(flat, day(2026, 4, 15)));
    EXPECT_EQ(file().line.deadline, day(2026, 12, 20));
    EXPECT_EQ(file().line.reason, DeadlineReason::Installed);
    EXPECT_EQ(file().line.appliance, fire.id);
    EXPECT_EQ(file().line.appliancePlace, "front room");
    ASSERT_TRUE(file().first);
    EXPECT_EQ(file().items.at(*file().first).appliance->id, fire.id);
    // what the tenant may take along, and what is gone, is not reached
    fire.owner = reg::Owner::Tenant;
    valueOf(store->save(fire));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    fire.owner = reg::Owner::Landlord;
    fire.removedOn = day(2026, 5, 1);
    valueOf(store->save(fire));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    EXPECT_THAT(file().items, SizeIs(1));
    // an unvented cylinder is noted beside the gas work
    fire.removedOn.reset();
    fire.kind = std::string(reg::choice::kUnventedCylinder);
    valueOf(store->save(fire));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    EXPECT_THAT(file().items, SizeIs(1));
    expectDerived();
}

TEST_F(DueOfPremises, putsOffANewAppliancesFirstCheckOnce) {
    auto boiler = valueOf(store->appliance(flat.boiler));
    boiler.installedOn = day(2026, 3, 10);
    valueOf(store->save(boiler));
    EXPECT_EQ(file().line.deadline, day(2027, 3, 10));
    valueOf(store->save(reg::CheckExtension{{}, flat.premises, flat.boiler, day(2027, 6, 1)}));
    EXPECT_EQ(file().line.deadline, day(2027, 5, 10));  // the worked example: no later than 14 months
    EXPECT_EQ(file().line.reason, DeadlineReason::Extended);
    expectDerived();
}

TEST_F(DueOfPremises, ofAWorkplaceIsTheFirmsOwn) {
    valueOf(store->save(reg::CheckPlan{{}, flat.premises, CheckDuty::OwnInterval, 0, {}}));
    checkedBefore(flat, day(2026, 4, 15));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    EXPECT_EQ(file().line.reason, DeadlineReason::OwnInterval);
    EXPECT_FALSE(file().items.front().window);
    valueOf(store->saveOwnInterval(6));
    EXPECT_EQ(file().line.deadline, day(2026, 10, 15));
    EXPECT_EQ(file().months, 6);
    expectDerived();
    EXPECT_EQ(errorOf(store->saveOwnInterval(0)), ErrorCode::OutOfRange);
    EXPECT_EQ(errorOf(store->saveOwnInterval(121)), ErrorCode::OutOfRange);
    EXPECT_EQ(valueOf(store->ownInterval()), 6);
    valueOf(store->save(reg::CheckPlan{{}, flat.premises, CheckDuty::OwnInterval, 24, {}}));
    EXPECT_EQ(file().line.deadline, day(2028, 4, 15));
}

TEST_F(DueOfPremises, inNorthernIrelandHasNoWindow) {
    auto premises = valueOf(store->premises(flat.premises));
    premises.country = reg::Country::NorthernIreland;
    valueOf(store->save(premises));
    checkedBefore(flat, day(2025, 6, 1));
    static_cast<void>(checkedByUs(flat, day(2026, 4, 15)));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 15));
    EXPECT_EQ(file().line.reason, DeadlineReason::CheckedInTime);
    EXPECT_FALSE(file().items.front().window);
    expectDerived();
}

TEST_F(DueOfPremises, atTheWindowsEdgeShowsBothResults) {
    checkedBefore(flat, day(2025, 6, 1));
    static_cast<void>(checkedByUs(flat, day(2026, 4, 1)));
    EXPECT_EQ(file().line.deadline, day(2027, 4, 1));
    EXPECT_EQ(file().line.latest, day(2027, 6, 1));
}

TEST_F(DueOfPremises, keepsAnotherFirmsRecordAsProof) {
    NewAttachment scan;
    scan.name = "cp12.pdf";
    scan.mediaType = "application/pdf";
    scan.bytes = "%PDF";
    const reg::EarlierCheck check{{store->newId()}, flat.premises, {}, day(2026, 1, 7), "Pike Gas", "", {}};
    valueOf(store->save(check, scan));
    ASSERT_THAT(file().earlier, ElementsAre(check));
    EXPECT_EQ(file().checks.front().earlier, check.id);
    EXPECT_EQ(file().checks.front().by, "Pike Gas");
    EXPECT_EQ(valueOf(store->attachmentsOf(check.id.bytes)).front().name, "cp12.pdf");
    EXPECT_EQ(file().line.deadline, day(2027, 1, 7));
    scan.bytes.assign(Attachments::kMostBytes + 1, ' ');
    const reg::EarlierCheck large{{store->newId()}, flat.premises, {}, day(2026, 2, 7), "Pike Gas", "", {}};
    EXPECT_EQ(errorOf(store->save(large, scan)), ErrorCode::AttachmentTooLarge);
    EXPECT_THAT(file().earlier, ElementsAre(check));
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_THAT(file().earlier, IsEmpty());
    EXPECT_EQ(file().line.state, DueState::NotKnown);
    expectDerived();
}

TEST_F(DueOfPremises, saysWhatRunsBesideTheChecks) {
    valueOf(store->save(reg::Role{{}, flat.premises, sample.customer.id, reg::RoleKind::Tenant}));
    EXPECT_THAT(file().duties, IsEmpty());
    const auto record = checkedByUs(flat, day(2026, 11, 20));
    ASSERT_THAT(file().duties, SizeIs(1));
    EXPECT_EQ(file().duties.front().kind, calendar::DutyKind::TenantCopy);
    EXPECT_EQ(file().duties.front().by, day(2026, 12, 18));  // 28 days, HSE "Record keeping"
    valueOf(store->noteSending(record, {record::SentBy::Mail, landlord.email, "", "", {}}));
    EXPECT_THAT(file().duties, SizeIs(1)) << "the landlord has it, and the tenant does not";
    auto tenant = sample.customer;
    tenant.email = "nell@pike.example";
    valueOf(store->save(tenant));
    valueOf(store->noteSending(record, {record::SentBy::Mail, tenant.email, "", "", {}}));
    EXPECT_THAT(file().duties, IsEmpty());
}

// The published example: 10 February 2018, then 5 January 2019 in the window, so due 10 February 2020.
TEST_F(DueOfPremises, givesARecordTheChecksBeforeIt) {
    checkedBefore(flat, day(2018, 2, 10));
    checkedByUs(flat, day(2019, 1, 5));
    checkedByUs(flat, day(2019, 12, 20));
    const auto visits = valueOf(store->visitsOf(flat.premises));
    const auto at = [&](calendar::Date date) {
        const auto found = std::find_if(visits.begin(), visits.end(),
                                        [&](const VisitLine& one) { return one.visit.date == date; });
        return valueOf(store->checksBefore(found->visit.id));
    };
    const auto last = at(day(2019, 12, 20));
    ASSERT_THAT(last, SizeIs(1));
    EXPECT_EQ(last[0].appliance, flat.boiler);
    EXPECT_THAT(last[0].item.checks, ElementsAre(day(2018, 2, 10), day(2019, 1, 5))) << "not its own";
    EXPECT_EQ(calendar::deadlineOf(last[0].item)->date, day(2020, 2, 10));
    EXPECT_THAT(at(day(2019, 1, 5))[0].item.checks, ElementsAre(day(2018, 2, 10)))
        << "a revision goes by what was known before it";
    EXPECT_EQ(errorOf(store->checksBefore({store->newId()})), ErrorCode::NotFound);
}

TEST_F(DueOfPremises, namesTheNewestRecordThatCounts) {
    const auto other = letFlat("9 Weir Bank");
    const auto numbers = [&] { return valueOf(store->newestRecords({other.premises, flat.premises})); };
    checkedBefore(flat, day(2026, 11, 1));
    EXPECT_THAT(numbers(), ElementsAre("", "")) << "another firm's is no record of ours";
    const auto first = valueOf(store->record(checkedByUs(flat, day(2025, 12, 20)))).line.header.record;
    const auto voided = checkedByUs(flat, day(2026, 11, 20));
    const auto second = valueOf(store->record(voided)).line.header.record;
    EXPECT_THAT(numbers(), ElementsAre("", second));
    valueOf(store->voidRecord(voided, "wrong house"));
    EXPECT_THAT(numbers(), ElementsAre("", first));
}

TEST_F(DueOfPremises, asksWhatACheckWouldDo) {
    checkedBefore(flat, day(2025, 12, 20));
    const auto asked = valueOf(store->dueIfChecked({flat.premises}, day(2026, 12, 1)));
    ASSERT_THAT(asked, SizeIs(1));
    EXPECT_EQ(asked.front().now, day(2026, 12, 20));
    EXPECT_EQ(asked.front().next, day(2027, 12, 20));
    EXPECT_EQ(asked.front().timing, calendar::CheckTiming::InWindow);
    EXPECT_EQ(asked.front().appliance, flat.boiler);
    EXPECT_EQ(valueOf(store->dueIfChecked({flat.premises}, day(2026, 12, 21))).front().timing,
              calendar::CheckTiming::Late);
    static_cast<void>(checkedByUs(flat, day(2026, 12, 1)));
    EXPECT_EQ(file().line.deadline, asked.front().next);
}

TEST_F(DueOfPremises, isToldOnOneLineOfTime) {
    checkedBefore(flat, day(2025, 12, 20));
    valueOf(store->keepSent(
        {{flat.premises, landlord.id, "reminder", reg::Channel::Letter, "x", "Dear Orla", {}}}));
    static_cast<void>(
        valueOf(store->logCall({flat.premises, landlord.id, "01632 960000", "asked for a day", "", {}})));
    const auto booking = bookedOn(flat, day(2026, 11, 26), "09:30", "10:30");
    NoAccess what;
    what.attempt.premises = flat.premises;
    what.attempt.who = "Tamsin Ember";
    what.attempt.left = "card";
    what.booking = booking;
    static_cast<void>(valueOf(store->logNoAccess(what)));
    std::vector<StoryKind> kinds;
    for (const auto& event : valueOf(store->storyOf(flat.premises, today))) {
        kinds.push_back(event.kind);
    }
    EXPECT_THAT(kinds,
                ElementsAre(StoryKind::EarlierCheck, StoryKind::WindowOpens, StoryKind::Letter,
                            StoryKind::Call, StoryKind::NoAccess, StoryKind::Booking, StoryKind::Deadline));
    static_cast<void>(checkedByUs(flat, day(2026, 11, 30)));
    const auto events = valueOf(store->storyOf(flat.premises, today));
    const auto check = std::find_if(events.begin(), events.end(),
                                    [](const StoryEvent& one) { return one.kind == StoryKind::Check; });
    ASSERT_NE(check, events.end());
    EXPECT_EQ(check->code, "landlord_safety");
    EXPECT_EQ(errorOf(store->storyOf({store->newId()}, today)), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->dueFile({store->newId()}, today)), ErrorCode::NotFound);
}

}  // namespace
}  // namespace hearth::store
