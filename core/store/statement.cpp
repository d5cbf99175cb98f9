// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/statement.h"

#include <sqlite3.h>
#include <utility>

namespace hearth::store {
namespace {

constexpr std::size_t kKeptStatements = 120;

}  // namespace

StatementCache::~StatementCache() {
    for (const auto& kept : m_kept) {
        sqlite3_finalize(kept.statement);
    }
}

sqlite3_stmt* StatementCache::take(std::string_view sql) {
    const auto known = m_bySql.find(sql);
    if (known == m_bySql.end()) {
        sqlite3_stmt* statement = nullptr;
        sqlite3_prepare_v3(m_db, sql.data(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT,
                           &statement, nullptr);
        return statement;
    }
    const auto kept = known->second;
    m_bySql.erase(known);
    sqlite3_stmt* statement = kept->statement;
    m_kept.erase(kept);
    return statement;
}

void StatementCache::giveBack(std::string_view sql, sqlite3_stmt* statement) {
    sqlite3_reset(statement);
    sqlite3_clear_bindings(statement);
    if (m_bySql.find(sql) != m_bySql.end()) {
        sqlite3_finalize(statement);  // its twin came back first
        return;
    }
    m_kept.push_front({std::string(sql), statement});
    m_bySql.emplace(m_kept.front().sql, m_kept.begin());
    if (m_kept.size() > kKeptStatements) {
        sqlite3_finalize(m_kept.back().statement);
        m_bySql.erase(m_kept.back().sql);
        m_kept.pop_back();
    }
}

}  // namespace hearth::store
