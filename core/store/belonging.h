// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/tables.h"

#include <optional>

namespace hearth::store {

/// The premises that a row belongs to, through its installation, situation, visit or owner; nothing for what
/// belongs to the firm, and for people, who may have to do with several.
[[nodiscard]] std::optional<UuidBytes> premisesOf(const Connection& db, const Table& table, const Cells& row);

}  // namespace hearth::store
