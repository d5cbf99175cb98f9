// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>

namespace hearth::store {

/// The one mapping from SQLite's result codes to ours.
/// `code` is an extended result code, `systemError` the errno behind it (0: none), `message` SQLite's own
/// words.
[[nodiscard]] Error sqliteError(int code, int systemError, const std::string& path,
                                const std::string& message);

}  // namespace hearth::store
