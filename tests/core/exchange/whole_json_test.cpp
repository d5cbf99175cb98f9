// SPDX-License-Identifier: GPL-3.0-or-later
// base64: RFC 4648, section 10, its test vectors.
#include "core/exchange/whole_json.h"

#include "tests/core/exchange/fuzz_whole.h"

#include <gtest/gtest.h>

namespace hearth::exchange {
namespace {

using hearth::testing::RowsSink;
using record::WholeBytes;
using record::WholeRow;

std::string written(const RowsSink& sink) {
    std::string text;
    WholeWriter writer([&](std::string_view more) {
        text += more;
        return Result<void>();
    });
    EXPECT_TRUE(writer.head(4, "0.1.0", "2026-11-25T10:00:00Z").has_value());
    for (const auto& table : RowsSink::tables()) {
        EXPECT_TRUE(writer.table(table).has_value());
        for (const auto& [name, row] : sink.rows) {
            if (name == table.name) {
                EXPECT_TRUE(writer.row(table, row).has_value());
            }
        }
    }
    EXPECT_TRUE(writer.end().has_value());
    return text;
}

void fillSample(RowsSink& sink) {
    UuidBytes id{};
    id[0] = 1;
    sink.rows.push_back(
        {"people", WholeRow{id, std::string("Siân \"x\"\n\t ŵ"), std::monostate(), std::int64_t{-5}}});
    id[0] = 2;
    sink.rows.push_back(
        {"people", WholeRow{id, std::string(), std::string("y"), std::int64_t{9007199254740993}}});
    for (const std::string bytes : {"", "f", "fo", "foo", "foob", "fooba", "foobar"}) {
        sink.rows.push_back({"papers", WholeRow{WholeBytes{bytes}, WholeBytes{"{\"a\":\"ŵ\"}"}}});
    }
    sink.rows.push_back({"papers", WholeRow{WholeBytes{std::string("\0\xFF\x80", 3)}, WholeBytes{""}}});
}

TEST(WholeJson, comesBackAsItWent) {
    RowsSink sink;
    fillSample(sink);
    const std::string text = written(sink);
    RowsSink read;
    const auto done = readWholeJson(text, read, "x");
    ASSERT_TRUE(done.has_value()) << done.error().details[1] << ' ' << done.error().details[2];
    EXPECT_EQ(read.rows, sink.rows);
    EXPECT_EQ(read.schema, 4);
    for (const char* vector :
         {"\"\"", "\"Zg==\"", "\"Zm8=\"", "\"Zm9v\"", "\"Zm9vYg==\"", "\"Zm9vYmE=\"", "\"Zm9vYmFy\""}) {
        EXPECT_NE(text.find(std::string("\"bytes\":") + vector), std::string::npos) << vector;
    }
    const RowsSink none;
    EXPECT_TRUE(readWholeJson(written(none), read, "x").has_value());
}

struct WholeSlip {
    const char* right;
    const char* wrong;
    const char* where;
    const char* what;
};

TEST(WholeJson, namesEverySlip) {
    const std::string good =
        R"({"format":"hearthledger store","version":1,"schema":4,"tables":{"people":[{"id":"00000000-0000-7000-8000-000000000001","name":"a","note":null,"count":1}],"papers":[{"bytes":"Zg==","text":"t"}]}})";
    RowsSink sink;
    ASSERT_TRUE(readWholeJson(good, sink, "x").has_value());
    const std::vector<WholeSlip> slips{
        {"hearthledger store", "something", "format", "unknown"},
        {"\"format\":\"hearthledger store\",", "", "format", "missing"},
        {"\"version\":1,", "", "version", "missing"},
        {"\"version\":1", "\"version\":\"1\"", "version", "wrong_type"},
        {"\"version\":1", "\"version\":0", "version", "unknown"},
        {"\"schema\":4,", "", "schema", "missing"},
        {"\"schema\":4", "\"colour\":4", "colour", "unknown"},
        {"\"schema\":4", "\"schema\":4,\"more\":{}", "more", "unknown"},
        {"\"papers\"", "\"pappers\"", "tables.pappers", "unknown"},
        {"\"papers\"", "\"people\"", "tables.people", "twice"},
        {"\"name\"", "\"nam\"", "tables.people[0].name", "missing"},
        {"\"name\":\"a\"", "\"name\":\"a\",\"b\":1", "tables.people[0].b", "unknown"},
        {"\"name\":\"a\"", "\"name\":null", "tables.people[0].name", "wrong_type"},
        {"\"name\":\"a\"", "\"name\":[]", "tables.people[0].name", "wrong_type"},
        {"\"count\":1", "\"count\":1.5", "tables.people[0].count", "wrong_type"},
        {"\"count\":1", "\"count\":18446744073709551615", "tables.people[0].count", "wrong_type"},
        {"0001\"", "001\"", "tables.people[0].id", "unreadable"},
        {"Zg==", "Zg=", "tables.papers[0].bytes", "unreadable"},
        {"[{\"bytes\":\"Zg==\",\"text\":\"t\"}]", "{}", "tables.papers", "wrong_type"},
        {"[{\"bytes\":\"Zg==\",\"text\":\"t\"}]", "[1]", "tables.papers", "wrong_type"},
        {"[{\"bytes\":\"Zg==\",\"text\":\"t\"}]", "7", "tables.papers", "wrong_type"},
    };
    for (const auto& slip : slips) {
        std::string text = good;
        const auto at = text.find(slip.right);
        ASSERT_NE(at, std::string::npos) << slip.right;
        text.replace(at, std::string(slip.right).size(), slip.wrong);
        RowsSink taken;
        const auto read = readWholeJson(text, taken, "x");
        ASSERT_FALSE(read.has_value()) << slip.wrong;
        EXPECT_EQ(read.error(), (Error{ErrorCode::ExportInvalid, {"x", slip.where, slip.what}}))
            << slip.wrong << " gave " << read.error().details[1] << ' ' << read.error().details[2];
    }
    for (const char* text : {"", "[]", "7", "{}", "{\"format\":", "{\"tables\":{}}", "null"}) {
        EXPECT_EQ(readWholeJson(text, sink, "x").error().code, ErrorCode::ExportInvalid) << text;
    }
    RowsSink none;
    EXPECT_EQ(readWholeJson(R"({"format":"hearthledger store","version":2,"schema":4,"tables":{"new":[]}})",
                            none, "x")
                  .error(),
              (Error{ErrorCode::ExportNewer, {"x", "2", "1"}}));
    none.refuseRows = true;
    EXPECT_EQ(readWholeJson(good, none, "x").error().code, ErrorCode::StoreFull);
}

}  // namespace
}  // namespace hearth::exchange
