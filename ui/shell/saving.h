// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>

#include <functional>
#include <string>
#include <string_view>

namespace hearth::ui::shell {

/// Writes a file whole or not at all; what had that name before is there until then. Error: FileUnwritable.
[[nodiscard]] Result<void> writeFile(const QString& path, const std::string& bytes);

/// Takes the next bytes of a file.
using FileSink = std::function<Result<void>(std::string_view)>;
/// The same for what comes piece by piece. Errors: those of `fill`, and then nothing was written;
/// FileUnwritable.
[[nodiscard]] Result<void> writeFile(const QString& path,
                                     const std::function<Result<void>(const FileSink&)>& fill);

}  // namespace hearth::ui::shell
