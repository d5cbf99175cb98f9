// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/whole.h"

#include <functional>
#include <string>
#include <string_view>

/// A whole store as JSON and back, row by row: {"format": "hearthledger store", "version": 1, "schema": 4,
/// "program": "…", "written_at": "…", "tables": {"parties": [{…}, …], …}}. Ids are UUIDs as text; dates and
/// instants ISO 8601; numbers that were typed are texts; pictures and PDFs base64 (RFC 4648); what is not
/// said is null. resources/exchange/store.schema.json describes it.
namespace hearth::exchange {

inline constexpr std::string_view kWholeFormat = "hearthledger store";
inline constexpr int kWholeVersion = 1;

/// Where text goes; an error stops the writer.
using TextSink = std::function<Result<void>(std::string_view)>;

/// Writes one after the other: the head, then tables with their rows, then the end.
class WholeWriter {
  public:
    explicit WholeWriter(TextSink sink) : m_sink(std::move(sink)) {}
    [[nodiscard]] Result<void> head(int schema, std::string_view program, std::string_view writtenAt);
    [[nodiscard]] Result<void> table(const record::WholeTable& table);
    [[nodiscard]] Result<void> row(const record::WholeTable& table, const record::WholeRow& row);
    [[nodiscard]] Result<void> end();

  private:
    TextSink m_sink;
    bool m_inTable = false;
    bool m_firstRow = true;
};

/// Reads such a text into a sink without holding it all. Everything is checked: a table or member that is not
/// known or not there, a wrong type. Errors: ExportInvalid with name, where and what ("not_json", "missing",
/// "unknown", "wrong_type", "unreadable", "twice"); ExportNewer; the sink's.
[[nodiscard]] Result<void> readWholeJson(std::string_view json, record::WholeSink& sink,
                                         const std::string& name);

}  // namespace hearth::exchange
