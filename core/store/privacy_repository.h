// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/privacy.h"
#include "core/store/session.h"

/// What is held about people, and taking it out. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] PersonFile heldAbout(const Session& session, reg::PartyId id);
[[nodiscard]] Erasure erasureOf(const Session& session, reg::PartyId id);
[[nodiscard]] Erasure erasePerson(Session& session, reg::PartyId id);
[[nodiscard]] std::vector<MayGo> recordsPastKeeping(const Connection& db, calendar::Date today);

}  // namespace hearth::store
