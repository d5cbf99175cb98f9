// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"

#include "core/store/attachment_repository.h"
#include "core/store/durable.h"
#include "core/store/migrations.h"
#include "core/store/trace_repository.h"
#include "core/store/verification.h"

#include <algorithm>
#include <map>
#include <sqlite3.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void failed(const fs::path& target, const std::string& reason) {
    throw Failure(ErrorCode::BackupFailed, {target.string(), reason});
}

/// An error as a reason: its code and particulars.
std::string reasonOf(const Error& error) {
    std::string reason(codeText(error.code));
    for (const auto& detail : error.details) {
        reason.append(" ").append(detail);
    }
    return reason;
}

void copyPages(const Connection& from, const Connection& to) {
    sqlite3_backup* backup = sqlite3_backup_init(to.handle(), "main", from.handle(), "main");
    if (backup == nullptr) {
        to.raise();
    }
    constexpr int kAllPages = -1;
    const int stepped = sqlite3_backup_step(backup, kAllPages);
    const int finished = sqlite3_backup_finish(backup);
    if (stepped != SQLITE_DONE || finished != SQLITE_OK) {
        to.raise();
    }
}

bool hasTable(const Connection& db, const std::string& name) {
    return db.number("SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = ?", {name}) > 0;
}

std::map<std::string, std::int64_t> rowCounts(const Connection& db) {
    std::map<std::string, std::int64_t> counts;
    const auto tables = db.all("SELECT name FROM sqlite_schema WHERE type = 'table'", {},
                               [](const Columns& columns) { return columns.text(0); });
    for (const auto& table : tables) {
        counts[table] = db.number("SELECT count(*) FROM \"" + table + "\"");
    }
    return counts;
}

void checkReferences(const Connection& db) {
    const auto loose = db.first("PRAGMA foreign_key_check", {}, [](const Columns& columns) {
        return columns.text(0) + " -> " + columns.text(2);
    });
    if (loose) {
        throw Failure(ErrorCode::StoreDamaged, {db.path(), *loose});
    }
}

}  // namespace

void markAsCopy(Connection& copy) {
    if (hasTable(copy, "series")) {  // a schema that an old program made may have none
        Transaction transaction(copy);
        copy.run("UPDATE series SET place = 'copy'");
        transaction.commit();
    }
}

std::string integrityOf(const Connection& connection, Check check) {
    std::string found;
    const auto* pragma = check == Check::Quick ? "PRAGMA quick_check(5)" : "PRAGMA integrity_check(5)";
    connection.query(pragma, {}, [&](const Columns& columns) {
        found.append(found.empty() ? "" : "\n").append(columns.text(0));
    });
    return found;
}

void checkWhole(Connection& db) {
    const std::string integrity = integrityOf(db, Check::Full);
    if (integrity != "ok") {
        throw Failure(ErrorCode::StoreDamaged, {db.path(), integrity});
    }
    checkReferences(db);
    if (schemaOf(db) == newestSchema(shippedMigrations())) {
        verifyAll(db);
        const auto altered = alteredAttachments(db);
        if (!altered.empty()) {
            throw Failure(ErrorCode::AttachmentAltered, {altered.front()});
        }
        if (const auto traces = alteredTraces(db); !traces.empty()) {
            throw Failure(ErrorCode::TraceAltered, {traces.front()});
        }
    }
}

void copyStore(Connection& from, const fs::path& part) {
    std::map<std::string, std::int64_t> rows;
    int schema = 0;
    {
        Connection copy(part, Connection::Mode::ReadWrite);
        const ReadScope oneState(from);  // another connection may be at work on the store
        rows = rowCounts(from);          // the first reading takes the lock that keeps it so
        schema = schemaOf(from);
        copyPages(from, copy);
        markAsCopy(copy);
    }
    Connection copy(part, Connection::Mode::ReadOnly);
    if (schemaOf(copy) != schema || rowCounts(copy) != rows) {
        throw Failure(ErrorCode::StoreDamaged, {part.string(), "rows"});
    }
    checkWhole(copy);
}

void backUpTo(Connection& from, const fs::path& target) {
    std::error_code unknown;
    if (fs::equivalent(target, from.path(), unknown)) {
        failed(target, "same_file");
    }
    const DraftFile part(target.string() + ".part");
    try {
        copyStore(from, part.path());
        part.publish(target, DraftFile::Existing::Replace);
    } catch (const Failure& failure) {
        failed(target, failure.error().code == ErrorCode::BackupFailed ? failure.error().details.back()
                                                                       : reasonOf(failure.error()));
    }
}

fs::path backUpBeforeMigration(Connection& from, const Clock& clock) {
    std::string when = instantText(clock.now()).substr(0, std::string_view("2026-11-25T09:46:10").size());
    when.erase(std::remove_if(when.begin(), when.end(), [](char c) { return c == '-' || c == ':'; }),
               when.end());
    const fs::path store(from.path());
    const std::string stem =
        store.stem().string() + "-schema" + std::to_string(schemaOf(from)) + "-" + when + "Z";
    fs::path target = store.parent_path() / (stem + store.extension().string());
    for (int count = 2; fs::exists(target); ++count) {
        target = store.parent_path() / (stem + "-" + std::to_string(count) + store.extension().string());
    }
    backUpTo(from, target);
    return target;
}

}  // namespace hearth::store
