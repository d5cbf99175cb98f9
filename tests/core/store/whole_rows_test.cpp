// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/whole_rows.h"

#include "tests/core/store/kept_fixture.h"

#include <gmock/gmock.h>
#include <random>

namespace hearth::store {
namespace {

using Rows = std::vector<std::pair<std::string, record::WholeRow>>;

Rows rowsOf(const Store& store) {
    Rows rows;
    valueOf(store.readWhole([](const record::WholeTable&) { return Result<void>(); },
                            [&](const record::WholeTable& table, const record::WholeRow& row) {
                                rows.emplace_back(table.name, row);
                                return Result<void>();
                            }));
    return rows;
}

/// Hands rows over as a file would.
Result<void> hand(record::WholeSink& sink, int schema, const Rows& rows) {
    const auto tables = sink.begin(schema);
    if (!tables) {
        return tl::unexpected(tables.error());
    }
    for (const auto& [name, row] : rows) {
        const auto table =
            std::find_if(tables->begin(), tables->end(), [&](const auto& one) { return one.name == name; });
        if (const auto taken = sink.take(*table, row); !taken) {
            return taken;
        }
    }
    return {};
}

class WholeRows : public KeptTest {
  protected:
    [[nodiscard]] Result<void> copy(const Rows& rows) {
        return Store::createFrom(inFolder("copy.hearth"), clock,
                                 [&](record::WholeSink& sink) { return hand(sink, store->schema(), rows); });
    }
    [[nodiscard]] std::unique_ptr<Store> opened() {
        return valueOf(Store::open(inFolder("copy.hearth"), Access::Write, clock));
    }
};

/// Every kind of action once and more, in an order drawn by lot: drafts, records, bin, letters, the log of
/// all of it.
TEST_F(WholeRows, makeAnEqualStore) {
    std::mt19937 lot(20261125);  // a fixed seed: the same store each time
    for (int i = 0; i < 200; ++i) {
        const auto& actions = keptActions();
        const auto& action = actions[lot() % actions.size()];
        if (!action.prepare || action.prepare(*store, sample)) {
            static_cast<void>(action.run(*store, sample));  // some are refused at that moment, which is fine
        }
        clock.advance(std::chrono::minutes(7));
    }
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    static_cast<void>(issueOne(visit));
    const Rows rows = rowsOf(*store);
    std::set<std::string> tables;
    for (const auto& [name, row] : rows) {
        tables.insert(name);
    }
    EXPECT_GE(tables.size(), 20U) << "too little of a store to tell anything";
    valueOf(copy(rows));
    const auto other = opened();
    EXPECT_EQ(rowsOf(*other), rows);
    valueOf(other->verify());
    EXPECT_EQ(valueOf(other->premises("highcroft")).size(), valueOf(store->premises("highcroft")).size())
        << "found by its words";
    EXPECT_EQ(valueOf(other->records("")).size(), 1U);
}

TEST_F(WholeRows, areRefusedWhenTheyDoNotHoldTogether) {
    const auto visit = valueOf(store->startVisit(sampleVisit(sample)));
    static_cast<void>(issueOne(visit));
    const Rows rows = rowsOf(*store);
    const auto without = [&](const std::string& table) {
        Rows less;
        std::copy_if(rows.begin(), rows.end(), std::back_inserter(less),
                     [&](const auto& row) { return row.first != table; });
        return less;
    };
    for (const char* table : {"premises", "visits", "record_headers", "series", "store"}) {
        EXPECT_FALSE(copy(without(table)).has_value()) << table;
        EXPECT_FALSE(std::filesystem::exists(inFolder("copy.hearth"))) << table;
    }
    Rows altered = rows;
    for (auto& [name, row] : altered) {
        if (name == "record_pdfs") {
            std::get<record::WholeBytes>(row[1]).bytes += " ";
        }
    }
    EXPECT_EQ(errorOf(copy(altered)), ErrorCode::RecordAltered);
    const auto newer = Store::createFrom(inFolder("copy.hearth"), clock, [&](record::WholeSink& sink) {
        return hand(sink, store->schema() + 1, rows);
    });
    EXPECT_EQ(errorOf(newer), ErrorCode::ExportNewer);
    EXPECT_FALSE(std::filesystem::exists(inFolder("copy.hearth")));
    valueOf(copy(rows));
    EXPECT_FALSE(copy(rows).has_value()) << "what is there is not written over";
}

TEST_F(WholeRows, stopWhenTheReaderSaysSo) {
    int taken = 0;
    const auto stopped =
        store->readWhole([](const record::WholeTable&) { return Result<void>(); },
                         [&](const record::WholeTable&, const record::WholeRow&) -> Result<void> {
                             ++taken;
                             return fail(ErrorCode::FileUnwritable, {"x", "full"});
                         });
    EXPECT_EQ(errorOf(stopped), ErrorCode::FileUnwritable);
    EXPECT_EQ(taken, 1);
}

}  // namespace
}  // namespace hearth::store
