// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/trace_repository.h"

#include "core/record/snapshot.h"
#include "core/record/trace_text.h"
#include "core/store/record_traces.h"
#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

class TracesTest : public KeptTest {
  protected:
    void SetUp() override {
        KeptTest::SetUp();
        visit = valueOf(store->startVisit(sampleVisit(sample)));
    }
    [[nodiscard]] NewTrace falling(double from = 20.6) const {
        NewTrace trace;
        trace.test = valueOf(store->visitFile(visit)).tests.front().id;
        trace.source.name = "logger.csv";
        trace.source.beganAt = clock.now();
        trace.source.resolution = {"0.01", quantity::UnitCode::Millibar};
        trace.marks = {{reg::TraceEvent::Timing, 60000}};
        for (int i = 0; i < 1200; ++i) {
            trace.trace.push_back(
                {Duration(i * 0.1, kSecond), GaugePressure(from - i / 100 * 0.01, kMillibar)});
        }
        return trace;
    }
    [[nodiscard]] std::vector<reg::GaugeTrace> kept() const {
        return valueOf(store->visitFile(visit)).traces;
    }
    [[nodiscard]] std::string texts() const { return askSql(path(), "SELECT count(*) FROM trace_readings"); }

    reg::VisitId visit;
};

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

class RoomTracesTest : public TracesTest {
  protected:
    [[nodiscard]] NewRoomTrace rising(double from = 0.0) const {
        NewRoomTrace trace;
        trace.visit = visit;
        trace.source.name = "room monitor";
        trace.source.origin = reg::TraceOrigin::Network;
        trace.source.beganAt = clock.now();
        trace.source.resolution = {"1", quantity::UnitCode::Ppm};
        for (int i = 0; i < 600; ++i) {
            trace.readings.push_back({Duration(i, kSecond), quantity::Share(from + i / 60, quantity::kPpm),
                                      i < 60 ? air::CoPlace::Outside : air::CoPlace::Room});
        }
        return trace;
    }
};

TEST_F(RoomTracesTest, areKeptWithTheVisitAndReadBackAsTheyWere) {
    static_cast<void>(valueOf(store->keepTrace(falling())));
    clock.advance(std::chrono::seconds(1));
    const auto id = valueOf(store->keepRoomTrace(rising()));
    reopen();
    ASSERT_EQ(kept().size(), 2U);
    const auto& row = kept()[1];
    EXPECT_EQ(row.id, id);
    EXPECT_EQ(row.test, std::nullopt);
    EXPECT_EQ(row.visit, visit);
    EXPECT_EQ(row.channels, "co");
    EXPECT_EQ(row.points, 600);
    EXPECT_EQ(row.milliseconds, 599000);
    EXPECT_EQ(row.source, rising().source);
    EXPECT_EQ(record::roomTraceText(valueOf(store->roomTraceReadings(id))),
              record::roomTraceText(rising().readings));
    EXPECT_EQ(errorOf(store->traceReadings(id)), ErrorCode::TraceAltered) << "it is none of pressures";
    EXPECT_TRUE(store->verify());
    auto again = rising(5.0);
    again.replaces = id;
    static_cast<void>(valueOf(store->keepRoomTrace(again)));
    EXPECT_EQ(kept().size(), 2U);
}

TEST_F(RoomTracesTest, areRefusedWhenUnusable) {
    const auto refused = [&](const std::function<void(NewRoomTrace&)>& spoil) {
        auto trace = rising();
        spoil(trace);
        return errorOf(store->keepRoomTrace(trace));
    };
    EXPECT_EQ(refused([](NewRoomTrace& one) { one.readings.clear(); }), ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewRoomTrace& one) { std::swap(one.readings[1], one.readings[9]); }),
              ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([](NewRoomTrace& one) {
                  one.readings[3].level = quantity::Share(std::nan(""), quantity::kPpm);
              }),
              ErrorCode::TraceUnusable);
    EXPECT_EQ(refused([&](NewRoomTrace& one) { one.visit = {store->newId()}; }), ErrorCode::NotFound);
    EXPECT_THAT(kept(), IsEmpty());
}

TEST_F(RoomTracesTest, areInNoRecordWhenSimulated) {
    auto practice = rising();
    practice.source.isSimulated = true;
    practice.source.name = "practice room";
    const auto id = valueOf(store->keepRoomTrace(practice));
    const auto issued = store->issue(requestFor(*store, visit), pdfOf);
    EXPECT_EQ(errorOf(issued), ErrorCode::TraceSimulated);
    EXPECT_THAT(issued.error().details, ElementsAre("practice room"));
    valueOf(store->removeTrace(id));
    static_cast<void>(issueOne(visit));
}

// A record of a tightness test says nothing of rooms.
TEST_F(RoomTracesTest, areSaidByRecordsOfRoomsAlone) {
    const auto id = valueOf(store->keepRoomTrace(rising()));
    const auto record = issueOne(visit);
    EXPECT_EQ(valueOf(store->record(record)).snapshotJson.find(kept()[0].digest), std::string::npos);
    auto request = requestFor(*store, visit);
    request.kind = record::RecordKind::RoomInvestigation;
    const auto ofRooms = valueOf(store->issue(request, pdfOf));
    EXPECT_NE(valueOf(store->record(ofRooms)).snapshotJson.find(kept()[0].digest), std::string::npos);
    EXPECT_EQ(errorOf(store->removeTrace(id)), ErrorCode::TraceInRecord);
}

TEST_F(RoomTracesTest, goWithTheirVisit) {
    static_cast<void>(valueOf(store->keepRoomTrace(rising())));
    const auto binned = valueOf(store->putIntoBin("visits", visit.bytes, "a visit"));
    EXPECT_EQ(errorOf(store->keepRoomTrace(rising())), ErrorCode::InBin);
    valueOf(store->removeForGood(binned));
    EXPECT_EQ(askSql(path(), "SELECT count(*) FROM traces"), "0");
    EXPECT_GT(valueOf(store->dropUnusedBytes()), 0);
    EXPECT_EQ(texts(), "0");
}

// A store of the step before keeps its traces of tests, and can keep one of a room.
TEST_F(RoomTracesTest, comeToAStoreThatHasTracesOfTests) {
    const auto before = valueOf(store->keepTrace(falling()));
    const auto older = inFolder("older.hearth");
    valueOf(Store::createFrom(older, clock, [&](record::WholeSink& sink) -> Result<void> {
        constexpr int kStepBefore = 10;
        if (const auto tables = sink.begin(kStepBefore); !tables) {
            return tl::unexpected(tables.error());
        }
        return store->readWhole([](const record::WholeTable&) { return Result<void>(); },
                                [&](const record::WholeTable& table, const record::WholeRow& row) {
                                    return sink.take(table, row);
                                });
    }));
    store.reset();
    store = valueOf(Store::open(older, Access::Write, clock));
    EXPECT_TRUE(store->verify());
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_TRUE(kept()[0].test);
    EXPECT_EQ(valueOf(store->traceReadings(before)).size(), 1200U);
    EXPECT_EQ(valueOf(store->roomTraceReadings(valueOf(store->keepRoomTrace(rising())))).size(), 600U);
}

// A store of the step before has none, loses nothing, and can keep some.
TEST_F(TracesTest, comeToAnOlderStore) {
    const auto record = issueOne(visit);
    const auto older = inFolder("older.hearth");
    valueOf(Store::createFrom(older, clock, [&](record::WholeSink& sink) -> Result<void> {
        constexpr int kBefore = 9;
        const auto tables = sink.begin(kBefore);
        if (!tables) {
            return tl::unexpected(tables.error());
        }
        for (const auto& table : *tables) {
            EXPECT_NE(table.name, "traces");
        }
        const auto isOlders = [](const record::WholeTable& table) {
            return table.name != "traces" && table.name != "trace_readings";
        };
        return store->readWhole([](const record::WholeTable&) { return Result<void>(); },
                                [&](const record::WholeTable& table, const record::WholeRow& row) {
                                    return isOlders(table) ? sink.take(table, row) : Result<void>();
                                });
    }));
    store.reset();
    store = valueOf(Store::open(older, Access::Write, clock));
    EXPECT_TRUE(store->verify());
    EXPECT_EQ(valueOf(store->record(record)).line.visit, visit);
    EXPECT_THAT(kept(), IsEmpty());
    const auto id = valueOf(store->keepTrace(falling()));
    EXPECT_EQ(valueOf(store->traceReadings(id)).size(), 1200U);
}

}  // namespace
}  // namespace hearth::store
