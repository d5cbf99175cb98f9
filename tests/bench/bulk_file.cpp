// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/bulk_file.h"

#include <sqlite3.h>
#include <stdexcept>
#include <utility>

namespace hearth::bench {
namespace {

int bindCell(sqlite3_stmt* statement, int at, const store::Cell& cell) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        return sqlite3_bind_int64(statement, at, *number);
    }
    if (const auto* text = std::get_if<std::string>(&cell)) {
        return sqlite3_bind_text(statement, at, text->data(), static_cast<int>(text->size()), SQLITE_STATIC);
    }
    if (const auto* uuid = std::get_if<UuidBytes>(&cell)) {
        return sqlite3_bind_blob(statement, at, uuid->data(), static_cast<int>(uuid->size()), SQLITE_STATIC);
    }
    if (const auto* blob = std::get_if<store::Blob>(&cell)) {
        return sqlite3_bind_blob(statement, at, blob->bytes.data(), static_cast<int>(blob->bytes.size()),
                                 SQLITE_STATIC);
    }
    return sqlite3_bind_null(statement, at);
}

std::string textAt(sqlite3_stmt* row, int column) {
    const auto* text = sqlite3_column_text(row, column);
    return text == nullptr ? std::string() : reinterpret_cast<const char*>(text);
}

}  // namespace

BulkFile::BulkFile(const std::filesystem::path& path) {
    if (sqlite3_open_v2(path.c_str(), &m_db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) {
        fail();
    }
    run("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA locking_mode = EXCLUSIVE;"
        "PRAGMA cache_size = -300000; PRAGMA foreign_keys = OFF");
    sqlite3_stmt* made = nullptr;
    if (sqlite3_prepare_v2(m_db,
                           "SELECT name, type, sql FROM sqlite_schema WHERE type IN ('index', 'trigger') "
                           "AND sql IS NOT NULL ORDER BY type, rowid",
                           -1, &made, nullptr) != SQLITE_OK) {
        fail();
    }
    while (sqlite3_step(made) == SQLITE_ROW) {
        m_later.push_back({textAt(made, 0), textAt(made, 1), textAt(made, 2)});
    }
    sqlite3_finalize(made);
    for (const auto& one : m_later) {
        run("DROP " + one.type + " " + one.name);
    }
    run("BEGIN");
}

BulkFile::~BulkFile() {
    for (const auto& [where, statement] : m_statements) {
        sqlite3_finalize(statement);
    }
    sqlite3_close(m_db);
}

void BulkFile::fail() const {
    throw std::runtime_error(sqlite3_errmsg(m_db));
}

void BulkFile::run(const std::string& sql) {
    if (sqlite3_exec(m_db, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) {
        fail();
    }
}

sqlite3_stmt* BulkFile::statementFor(const std::string& where, std::size_t columns) {
    const auto known = m_statements.find(where);
    if (known != m_statements.end()) {
        return known->second;
    }
    std::string marks;
    for (std::size_t i = 0; i < columns; ++i) {
        marks += marks.empty() ? "?" : ", ?";
    }
    sqlite3_stmt* statement = nullptr;
    const std::string sql = "INSERT INTO " + where + " VALUES (" + marks + ")";
    if (sqlite3_prepare_v2(m_db, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) {
        fail();
    }
    return m_statements[where] = statement;
}

void BulkFile::put(const store::Table& table, const store::Cells& cells) {
    const auto known = m_statements.find(table.name);
    if (known == m_statements.end()) {
        std::string columns;
        for (const auto& column : table.columns) {
            columns.append(columns.empty() ? "" : ", ").append(column.name);
        }
        m_statements[table.name] = statementFor(table.name + " (" + columns + ")", cells.size());
        m_statements.erase(table.name + " (" + columns + ")");
    }
    put(table.name, cells);
}

void BulkFile::put(const std::string& where, const store::Cells& cells) {
    sqlite3_stmt* statement = statementFor(where, cells.size());
    int at = 0;
    for (const auto& cell : cells) {
        if (bindCell(statement, ++at, cell) != SQLITE_OK) {
            fail();
        }
    }
    const int done = sqlite3_step(statement);
    sqlite3_reset(statement);
    if (done != SQLITE_DONE) {
        fail();
    }
}

void BulkFile::finish() {
    for (const auto& [where, statement] : m_statements) {
        sqlite3_finalize(statement);
    }
    m_statements.clear();
    for (const auto& one : std::exchange(m_later, {})) {
        run(one.sql);
    }
    run("COMMIT");
}

}  // namespace hearth::bench
