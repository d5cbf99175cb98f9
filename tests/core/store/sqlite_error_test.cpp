// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_error.h"

#include <cerrno>
#include <gtest/gtest.h>
#include <sqlite3.h>

namespace hearth::store {
namespace {

struct Mapping {
    int code;
    int systemError;
    ErrorCode expected;
};

// Codes and their meaning: "Result and Error Codes", sqlite.org/rescode.html.
TEST(SqliteErrors, areOursByMeaning) {
    const Mapping cases[] = {
        {SQLITE_FULL, 0, ErrorCode::StoreFull},
        {SQLITE_IOERR_WRITE, ENOSPC, ErrorCode::StoreFull},
        {SQLITE_IOERR_WRITE, EDQUOT, ErrorCode::StoreFull},
        {SQLITE_IOERR_WRITE, EFBIG, ErrorCode::StoreFull},
        {SQLITE_IOERR_WRITE, EIO, ErrorCode::StoreFailed},
        {SQLITE_IOERR_FSYNC, EIO, ErrorCode::StoreFailed},
        {SQLITE_READONLY, 0, ErrorCode::StoreReadOnly},
        {SQLITE_READONLY_DIRECTORY, 0, ErrorCode::StoreReadOnly},
        {SQLITE_READONLY_DBMOVED, 0, ErrorCode::StoreMoved},
        {SQLITE_PERM, 0, ErrorCode::StoreReadOnly},
        {SQLITE_BUSY, 0, ErrorCode::StoreLocked},
        {SQLITE_BUSY_SNAPSHOT, 0, ErrorCode::StoreLocked},
        {SQLITE_LOCKED, 0, ErrorCode::StoreLocked},
        {SQLITE_CORRUPT, 0, ErrorCode::StoreDamaged},
        {SQLITE_CORRUPT_INDEX, 0, ErrorCode::StoreDamaged},
        {SQLITE_NOTADB, 0, ErrorCode::StoreNotOurs},
        {SQLITE_CANTOPEN, 0, ErrorCode::StoreFolderUnusable},
        {SQLITE_CONSTRAINT_FOREIGNKEY, 0, ErrorCode::StoreFailed},
        {SQLITE_NOMEM, 0, ErrorCode::StoreFailed},
    };
    for (const auto& [code, systemError, expected] : cases) {
        const Error error = sqliteError(code, systemError, "a/store", "words");
        EXPECT_EQ(error.code, expected) << code << " " << systemError;
        EXPECT_EQ(error.details.at(0), "a/store");
    }
    EXPECT_EQ(sqliteError(SQLITE_ERROR, 0, "p", "no such table").details.at(1), "no such table");
}

}  // namespace
}  // namespace hearth::store
