// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/proof.h"
#include "core/store/session.h"

/// What is known of a record that somebody shows (see proving.h). Everything throws Failure.
namespace hearth::store {

[[nodiscard]] record::Proof proveFile(Connection& db, const std::string& bytes);
[[nodiscard]] record::Proof proveClaim(Connection& db, const record::Claim& claim);

}  // namespace hearth::store
