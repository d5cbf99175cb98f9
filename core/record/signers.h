// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"

#include <span>

namespace hearth::record {

/// Who signs a record of that kind, in the order of the page: the engineer, and whoever receives it. An entry
/// that the firm makes for itself and a letter are received by nobody who would sign for them.
[[nodiscard]] std::span<const reg::Signer> signersOf(RecordKind kind);

/// What somebody gave for the next record of that kind; null: nothing yet.
[[nodiscard]] const reg::HandSignature* signatureOf(const reg::VisitFile& file, RecordKind kind,
                                                    reg::Signer signer);

}  // namespace hearth::record
