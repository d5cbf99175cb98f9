// SPDX-License-Identifier: GPL-3.0-or-later
// Days by which: HSE "Record keeping" (28 days; before occupation), Building Regulations 2010 regulations 20
// and 40 (30 and 5 days), RIDDOR 2013 regulation 11(2) (14 days).
#include "core/register/choices.h"
#include "core/store/duties.h"
#include "tests/core/store/due_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using calendar::DutyKind;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

/// Today is 25 November 2026.
class DutiesTest : public DueTest {
  protected:
    void SetUp() override {
        DueTest::SetUp();
        flat = letFlat("4 Weir Bank");
    }
    /// The list, and that its count is of the very same.
    [[nodiscard]] std::vector<DutyLine> open() const {
        auto lines = valueOf(store->dutiesOpen(today));
        DutyCount count{static_cast<int>(lines.size()), 0};
        for (const auto& line : lines) {
            count.overdue += line.isOverdue(today) ? 1 : 0;
        }
        EXPECT_EQ(valueOf(countDuties(store->path(), today)), count);
        return lines;
    }
    [[nodiscard]] std::vector<DutyKind> kinds() const {
        std::vector<DutyKind> all;
        for (const auto& line : open()) {
            all.push_back(line.kind);
        }
        return all;
    }
    void tenant(std::optional<calendar::Date> since = {}) {
        valueOf(
            store->save(reg::Role{{}, flat.premises, sample.customer.id, reg::RoleKind::Tenant, since, {}}));
    }
    void handOver(const char* kind, reg::PartyId party, const char* at) {
        SentLetter letter;
        letter.premises = flat.premises;
        letter.party = party;
        letter.kind = kind;
        letter.channel = reg::Channel::Visit;
        Instant instant{};
        ASSERT_TRUE(parseInstant(at, instant));
        letter.at = instant;
        valueOf(store->keepSent({letter}));
    }
    reg::VisitId visited(calendar::Date date) {
        reg::Visit visit;
        visit.premises = flat.premises;
        visit.installation = flat.installation;
        visit.date = date;
        return valueOf(store->startVisit(visit));
    }
    void enter(reg::VisitId visit, const reg::SubjectRef& subject, reg::Item item, const std::string& text) {
        reg::Entry entry;
        entry.visit = visit;
        entry.subject = subject;
        entry.item = item;
        entry.text = text;
        valueOf(store->saveEntry(entry));
    }
    reg::Situation found(reg::VisitId visit) {
        reg::Situation situation;
        situation.id = {store->newId()};
        situation.premises = flat.premises;
        situation.visit = visit;
        situation.danger = reg::Danger::AtRisk;
        situation.what = "flue through a void without hatches";
        Instant at{};
        EXPECT_TRUE(parseInstant("2026-11-18T10:00:00.000Z", at));
        situation.foundAt = at;
        valueOf(store->save(situation));
        return situation;
    }

    LetFlat flat;
};

TEST_F(DutiesTest, theTenantsCopyIsDueUntilItIsLogged) {
    tenant();
    EXPECT_THAT(open(), IsEmpty()) << "there is no record yet";
    const auto record = checkedByUs(flat, day(2026, 10, 20));
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(1));
    EXPECT_EQ(lines[0].kind, DutyKind::TenantCopy);
    EXPECT_EQ(lines[0].by, day(2026, 11, 17));  // 28 days
    EXPECT_TRUE(lines[0].isOverdue(today));
    EXPECT_EQ(lines[0].record, record);
    EXPECT_EQ(lines[0].party, sample.customer.id);
    EXPECT_EQ(lines[0].what, sample.customer.name);
    EXPECT_EQ(lines[0].address.line1, "4 Weir Bank");
    handOver("tenant_copy", landlord.id, "2026-10-21T10:00:00.000Z");
    EXPECT_THAT(open(), SizeIs(1)) << "to somebody else";
    handOver("tenant_copy", sample.customer.id, "2026-10-19T10:00:00.000Z");
    EXPECT_THAT(open(), SizeIs(1)) << "that was the last record's";
    handOver("tenant_copy", sample.customer.id, "2026-10-20T10:00:00.000Z");
    EXPECT_THAT(open(), IsEmpty());
    EXPECT_THAT(lineOf(flat).letters, IsEmpty()) << "no letter about the next check";
    EXPECT_TRUE(valueOf(store->undo()));
    EXPECT_THAT(open(), SizeIs(1));
}

TEST_F(DutiesTest, aTenantWhoComesLaterHasItBeforeMovingIn) {
    checkedByUs(flat, day(2026, 10, 20));
    tenant(day(2026, 12, 1));
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(1));
    EXPECT_EQ(lines[0].kind, DutyKind::CopyBeforeMovingIn);
    EXPECT_EQ(lines[0].by, day(2026, 12, 1));
    EXPECT_FALSE(lines[0].isOverdue(today));
}

/// HSE "Record keeping": a right to occupy of not more than 28 days. By hand: 1 to 28 December are 28 days.
TEST_F(DutiesTest, forAShortStayTheCopyMayHangOnDisplay) {
    checkedByUs(flat, day(2026, 10, 20));
    const auto stays = [this](calendar::Date since, calendar::Date until) {
        valueOf(store->save(
            reg::Role{{}, flat.premises, sample.customer.id, reg::RoleKind::Tenant, since, until}));
    };
    stays(day(2026, 12, 1), day(2026, 12, 28));
    auto lines = open();
    ASSERT_THAT(lines, SizeIs(1));
    EXPECT_EQ(lines[0].kind, DutyKind::Display);
    EXPECT_EQ(lines[0].by, day(2026, 12, 1));
    handOver("tenant_copy", sample.customer.id, "2026-11-25T10:00:00.000Z");
    EXPECT_THAT(open(), IsEmpty());
    EXPECT_TRUE(valueOf(store->undo()));
    stays(day(2027, 1, 2), day(2027, 1, 30));
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::Display, DutyKind::CopyBeforeMovingIn))
        << "a day more is no short stay";
}

/// A landlord guild's page: no relevant appliance in any room that the tenant occupies. Not said is no such
/// word.
TEST_F(DutiesTest, withoutAnApplianceInTheirRoomsTheCopyMayHangWithAStatement) {
    checkedByUs(flat, day(2026, 10, 20));
    tenant();
    const auto said = [this](reg::YesNo answer) {
        auto premises = valueOf(store->premises(flat.premises));
        premises.applianceInRooms = answer;
        valueOf(store->save(premises));
        return kinds();
    };
    EXPECT_THAT(said(reg::YesNo::NotSaid), ElementsAre(DutyKind::TenantCopy));
    EXPECT_THAT(said(reg::YesNo::Yes), ElementsAre(DutyKind::TenantCopy));
    EXPECT_THAT(said(reg::YesNo::No), ElementsAre(DutyKind::DisplayWithStatement));
    EXPECT_EQ(open().front().by, day(2026, 11, 17)) << "28 days, as a copy";
    handOver("tenant_copy", sample.customer.id, "2026-10-20T10:00:00.000Z");
    EXPECT_THAT(open(), IsEmpty());
}

TEST_F(DutiesTest, whereNothingIsLetNoCopyIsAskedFor) {
    tenant();
    checkedByUs(flat, day(2026, 10, 20));
    valueOf(store->save(reg::CheckPlan{{}, flat.premises, calendar::CheckDuty::OwnInterval, 12, {}}));
    EXPECT_THAT(open(), IsEmpty());
}

TEST_F(DutiesTest, completedWorkIsNotifiedIn30DaysAndInformedOfIn5) {
    const auto visit = visited(day(2026, 11, 10));
    EXPECT_THAT(open(), IsEmpty()) << "nobody said that work was completed";
    enter(visit, reg::subject(visit), reg::Item::WorkCompleted, "2026-11-10");
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(2));
    EXPECT_EQ(lines[0].kind, DutyKind::OperatingInformation);
    EXPECT_EQ(lines[0].by, day(2026, 11, 15));
    EXPECT_EQ(lines[1].kind, DutyKind::BuildingNotice);
    EXPECT_EQ(lines[1].by, day(2026, 12, 10));
    EXPECT_EQ(lines[1].visit, visit);
    enter(visit, reg::subject(visit), reg::Item::BuildingNotification, "ref. 77");
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::OperatingInformation));
    handOver("operating_information", landlord.id, "2026-11-09T10:00:00.000Z");
    EXPECT_THAT(open(), SizeIs(1)) << "before the work was completed";
    enter(visit, reg::subject(visit), reg::Item::ControlsInformation, "no");
    EXPECT_THAT(open(), SizeIs(1));
    handOver("operating_information", landlord.id, "2026-11-25T10:00:00.000Z");
    EXPECT_THAT(open(), IsEmpty());
}

TEST_F(DutiesTest, scotlandHasNoSuchNotice) {
    auto premises = valueOf(store->premises(flat.premises));
    premises.country = reg::Country::Scotland;
    valueOf(store->save(premises));
    const auto visit = visited(day(2026, 11, 10));
    enter(visit, reg::subject(visit), reg::Item::WorkCompleted, "2026-11-10");
    EXPECT_THAT(open(), IsEmpty());
}

TEST_F(DutiesTest, aDangerousFittingIsReportedIn14Days) {
    const auto visit = visited(day(2026, 11, 18));
    const auto situation = found(visit);
    const auto of = reg::subject(situation.id);
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::OpenNotice));
    enter(visit, of, reg::Item::SituationReportable, "no");
    EXPECT_THAT(open(), SizeIs(1));
    enter(visit, of, reg::Item::SituationReportable, "yes");
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::FittingReport, DutyKind::OpenNotice));
    EXPECT_FALSE(open()[0].by) << "the day that it counts from is not known";
    enter(visit, of, reg::Item::SituationKnownOn, "2026-11-20");
    EXPECT_EQ(open()[0].by, day(2026, 12, 4));  // the facts' worked date
    EXPECT_EQ(open()[0].what, "flue through a void without hatches");
    enter(visit, of, reg::Item::SituationReportedOn, "2026-11-24");
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::OpenNotice));
}

TEST_F(DutiesTest, anOpenNoticeStaysUntilItIsClosed) {
    auto situation = found(visited(day(2026, 11, 18)));
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(1));
    EXPECT_EQ(lines[0].kind, DutyKind::OpenNotice);
    EXPECT_EQ(lines[0].from, day(2026, 11, 18));
    EXPECT_FALSE(lines[0].by) << "no law sets a day";
    EXPECT_EQ(lines[0].which, "at_risk");
    situation.closedAt = situation.foundAt;
    valueOf(store->save(situation));
    EXPECT_THAT(open(), IsEmpty());
}

TEST_F(DutiesTest, whatRunsOutIsSaidInItsLast30Days) {
    sample.gauge.calibrationDue = day(2026, 12, 25);  // in 30 days
    valueOf(store->save(sample.gauge));
    sample.engineer.cardExpires = day(2026, 12, 26);  // in 31
    valueOf(store->save(sample.engineer));
    valueOf(
        store->save(reg::Competence{{store->newId()}, sample.engineer.id, "CCN1", day(2026, 11, 24), {}}));
    auto firm = valueOf(store->firm());
    firm.insurer = "Weir Mutual";
    firm.insuredUntil = day(2026, 11, 25);
    valueOf(store->saveFirm(firm));
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(3));
    EXPECT_EQ(lines[0].kind, DutyKind::Competence);
    EXPECT_TRUE(lines[0].isOverdue(today));
    EXPECT_EQ(lines[0].what, "Tamsin Ember");
    EXPECT_EQ(lines[0].which, "CCN1");
    EXPECT_EQ(lines[1].kind, DutyKind::Insurance);
    EXPECT_FALSE(lines[1].isOverdue(today)) << "its last day";
    EXPECT_EQ(lines[2].kind, DutyKind::Calibration);
    EXPECT_EQ(lines[2].of, sample.gauge.id.text());
    sample.engineer.cardExpires = day(2026, 12, 25);
    valueOf(store->save(sample.engineer));
    EXPECT_THAT(open(), SizeIs(4));
    EXPECT_THAT(valueOf(store->dutiesOpen(today, flat.premises)), IsEmpty()) << "of these premises alone";
}

/// Yearly: common practice, no source (makers ask for it).
TEST_F(DutiesTest, theMakersServiceIsSaidInItsLast30DaysAndForAYear) {
    const auto installed = [&](calendar::Date date) {
        auto boiler = valueOf(store->appliance(flat.boiler));
        boiler.make = "Invented";
        boiler.model = "Thirty";
        boiler.installedOn = date;
        valueOf(store->save(boiler));
    };
    EXPECT_THAT(open(), IsEmpty()) << "nobody knows since when";
    installed(day(2025, 12, 26));  // due in 31 days
    EXPECT_THAT(open(), IsEmpty());
    installed(day(2025, 12, 25));
    const auto lines = open();
    ASSERT_THAT(lines, SizeIs(1));
    EXPECT_EQ(lines[0].kind, DutyKind::Service);
    EXPECT_EQ(lines[0].by, day(2026, 12, 25));
    EXPECT_EQ(lines[0].from, day(2025, 12, 25));
    EXPECT_EQ(lines[0].premises, flat.premises);
    EXPECT_EQ(lines[0].address.line1, "4 Weir Bank");
    EXPECT_EQ(lines[0].what, "Invented Thirty");
    EXPECT_EQ(lines[0].which, "kitchen");
    EXPECT_EQ(lines[0].of, flat.boiler.text());
    EXPECT_THAT(valueOf(store->dutiesOpen(today, flat.premises)), IsEmpty())
        << "it stands with the appliance";
    installed(day(2024, 11, 25));
    ASSERT_THAT(open(), SizeIs(1)) << "missed a year ago today";
    EXPECT_TRUE(open()[0].isOverdue(today));
    installed(day(2024, 11, 24));
    EXPECT_THAT(open(), IsEmpty()) << "longer ago than is looked back";
}

TEST_F(DutiesTest, theMakersServiceCountsFromTheLastOneOnRecord) {
    auto boiler = valueOf(store->appliance(flat.boiler));
    boiler.installedOn = day(2025, 6, 1);
    valueOf(store->save(boiler));
    ASSERT_THAT(kinds(), ElementsAre(DutyKind::Service));
    const auto record = servicedByUs(flat, day(2026, 5, 2));
    EXPECT_THAT(open(), IsEmpty());
    EXPECT_EQ(valueOf(store->dueFile(flat.premises, today)).items.front().duties.front().by, day(2027, 5, 2));
    today = day(2027, 4, 20);
    ASSERT_THAT(open(), SizeIs(1));
    EXPECT_EQ(open()[0].by, day(2027, 5, 2));
    EXPECT_EQ(open()[0].from, day(2026, 5, 2));
    today = day(2026, 11, 25);
    valueOf(store->voidRecord(record, "wrong house"));
    ASSERT_THAT(open(), SizeIs(1)) << "what is void was no service";
    EXPECT_EQ(open()[0].from, day(2025, 6, 1));
    recordOf(flat, day(2026, 6, 3), record::RecordKind::LandlordSafety,
             {{reg::Item::ApplianceInspected, std::string(reg::choice::kInspected)},
              {reg::Item::ServicedToday, std::string(reg::choice::kYes)}});
    EXPECT_THAT(open(), IsEmpty()) << "the check's record says that it was serviced";
    EXPECT_EQ(valueOf(store->dueFile(flat.premises, today)).items.front().duties.front().by, day(2027, 6, 3));
}

TEST_F(DutiesTest, aCheckAloneIsNoServiceAndWhatIsGoneNeedsNone) {
    auto boiler = valueOf(store->appliance(flat.boiler));
    boiler.installedOn = day(2025, 6, 1);
    valueOf(store->save(boiler));
    checkedByUs(flat, day(2026, 6, 3));
    ASSERT_THAT(kinds(), ElementsAre(DutyKind::Service));
    boiler.removedOn = day(2026, 7, 1);
    valueOf(store->save(boiler));
    EXPECT_THAT(open(), IsEmpty());
    const auto other = letFlat("9 Weir Bank");
    auto unread = valueOf(store->appliance(other.boiler));  // what has readings can't be put into the bin
    unread.installedOn = day(2025, 6, 1);
    valueOf(store->save(unread));
    ASSERT_THAT(open(), SizeIs(1));
    valueOf(store->putIntoBin("appliances", other.boiler.bytes, "boiler"));
    EXPECT_THAT(open(), IsEmpty());
}

/// By hand: 28 days after 20 October is 17 November, so that one of the copies is late and the other, which
/// is to be there before somebody moves in on 1 December, is not.
TEST_F(DutiesTest, theirCountIsThatOfTheList) {
    EXPECT_EQ(valueOf(countDuties(store->path(), today)), (DutyCount{0, 0}));
    checkedByUs(flat, day(2026, 10, 20));
    tenant();
    const auto other = letFlat("9 Weir Bank");
    checkedByUs(other, day(2026, 10, 20));
    valueOf(store->save(
        reg::Role{{}, other.premises, sample.customer.id, reg::RoleKind::Tenant, day(2026, 12, 1), {}}));
    found(visited(day(2026, 11, 18)));
    sample.gauge.calibrationDue = day(2026, 11, 24);
    valueOf(store->save(sample.gauge));
    EXPECT_EQ(valueOf(countDuties(store->path(), today)), (DutyCount{4, 2}));
    EXPECT_THAT(open(), SizeIs(4));
    EXPECT_FALSE(countDuties(store->path().parent_path() / "none.hearth", today));
}

TEST_F(DutiesTest, whatLiesInTheBinIsLeftOut) {
    sample.gauge.calibrationDue = day(2026, 11, 1);
    valueOf(store->save(sample.gauge));
    tenant();
    checkedByUs(flat, day(2026, 10, 20));
    ASSERT_THAT(open(), SizeIs(2));
    valueOf(store->putIntoBin("instruments", sample.gauge.id.bytes, "gauge"));
    EXPECT_THAT(kinds(), ElementsAre(DutyKind::TenantCopy));
}

}  // namespace
}  // namespace hearth::store
