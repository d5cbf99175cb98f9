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

/// The same beside the store, under a name that says which schema it has and when it was made; gives the
/// name.
[[nodiscard]] std::filesystem::path backUpBeforeMigration(Connection& from, const Clock& clock);

/// The first lines of what SQLite finds wrong in a file; "ok" when nothing.
enum class Check { Quick, Full };
[[nodiscard]] std::string integrityOf(const Connection& connection, Check check);

}  // namespace hearth::store
