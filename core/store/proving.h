// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/proof.h"
#include "core/record/sending.h"
#include "core/store/lines.h"

#include <string>
#include <vector>

namespace hearth::store {

/// Holding what somebody shows against the records; what becomes of one after it was issued.
class Proving {
  public:
    virtual ~Proving() = default;

    /// Whether a file is a PDF that was issued here, byte for byte. A changed one is recognised by the number
    /// in its title, or by being almost one of those kept.
    [[nodiscard]] virtual Result<record::Proof> proveFile(const std::string& bytes) const = 0;
    /// The same of a page's code or of a number (claimOfCode(), numberTyped()): NotOurs where there is no
    /// such record or revision. What is kept of it is held against its digests and the chain.
    [[nodiscard]] virtual Result<record::Proof> proveClaim(const record::Claim& claim) const = 0;

    /// Declares that a record does not count, though none takes its place. It keeps its number and stays
    /// readable; who, when and why are noted with it. Errors: NotFound, ReasonMissing, RecordVoid,
    /// RecordSuperseded, RecordChainBroken.
    [[nodiscard]] virtual Result<void> voidRecord(RecordId id, const std::string& why) = 0;

    /// All that a choice means, the oldest first.
    [[nodiscard]] virtual Result<std::vector<RecordLine>> recordsChosen(const RecordChoice& choice) const = 0;

    /// Notes that a record went out; who and when the store fills. Errors: NotFound.
    [[nodiscard]] virtual Result<void> noteSending(RecordId id, const record::Sending& sending) = 0;
    /// Oldest first.
    [[nodiscard]] virtual Result<std::vector<record::Sending>> sendings(RecordId id) const = 0;
    /// Who was given an earlier revision of this record and not yet this one.
    [[nodiscard]] virtual Result<std::vector<record::CopyHolder>> holdersToTell(RecordId id) const = 0;
};

}  // namespace hearth::store
