// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace hearth::ui::records {

/// What a record's PDF is called where nothing else is said: number, revision from the second on, address and
/// day, with nothing in it that a file system of today refuses: "A-000017 r2 14 Tanner's Row 2026-11-25.pdf".
[[nodiscard]] QString proposedFileName(const QString& number, int revision, const QString& address,
                                       const QString& isoDay);

}  // namespace hearth::ui::records
