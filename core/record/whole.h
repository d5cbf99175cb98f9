// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

/// A whole store as rows, between the folder that knows files and the one that knows the store.
namespace hearth::record {

enum class WholeType {
    Text,
    Integer,
    Uuid,
    Bytes,      // a picture, a PDF
    TextBytes,  // UTF-8 text kept byte for byte: a snapshot
};

struct WholeColumn {
    std::string name;
    WholeType type = WholeType::Text;
    bool nullable = false;
    bool operator==(const WholeColumn&) const = default;
};

struct WholeTable {
    std::string name;
    std::vector<WholeColumn> columns;
    bool operator==(const WholeTable&) const = default;
};

struct WholeBytes {
    std::string bytes;
    bool operator==(const WholeBytes&) const = default;
};
/// monostate is nothing.
using WholeCell = std::variant<std::monostate, std::int64_t, std::string, UuidBytes, WholeBytes>;
using WholeRow = std::vector<WholeCell>;  // by the table's columns

/// Where rows come in, one after the other.
class WholeSink {
  public:
    WholeSink() = default;
    WholeSink(const WholeSink&) = delete;
    WholeSink& operator=(const WholeSink&) = delete;
    virtual ~WholeSink() = default;

    /// The tables that a store of that schema has. Called once, before any row.
    [[nodiscard]] virtual Result<std::vector<WholeTable>> begin(int schema) = 0;
    [[nodiscard]] virtual Result<void> take(const WholeTable& table, const WholeRow& row) = 0;
};

}  // namespace hearth::record
