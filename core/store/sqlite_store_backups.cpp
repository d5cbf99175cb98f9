// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_notes.h"
#include "core/store/backup_seal.h"
#include "core/store/bridge.h"
#include "core/store/network_drive.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {
namespace {

using std::chrono_literals::operator""h;

constexpr auto kADay = 24h;
constexpr auto kRetry = 1h;

bool isAgo(const std::optional<Instant>& then, std::chrono::hours span, Instant now) {
    return !then || now - *then >= span || *then > now;  // a clock that was set back proves nothing
}

/// Whether a new one is wanted.
bool wantsNew(const BackupState& state, BackupOccasion occasion, Instant now) {
    if (!state.hasChanged && !state.failure) {
        return false;
    }
    if (occasion != BackupOccasion::DayGoesOn) {
        return true;
    }
    return state.failure ? isAgo(state.failedAt, kRetry, now) : isAgo(state.lastAt, kADay, now);
}

}  // namespace

Result<BackupState> SqliteStore::backupState() const {
    return guarded([&] {
        BackupState state = readBackupState(m_db);
        if (m_unnoted) {
            if (m_unnoted->failure) {
                state.failure = m_unnoted->failure;
                state.failedAt = m_unnoted->at;
            }
            if (m_unnoted->secondFailure) {
                state.secondFailure = m_unnoted->secondFailure;
            }
        }
        state.networkDrive = networkDriveOf(m_path);
        return state;
    });
}

Result<BackupJob> SqliteStore::backupJob() const {
    return guarded([&] {
        return BackupJob{
            m_path, m_session.clock.now(), readBackupState(m_db).secondFolder, readSealing(m_db), {}};
    });
}

Result<std::optional<BackupJob>> SqliteStore::backupDue(BackupOccasion occasion) const {
    const auto state = backupState();
    const auto kept = firm();
    auto job = backupJob();
    if (!state || !kept || !job) {
        return tl::unexpected<Error>(!state ? state.error() : !kept ? kept.error() : job.error());
    }
    if (isReadOnly() || kept->demonstration) {  // who holds the store sees to it; a demonstration is not work
        return std::nullopt;
    }
    if (wantsNew(*state, occasion, job->at)) {
        return std::optional(*job);
    }
    const bool isCopyLate = !state->secondFolder.empty() && !state->secondHasLast && !state->hasChanged;
    if (isCopyLate) {  // tried again and again: a stick that is plugged in gets its copy
        job->copyOnly = state->last;
        return std::optional(*job);
    }
    return std::nullopt;
}

Result<void> SqliteStore::noteBackup(const BackupOutcome& outcome) {
    m_unnoted = outcome;
    auto noted = changing([&] { noteOutcome(m_db, outcome); });
    if (noted) {
        m_unnoted.reset();
    }
    return noted;
}

Result<void> SqliteStore::setSecondFolder(const std::filesystem::path& folder) {
    std::error_code unknown;
    if (!folder.empty() && !std::filesystem::is_directory(folder, unknown)) {
        return fail(ErrorCode::BackupFolderMissing, {folder.string()});
    }
    if (!folder.empty() && std::filesystem::equivalent(folder, backupFolderOf(m_path), unknown)) {
        return fail(ErrorCode::BackupNotCopied, {folder.string(), "same_folder"});
    }
    return changing([&] { noteSecondFolder(m_db, folder.string()); });
}

Result<void> SqliteStore::setSealing(const std::string& sealing) {
    if (!sealing.empty() && !parseSealing(sealing)) {
        return fail(ErrorCode::StoreFailed, {m_path.string(), "sealing"});
    }
    return changing([&] { noteSealing(m_db, sealing); });
}

Result<std::string> makeSealing(const std::string& passphrase) {
    if (isShortPassphrase(passphrase)) {
        return fail(ErrorCode::PassphraseShort, {std::to_string(kLeastPassphrase)});
    }
    return guarded([&] { return textOf(sealingFor(passphrase, usualKeyCost())); });
}

}  // namespace hearth::store
