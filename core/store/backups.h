// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/calendar/civil_date.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// Backups: verified copies of the whole store in a folder beside it, and again in a second folder where the
/// firm wants that; sealed with a passphrase where it wants that too. What is in a backup is shown before it
/// is restored, and nothing that stands is lost by restoring.
namespace hearth::store {

enum class BackupKind {
    Regular,          // made by hand or by itself; only these are rotated
    BeforeMigration,  // before a newer program changed the store's form
    BeforeRestore,    // what stood before a backup was restored
    SetAside,         // the same, byte for byte, since it was damaged
};

struct BackupFile {
    std::filesystem::path path;
    BackupKind kind = BackupKind::Regular;
    Instant madeAt{};
    bool isSealed = false;
    bool isFromHere = false;  // of this very store on this machine
    std::uintmax_t size = 0;
};

/// What a backup holds, read without changing a byte of it.
struct BackupInside {
    std::string firm;
    bool demonstration = false;
    int schema = 0;
    int premises = 0;
    int visits = 0;
    int records = 0;
    std::optional<calendar::Date> newestVisit;
    std::optional<Instant> lastChange;
    /// Its pages, references, chain of records and digests; an error says what was found. A store of an older
    /// program has its records checked when it is restored.
    Result<void> check;
};

/// What one backup is to do. Read from an open store, carried out by runBackup() in any thread.
struct BackupJob {
    std::filesystem::path store;
    Instant at{};
    std::filesystem::path second;    // empty: none
    std::string sealing;             // empty: not sealed
    std::filesystem::path copyOnly;  // a backup that lacks its second copy; empty: a new one is made
};

/// What came of it.
struct BackupOutcome {
    Instant at{};
    std::filesystem::path made;  // empty: none, see failure
    std::string mark;            // what was in the store by then
    std::optional<Error> failure;
    std::filesystem::path copied;  // in the second folder; empty: none was wanted, or see secondFailure
    std::optional<Error> secondFailure;
    std::vector<std::filesystem::path> removed;  // by the rotation, in either folder
};

/// How the store stands with its backups.
struct BackupState {
    std::optional<Instant> lastAt;
    std::filesystem::path last;
    bool hasChanged = false;       // since the last one
    std::optional<Error> failure;  // of the newest attempt, until a good one
    std::optional<Instant> failedAt;
    std::filesystem::path secondFolder;  // empty: none
    std::optional<Instant> secondAt;     // the last good copy there
    std::optional<Error> secondFailure;
    bool secondHasLast = false;
    bool isSealed = false;
    std::string restoredFrom;  // name of the backup that this store was restored from; empty: none
    std::optional<Instant> restoredAt;
    std::string networkDrive;  // the kind of network drive that the store lies on; empty: none

    /// Something that a person must hear of until it is good again.
    [[nodiscard]] bool isTroubled() const { return failure || secondFailure || !networkDrive.empty(); }
};

enum class BackupOccasion {
    Closing,    // the program ends
    DayGoesOn,  // asked for again and again while it is open
    AfterMuch,  // an import
};

/// What an open store knows of its backups.
class Backups {
  public:
    virtual ~Backups() = default;
    [[nodiscard]] virtual Result<BackupState> backupState() const = 0;
    /// A backup as the firm has set it, to be made now.
    [[nodiscard]] virtual Result<BackupJob> backupJob() const = 0;
    /// The same where the occasion asks for one: something has changed since the last (and that is a day ago,
    /// while the program is open), the last attempt failed, or the second folder lacks the last one.
    [[nodiscard]] virtual Result<std::optional<BackupJob>> backupDue(BackupOccasion occasion) const = 0;
    /// Keeps what came of a job. Where the store can't be written to, it is known until the store is closed.
    [[nodiscard]] virtual Result<void> noteBackup(const BackupOutcome& outcome) = 0;
    /// Empty: no second folder. Errors: BackupFolderMissing, BackupNotCopied for the folder that is the
    /// first.
    [[nodiscard]] virtual Result<void> setSecondFolder(const std::filesystem::path& folder) = 0;
    /// Backups are sealed with this from now on (makeSealing()); empty: not any more.
    [[nodiscard]] virtual Result<void> setSealing(const std::string& sealing) = 0;
};

/// What seals backups so that only this passphrase opens them: to be kept in the store, where it opens
/// nothing. Takes most of a second and 256 MiB, in any thread. Errors: PassphraseShort, StoreFailed without
/// the memory.
[[nodiscard]] Result<std::string> makeSealing(const std::string& passphrase);

/// Makes the backup, checks it, gives it its name, removes what the rotation lets go, copies it to the second
/// folder. Needs no open store and may run beside one. Never throws; a failure stands in the outcome.
[[nodiscard]] BackupOutcome runBackup(const BackupJob& job);

/// The folder beside a store that its backups are kept in.
[[nodiscard]] std::filesystem::path backupFolderOf(const std::filesystem::path& store);

/// All that has a backup's name, of this store and of others, in its backup folder, beside it and in the
/// second folder; a copy that is in two places once. Newest first.
[[nodiscard]] std::vector<BackupFile> findBackups(const std::filesystem::path& store,
                                                  const std::filesystem::path& secondFolder = {});
/// What the name of any file says; without a backup's name, when the file was last written.
[[nodiscard]] Result<BackupFile> backupFileAt(const std::filesystem::path& path);

/// Looks into a backup or any store. A sealed one is opened into a file beside `store` for as long as that
/// takes. Errors: StoreMissing, StoreNotOurs, StoreNewer, StoreDamaged, BackupNewer, BackupDamaged,
/// PassphraseMissing, PassphraseWrong, StoreFull, ...
[[nodiscard]] Result<BackupInside> lookInside(const std::filesystem::path& backup,
                                              const std::string& passphrase,
                                              const std::filesystem::path& store);

struct Restored {
    std::filesystem::path before;  // where what stood is kept; empty: nothing stood there
};
/// Puts a backup in the place of the store (or where there is none yet): checked and brought up to date
/// first, what stood kept under a name of its own. Nobody may have the store open. An error means that the
/// store is as it was: StoreLocked, RestoreFailed, and those of lookInside().
[[nodiscard]] Result<Restored> restoreBackup(const std::filesystem::path& backup,
                                             const std::string& passphrase,
                                             const std::filesystem::path& store, const Clock& clock);

}  // namespace hearth::store
