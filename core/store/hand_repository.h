// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/hand_signature.h"
#include "core/store/session.h"

#include <vector>

/// Signatures by hand (see hands.h). Everything throws Failure.
namespace hearth::store {

void sign(Session& session, const reg::HandSignature& signature);
void unsign(Session& session, reg::VisitId visit, const std::string& recordKind, reg::Signer signer);
/// Those for the next record of each kind.
[[nodiscard]] std::vector<reg::HandSignature> readSignatures(const Connection& db, reg::VisitId visit);

}  // namespace hearth::store
