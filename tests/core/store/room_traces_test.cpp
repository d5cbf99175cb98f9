// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/traces.h"
#include "tests/core/store/trace_fixture.h"

#include <gmock/gmock.h>

namespace hearth::store {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST_F(RoomTracesTest, areKeptWithTheVisitAndReadBackAsTheyWere) {
    static_cast<void>(valueOf(store->keepTrace(falling())));
    clock.advance(std::chrono::seconds(1));
    const auto id = valueOf(store->keepRoomTrace(rising()));
    reopen();
    ASSERT_EQ(kept().size(), 2U);
    const auto row = kept()[1];
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

/// What an older schema has of the store's rows: tables and columns that came since are left out.
Result<void> handToOlder(const Store& store, record::WholeSink& sink, int schema) {
    const auto tables = sink.begin(schema);
    if (!tables) {
        return tl::unexpected(tables.error());
    }
    return store.readWhole(
        [](const record::WholeTable&) { return Result<void>(); },
        [&](const record::WholeTable& table, const record::WholeRow& row) -> Result<void> {
            const auto older = std::find_if(tables->begin(), tables->end(),
                                            [&](const auto& one) { return one.name == table.name; });
            if (older == tables->end()) {
                return {};
            }
            record::WholeRow cells;
            for (const auto& column : older->columns) {
                const auto at = std::find_if(table.columns.begin(), table.columns.end(),
                                             [&](const auto& one) { return one.name == column.name; });
                cells.push_back(row.at(static_cast<std::size_t>(at - table.columns.begin())));
            }
            return sink.take(*older, cells);
        });
}

class OlderTracesTest : public RoomTracesTest {
  protected:
    void goOnFrom(int schema) {
        const auto older = inFolder("older.hearth");
        valueOf(Store::createFrom(
            older, clock, [&](record::WholeSink& sink) { return handToOlder(*store, sink, schema); }));
        store.reset();
        store = valueOf(Store::open(older, Access::Write, clock));
        EXPECT_TRUE(store->verify());
    }
};

// A store of the step before keeps its traces of tests, and can keep one of a room.
TEST_F(OlderTracesTest, comeToAStoreThatHasTracesOfTests) {
    const auto before = valueOf(store->keepTrace(falling()));
    goOnFrom(10);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_TRUE(kept()[0].test);
    EXPECT_EQ(valueOf(store->traceReadings(before)).size(), 1200U);
    EXPECT_EQ(valueOf(store->roomTraceReadings(valueOf(store->keepRoomTrace(rising())))).size(), 600U);
}

// Before zero checks and second gauges were kept: its traces say nothing of either, and stay in their
// records.
TEST_F(OlderTracesTest, ofAnOlderStoreSayNothingOfAZeroOrASecondGauge) {
    const auto before = valueOf(store->keepTrace(falling()));
    static_cast<void>(issueOne(visit));
    goOnFrom(11);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_FALSE(kept()[0].source.zero.isThere());
    EXPECT_FALSE(kept()[0].beside);
    EXPECT_EQ(errorOf(store->removeTrace(before)), ErrorCode::TraceInRecord);
    auto newer = falling(20.2);
    newer.source.zero = zeroed(clock);
    newer.beside = NewTraceBeside{newer.source, falling().trace};
    static_cast<void>(valueOf(store->keepTrace(newer)));
    EXPECT_EQ(kept().size(), 3U);
}

// A store of the step before has none, loses nothing, and can keep some.
TEST_F(OlderTracesTest, comeToAnOlderStore) {
    const auto record = issueOne(visit);
    goOnFrom(9);
    EXPECT_EQ(valueOf(store->record(record)).line.visit, visit);
    EXPECT_THAT(kept(), IsEmpty());
    const auto id = valueOf(store->keepTrace(falling()));
    EXPECT_EQ(valueOf(store->traceReadings(id)).size(), 1200U);
}

}  // namespace
}  // namespace hearth::store
