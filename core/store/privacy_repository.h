// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/edit.h"
#include "core/store/privacy.h"
#include "core/store/session.h"

/// What is held about people, and taking it out. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] PersonFile heldAbout(const Session& session, reg::PartyId id);
[[nodiscard]] Erasure erasureOf(const Session& session, reg::PartyId id);
[[nodiscard]] Erasure erasePerson(Session& session, reg::PartyId id);

/// What `row` was called when it went into the bin: gone with the row, or only the name where that stays. The
/// lines of the bin that said it are added to `erased`, for eraseTexts().
void eraseLabels(Edit& edit, const UuidBytes& row, std::vector<std::string>& erased);

}  // namespace hearth::store
