// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/trace_repository.h"

#include "core/record/snapshot.h"
#include "tests/core/store/trace_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::GaugePressure;
using quantity::kMillibar;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST_F(TracesTest, areKeptWithTheVisitAndReadBackAsTheyWere) {
    const auto given = falling();
    const auto id = valueOf(store->keepTrace(given));
    reopen();
    ASSERT_EQ(kept().size(), 1U);
    reg::GaugeTrace expected;
    expected.id = id;
    expected.visit = visit;
    expected.test = given.test;
    expected.source = given.source;
    expected.channels = "pressure";
    expected.points = 1200;
    expected.milliseconds = 119900;
    expected.size = static_cast<int>(record::traceText(given.trace).size());
    expected.digest = record::sha256(record::traceText(given.trace));
    expected.marks = "timing@60";
    expected.keptAt = clock.now();
    expected.keptBy = kept()[0].keptBy;
    EXPECT_EQ(kept()[0], expected);
    EXPECT_EQ(record::traceText(valueOf(store->traceReadings(id))), record::traceText(given.trace));
}

TEST_F(TracesTest, sayTheirChannelsAndTakeLittleRoom) {
    auto given = falling();
    given.trace[5].barometer = quantity::AbsolutePressure(1012.5, kMillibar);
    given.trace[7].temperature = quantity::Temperature(17.25, quantity::kCelsius);
    const auto id = valueOf(store->keepTrace(given));
    EXPECT_EQ(kept()[0].channels, "pressure barometer temperature");
    const auto back = valueOf(store->traceReadings(id));
    EXPECT_NEAR(back[5].barometer->in(kMillibar), 1012.5, 1e-9);
    EXPECT_NEAR(back[7].temperature->in(quantity::kCelsius), 17.25, 1e-9);
    EXPECT_LT(std::stoi(askSql(path(), "SELECT length(packed) FROM trace_readings")), kept()[0].size / 2);
}

TEST_F(TracesTest, areReplacedMarkedAndTakenAwayEachAsOneStepOfUndo) {
    const auto first = valueOf(store->keepTrace(falling()));
    auto other = falling(20.9);
    other.replaces = first;
    const auto second = valueOf(store->keepTrace(other));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].id, second);
    valueOf(store->markTrace(second, {{reg::TraceEvent::DoorOpened, 1500}, {reg::TraceEvent::LetBy, 0}}));
    EXPECT_EQ(kept()[0].marks, "let_by@0 door_opened@1.5");
    valueOf(store->removeTrace(second));
    EXPECT_THAT(kept(), IsEmpty());

    valueOf(store->undo());
    EXPECT_EQ(kept().at(0).marks, "let_by@0 door_opened@1.5");
    valueOf(store->undo());
    EXPECT_EQ(kept().at(0).marks, "timing@60");
    valueOf(store->undo());
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].id, first);
    EXPECT_EQ(valueOf(store->traceReadings(first)).size(), 1200U);
    valueOf(store->undo());
    EXPECT_THAT(kept(), IsEmpty());
}

TEST_F(TracesTest, areInTheChangeLogOfTheirVisit) {
    static_cast<void>(valueOf(store->keepTrace(falling())));
    const auto log = valueOf(store->changesOfVisit(visit));
    const auto found = std::find_if(log.begin(), log.end(), [](const Change& change) {
        return change.table == "traces" && change.field == "source";
    });
    ASSERT_NE(found, log.end());
    EXPECT_EQ(found->after, std::optional<std::string>("logger.csv"));
    EXPECT_TRUE(store->verify());
}

TEST_F(TracesTest, areRefusedForWhatIsNone) {
    const auto refused = [&](const std::function<void(NewTrace&)>& spoil) {
        auto trace = falling();
        spoil(trace);
        return errorOf(store->keepTrace(trace));
    };
    EXPECT_EQ(refused([](NewTrace& one) { one.trace.clear(); }), ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewTrace& one) { std::swap(one.trace[1], one.trace[9]); }),
              ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewTrace& one) { one.trace[3].pressure = GaugePressure(std::nan(""), kMillibar); }),
              ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewTrace& one) { one.marks.resize(reg::kMostTraceMarks + 1); }),
              ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewTrace& one) { one.trace.resize(Traces::kMostTracePoints + 1); }),
              ErrorCode::TraceTooLong);
    EXPECT_EQ(refused([&](NewTrace& one) { one.test = {store->newId()}; }), ErrorCode::NotFound);
    EXPECT_EQ(refused([&](NewTrace& one) { one.replaces = reg::GaugeTraceId{store->newId()}; }),
              ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->markTrace({store->newId()}, {})), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->removeTrace({store->newId()})), ErrorCode::NotFound);
    EXPECT_EQ(errorOf(store->traceReadings({store->newId()})), ErrorCode::NotFound);
    EXPECT_THAT(kept(), IsEmpty());
    EXPECT_EQ(texts(), "0");
}

// Every bit of the packed form is turned in turn: never other readings, never a crash.
TEST_F(TracesTest, areNeverReadAsOthersThanWereKept) {
    const std::string text = record::traceText(falling().trace);
    const std::string whole = packed(text);
    EXPECT_EQ(unpacked(whole, text.size()), text);
    EXPECT_FALSE(unpacked(whole, text.size() + 1).has_value());
    EXPECT_FALSE(unpacked("", 0).has_value());
    EXPECT_FALSE(unpacked("abc", 3).has_value());
    const std::string digest = record::sha256(text);
    for (std::size_t byte = 0; byte < whole.size(); ++byte) {
        const auto back = unpacked(withFlippedBit(whole, byte, byte % 8), text.size());
        EXPECT_TRUE(!back || record::sha256(*back) != digest || *back == text) << byte;
    }
}

TEST_F(TracesTest, areSaidToBeDamagedByWhoeverReadsThem) {
    const auto id = valueOf(store->keepTrace(falling()));
    const auto damage = [&](const char* sql) {
        store.reset();
        ASSERT_EQ(sqlOn(path(), sql), "");
        reopen();
        const auto readings = store->traceReadings(id);
        EXPECT_EQ(errorOf(readings), ErrorCode::TraceAltered) << sql;
        EXPECT_THAT(readings.error().details, ElementsAre("logger.csv"));
        const Connection db(path(), Connection::Mode::ReadOnly);
        EXPECT_THAT(alteredTraces(db), ElementsAre("logger.csv"));
    };
    {
        const Connection db(path(), Connection::Mode::ReadOnly);
        EXPECT_THAT(alteredTraces(db), IsEmpty());
    }
    damage("UPDATE trace_readings SET packed = substr(packed, 1, length(packed) - 20)");
    damage("UPDATE trace_readings SET packed = x''");
    damage("DELETE FROM trace_readings");
    const auto outcome = runBackup(valueOf(store->backupJob()));
    ASSERT_TRUE(outcome.failure);
    EXPECT_EQ(outcome.failure->details.at(1), "logger.csv");
}

TEST_F(TracesTest, stayAsTheyAreWhenARecordShowsThem) {
    const auto before = valueOf(store->keepTrace(falling()));
    const auto record = issueOne(visit);
    const std::string json = valueOf(store->record(record)).snapshotJson;
    EXPECT_NE(json.find(kept()[0].digest), std::string::npos);
    EXPECT_EQ(errorOf(store->removeTrace(before)), ErrorCode::TraceInRecord);
    EXPECT_EQ(errorOf(store->markTrace(before, {})), ErrorCode::TraceInRecord);
    auto again = falling(20.2);
    again.replaces = before;
    EXPECT_EQ(errorOf(store->keepTrace(again)), ErrorCode::TraceInRecord);
    again.replaces.reset();
    const auto after = valueOf(store->keepTrace(again));
    EXPECT_EQ(kept().size(), 2U);
    valueOf(store->removeTrace(after));
    EXPECT_EQ(valueOf(store->dropUnusedBytes()) > 0, true);
    EXPECT_EQ(valueOf(store->traceReadings(before)).size(), 1200U);
}

// One that is kept and not used is shown by no record, and stays the engineer's to take away.
TEST_F(TracesTest, thatAreNotUsedAreInNoRecord) {
    const auto older = valueOf(store->keepTrace(falling()));
    clock.advance(std::chrono::seconds(1));
    auto given = falling(20.2);
    given.beside = NewTraceBeside{given.source, falling(20.15).trace};
    const auto used = valueOf(store->keepTrace(given));
    const auto beside = valueOf(store->visitFile(visit)).traceBeside(used)->id;
    static_cast<void>(issueOne(visit));
    EXPECT_EQ(errorOf(store->removeTrace(used)), ErrorCode::TraceInRecord);
    EXPECT_EQ(errorOf(store->removeTrace(beside)), ErrorCode::TraceInRecord);
    EXPECT_EQ(valueOf(store->recordOfTrace(older)), "");
    valueOf(store->removeTrace(older));
    EXPECT_EQ(kept().size(), 2U);
}

// What a record shows is known by its key: the same readings kept again are none of it.
TEST_F(TracesTest, ofTheSameReadingsAsARecordsAreNoneOfTheRecords) {
    const auto issued = valueOf(store->keepTrace(falling()));
    EXPECT_EQ(valueOf(store->recordOfTrace(issued)), "");
    const auto record = issueOne(visit);
    EXPECT_EQ(valueOf(store->recordOfTrace(issued)), valueOf(store->record(record)).line.header.record);
    const auto again = valueOf(store->keepTrace(falling()));
    EXPECT_EQ(valueOf(store->recordOfTrace(again)), "");
    valueOf(store->markTrace(again, {}));
    auto newer = falling(20.4);
    newer.replaces = again;
    const auto newest = valueOf(store->keepTrace(newer));
    valueOf(store->removeTrace(newest));
    EXPECT_EQ(errorOf(store->removeTrace(issued)), ErrorCode::TraceInRecord);
    EXPECT_EQ(valueOf(store->traceReadings(issued)).size(), 1200U);
    EXPECT_EQ(errorOf(store->recordOfTrace({store->newId()})), ErrorCode::NotFound);
}

// After an issue a newer one stands beside what the record shows: the newest is what the test's trace tells.
TEST_F(TracesTest, tellTheNewestOfEachTest) {
    static_cast<void>(valueOf(store->keepTrace(falling())));
    static_cast<void>(issueOne(visit));
    clock.advance(std::chrono::seconds(1));
    auto newer = falling(20.2);
    newer.source.name = "second logger.csv";
    static_cast<void>(valueOf(store->keepTrace(newer)));
    ASSERT_EQ(kept().size(), 2U);
    const auto file = valueOf(store->visitFile(visit));
    const auto told = valueOf(tracesOf(*store, file, valueOf(store->ruleBook())));
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].given.source.name, "second logger.csv");
}

TEST_F(TracesTest, keepWhatTheZeroWasAndNothingWhereNobodyLooked) {
    auto given = falling();
    static_cast<void>(valueOf(store->keepTrace(given)));
    given.source.zero = zeroed(clock);
    const auto id = valueOf(store->keepTrace(given));
    reopen();
    const auto both = kept();
    ASSERT_EQ(both.size(), 2U);
    const auto& with = both[0].id == id ? both[0] : both[1];
    const auto& without = both[0].id == id ? both[1] : both[0];
    EXPECT_EQ(with.source, given.source);
    EXPECT_FALSE(without.source.zero.isThere());
    EXPECT_EQ(without.source.zero, reg::TraceZero());
}

// Two gauges on one pipe: kept, marked, replaced, taken away and brought back together.
TEST_F(TracesTest, areKeptWithWhatASecondGaugeSawBesideThem) {
    auto given = falling();
    given.beside = NewTraceBeside{given.source, falling(20.55).trace};
    given.beside->source.name = "Red gauge";
    given.beside->source.zero = zeroed(clock);
    const auto id = valueOf(store->keepTrace(given));
    reopen();
    const auto file = valueOf(store->visitFile(visit));
    ASSERT_EQ(file.traces.size(), 2U);
    const auto* used = file.traceOf(given.test);
    ASSERT_NE(used, nullptr);
    EXPECT_EQ(used->id, id);
    EXPECT_EQ(used->source.name, "logger.csv");
    const auto* beside = file.traceBeside(id);
    ASSERT_NE(beside, nullptr);
    EXPECT_EQ(beside->source, given.beside->source);
    EXPECT_EQ(beside->test, std::optional(given.test));
    EXPECT_NE(beside->digest, used->digest);
    EXPECT_EQ(record::traceText(valueOf(store->traceReadings(beside->id))),
              record::traceText(given.beside->trace));
    const auto told = valueOf(tracesOf(*store, file, valueOf(store->ruleBook())));
    ASSERT_EQ(told.size(), 1U) << "a second gauge is no trace of its own";
    ASSERT_TRUE(told[0].given.second);
    EXPECT_EQ(told[0].given.second->source.name, "Red gauge");
    ASSERT_TRUE(told[0].compared);
    EXPECT_NEAR(told[0].compared->greatest.in(kMillibar), 0.05, 1e-9);

    auto newer = falling(20.2);
    newer.replaces = id;
    static_cast<void>(valueOf(store->keepTrace(newer)));
    EXPECT_EQ(kept().size(), 1U) << "what was beside the one that is replaced goes with it";
    valueOf(store->undo());
    EXPECT_EQ(kept().size(), 2U);
    valueOf(store->removeTrace(id));
    EXPECT_THAT(kept(), IsEmpty());
    valueOf(store->undo());
    EXPECT_EQ(kept().size(), 2U);
    EXPECT_TRUE(store->verify());
    given.beside->trace.clear();
    EXPECT_EQ(errorOf(store->keepTrace(given)), ErrorCode::TraceUnusable);
    const auto binned = valueOf(store->putIntoBin("visits", visit.bytes, "a visit"));
    valueOf(store->removeForGood(binned));
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM traces"), "0");
}

TEST_F(TracesTest, ofASecondGaugeStayWhenARecordShowsThem) {
    auto given = falling();
    given.beside = NewTraceBeside{given.source, falling(20.55).trace};
    const auto id = valueOf(store->keepTrace(given));
    const auto file = valueOf(store->visitFile(visit));
    const auto beside = file.traceBeside(id)->id;
    const auto record = issueOne(visit);
    const std::string json = valueOf(store->record(record)).snapshotJson;
    EXPECT_NE(json.find(file.traceBeside(id)->digest), std::string::npos);
    EXPECT_EQ(errorOf(store->removeTrace(beside)), ErrorCode::TraceInRecord);
    EXPECT_EQ(errorOf(store->removeTrace(id)), ErrorCode::TraceInRecord);
    EXPECT_EQ(kept().size(), 2U);
}

TEST_F(TracesTest, ofASecondGaugeThatIsPracticeAreInNoRecord) {
    auto given = falling();
    given.beside = NewTraceBeside{given.source, falling(20.55).trace};
    given.beside->source.name = "practice";
    given.beside->source.isSimulated = true;
    static_cast<void>(valueOf(store->keepTrace(given)));
    EXPECT_EQ(errorOf(store->issue(requestFor(*store, visit), pdfOf)), ErrorCode::TraceSimulated);
}

TEST_F(TracesTest, areInNoRecordWhenSimulated) {
    auto practice = falling();
    practice.source.origin = reg::TraceOrigin::Simulator;
    practice.source.isSimulated = true;
    practice.source.name = "practice";
    const auto id = valueOf(store->keepTrace(practice));
    const auto issued = store->issue(requestFor(*store, visit), pdfOf);
    EXPECT_EQ(errorOf(issued), ErrorCode::TraceSimulated);
    EXPECT_THAT(issued.error().details, ElementsAre("practice"));
    EXPECT_THAT(valueOf(store->recordsOf(visit)), IsEmpty());
    valueOf(store->removeTrace(id));
    static_cast<void>(issueOne(visit));
}

TEST_F(TracesTest, goWithTheirVisitAndTheirReadingsWithTheNextClearing) {
    static_cast<void>(valueOf(store->keepTrace(falling())));
    EXPECT_EQ(valueOf(store->dropUnusedBytes()), 0);
    const auto binned = valueOf(store->putIntoBin("visits", visit.bytes, "a visit"));
    EXPECT_EQ(errorOf(store->keepTrace(falling())), ErrorCode::InBin);
    valueOf(store->removeForGood(binned));
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM traces"), "0");
    EXPECT_GT(valueOf(store->dropUnusedBytes()), 0);
    EXPECT_EQ(texts(), "0");
}

}  // namespace
}  // namespace hearth::store
