// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/check_dates.h"
#include "core/store/connection.h"
#include "core/store/lines.h"

#include <vector>

/// The list of what is due, derived within the transaction that changes what it comes from. Everything throws
/// Failure.
namespace hearth::store {

/// Makes the list say what is due at those premises; none for what is gone or lies in the bin.
void refreshDue(Connection& db, const UuidBytes& premises);
/// The same, in one transaction, where the firm's usual interval decides; only what differs is written.
void refreshDueByInterval(Connection& db);
/// And which records' checks count.
void rebuildDue(Connection& db);
/// Does so where the list is of another program's form.
void rebuildOutdatedDue(Connection& db);
/// How many premises the list holds otherwise than it should, and records whose checks count otherwise than
/// they should.
[[nodiscard]] int staleInDue(const Connection& db);

/// Keeps what an issued record says was checked, and takes what it supersedes out of the count.
void keepRecordChecks(Connection& db, RecordId record, const std::optional<RecordId>& supersedes,
                      const UuidBytes& premises, std::string_view kind,
                      const std::vector<record::MadeCheck>& checks);
/// The record counts no more: it was made void.
void dropRecordChecks(Connection& db, RecordId record, const UuidBytes& premises);

}  // namespace hearth::store
