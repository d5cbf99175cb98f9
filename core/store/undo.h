// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"

#include <optional>

namespace hearth::store {

/// Takes back the newest action of this session on the register and the entries: every field that it changed
/// gets its old value, what it made is removed, what it removed is back. That is itself an action in the log,
/// though not one that the next undo would take back. What has been issued since the store was opened ends
/// the way back: an issued record is a fact, and what it stands on is not quietly undone.
[[nodiscard]] std::optional<Change> undoNewest(Session& session);

}  // namespace hearth::store
