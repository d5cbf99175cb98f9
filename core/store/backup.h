// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/connection.h"

#include <filesystem>

/// Verified copies. Everything throws Failure (BackupFailed).
namespace hearth::store {

/// A copy by SQLite's backup API, reopened and checked before it takes the name `target`; what had that name
/// before is there until then. The copy is marked, so that a store restored from it begins its own series of
/// numbers.
void backUpTo(Connection& from, const std::filesystem::path& target);

/// The copy alone, as a file that is not there yet, reopened and checked, marked like the above. Throws what
/// went wrong.
void copyStore(Connection& from, const std::filesystem::path& part);

/// Marks an open store as a copy, so that it begins its own series of numbers.
void markAsCopy(Connection& copy);

/// All that can be held against something: pages, references between rows; where the schema is this
/// program's, also the chain of records, every digest, and the bytes of what is attached. Throws StoreDamaged
/// with what was found, RecordAltered, RecordChainBroken, AttachmentAltered, TraceAltered.
void checkWhole(Connection& db);

/// The same beside the store, under a name that says which schema it has and when it was made; gives the
/// name.
[[nodiscard]] std::filesystem::path backUpBeforeMigration(Connection& from, const Clock& clock);

/// The first lines of what SQLite finds wrong in a file; "ok" when nothing.
enum class Check { Quick, Full };
[[nodiscard]] std::string integrityOf(const Connection& connection, Check check);

}  // namespace hearth::store
