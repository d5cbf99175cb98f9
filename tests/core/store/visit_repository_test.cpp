// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::UnitCode;
using reg::Item;

class VisitRepository : public StoreTest {
  protected:
    void SetUp() override {
        StoreTest::SetUp();
        sample = putSample(*store);
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] reg::VisitFile file() const { return valueOf(store->visitFile(visit)); }
    void type(Item item, const std::string& text, UnitCode unit = UnitCode::None) {
        valueOf(store->saveEntry(testEntry(file(), item, text, unit)));
    }
    [[nodiscard]] const reg::Entry* find(const reg::VisitFile& in, Item item) const {
        return in.find(reg::subject(in.tests.front().id), item);
    }

    Sample sample;
    reg::VisitId visit;
};

TEST_F(VisitRepository, aVisitBeginsWithOneTest) {
    const auto started = file();
    EXPECT_EQ(started.visit.id, visit);
    EXPECT_EQ(started.visit.startedAt, clock.now());
    ASSERT_EQ(started.tests.size(), 1U);
    EXPECT_EQ(started.premises, sample.premises);
    EXPECT_EQ(started.installation, sample.installation);
    EXPECT_EQ(*started.engineer(), sample.engineer);
    EXPECT_EQ(started.people.size(), 1U);
    EXPECT_EQ(started.firm, sampleFirm());
}

TEST_F(VisitRepository, testsStandInTheOrderInWhichTheyWereAdded) {
    const auto second = valueOf(store->addTest(visit, "after work"));
    reopen();
    const auto tests = file().tests;
    ASSERT_EQ(tests.size(), 2U);
    EXPECT_EQ(tests[1].id, second);
    EXPECT_EQ(tests[1].label, "after work");
    EXPECT_EQ(tests[1].position, 1);
}

TEST_F(VisitRepository, keepsAnEntryAsTypedWithWhatFollowsFromIt) {
    store->actAs("Tamsin");
    type(Item::TightStart, "20,71", UnitCode::Millibar);
    reopen();
    const auto kept = file();
    const auto* entry = find(kept, Item::TightStart);
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->text, "20,71");
    EXPECT_EQ(entry->unit, UnitCode::Millibar);
    EXPECT_EQ(entry->canonical, "20.71");
    EXPECT_EQ(entry->at, clock.now());
    EXPECT_EQ(entry->by, "Tamsin");
    EXPECT_EQ(entry->visit, visit);
}

TEST_F(VisitRepository, whatCannotBeReadIsKeptToo) {
    type(Item::TightStart, "about twenty", UnitCode::Millibar);
    const auto kept = file();
    EXPECT_EQ(find(kept, Item::TightStart)->text, "about twenty");
    EXPECT_EQ(find(kept, Item::TightStart)->canonical, "");
}

TEST_F(VisitRepository, anEmptiedEntryIsRemovedAndAnotherOneReplaces) {
    type(Item::TightStart, "20.71", UnitCode::Millibar);
    type(Item::TightStart, "20.69", UnitCode::Millibar);
    EXPECT_EQ(file().entries.size(), 1U);
    EXPECT_EQ(find(file(), Item::TightStart)->text, "20.69");
    type(Item::TightStart, "");
    EXPECT_TRUE(file().entries.empty());
    type(Item::TightStart, "");  // nothing to remove is no failure
}

TEST_F(VisitRepository, keepsTheInstrumentOfAnEntry) {
    auto entry = testEntry(file(), Item::TightStart, "20.71", UnitCode::Millibar);
    entry.instrument = sample.gauge.id;
    valueOf(store->saveEntry(entry));
    EXPECT_EQ(find(file(), Item::TightStart)->instrument, sample.gauge.id);
}

TEST_F(VisitRepository, refusesAnEntryOnAnotherVisitsSubject) {
    const auto other = valueOf(store->startVisit(sampleVisit(sample)));
    auto entry = testEntry(file(), Item::TightStart, "20.71", UnitCode::Millibar);
    entry.visit = other;
    EXPECT_EQ(errorOf(store->saveEntry(entry)), ErrorCode::NotFound);
    EXPECT_TRUE(file().entries.empty());
}

TEST_F(VisitRepository, acceptsEntriesOnTheVisitItself) {
    reg::Entry entry;
    entry.visit = visit;
    entry.subject = reg::subject(visit);
    entry.item = Item::SmellOnArrival;
    entry.text = "no";
    valueOf(store->saveEntry(entry));
    EXPECT_EQ(file().choiceOf(reg::subject(visit), Item::SmellOnArrival), "no");
}

TEST_F(VisitRepository, keepsEntriesOfANewerProgramAndDoesNotShowThem) {
    type(Item::TightStart, "20.71", UnitCode::Millibar);
    const std::string copy =
        "INSERT INTO entries SELECT randomblob(16), visit, '%1', subject, '%2', text, '%3', canonical, "
        "instrument, at, by "
        "FROM entries WHERE item = 'test.tight_start'";
    const auto insert = [&](const std::string& kind, const std::string& item, const std::string& unit) {
        std::string sql = copy;
        sql.replace(sql.find("%1"), 2, kind)
            .replace(sql.find("%2"), 2, item)
            .replace(sql.find("%3"), 2, unit);
        return sqlOn(path(), sql);
    };
    ASSERT_EQ(insert("test", "test.from_tomorrow", "mbar"), "");
    ASSERT_EQ(insert("flue", "flue.height", "m"), "");
    ASSERT_EQ(insert("test", "test.tight_end", "furlong"), "");
    EXPECT_EQ(file().entries.size(), 1U);
    type(Item::TightStart, "20.70", UnitCode::Millibar);
    auto changed = file().visit;
    changed.closed = true;
    valueOf(store->save(changed));
    store.reset();
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM entries"), "4");
    EXPECT_EQ(askSql(path(), "SELECT text FROM entries WHERE item = 'test.from_tomorrow'"), "20.71");
}

TEST_F(VisitRepository, listsVisitsNewestFirstWithWhatALineShows) {
    reg::Visit later = sampleVisit(sample);
    later.date = calendar::addDays(later.date, 1);
    later.engineer.reset();
    const auto second = valueOf(store->startVisit(later));
    static_cast<void>(issueOne(visit));
    const auto lines = valueOf(store->visits(""));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].visit.id, second);
    EXPECT_EQ(lines[0].engineer, "");
    EXPECT_EQ(lines[0].records, 0);
    EXPECT_EQ(lines[1].visit.id, visit);
    EXPECT_EQ(lines[1].engineer, sample.engineer.name);
    EXPECT_EQ(lines[1].customer, sample.customer.name);
    EXPECT_EQ(lines[1].address, sample.premises.address);
    EXPECT_EQ(lines[1].records, 1);
    EXPECT_EQ(valueOf(store->visitsOf(sample.premises.id)).size(), 2U);
    EXPECT_EQ(valueOf(store->visits("", 1)).size(), 1U);
}

/// Entries on appliances, rooms and situations.
class VisitSubjects : public VisitRepository {
  protected:
    Result<void> say(const reg::SubjectRef& on, Item item, const std::string& text) {
        reg::Entry entry;
        entry.visit = visit;
        entry.subject = on;
        entry.item = item;
        entry.text = text;
        return store->saveEntry(entry);
    }
    reg::Appliance put(const char* kind) {
        reg::Appliance appliance;
        appliance.id = reg::ApplianceId{store->newId()};
        appliance.installation = sample.installation.id;
        appliance.kind = kind;
        valueOf(store->save(appliance));
        return valueOf(store->appliance(appliance.id));
    }
    reg::Situation found() {
        reg::Situation situation;
        situation.id = reg::SituationId{store->newId()};
        situation.premises = sample.premises.id;
        situation.visit = visit;
        situation.foundAt = clock.now();
        situation.danger = reg::Danger::AtRisk;
        situation.what = "case seal perished";
        valueOf(store->save(situation));
        return situation;
    }
};

TEST_F(VisitSubjects, appliancesStandInTheirOrderAndARemovedOneStaysWhereItWasSpokenOf) {
    const auto boiler = put("condensing_boiler");
    auto fire = put("gas_fire");
    const auto hob = put("hotplate");
    valueOf(say(reg::subject(fire.id), Item::SafeToUse, "no"));
    fire.removedOn = day(2026, 11, 26);
    valueOf(store->save(fire));
    auto cooker = put("oven");
    cooker.removedOn = day(2026, 11, 26);
    valueOf(store->save(cooker));
    reopen();
    const auto kept = file();
    EXPECT_EQ(kept.appliances, (std::vector{boiler, fire, hob}));
    EXPECT_EQ(kept.choiceOf(reg::subject(fire.id), Item::SafeToUse), "no");
}

TEST_F(VisitSubjects, aRoomIsKnownByItsEntriesAndBelongsToItsPremises) {
    const auto kitchen = reg::subject(reg::RoomId{store->newId()});
    valueOf(say(kitchen, Item::RoomName, "kitchen"));
    valueOf(say(kitchen, Item::RoomCoAlarm, "alarm_works"));
    reopen();
    EXPECT_EQ(file().rooms(), std::vector{kitchen});
    EXPECT_EQ(file().find(kitchen, Item::RoomName)->text, "kitchen");
    EXPECT_EQ(errorOf(say({reg::SubjectKind::Room, {}}, Item::RoomName, "nowhere")), ErrorCode::NotFound);
    type(Item::TightStart, "20.5", UnitCode::Millibar);
    const auto test = file().tests.front().id.bytes;
    EXPECT_EQ(errorOf(say({reg::SubjectKind::Room, test}, Item::RoomName, "a test")), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(say(kitchen, Item::TightEnd, "20.5")), ErrorCode::NotFound);

    auto elsewhere = sample.premises;
    elsewhere.id = reg::PremisesId{store->newId()};
    valueOf(store->save(elsewhere));
    auto installation = sample.installation;
    installation.id = reg::InstallationId{store->newId()};
    installation.premises = elsewhere.id;
    valueOf(store->save(installation));
    auto next = sampleVisit(sample);
    next.id = {};
    next.premises = elsewhere.id;
    next.installation = installation.id;
    visit = valueOf(store->startVisit(next));
    EXPECT_EQ(errorOf(say(kitchen, Item::RoomName, "scullery")), ErrorCode::NotFound);
}

TEST_F(VisitSubjects, aSituationThatTheVisitFoundComesWithIt) {
    const auto situation = found();
    valueOf(say(reg::subject(situation.id), Item::SituationPermission, "given"));
    reopen();
    ASSERT_EQ(file().situations.size(), 1U);
    EXPECT_EQ(file().situations[0], situation);
    EXPECT_EQ(file().choiceOf(reg::subject(situation.id), Item::SituationPermission), "given");
}

}  // namespace
}  // namespace hearth::store
