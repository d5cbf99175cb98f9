// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/register/model.h"
#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/store.h"
#include "core/store/store_lock.h"

#include <filesystem>
#include <memory>
#include <optional>

/// From a path to a connection that may be worked with. Everything throws Failure.
namespace hearth::store {

struct Opened {
    std::optional<StoreLock> lock;
    std::unique_ptr<Connection> db;
    std::optional<Error> readOnly;  // why
    std::filesystem::path migrationBackup;
};

/// `list` is the program's, or a test's.
[[nodiscard]] Opened openFile(const std::filesystem::path& path, Access access, const Clock& clock,
                              MigrationList list);

/// Makes a new store under a name of its own and gives it `path` only when it is whole.
void createFile(const std::filesystem::path& path, const reg::Firm& firm, const Clock& clock,
                MigrationList list);

/// The store's own id.
[[nodiscard]] UuidBytes storeIdOf(const Connection& db);

}  // namespace hearth::store
