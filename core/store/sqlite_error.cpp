// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_error.h"

#include <cerrno>
#include <sqlite3.h>

namespace hearth::store {
namespace {

/// SQLite calls only ENOSPC full; a quota and a limit on the file's size are the same to the person.
bool isNoRoom(int systemError) {
    return systemError == ENOSPC || systemError == EDQUOT || systemError == EFBIG;
}

}  // namespace

Error sqliteError(int code, int systemError, const std::string& path, const std::string& message) {
    constexpr int kPrimary = 0xff;
    if (code == SQLITE_IOERR_WRITE && isNoRoom(systemError)) {
        return {ErrorCode::StoreFull, {path}};
    }
    if (code == SQLITE_READONLY_DBMOVED) {
        return {ErrorCode::StoreMoved, {path}};
    }
    switch (code & kPrimary) {
        case SQLITE_FULL:
            return {ErrorCode::StoreFull, {path}};
        case SQLITE_READONLY:
        case SQLITE_PERM:
            return {ErrorCode::StoreReadOnly, {path}};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {ErrorCode::StoreLocked, {path, std::string()}};
        case SQLITE_CORRUPT:
            return {ErrorCode::StoreDamaged, {path, message}};
        case SQLITE_NOTADB:
            return {ErrorCode::StoreNotOurs, {path}};
        case SQLITE_CANTOPEN:
            return {ErrorCode::StoreFolderUnusable, {path}};
        default:
            return {ErrorCode::StoreFailed, {path, message}};
    }
}

}  // namespace hearth::store
