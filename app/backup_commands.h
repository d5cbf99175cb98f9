// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

/// The commands that make backups, look into them and restore them.
namespace hearth::app {

/// Makes that backup and says where it is, or why there is none.
[[nodiscard]] Exit makeBackup(const store::BackupJob& job, store::Store& store, const Desk& desk);
[[nodiscard]] Exit runBackUp(const CommandLine& line, const Desk& desk);
[[nodiscard]] Exit runRestore(const CommandLine& line, const Desk& desk);

}  // namespace hearth::app
