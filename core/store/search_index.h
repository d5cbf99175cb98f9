// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/search.h"

#include <string>
#include <string_view>

/// The index of words: derived from the register and the records, within the transaction that changes them.
/// Everything throws Failure.
namespace hearth::store {

/// What the index holds things of.
enum class Indexed { Premises, Party, Record, Visit };
[[nodiscard]] std::string_view indexedName(Indexed kind);
/// The letter before each of its words.
[[nodiscard]] char indexedLetter(Indexed kind);

/// What a thing is found by, read from its rows; empty for one that is gone or lies in the bin.
/// Premises: address, who holds a role, UPRN, MPRN, serial numbers of meters and appliances. Party: name,
/// address, telephone, e-mail. Record: number, and address and customer as they were. Visit: the customer's
/// order number.
[[nodiscard]] SearchDocument documentOf(const Connection& db, Indexed kind, const UuidBytes& row);

/// Makes the index say what documentOf() does.
void refreshSearch(Connection& db, Indexed kind, const UuidBytes& row);

/// Empties the index and fills it again, in one transaction.
void rebuildSearch(Connection& db);
/// Does so where the index is of another program's form: after a migration, or when words are folded in a new
/// way.
void rebuildOutdatedSearch(Connection& db);
/// Writes the index anew from itself, so that nothing of words that are gone is left in its pages.
void tightenSearch(Connection& db);
/// How many things are in the index otherwise than documentOf() says, lack in it or should not be there; one
/// for an index that is damaged in itself.
[[nodiscard]] int staleInSearch(Connection& db);

}  // namespace hearth::store
