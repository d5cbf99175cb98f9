// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The names of backups, and which of them are let go. All of it works on names alone.
///
///     firm-backup-3f9a1c-20261125T094610Z.hearth           made by hand or by itself
///     firm-backup-3f9a1c-20261125T094610Z.hearth.sealed    the same, sealed
///     firm-before-restore-20261125T094610Z.hearth          what stood before a backup was restored
///     firm-damaged-20261125T094610Z.hearth                 the same of a damaged store
///     firm-schema1-20261125T094610Z.hearth                 before a migration
///
/// The six digits tell apart the stores that are backed up into one folder (a synchronised one, a stick that
/// is carried around): each lets go only its own.
namespace hearth::store {

struct BackupName {
    std::string stem;  // of the store's file: "firm"
    BackupKind kind = BackupKind::Regular;
    std::string tag;  // of a regular one
    Instant madeAt{};
    int count = 1;  // above 1: made in the same second as another
    bool isSealed = false;
};

/// Nothing for any name that is not exactly of the form above.
[[nodiscard]] std::optional<BackupName> parseBackupName(std::string_view name);
/// Of the kinds that this program names so (all but BeforeMigration).
[[nodiscard]] std::string textOf(const BackupName& name);

/// Tells one store on one machine from all others, by its place; the same after a restore.
[[nodiscard]] std::string backupTagOf(const std::filesystem::path& store);

/// How many days, weeks (Monday to Sunday) and months keep their newest backup.
inline constexpr int kDailyBackups = 7;
inline constexpr int kWeeklyBackups = 4;
inline constexpr int kMonthlyBackups = 12;

/// Which of the names a store with this stem and tag lets go now. The newest backup of each of the last 7
/// days, 4 weeks and 12 months that have one is kept (days in UTC); so are the one just made, and those from
/// the future, which a clock that went wrong has made, and which count for nothing. Names of any other form,
/// of other stores and of other kinds are never among them.
[[nodiscard]] std::vector<std::string> backupsToLetGo(const std::vector<std::string>& names,
                                                      std::string_view stem, std::string_view tag,
                                                      std::string_view justMade, Instant now);

}  // namespace hearth::store
