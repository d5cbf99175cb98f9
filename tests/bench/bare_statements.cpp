// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/bare_statements.h"

#include <benchmark/benchmark.h>
#include <sqlite3.h>
#include <stdexcept>
#include <utility>

namespace hearth::bench {
namespace {

std::vector<std::string> noted;  // NOLINT: SQLite's callbacks have nowhere else to look

int noteStatement(unsigned /*what*/, void* /*context*/, void* statement, void* text) {
    const auto* begins = static_cast<const char*>(text);
    if (begins != nullptr && begins[0] == '-' && begins[1] == '-') {
        return 0;  // within another one
    }
    char* sql = sqlite3_expanded_sql(static_cast<sqlite3_stmt*>(statement));
    noted.emplace_back(sql != nullptr ? sql : "");
    sqlite3_free(sql);
    return 0;
}

int watchConnection(sqlite3* db, char** /*message*/, const struct sqlite3_api_routines* /*api*/) {
    return sqlite3_trace_v2(db, SQLITE_TRACE_STMT, noteStatement, nullptr);
}

void readColumn(sqlite3_stmt* statement, int column) {
    switch (sqlite3_column_type(statement, column)) {
        case SQLITE_INTEGER:
            benchmark::DoNotOptimize(sqlite3_column_int64(statement, column));
            break;
        case SQLITE_TEXT:
            benchmark::DoNotOptimize(sqlite3_column_text(statement, column));
            benchmark::DoNotOptimize(sqlite3_column_bytes(statement, column));
            break;
        case SQLITE_BLOB:
            benchmark::DoNotOptimize(sqlite3_column_blob(statement, column));
            benchmark::DoNotOptimize(sqlite3_column_bytes(statement, column));
            break;
        default:
            break;
    }
}

}  // namespace

void watchStatements() {
    sqlite3_auto_extension(reinterpret_cast<void (*)()>(watchConnection));
}

std::vector<std::string> takeStatements() {
    return std::exchange(noted, {});
}

BareStatements::BareStatements(const std::filesystem::path& path) {
    if (sqlite3_open_v2(path.c_str(), &m_db, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, nullptr) !=
        SQLITE_OK) {
        fail();
    }
    sqlite3_trace_v2(m_db, 0, nullptr, nullptr);
    if (sqlite3_exec(m_db,
                     "PRAGMA foreign_keys = ON; PRAGMA recursive_triggers = ON; PRAGMA synchronous = EXTRA;"
                     "PRAGMA journal_mode = DELETE; PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0",
                     nullptr, nullptr, nullptr) != SQLITE_OK) {
        fail();
    }
}

BareStatements::~BareStatements() {
    drop();
    sqlite3_close(m_db);
}

void BareStatements::fail() const {
    throw std::runtime_error(sqlite3_errmsg(m_db));
}

void BareStatements::drop() {
    for (auto* statement : m_statements) {
        sqlite3_finalize(statement);
    }
    m_statements.clear();
}

void BareStatements::prepare(const std::vector<std::string>& statements) {
    drop();
    for (const auto& sql : statements) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(m_db, sql.c_str(), static_cast<int>(sql.size()), &statement, nullptr) !=
            SQLITE_OK) {
            fail();
        }
        m_statements.push_back(statement);
    }
}

void BareStatements::run() {
    for (auto* statement : m_statements) {
        int step = SQLITE_ROW;
        while ((step = sqlite3_step(statement)) == SQLITE_ROW) {
            for (int column = 0; column < sqlite3_column_count(statement); ++column) {
                readColumn(statement, column);
            }
        }
        if (step != SQLITE_DONE) {
            fail();
        }
        sqlite3_reset(statement);
    }
}

namespace {

long syncs = 0;                                 // NOLINT: as above
sqlite3_vfs countingDisk;                       // NOLINT
sqlite3_vfs* realDisk = nullptr;                // NOLINT
sqlite3_io_methods countingMethods;             // NOLINT
int (*realSync)(sqlite3_file*, int) = nullptr;  // NOLINT

int countSync(sqlite3_file* file, int flags) {
    ++syncs;
    return realSync(file, flags);
}

/// The real file with one method of ours in a copy of its table.
int openCounted(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    const int opened = realDisk->xOpen(realDisk, name, file, flags, outFlags);
    if (opened == SQLITE_OK && file->pMethods != nullptr) {
        countingMethods = *file->pMethods;
        realSync = file->pMethods->xSync == countSync ? realSync : file->pMethods->xSync;
        countingMethods.xSync = countSync;
        file->pMethods = &countingMethods;
    }
    return opened;
}

}  // namespace

long syncsSoFar() {
    if (realDisk == nullptr) {
        realDisk = sqlite3_vfs_find(nullptr);
        countingDisk = *realDisk;
        countingDisk.zName = "counting";
        countingDisk.xOpen = openCounted;
        sqlite3_vfs_register(&countingDisk, 1);
    }
    return syncs;
}

}  // namespace hearth::bench
