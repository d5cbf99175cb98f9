// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/whole_json.h"
#include "tests/core/exchange/fuzz_import.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// What must hold of any bytes at all that are taken for a whole store in JSON.
namespace hearth::testing {

/// Keeps rows of two invented tables.
class RowsSink : public record::WholeSink {
  public:
    RowsSink() = default;

    static std::vector<record::WholeTable> tables() {
        using record::WholeType;
        return {{"people",
                 {{"id", WholeType::Uuid, false},
                  {"name", WholeType::Text, false},
                  {"note", WholeType::Text, true},
                  {"count", WholeType::Integer, false}}},
                {"papers", {{"bytes", WholeType::Bytes, false}, {"text", WholeType::TextBytes, false}}}};
    }
    Result<std::vector<record::WholeTable>> begin(int ofSchema) override {
        schema = ofSchema;
        return tables();
    }
    Result<void> take(const record::WholeTable& table, const record::WholeRow& row) override {
        must(row.size() == table.columns.size(), "a cell for each column");
        rows.emplace_back(table.name, row);
        return refuseRows ? Result<void>(fail(ErrorCode::StoreFull, {"x"})) : Result<void>();
    }

    int schema = 0;
    bool refuseRows = false;
    std::vector<std::pair<std::string, record::WholeRow>> rows;
};

inline void wholeOneInput(std::string_view bytes) {
    RowsSink sink;
    if (!exchange::readWholeJson(bytes, sink, "x")) {
        return;
    }
    std::string text;
    exchange::WholeWriter writer([&](std::string_view more) {
        text += more;
        return Result<void>();
    });
    must(writer.head(sink.schema, "", "").has_value(), "the head");
    for (const auto& table : RowsSink::tables()) {
        must(writer.table(table).has_value(), "a table");
        for (const auto& [name, row] : sink.rows) {
            if (name == table.name) {
                must(writer.row(table, row).has_value(), "a row");
            }
        }
    }
    must(writer.end().has_value(), "the end");
    RowsSink again;
    must(exchange::readWholeJson(text, again, "x").has_value(), "what was written is read");
    must(again.rows.size() == sink.rows.size(), "as many rows");
}

}  // namespace hearth::testing
