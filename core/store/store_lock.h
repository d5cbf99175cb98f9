// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QLockFile>

#include <filesystem>
#include <memory>
#include <string>

namespace hearth::store {

/// The application's lock on a store, in a file beside it, for as long as the object lives. SQLite's own
/// locks last only for a statement; this one keeps a second program from writing between ours. The lock of a
/// program that was killed is taken over.
class StoreLock {
  public:
    /// Errors: StoreLocked with the holder ("name 4711@host"), StoreReadOnly when no lock can be written
    /// there, StoreFull when that is for want of room.
    [[nodiscard]] static Result<StoreLock> take(const std::filesystem::path& store);

  private:
    explicit StoreLock(std::unique_ptr<QLockFile> file) : m_file(std::move(file)) {}

    std::unique_ptr<QLockFile> m_file;
};

}  // namespace hearth::store
