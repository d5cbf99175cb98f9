// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/store/connection.h"
#include "core/store/signing.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// What every repository works with: the connection, the time, who acts, and what may be undone.
struct Session {
    Connection& db;
    const Clock& clock;
    UuidBytes store{};  // this store's own id
    std::string actor;
    std::vector<UuidBytes>
        undoable;  // groups of the change log made since the store was opened, the newest last

    /// While several edits make one step for undo: the group that they share.
    std::optional<UuidBytes> oneStep = {};

    /// What signs records as they are issued; none: they wait.
    std::optional<OpenedKey> signer = {};

    [[nodiscard]] UuidBytes newId() const { return makeUuid7(clock.now().time_since_epoch().count()); }
};

}  // namespace hearth::store
