// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/store/failure.h"
#include "core/store/statement.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

struct sqlite3;

namespace hearth::store {

/// Bytes as SQLite's BLOB, for payloads.
struct Blob {
    std::string bytes;
    bool operator==(const Blob&) const = default;
};

/// One value of one row. monostate is NULL.
using Cell = std::variant<std::monostate, std::int64_t, std::string, UuidBytes, Blob>;
using Cells = std::vector<Cell>;

/// The columns of the row that a query stands on. A value of another type than asked for means that the file
/// has been tampered with or damaged: StoreDamaged is thrown.
class Columns {
  public:
    Columns(sqlite3_stmt* row, const std::string& path) : m_row(row), m_path(path) {}
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::string text(int column) const;
    /// Its bytes as they stand, good until the next row; empty for another type.
    [[nodiscard]] std::string_view textInPlace(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] int number(int column) const { return static_cast<int>(integer(column)); }
    [[nodiscard]] UuidBytes uuid(int column) const;
    [[nodiscard]] std::string bytes(int column) const;
    /// Throws StoreDamaged, naming what can't be understood.
    [[noreturn]] void notUnderstood(const std::string& what) const;

  private:
    sqlite3_stmt* m_row;
    const std::string& m_path;
};

/// One connection to one file, set up as the design says (rollback journal, EXTRA, foreign keys, defensive,
/// ...). Every member throws Failure. Not to be shared between threads.
class Connection {
  public:
    enum class Mode { ReadWrite, ReadOnly };

    /// Opens the file; ReadWrite makes it when it is missing.
    Connection(const std::filesystem::path& path, Mode mode);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] const std::string& path() const { return m_path; }
    /// True also when SQLite could open the file for reading only.
    [[nodiscard]] bool isReadOnly() const;

    /// One statement that gives no rows.
    void run(std::string_view sql, const Cells& values = {});
    /// Any number of statements, by SQLite's own parser.
    void script(const std::string& sql);
    /// A query, read to its end; `read` is called for each row.
    void query(std::string_view sql, const Cells& values,
               const std::function<void(const Columns&)>& read) const;

    /// All rows as values.
    template <class Read>
    [[nodiscard]] auto all(std::string_view sql, const Cells& values, Read read) const {
        std::vector<std::invoke_result_t<Read, const Columns&>> rows;
        query(sql, values, [&](const Columns& columns) { rows.push_back(read(columns)); });
        return rows;
    }
    /// The first row; nothing when there is none.
    template <class Read>
    [[nodiscard]] auto first(std::string_view sql, const Cells& values, Read read) const {
        std::optional<std::invoke_result_t<Read, const Columns&>> row;
        query(sql, values, [&](const Columns& columns) {
            if (!row) {
                row = read(columns);
            }
        });
        return row;
    }
    /// One whole number: a count, a pragma. 0 when there is no row.
    [[nodiscard]] std::int64_t number(std::string_view sql, const Cells& values = {}) const;
    /// One text; empty when there is no row.
    [[nodiscard]] std::string text(std::string_view sql, const Cells& values = {}) const;

    [[nodiscard]] bool isInTransaction() const;
    [[nodiscard]] sqlite3* handle() const { return m_db; }
    /// Throws what SQLite says of its last call.
    [[noreturn]] void raise() const;

  private:
    friend class Transaction;
    friend class ReadScope;
    friend class WideCache;
    /// Qt Sql's connection: it opens and closes the file.
    class Database;
    void open(Mode mode);
    void setUp();
    /// Prepared and its values bound.
    void ready(sqlite3_stmt* statement, const Cells& values) const;
    bool tryScript(const char* sql) const noexcept;

    std::string m_path;
    std::unique_ptr<Database> m_database;
    sqlite3* m_db = nullptr;                             // the one that Qt Sql holds
    mutable std::optional<StatementCache> m_statements;  // gone before the connection is closed
};

/// One writing transaction; without commit() it has changed nothing. Within another it is a part of that one,
/// and its own rollback takes back only what it did itself.
class Transaction {
  public:
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

  private:
    Connection& m_connection;
    bool m_isPart;
    bool m_open = true;
};

/// More pages held while it lives, for what reads the whole store and looks rows up all over it; then they
/// are given back.
class WideCache {
  public:
    explicit WideCache(const Connection& connection);
    ~WideCache();
    WideCache(const WideCache&) = delete;
    WideCache& operator=(const WideCache&) = delete;

  private:
    const Connection& m_connection;
    std::int64_t m_before;
};

/// Several queries that must see one state of the store. Within a transaction it adds nothing.
class ReadScope {
  public:
    explicit ReadScope(Connection& connection);
    ~ReadScope();
    ReadScope(const ReadScope&) = delete;
    ReadScope& operator=(const ReadScope&) = delete;

  private:
    Connection& m_connection;
    bool m_mine;
};

}  // namespace hearth::store
