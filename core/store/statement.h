// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <list>
#include <string>
#include <string_view>
#include <unordered_map>

struct sqlite3;
struct sqlite3_stmt;

namespace hearth::store {

/// The statements of one connection, kept prepared: preparing one takes longer than running most of ours.
class StatementCache {
  public:
    explicit StatementCache(sqlite3* db) : m_db(db) {}
    ~StatementCache();
    StatementCache(const StatementCache&) = delete;
    StatementCache& operator=(const StatementCache&) = delete;

    /// Null where SQLite refuses it: the connection has its words.
    [[nodiscard]] sqlite3_stmt* take(std::string_view sql);
    /// Resets it and keeps it for the next who asks.
    void giveBack(std::string_view sql, sqlite3_stmt* statement);

  private:
    struct Kept {
        std::string sql;
        sqlite3_stmt* statement;
    };
    sqlite3* m_db;
    std::list<Kept> m_kept;  // the last used first
    std::unordered_map<std::string_view, std::list<Kept>::iterator> m_bySql;
};

/// A statement in use: two of the same text may be at once.
class Statement {
  public:
    Statement(StatementCache& cache, std::string_view sql)
        : m_cache(cache), m_sql(sql), m_statement(cache.take(sql)) {}
    ~Statement() {
        if (m_statement != nullptr) {
            m_cache.giveBack(m_sql, m_statement);
        }
    }
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    [[nodiscard]] sqlite3_stmt* get() const { return m_statement; }

  private:
    StatementCache& m_cache;
    std::string_view m_sql;
    sqlite3_stmt* m_statement;
};

}  // namespace hearth::store
