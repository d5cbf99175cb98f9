// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"

#include <optional>
#include <string>

/// Seals over the change log, so that a line that was altered, put in or taken out is found.
///
/// A part is a text as "<its bytes as a decimal>:<text>,", or "-," for NULL (netstrings). Each digest is
/// SHA-256 in lower-case hexadecimal of parts one after another, keys as UUID text:
/// - texts: salt in lower-case hexadecimal, before, after;
/// - line: position, id, group, store, visit, premises, table, row, field, by, at, digest of its texts;
/// - seal: digest of the seal before it ("" for the first), its own position, digest of each line.
///
/// A seal's position is that of the last line under it; it covers the lines after the seal before it. Each
/// action ends with its seal, in its own transaction. A line's texts can be erased: their digest then stands
/// in their place, and the salt goes with them, so that a short text can't be guessed from it. Seals do not
/// show that the newest actions were cut off together with their seals.
///
/// Everything throws Failure.
namespace hearth::store {

/// 16 random bytes for a new line.
[[nodiscard]] Blob newSalt();

/// Seals the lines after the last seal; nothing when there are none. Within the transaction that logged them.
void sealChanges(Connection& db);

/// Throws ChangeLogBroken with position and time of the first line that is not as it was sealed.
void verifySeals(const Connection& db);

/// Erases what the log says of a row: values before and after, of all its fields. That it was changed, when
/// and by whom stays, and so do the seals. For erasure by law: no step of undo, and earlier steps are
/// forgotten.
void eraseTexts(Session& session, const std::string& table, const std::string& row);

}  // namespace hearth::store
