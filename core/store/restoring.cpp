// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/restoring.h"

#include "core/store/backup.h"
#include "core/store/backup_name.h"
#include "core/store/backup_notes.h"
#include "core/store/backup_seal.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"
#include "core/store/plain_file.h"
#include "core/store/store_lock.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <unistd.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;
using Mode = Connection::Mode;

void refuseNewer(const fs::path& path) {
    const int schema = valueOrThrow(readFileHeader(path)).schema;
    const int ours = newestSchema(shippedMigrations());
    if (schema > ours) {
        throw Failure(ErrorCode::StoreNewer, {path.string(), std::to_string(schema), std::to_string(ours)});
    }
}

/// The names that a person knows: those of the backup, not of the draft that it was brought out into.
Error aboutBackup(Error error, const fs::path& backup, const fs::path& draft) {
    for (auto& detail : error.details) {
        if (detail == draft.string()) {
            detail = backup.string();
        }
    }
    if (error.code == ErrorCode::StoreNotOurs && isSealedFile(backup)) {
        error = {ErrorCode::BackupDamaged, {backup.string(), "content"}};
    }
    return error;
}

BackupInside insideOf(Connection& db) {
    BackupInside inside;
    inside.schema = schemaOf(db);
    inside.check = guarded([&] { checkWhole(db); });
    // What a damaged file still tells.
    const auto count = [&](const char* table) {
        const auto rows = guarded([&] { return db.number(std::string("SELECT count(*) FROM ") + table); });
        return static_cast<int>(rows.value_or(0));
    };
    inside.premises = count("premises");
    inside.visits = count("visits");
    inside.records = count("record_headers");
    const auto told = guarded([&] {
        inside.firm = db.text("SELECT name FROM firm");
        inside.demonstration = db.number("SELECT demonstration FROM firm") != 0;
        inside.newestVisit = calendar::fromIso(db.text("SELECT max(date) FROM visits"));
        Instant last{};
        if (parseInstant(db.text("SELECT at FROM changes ORDER BY position DESC LIMIT 1"), last)) {
            inside.lastChange = last;
        }
    });
    if (!told && inside.check) {
        inside.check = tl::unexpected<Error>(told.error());
    }
    return inside;
}

/// Brings a draft up to date and holds it against everything.
void makeReady(const fs::path& draft, const fs::path& backup, const Clock& clock) {
    Connection db(draft, Mode::ReadWrite);
    if (const auto found = integrityOf(db, Check::Full); found != "ok") {
        throw Failure(ErrorCode::StoreDamaged, {draft.string(), found});
    }
    if (schemaOf(db) < 1) {
        throw Failure(ErrorCode::StoreDamaged, {draft.string(), "schema"});
    }
    checkApplied(db, shippedMigrations());
    applyMigrations(db, shippedMigrations(), clock);
    markAsCopy(db);
    noteRestored(db, backup.filename().string(), clock.now());
    checkWhole(db);
}

fs::path keepName(const fs::path& store, BackupKind kind, const Clock& clock) {
    const fs::path folder = backupFolderOf(store);
    std::error_code problem;
    fs::create_directories(folder, problem);
    if (problem) {
        throw Failure(systemError(problem.value(), folder));
    }
    BackupName name;
    name.stem = store.stem().string();
    name.kind = kind;
    name.madeAt = clock.now();
    while (fs::exists(folder / textOf(name), problem)) {
        ++name.count;
    }
    return folder / textOf(name);
}

void copyDurably(const fs::path& from, const fs::path& to) {
    const DraftFile draft(to.string() + ".part");
    copyChecked(from, draft.path());
    draft.publish(to, DraftFile::Existing::Replace);
}

/// A store that can't be opened or isn't whole is kept byte for byte, with its journal. A journal that stayed
/// would be played back into the store that is restored.
fs::path setAside(const fs::path& store, const Clock& clock) {
    const fs::path kept = keepName(store, BackupKind::SetAside, clock);
    copyDurably(store, kept);
    const fs::path journal = journalOf(store);
    std::error_code problem;
    if (fs::exists(journal, problem)) {
        copyDurably(journal, journalOf(kept));
        fs::remove(journal, problem);
        if (problem) {
            throw Failure(systemError(problem.value(), journal));
        }
    }
    return kept;
}

/// What stands is kept: as a verified backup, or as it is when it can't be verified.
fs::path keepStanding(const fs::path& store, const Clock& clock) {
    const auto kept = guarded([&] {
        Connection db(store, Mode::ReadWrite);  // plays back what a killed program left
        static_cast<void>(schemaOf(db));
        const fs::path target = keepName(store, BackupKind::BeforeRestore, clock);
        const DraftFile draft(target.string() + ".part");
        copyStore(db, draft.path());
        draft.publish(target, DraftFile::Existing::Replace);
        return target;
    });
    return kept ? *kept : setAside(store, clock);
}

void syncFolder(const fs::path& folder) {
    const int descriptor = open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const bool synced = descriptor >= 0 && (fsync(descriptor) == 0 || errno == EINVAL);
    const int problem = errno;
    if (descriptor >= 0) {
        close(descriptor);
    }
    if (!synced) {
        throw Failure(systemError(problem, folder));
    }
}

void syncDraft(const fs::path& draft) {
    const int descriptor = open(draft.c_str(), O_RDONLY | O_CLOEXEC);
    const bool synced = descriptor >= 0 && fsync(descriptor) == 0;
    const int problem = errno;
    if (descriptor >= 0) {
        close(descriptor);
    }
    if (!synced) {
        throw Failure(systemError(problem, draft));
    }
}

bool renamed(const fs::path& from, const fs::path& to, unsigned flags) {
    return renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags) == 0;
}

Restored restoreLocked(const fs::path& backup, const std::string& passphrase, const fs::path& store,
                       const Clock& clock) {
    const DraftFile draft(store.string() + ".restoring");
    bringOut(backup, passphrase, draft.path());
    makeReady(draft.path(), backup, clock);
    Restored restored;
    std::error_code unknown;
    if (fs::exists(store, unknown)) {
        restored.before = keepStanding(store, clock);
    }
    putInPlace(draft.path(), store);
    return restored;
}

/// A failure to write beside the store says so by the store's name.
Error aboutRestore(const Error& error, const fs::path& store) {
    switch (error.code) {
        case ErrorCode::StoreFailed:
        case ErrorCode::StoreFolderUnusable:
        case ErrorCode::BackupFailed:
            return {ErrorCode::RestoreFailed,
                    {store.string(), error.details.empty() ? "" : error.details.back()}};
        default:
            return error;
    }
}

}  // namespace

void bringOut(const fs::path& backup, const std::string& passphrase, const fs::path& draft) {
    if (isSealedFile(backup)) {
        unsealFile(backup, passphrase, draft);
        refuseNewer(draft);
        return;
    }
    refuseNewer(backup);
    copyChecked(backup, draft);
    if (hasJournal(backup)) {
        copyChecked(journalOf(backup), journalOf(draft));
    }
}

void putInPlace(const fs::path& draft, const fs::path& store) {
    syncDraft(draft);
    std::error_code unknown;
    const bool stands = fs::exists(store, unknown);
    bool canSwapBack = true;
    if (!renamed(draft, store, stands ? RENAME_EXCHANGE : RENAME_NOREPLACE)) {
        const bool isUnknownHere = errno == EINVAL || errno == ENOSYS;
        if (!isUnknownHere || !renamed(draft, store, 0)) {
            throw Failure(systemError(errno, store));
        }
        canSwapBack = !stands;
    }
    try {
        syncFolder(store.parent_path());
    } catch (const Failure&) {
        if (canSwapBack) {
            static_cast<void>(stands ? renamed(draft, store, RENAME_EXCHANGE) : renamed(store, draft, 0));
        }
        throw;
    }
}

Result<BackupInside> lookInside(const fs::path& backup, const std::string& passphrase,
                                const fs::path& store) {
    const fs::path beside = store.string() + ".looking";
    auto inside = guarded([&] {
        std::error_code unknown;
        if (!fs::exists(backup, unknown)) {
            throw Failure(ErrorCode::StoreMissing, {backup.string()});
        }
        if (!isSealedFile(backup) && !hasJournal(backup)) {
            refuseNewer(backup);
            Connection db(backup, Mode::ReadOnly);
            return insideOf(db);
        }
        fs::create_directories(beside.parent_path(), unknown);
        const DraftFile draft(beside);
        bringOut(backup, passphrase, draft.path());
        Connection db(draft.path(), Mode::ReadWrite);
        return insideOf(db);
    });
    if (!inside) {
        return tl::unexpected<Error>(aboutBackup(inside.error(), backup, beside));
    }
    if (!inside->check) {
        inside->check = tl::unexpected<Error>(aboutBackup(inside->check.error(), backup, beside));
    }
    return inside;
}

Result<Restored> restoreBackup(const fs::path& backup, const std::string& passphrase, const fs::path& store,
                               const Clock& clock) {
    std::error_code problem;
    fs::create_directories(store.parent_path(), problem);
    if (fs::equivalent(backup, store, problem)) {
        return fail(ErrorCode::RestoreFailed, {store.string(), "same_file"});
    }
    const auto lock = StoreLock::take(store);
    if (!lock) {
        return tl::unexpected<Error>(lock.error());
    }
    auto restored = guarded([&] { return restoreLocked(backup, passphrase, store, clock); });
    if (!restored) {
        const fs::path draft = store.string() + ".restoring";
        return tl::unexpected<Error>(aboutRestore(aboutBackup(restored.error(), backup, draft), store));
    }
    return restored;
}

}  // namespace hearth::store
