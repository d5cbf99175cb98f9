// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>

#include <string>

namespace hearth::app {

enum class IfThere { Refuse, Replace };

/// Writes a whole file or nothing. A file that is there with other contents is only replaced when asked; with
/// the same contents there is nothing to do. Error: FileUnwritable.
[[nodiscard]] Result<void> writeFile(const QString& path, const std::string& bytes, IfThere ifThere);

/// The first line of a file, without its end; "-": of what comes in. Error: FileUnreadable.
[[nodiscard]] Result<std::string> firstLineOf(const QString& path);

/// The folder and those above it, made where they are not there. Error: FileUnwritable.
[[nodiscard]] Result<void> makeFolder(const QString& path);

/// `to` itself, or `name` in it where it is a folder.
[[nodiscard]] QString fileFor(const QString& to, const QString& name);

}  // namespace hearth::app
