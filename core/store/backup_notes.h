// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"
#include "core/store/connection.h"

#include <string>

/// What a store remembers of its backups, as settings of its own. They are no part of the firm's data: not
/// logged, not undone, and a backup that differs in them alone is no other. Everything throws Failure.
namespace hearth::store {

/// A short text that is another one after every change of what the firm keeps: the ends of all logs.
[[nodiscard]] std::string markOf(const Connection& db);

/// As noted; without the network drive.
[[nodiscard]] BackupState readBackupState(const Connection& db);
/// In one transaction.
void noteOutcome(Connection& db, const BackupOutcome& outcome);
void noteSecondFolder(Connection& db, const std::string& folder);
/// What seals the backups (backup_seal.h); empty: they are not sealed.
[[nodiscard]] std::string readSealing(const Connection& db);
void noteSealing(Connection& db, const std::string& sealing);
/// Notes in a store that is being restored where it came from, and forgets what the store that the backup was
/// made of knew of its last one.
void noteRestored(Connection& db, const std::string& from, Instant at);

}  // namespace hearth::store
