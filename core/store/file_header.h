// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>

namespace hearth::store {

/// Marks a SQLite file as a store of this program: "HLgr".
inline constexpr std::int32_t kApplicationId = 0x484C6772;

/// What the first hundred bytes of a file say, read without SQLite: before anybody has opened the file as a
/// database, nothing can write to it, not even a journal.
/// Source: "Database File Format", section 1.3 "The Database Header" (sqlite.org/fileformat2.html).
struct FileHeader {
    std::int32_t schema = 0;
};

/// Errors: StoreMissing, StoreNotOurs (no SQLite file, or another application's), StoreFailed (can't be
/// read).
[[nodiscard]] Result<FileHeader> readFileHeader(const std::filesystem::path& path);

/// A journal that a program left behind when it was killed: the file is whole only after SQLite has played it
/// back, which writes.
[[nodiscard]] bool hasJournal(const std::filesystem::path& path);
[[nodiscard]] std::filesystem::path journalOf(const std::filesystem::path& path);

}  // namespace hearth::store
