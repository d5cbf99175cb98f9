// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"

namespace hearth::store {

/// Takes the number, freezes the snapshot, renders and keeps, in one transaction: whatever fails, no number
/// is used up. Errors: NotFound, RecordSuperseded, RecordVoid, RecordChainBroken, what `render` gives, and the store's.
[[nodiscard]] RecordId issueRecord(Session& session, const IssueRequest& request, const Render& render);

}  // namespace hearth::store
