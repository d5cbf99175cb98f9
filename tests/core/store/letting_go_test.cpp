// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: UK GDPR articles 5(1)(e), 17 and 17(3) (from memory). Six years are common practice, for
// the Limitation Act 1980 (from memory).
#include "core/store/letting_go.h"

#include "core/store/backups.h"
#include "core/store/migrations.h"
#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr std::chrono::hours kDay{24};

/// A record of 25 November 2026 that says what stands nowhere else.
class LettingGoTest : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(sample)));
        id = issue("Remark of Brackenbury");
        sample.premises.address.line1 = "9 Ford End";  // what the record says is history
        valueOf(store->save(sample.premises));
    }
    RecordId issue(const std::string& remark, std::optional<RecordId> supersedes = {}) {
        auto request = requestFor(*store, visit);
        request.snapshot.document.blocks = {record::Paragraph{"Remarks", remark, false}};
        request.supersedes = supersedes;
        request.reason = supersedes ? "Reason of Brackenbury" : "";
        return valueOf(store->issue(request, [](const auto& document, const auto& digest) {
            return Result<std::string>("%PDF-1.7 pages of Brackenbury " + pdfOf(document, digest));
        }));
    }
    void goTo(const char* iso) {
        Instant at{};
        ASSERT_TRUE(parseInstant(std::string(iso) + "T09:46:00.000Z", at));
        clock.set(at);
    }
    [[nodiscard]] RecordLine line(RecordId of) { return *findLine(of); }
    [[nodiscard]] std::optional<RecordLine> findLine(RecordId of) {
        for (const auto& one : valueOf(store->records({}))) {
            if (one.id == of) {
                return one;
            }
        }
        return std::nullopt;
    }
    [[nodiscard]] std::string fileBytes() { return hearth::testing::readFile(path()); }

    reg::VisitId visit;
    RecordId id;
};

TEST_F(LettingGoTest, leavesNumberDatesAndDigestsAndAWholeChain) {
    const auto before = line(id);
    store->actAs("Tamsin Ember");
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    const auto after = line(id);
    EXPECT_EQ(record::headerDigest(after.header), record::headerDigest(before.header));
    EXPECT_EQ(after.visit, before.visit);
    EXPECT_EQ(after.premises, before.premises);
    EXPECT_EQ(after.address + after.customer + after.reason, "");
    EXPECT_EQ(after.outcome, rulebook::Outcome::NoVerdict) << "no verdict that nothing stands for";
    ASSERT_TRUE(after.letGo.has_value());
    EXPECT_EQ(after.letGo->keptUntil, day(2032, 11, 25));
    EXPECT_EQ(after.letGo->by, "Tamsin Ember");
    EXPECT_EQ(after.letGo->at, clock.now());
    EXPECT_EQ(store->record(id).error(),
              (Error{ErrorCode::RecordErased, {before.header.record, "2032-11-26", "2032-11-25"}}));
    EXPECT_TRUE(store->verify());
    const auto next = issue("the chain goes on");
    EXPECT_TRUE(store->record(next));
    EXPECT_TRUE(store->verify());
}

TEST_F(LettingGoTest, saysSoInEventsLogAndHealth) {
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    const auto events = valueOf(store->recordEvents(id));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].event, "payload erased");
    EXPECT_EQ(events[0].detail, "2032-11-25 six_years");
    const auto log = valueOf(store->changesOfPremises(sample.premises.id, 1, {}));
    EXPECT_EQ(log.lines.at(0).table, "record_headers");
    EXPECT_EQ(log.lines.at(0).row, id.text());
    EXPECT_EQ(log.lines.at(0).after, std::optional<std::string>("2032-11-25 six_years"));
    EXPECT_EQ(valueOf(store->changesOfRecord(id, 1, {})).lines.at(0).id, log.lines.at(0).id);
    EXPECT_FALSE(valueOf(store->undo()).has_value()) << "it can't be taken back";
    store.reset();
    const auto health = valueOf(Store::inspect(path()));
    EXPECT_TRUE(health.chain);
    EXPECT_EQ(health.records, 1);
    EXPECT_EQ(health.letGo, 1);
}

TEST_F(LettingGoTest, leavesNothingInTheFileAndInTheSearch) {
    issue("another");
    EXPECT_THAT(valueOf(store->records("highcroft")), SizeIs(1));
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    EXPECT_THAT(valueOf(store->records("highcroft")), IsEmpty()) << "the other one says 9 Ford End";
    EXPECT_THAT(valueOf(store->records(line(id).header.record)), SizeIs(1)) << "the number finds it";
    EXPECT_EQ(valueOf(store->staleInSearch()), 0);
    const auto hits = valueOf(store->find(line(id).header.record, 10));
    ASSERT_THAT(hits.hits, SizeIs(1));
    EXPECT_FALSE(hits.hits[0].outcome.has_value());
    store.reset();
    EXPECT_EQ(fileBytes().find("Remark of Brackenbury"), std::string::npos);
    EXPECT_NE(fileBytes().find("pages of Brackenbury"), std::string::npos) << "of the other one";
}

TEST_F(LettingGoTest, leavesNoPagesBehind) {
    goTo("2032-11-26");
    EXPECT_NE(fileBytes().find("pages of Brackenbury"), std::string::npos);
    valueOf(store->letGo({{id}, {}}));
    store.reset();
    EXPECT_EQ(fileBytes().find("Brackenbury"), std::string::npos);
}

TEST_F(LettingGoTest, anotherProgramFindsTheChainWhole) {
    issue("another");
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    const std::string check =
        std::string("python3 ") + HEARTH_SOURCE_DIR + "/tests/core/store/check_chain.py " + path().string();
    EXPECT_EQ(hearth::testing::runCommand(check).text, "whole: 2 records, 1 of them let go\n");
}

TEST_F(LettingGoTest, backupsAndWhatIsRestoredFromThemAreWhole) {
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    const auto outcome = runBackup(valueOf(store->backupJob()));
    ASSERT_FALSE(outcome.failure) << codeText(outcome.failure->code);
    store.reset();
    ASSERT_TRUE(restoreBackup(outcome.made, {}, path(), clock));
    store = valueOf(Store::open(path(), Access::Write, clock));
    EXPECT_EQ(errorOf(store->record(id)), ErrorCode::RecordErased);
    EXPECT_TRUE(store->verify());
}

TEST_F(LettingGoTest, isRefusedOnTheLastDayOfTheKeeping) {
    goTo("2032-11-25");
    EXPECT_EQ(store->letGo({{id}, {}}).error(),
              (Error{ErrorCode::KeepingNotOver, {line(id).header.record, "2032-11-25"}}));
    EXPECT_TRUE(store->record(id));
}

TEST_F(LettingGoTest, isAllOrNothing) {
    clock.advance(kDay);
    const auto younger = issue("a day younger");
    goTo("2032-11-26");
    EXPECT_EQ(errorOf(store->letGo({{id, younger}, {}})), ErrorCode::KeepingNotOver);
    EXPECT_TRUE(store->record(id));
    EXPECT_THAT(valueOf(store->recordEvents(id)), IsEmpty());
    EXPECT_EQ(errorOf(store->letGo({{id, RecordId{store->newId()}}, {}})), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->letGo({{id, id}, {}})), ErrorCode::RecordErased) << "once is enough";
    EXPECT_TRUE(store->record(id));
}

TEST_F(LettingGoTest, isRefusedWhileSomethingUnsafeIsOpenThere) {
    reg::Situation open;
    open.id = {store->newId()};
    open.premises = sample.premises.id;
    open.foundAt = clock.now();
    valueOf(store->save(open));
    goTo("2032-11-26");
    EXPECT_EQ(errorOf(store->letGo({{id}, {}})), ErrorCode::KeptForSituation);
    open.closedAt = clock.now();
    valueOf(store->save(open));
    EXPECT_TRUE(store->letGo({{id}, {}}));
}

TEST_F(LettingGoTest, nobodyGetsRidOfWhatWasTamperedWith) {
    store.reset();
    ASSERT_EQ(sqlOn(path(), "DROP TRIGGER record_pdfs_stay; UPDATE record_pdfs SET pdf = x'00'"), "");
    store = valueOf(Store::open(path(), Access::Write, clock));
    goTo("2032-11-26");
    EXPECT_EQ(errorOf(store->letGo({{id}, {}})), ErrorCode::RecordAltered);
}

TEST_F(LettingGoTest, anOldRevisionGoesAndTheNewOneStays) {
    clock.advance(kDay);
    const auto newer = issue("put right", id);
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    EXPECT_EQ(line(id).supersededBy, std::optional(newer));
    EXPECT_EQ(line(newer).supersedes, std::optional(id));
    EXPECT_TRUE(store->record(newer));
    goTo("2032-11-27");
    valueOf(store->letGo({{newer}, {}}));
    EXPECT_EQ(line(newer).supersedes, std::optional(id)) << "what it replaced stays known";
    EXPECT_TRUE(store->verify());
    store.reset();
    EXPECT_THAT(fileBytes(), ::testing::Not(HasSubstr("Brackenbury"))) << "nor its reason";
}

TEST_F(LettingGoTest, aRecordThatWentIsNotRevised) {
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    auto request = requestFor(*store, visit);
    request.supersedes = id;
    EXPECT_EQ(errorOf(store->issue(request, pdfOf)), ErrorCode::RecordErased);
}

TEST_F(LettingGoTest, listsWithRuleAndHold) {
    EXPECT_THAT(valueOf(store->mayGo(day(2032, 11, 25))), IsEmpty());
    const auto over = valueOf(store->mayGo(day(2032, 11, 26)));
    ASSERT_THAT(over, SizeIs(1));
    EXPECT_EQ(over[0].record.id, id);
    EXPECT_EQ(over[0].rule, record::KeepRule::SixYears);
    EXPECT_FALSE(over[0].hold);
    goTo("2032-11-26");
    valueOf(store->letGo({{id}, {}}));
    EXPECT_THAT(valueOf(store->mayGo(day(2032, 11, 26))), IsEmpty());
}

TEST_F(LettingGoTest, aHoldKeepsEveryRevisionUntilItIsLifted) {
    const auto newer = issue("put right", id);
    store->actAs("Tamsin Ember");
    EXPECT_EQ(errorOf(store->hold(id, "  ")), ErrorCode::HoldWithoutReason);
    EXPECT_EQ(errorOf(store->hold({store->newId()}, "x")), ErrorCode::NotFound);
    valueOf(store->hold(id, "claim about a leak"));
    goTo("2032-11-26");
    const auto over = valueOf(store->mayGo(day(2032, 11, 26)));
    ASSERT_THAT(over, SizeIs(2));
    EXPECT_THAT(valueOf(store->mayGo(day(2032, 11, 26), 1)), SizeIs(1));
    for (const auto& one : over) {
        ASSERT_TRUE(one.hold);
        EXPECT_EQ(one.hold->reason, "claim about a leak");
        EXPECT_EQ(one.hold->by, "Tamsin Ember");
    }
    EXPECT_EQ(store->letGo({{newer}, {}}).error(),
              (Error{ErrorCode::KeptOnHold, {line(id).header.record, "claim about a leak"}}));
    valueOf(store->hold(newer, "claim 17"));  // another reason
    EXPECT_EQ(store->letGo({{id}, {}}).error().details.back(), "claim 17");
    valueOf(store->liftHold(id));
    valueOf(store->liftHold(id));  // nothing to lift
    EXPECT_THAT(valueOf(store->recordEvents(id)), SizeIs(2)) << "set and lifted";
    valueOf(store->letGo({{id, newer}, {}}));
    EXPECT_EQ(errorOf(store->hold(id, "too late")), ErrorCode::RecordErased);
}

TEST_F(LettingGoTest, itsEventsAreNobodyElsesToNote) {
    goTo("2032-11-26");
    for (const char* event : {"payload erased", "hold set", "hold lifted"}) {
        EXPECT_EQ(errorOf(store->noteEvent(id, event, "2032-11-25 six_years")), ErrorCode::StoreFailed);
    }
    EXPECT_TRUE(store->record(id));
}

TEST_F(LettingGoTest, lettersGoToo) {
    reg::Letter letter;
    letter.id = {store->newId()};
    letter.premises = sample.premises.id;
    letter.party = sample.customer.id;
    letter.kind = "reminder";
    letter.text = "Dear Ottoline";
    letter.sentTo = "Ottoline's house";
    letter.at = clock.now();
    valueOf(store->save(letter));
    static_cast<void>(valueOf(store->putIntoBin("letters", letter.id.bytes, "to Ottoline")));
    EXPECT_THAT(valueOf(store->lettersMayGo(day(2032, 11, 25))), IsEmpty());
    goTo("2032-11-25");
    EXPECT_EQ(errorOf(store->letGo({{}, {letter.id}})), ErrorCode::KeepingNotOver);
    goTo("2032-11-26");
    const auto over = valueOf(store->lettersMayGo(day(2032, 11, 26)));
    ASSERT_THAT(over, SizeIs(1));
    EXPECT_EQ(over[0].letter.id, letter.id);
    EXPECT_EQ(over[0].to, sample.customer.name);
    EXPECT_EQ(over[0].keptUntil, day(2032, 11, 25));
    valueOf(store->letGo({{id}, {letter.id}}));
    EXPECT_THAT(valueOf(store->lettersMayGo(day(2032, 11, 26))), IsEmpty());
    EXPECT_TRUE(store->verify());
    store.reset();
    EXPECT_EQ(fileBytes().find("Ottoline"), std::string::npos);
}

TEST(KeptUntil, isTheLongestForAKindThatThisProgramDoesNotKnow) {
    record::ChainHeader header;
    header.issuedAt = "2026-11-25T09:46:00.000Z";
    header.kind = "of_tomorrow";
    EXPECT_EQ(keptUntil(header), day(2041, 11, 25));
}

// An older program would call what was let go altered: it must not read the store.
TEST_F(LettingGoTest, noOlderProgramReadsTheStore) {
    int step = 0;
    for (const auto& migration : shippedMigrations()) {
        step = migration.name.find("letting_go") != std::string_view::npos ? migration.number : step;
    }
    ASSERT_GT(step, 0);
    EXPECT_GE(std::stoi(askSql(path(), "SELECT min_reader FROM store")), step);
}

// What somebody can try with another program ---------------------------------------------------------------

std::string eventSql(const std::string& detail) {
    return "INSERT INTO record_events (id, position, record, event, detail, by, at) SELECT randomblob(16), "
           "77, id, 'payload erased', '" +
           detail + "', 'x', '2032-11-26T09:46:00.000Z' FROM record_headers;";
}

struct Try {
    const char* what;
    std::string sql;
};
class PayloadsStay : public LettingGoTest, public ::testing::WithParamInterface<Try> {};

TEST_P(PayloadsStay, againstAnotherProgram) {
    store.reset();
    EXPECT_NE(sqlOn(path(), GetParam().sql), "");
    reopen();
    EXPECT_TRUE(store->record(id));
    EXPECT_TRUE(store->verify());
}

INSTANTIATE_TEST_SUITE_P(
    Statements, PayloadsStay,
    ::testing::Values(Try{"deleted_snapshot", "DELETE FROM record_snapshots"},
                      Try{"deleted_pdf", "DELETE FROM record_pdfs"},
                      Try{"emptied_snapshot",
                          "UPDATE record_snapshots SET json = x'', address = '', customer = '', reason "
                          "= '', outcome = 'no_verdict'"},
                      Try{"emptied_pdf", "UPDATE record_pdfs SET pdf = x''"},
                      Try{"no_day", eventSql("six_years")},
                      Try{"no_such_day", eventSql("2032-02-30 six_years")},
                      Try{"before_its_day", eventSql("2032-11-27 six_years")}),
    [](const auto& named) { return std::string(named.param.what); });

/// Once a record has gone.
class GoneStaysGone : public LettingGoTest {
  protected:
    void SetUp() override {
        LettingGoTest::SetUp();
        clock.advance(kDay);
        newer = issue("put right", id);
        goTo("2032-11-27");
        valueOf(store->letGo({{id, newer}, {}}));
        number = line(id).header.record;
    }
    void change(const std::string& sql) {
        store.reset();
        ASSERT_EQ(sqlOn(path(),
                        "PRAGMA foreign_keys = OFF; DROP TRIGGER record_snapshots_stay; DROP TRIGGER "
                        "record_pdfs_stay; DROP TRIGGER record_events_stay; DROP TRIGGER "
                        "record_events_are_kept;" +
                            sql),
                  "");
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    RecordId newer;
    std::string number;
};

TEST_F(GoneStaysGone, theTriggersHoldWhatIsLeft) {
    store.reset();
    for (const char* sql :
         {"UPDATE record_snapshots SET json = x'00'", "UPDATE record_pdfs SET pdf = x'00'",
          "UPDATE record_snapshots SET outcome = 'pass'", "DELETE FROM record_pdfs",
          "DELETE FROM record_snapshots", "DELETE FROM record_events", "DELETE FROM record_headers"}) {
        EXPECT_NE(sqlOn(path(), sql), "") << sql;
    }
    EXPECT_NE(sqlOn(path(), eventSql("2032-11-25 six_years")), "") << "twice";
}

TEST_F(GoneStaysGone, whatIsMadeUpAboutItIsFound) {
    const Error altered{ErrorCode::RecordAltered, {number, "erasure"}};
    for (const char* sql : {
             "UPDATE record_snapshots SET outcome = 'pass'",
             "UPDATE record_snapshots SET customer = 'Somebody'",
             "UPDATE record_snapshots SET json = CAST('{}' AS BLOB)",
             "UPDATE record_pdfs SET pdf = CAST('%PDF' AS BLOB)",
             "UPDATE record_snapshots SET premises = randomblob(16)",
             "UPDATE record_snapshots SET visit = randomblob(16)",
             "UPDATE record_snapshots SET supersedes = NULL WHERE supersedes IS NOT NULL",
             "UPDATE record_events SET by = 'Somebody'",
             "UPDATE record_events SET detail = '2031-11-25 six_years'",
         }) {
        const std::string bytes = fileBytes();
        change(sql);
        EXPECT_EQ(store->verify().error(), altered) << sql;
        const bool isOfNewer = std::string_view(sql).find("supersedes") != std::string_view::npos;
        EXPECT_EQ(store->record(isOfNewer ? newer : id).error(), altered) << sql;
        store.reset();
        hearth::testing::writeFile(path(), bytes);
        store = valueOf(Store::open(path(), Access::Write, clock));
    }
    EXPECT_TRUE(store->verify());
}

TEST_F(GoneStaysGone, withoutItsEventItIsARecordThatLacksWhatItSaid) {
    change("DELETE FROM record_events");
    EXPECT_EQ(store->verify().error(), (Error{ErrorCode::RecordAltered, {number, "snapshot"}}));
}

TEST_F(LettingGoTest, anEventAloneDoesNotPassForLettingGo) {
    store.reset();
    ASSERT_EQ(sqlOn(path(), eventSql("2032-11-25 six_years")), "");
    reopen();
    EXPECT_EQ(errorOf(store->verify()), ErrorCode::RecordAltered) << "the sealed log knows nothing of it";
    EXPECT_EQ(errorOf(store->record(id)), ErrorCode::RecordAltered);
}

}  // namespace
}  // namespace hearth::store
