// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup.h"
#include "core/store/backup_name.h"
#include "core/store/backup_notes.h"
#include "core/store/backup_seal.h"
#include "core/store/backups.h"
#include "core/store/durable.h"
#include "core/store/plain_file.h"

#include <algorithm>
#include <sys/stat.h>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

/// A failure to write into a folder, as a person hears of it.
Error folderError(const Error& error, const fs::path& folder, ErrorCode otherwise) {
    std::error_code unknown;
    switch (error.code) {
        case ErrorCode::StoreFull:
            return {ErrorCode::BackupFolderFull, {folder.string()}};
        case ErrorCode::StoreReadOnly:
            return {ErrorCode::BackupFolderReadOnly, {folder.string()}};
        case ErrorCode::StoreFolderUnusable:
            return {fs::is_directory(folder, unknown) ? ErrorCode::BackupFolderReadOnly
                                                      : ErrorCode::BackupFolderMissing,
                    {folder.string()}};
        default:
            return {otherwise, {folder.string(), error.details.empty() ? "" : error.details.back()}};
    }
}

/// What the copy showed to be wrong was wrong in the store.
Error firstError(const Error& error, const BackupJob& job) {
    switch (error.code) {
        case ErrorCode::StoreDamaged:
        case ErrorCode::RecordAltered:
        case ErrorCode::RecordChainBroken:
        case ErrorCode::AttachmentAltered:
        case ErrorCode::TraceAltered:
            return {ErrorCode::BackupSourceDamaged,
                    {job.store.string(), error.details.empty() ? "" : error.details.back()}};
        case ErrorCode::StoreMissing:
        case ErrorCode::StoreNotOurs:
        case ErrorCode::StoreLocked:
            return error;
        default:
            return folderError(error, backupFolderOf(job.store), ErrorCode::BackupFailed);
    }
}

/// For the owner's eyes: it holds what its customers told the firm.
void makeFolder(const fs::path& folder) {
    std::error_code problem;
    if (fs::is_directory(folder, problem)) {
        return;
    }
    fs::create_directories(folder, problem);
    if (problem) {
        throw Failure(systemError(problem.value(), folder));
    }
    fs::permissions(folder, fs::perms::owner_all, problem);  // a stick's file system knows none
}

fs::path freePath(const fs::path& folder, BackupName name) {
    std::error_code unknown;
    while (fs::exists(folder / textOf(name), unknown)) {
        ++name.count;
    }
    return folder / textOf(name);
}

BackupName nameFor(const BackupJob& job) {
    BackupName name;
    name.stem = job.store.stem().string();
    name.tag = backupTagOf(job.store);
    name.madeAt = job.at;
    name.isSealed = !job.sealing.empty();
    return name;
}

void makeFirst(const BackupJob& job, BackupOutcome& outcome) {
    const fs::path folder = backupFolderOf(job.store);
    makeFolder(folder);
    const fs::path target = freePath(folder, nameFor(job));
    const DraftFile plain(folder / "backup.part");
    {
        Connection from(job.store, Connection::Mode::ReadOnly);
        copyStore(from, plain.path());
    }
    outcome.mark = markOf(Connection(plain.path(), Connection::Mode::ReadOnly));
    if (job.sealing.empty()) {
        plain.publish(target, DraftFile::Existing::Replace);
    } else {
        const auto sealing = parseSealing(job.sealing);
        if (!sealing) {
            throw Failure(ErrorCode::BackupFailed, {folder.string(), "sealing"});
        }
        const DraftFile sealed(folder / "sealed.part");
        sealFile(*sealing, plain.path(), sealed.path());
        sealed.publish(target, DraftFile::Existing::Replace);
    }
    outcome.made = target;
}

void copySecond(const BackupJob& job, const fs::path& made, BackupOutcome& outcome) {
    std::error_code unknown;
    if (!fs::is_directory(job.second, unknown)) {  // never made: where a stick was, it would fill the disk
        throw Failure(ErrorCode::BackupFolderMissing, {job.second.string()});
    }
    const fs::path target = job.second / made.filename();
    const DraftFile draft(target.string() + ".part");
    copyChecked(made, draft.path());
    draft.publish(target, DraftFile::Existing::Replace);
    outcome.copied = target;
}

/// What can't be removed stays; a folder that fills up in the end says so itself.
void letGo(const fs::path& folder, const fs::path& justMade, const BackupJob& job, BackupOutcome& outcome) {
    const auto gone = backupsToLetGo(entriesOf(folder), job.store.stem().string(), backupTagOf(job.store),
                                     justMade.filename().string(), job.at);
    for (const auto& name : gone) {
        std::error_code problem;
        if (fs::remove(folder / name, problem)) {
            outcome.removed.push_back(folder / name);
        }
    }
}

void addBackupsIn(const fs::path& folder, const fs::path& store, std::vector<BackupFile>& found) {
    for (const auto& name : entriesOf(folder)) {
        const auto parsed = parseBackupName(name);
        const bool isThere = std::any_of(
            found.begin(), found.end(), [&](const BackupFile& file) { return file.path.filename() == name; });
        if (!parsed || isThere) {
            continue;
        }
        if (auto file = backupFileAt(folder / name)) {
            file->isFromHere = parsed->stem == store.stem().string() &&
                               (parsed->kind != BackupKind::Regular || parsed->tag == backupTagOf(store));
            found.push_back(std::move(*file));
        }
    }
}

}  // namespace

BackupOutcome runBackup(const BackupJob& job) {
    BackupOutcome outcome;
    outcome.at = job.at;
    fs::path made = job.copyOnly;
    if (made.empty()) {
        if (const auto done = guarded([&] { makeFirst(job, outcome); }); !done) {
            outcome.failure = firstError(done.error(), job);
            return outcome;
        }
        made = outcome.made;
        letGo(made.parent_path(), made, job, outcome);
    }
    if (!job.second.empty()) {
        if (const auto done = guarded([&] { copySecond(job, made, outcome); }); !done) {
            outcome.secondFailure = done.error().code == ErrorCode::BackupFolderMissing
                                        ? done.error()
                                        : folderError(done.error(), job.second, ErrorCode::BackupNotCopied);
        } else {
            letGo(job.second, made, job, outcome);
        }
    }
    return outcome;
}

fs::path backupFolderOf(const fs::path& store) {
    return store.parent_path() / (store.stem().string() + "-backups");
}

Result<BackupFile> backupFileAt(const fs::path& path) {
    std::error_code problem;
    BackupFile file;
    file.path = path;
    file.size = fs::file_size(path, problem);
    if (problem) {
        return fail(ErrorCode::StoreMissing, {path.string()});
    }
    if (const auto name = parseBackupName(path.filename().string())) {
        file.kind = name->kind;
        file.madeAt = name->madeAt;
        file.isSealed = name->isSealed;
        return file;
    }
    struct stat status {};
    if (stat(path.c_str(), &status) == 0) {
        file.madeAt = Instant(std::chrono::seconds(status.st_mtim.tv_sec));
    }
    file.isSealed = isSealedFile(path);
    return file;
}

std::vector<BackupFile> findBackups(const fs::path& store, const fs::path& secondFolder) {
    std::vector<BackupFile> found;
    addBackupsIn(backupFolderOf(store), store, found);
    addBackupsIn(store.parent_path(), store, found);
    if (!secondFolder.empty()) {
        addBackupsIn(secondFolder, store, found);
    }
    std::sort(found.begin(), found.end(), [](const BackupFile& one, const BackupFile& other) {
        return std::pair(other.madeAt, other.path) < std::pair(one.madeAt, one.path);
    });
    return found;
}

}  // namespace hearth::store
