// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/finding.h"

#include <string>

namespace hearth::store {

/// See Finding::find(). Throws Failure.
[[nodiscard]] Hits findHits(const Connection& db, const std::string& typed, std::size_t most);

}  // namespace hearth::store
