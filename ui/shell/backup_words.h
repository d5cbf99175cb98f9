// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backups.h"
#include "ui/words/words.h"

#include <QString>

/// What is said of backups in the window.
namespace hearth::ui::shell {

/// "25 Nov 2026, 17:31", where the firm works.
[[nodiscard]] QString momentText(const words::Words& words, Instant instant);
/// When the last one was made and where it is, and whether anything was done since.
[[nodiscard]] QString lastBackupText(const words::Words& words, const store::BackupState& state);
/// What is wrong, a line each; empty when nothing is.
[[nodiscard]] QString backupTroubleText(const words::Words& words, const store::BackupState& state);
/// What came of one.
[[nodiscard]] QString outcomeText(const words::Words& words, const store::BackupOutcome& outcome);
/// What a backup is: "made by itself, sealed", "what stood before a restore".
[[nodiscard]] QString backupKindText(const store::BackupFile& file);
/// "3.4 MB".
[[nodiscard]] QString sizeText(std::uintmax_t bytes);
/// What a backup holds, a line each.
[[nodiscard]] QString insideText(const words::Words& words, const store::BackupInside& inside);

}  // namespace hearth::ui::shell
