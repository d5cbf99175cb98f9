// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/signing.h"

#include <string_view>

/// Keys and signatures in the store (see signing.h). Everything throws Failure.
namespace hearth::store {

[[nodiscard]] std::vector<KeyLine> readKeys(const Connection& db);
void keepKey(Session& session, const SealedKey& key);
[[nodiscard]] OpenedKey openNewestKey(const Connection& db, const std::string& passphrase);

[[nodiscard]] int waitingCount(const Connection& db);
[[nodiscard]] int signWaiting(Session& session, int most);
/// Signs if the session may; within the caller's transaction.
void signIssued(Session& session, RecordId id, std::string_view pdf);
[[nodiscard]] std::optional<RecordSignature> readSignature(const Connection& db, RecordId id);

/// Every signature that is kept, held against the record's PDF and the public half of its key. Those of
/// records that were let go have nothing to be held against, and are in neither count.
struct SignaturesHeld {
    int right = 0;
    std::vector<std::string> wrong;  // numbers of their records
};
[[nodiscard]] SignaturesHeld holdSignatures(const Connection& db);

}  // namespace hearth::store
