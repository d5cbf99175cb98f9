// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>

#include <string>

namespace hearth::ui::shell {

/// Writes a file whole or not at all; what had that name before is there until then. Error: FileUnwritable.
[[nodiscard]] Result<void> writeFile(const QString& path, const std::string& bytes);

}  // namespace hearth::ui::shell
