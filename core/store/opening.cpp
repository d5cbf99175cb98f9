// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/opening.h"

#include "core/store/backup.h"
#include "core/store/due_index.h"
#include "core/store/durable.h"
#include "core/store/edit.h"
#include "core/store/file_header.h"
#include "core/store/search_index.h"

#include <system_error>
#include <unistd.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using Mode = Connection::Mode;

Error storeNewer(const fs::path& path, int schema, MigrationList list) {
    return {ErrorCode::StoreNewer,
            {path.string(), std::to_string(schema), std::to_string(newestSchema(list))}};
}

fs::path folderOf(const fs::path& path) {
    const fs::path folder = path.parent_path();
    return folder.empty() ? fs::path(".") : folder;
}

bool isWritable(const fs::path& path) {
    return access(path.c_str(), W_OK) == 0 && access(folderOf(path).c_str(), W_OK) == 0;
}

/// The file header is the program's own, so what SQLite calls no database is a damaged one.
std::unique_ptr<Connection> connect(const fs::path& path, Mode mode) {
    try {
        return std::make_unique<Connection>(path, mode);
    } catch (const Failure& failure) {
        if (failure.error().code == ErrorCode::StoreNotOurs) {
            throw Failure(ErrorCode::StoreDamaged, {path.string(), "header"});
        }
        throw;
    }
}

/// Takes the lock for writing, or says why only reading is left. With Access::Write the reason is thrown.
Opened lockFor(const fs::path& path, Access access) {
    Opened opened;
    if (access == Access::Read) {
        opened.readOnly = Error{ErrorCode::StoreReadOnly, {path.string()}};
        return opened;
    }
    auto lock = isWritable(path) ? StoreLock::take(path)
                                 : Result<StoreLock>(fail(ErrorCode::StoreReadOnly, {path.string()}));
    if (lock) {
        opened.lock = std::move(*lock);
    } else if (access == Access::Write) {
        throw Failure(lock.error());
    } else {
        opened.readOnly = lock.error();
    }
    return opened;
}

/// A program that was killed left a journal, and a reader can't play it back. Whoever may write does it once.
void recoverForReader(const fs::path& path) {
    if (!hasJournal(path) || !isWritable(path)) {
        return;
    }
    if (const auto lock = StoreLock::take(path)) {  // else its holder is at work, and the journal is alive
        const Connection recovering(path, Mode::ReadWrite);
        static_cast<void>(schemaOf(recovering));
    }
}

/// A small file is looked through at once; a large one when the firm's page or a backup asks.
void checkSound(const Connection& db, const fs::path& path) {
    constexpr std::uintmax_t kQuickEnough = 50'000'000;
    std::error_code unknown;
    if (fs::file_size(path, unknown) > kQuickEnough) {
        return;
    }
    const std::string found = integrityOf(db, Check::Quick);
    if (found != "ok") {
        throw Failure(ErrorCode::StoreDamaged, {path.string(), found});
    }
}

/// A newer program's store may be read when that program says so; it is never written to.
Opened openNewer(const fs::path& path, Access access, int schema, MigrationList list) {
    const Error newer = storeNewer(path, schema, list);
    if (access == Access::Write || hasJournal(path)) {
        throw Failure(newer);
    }
    Opened opened;
    opened.db = connect(path, Mode::ReadOnly);
    opened.readOnly = newer;
    if (opened.db->number("SELECT min_reader FROM store") > newestSchema(list)) {
        throw Failure(newer);
    }
    checkSound(*opened.db, path);
    return opened;
}

void migrate(Opened& opened, const Clock& clock, MigrationList list) {
    if (schemaOf(*opened.db) >= newestSchema(list)) {
        return;
    }
    if (opened.readOnly) {  // it would have to be brought up to date first
        throw opened.readOnly->code == ErrorCode::StoreReadOnly
            ? Failure(ErrorCode::StoreOlder, {opened.readOnly->details.front()})
            : Failure(*opened.readOnly);
    }
    opened.migrationBackup = backUpBeforeMigration(*opened.db, clock);
    applyMigrations(*opened.db, list, clock);
}

/// Another program's index is made anew by whoever may write; who only reads finds by it what it can.
void refreshIndex(const Opened& opened, MigrationList list) {
    if (!opened.readOnly && newestSchema(list) == newestSchema(shippedMigrations())) {
        rebuildOutdatedSearch(*opened.db);
        rebuildOutdatedDue(*opened.db);
    }
}

UuidBytes insertStore(Connection& db, const Clock& clock) {
    const UuidBytes id = makeUuid7(clock.now().time_since_epoch().count());
    Transaction transaction(db);
    db.run("INSERT INTO store (id, created_at) VALUES (?, ?)", {id, instantText(clock.now())});
    transaction.commit();
    return id;
}

void insertFirm(Connection& db, const UuidBytes& store, const reg::Firm& firm, const Clock& clock) {
    Session session{db, clock, store, {}, {}};
    Edit edit(session);
    edit.put(FirmRow{{store}, firm});
    edit.commit(Edit::Undoable::No);
}

void writeNew(const fs::path& path, const reg::Firm& firm, const Clock& clock, MigrationList list) {
    Connection db(path, Mode::ReadWrite);
    db.script("PRAGMA application_id = " + std::to_string(kApplicationId));
    // The store's own row comes with the first step, so that the later ones say in it who may read the store.
    applyMigrations(db, list.first(1), clock);
    const UuidBytes store = insertStore(db, clock);
    applyMigrations(db, list, clock);
    insertFirm(db, store, firm, clock);
}

}  // namespace

Opened openFile(const fs::path& path, Access access, const Clock& clock, MigrationList list) {
    const int schema = valueOrThrow(readFileHeader(path)).schema;
    if (schema > newestSchema(list)) {
        return openNewer(path, access, schema, list);
    }
    Opened opened = lockFor(path, access);
    if (!opened.lock) {
        recoverForReader(path);
    }
    opened.db = connect(path, opened.lock ? Mode::ReadWrite : Mode::ReadOnly);
    if (opened.lock && opened.db->isReadOnly()) {  // a file system that refuses in its own way
        opened.readOnly = Error{ErrorCode::StoreReadOnly, {path.string()}};
        opened.lock.reset();
        if (access == Access::Write) {
            throw Failure(*opened.readOnly);
        }
    }
    checkSound(*opened.db, path);
    if (schemaOf(*opened.db) < 1) {
        throw Failure(ErrorCode::StoreDamaged, {path.string(), "schema"});
    }
    checkApplied(*opened.db, list);
    migrate(opened, clock, list);
    refreshIndex(opened, list);
    return opened;
}

void createFile(const fs::path& path, const reg::Firm& firm, const Clock& clock, MigrationList list) {
    std::error_code problem;
    fs::create_directories(folderOf(path), problem);
    if (problem || access(folderOf(path).c_str(), W_OK) != 0) {
        throw Failure(ErrorCode::StoreFolderUnusable, {folderOf(path).string()});
    }
    if (fs::exists(path)) {
        throw Failure(ErrorCode::StoreFailed, {path.string(), "exists"});
    }
    const auto lock = StoreLock::take(path);
    if (!lock) {
        throw Failure(lock.error());
    }
    const DraftFile draft(path.string() + ".new");
    writeNew(draft.path(), firm, clock, list);
    draft.publish(path, DraftFile::Existing::Keep);
}

UuidBytes storeIdOf(const Connection& db) {
    const auto id =
        db.first("SELECT id FROM store", {}, [](const Columns& columns) { return columns.uuid(0); });
    if (!id) {
        throw Failure(ErrorCode::StoreDamaged, {db.path(), "store"});
    }
    return *id;
}

}  // namespace hearth::store
