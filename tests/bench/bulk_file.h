// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/tables.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace hearth::bench {

/// Fills the tables of a store's file as fast as SQLite can: no journal, no triggers and no indexes until the
/// end, when both are made again from the texts that stood in the file. For nothing else than a file that is
/// thrown away when it fails.
class BulkFile {
  public:
    /// Throws std::runtime_error with SQLite's words, as all here do.
    explicit BulkFile(const std::filesystem::path& path);
    ~BulkFile();
    BulkFile(const BulkFile&) = delete;
    BulkFile& operator=(const BulkFile&) = delete;

    /// A row of the register by the store's own columns.
    template <class Value>
    void put(const Value& value) {
        put(store::tableOf<Value>(), store::cellsOf(value));
    }
    void put(const store::Table& table, const store::Cells& cells);
    /// Any other row; "table (a, b)" says where.
    void put(const std::string& where, const store::Cells& cells);
    void run(const std::string& sql);
    /// Indexes and triggers again, and on the disk.
    void finish();

  private:
    struct Made {
        std::string name;
        std::string type;
        std::string sql;
    };
    sqlite3_stmt* statementFor(const std::string& where, std::size_t columns);
    [[noreturn]] void fail() const;

    sqlite3* m_db = nullptr;
    std::map<std::string, sqlite3_stmt*> m_statements;
    std::vector<Made> m_later;
};

}  // namespace hearth::bench
