// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/store.h"

#include <string>

/// Holding what is stored against its digests. Everything throws Failure: RecordAltered, RecordChainBroken.
namespace hearth::store {

/// The header follows the one before it, and is what its own digest says.
void verifyLink(const Connection& db, const RecordLine& line);
/// The payloads, when they are what the header says; the list's columns must say the same as the snapshot.
[[nodiscard]] std::string verifiedSnapshot(const Connection& db, const RecordLine& line);
[[nodiscard]] std::string verifiedPdf(const Connection& db, const RecordLine& line);

/// A record that was let go: nothing of it is left, and the sealed change log says that it went, so that
/// nobody passes off as let go what was only emptied.
void verifyLetGo(const Connection& db, const RecordLine& line);

/// Numbers of records that were issued, by the clock, before the one ahead of them in their series. No fault
/// of the records: the order of a chain is that of its numbers.
[[nodiscard]] std::vector<std::string> recordsOutOfTime(const Connection& db);

/// Every series, header and payload.
void verifyAll(Connection& db);

}  // namespace hearth::store
