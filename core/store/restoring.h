// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"
#include "core/store/connection.h"
#include "core/store/durable.h"

/// The steps of looking into a backup and of restoring one. Everything throws Failure.
namespace hearth::store {

/// A backup as a plain store in a file of its own, which may be written to: opened if it was sealed, a
/// journal that a killed program left played back.
void bringOut(const std::filesystem::path& backup, const std::string& passphrase,
              const std::filesystem::path& draft);

/// Gives the file at `draft` the name of the store, on the disk when this returns; what stood there has the
/// draft's name then. When it throws, the store is the one that stood there before.
void putInPlace(const std::filesystem::path& draft, const std::filesystem::path& store);

}  // namespace hearth::store
