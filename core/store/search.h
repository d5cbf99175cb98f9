// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"
#include "core/store/connection.h"

#include <string>
#include <string_view>
#include <vector>

/// Finding things by words, small or capital, with or without accents: "llyr" finds "Llŷr".
namespace hearth::store {

/// What the index holds words of.
enum class Indexed { Premises, Party, Record };

/// The words of a text, folded: small letters, no accents, no apostrophes (O'Brien is "obrien", and also "o"
/// and "brien").
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);

/// Those of an address; a postcode is found with its blank and without.
[[nodiscard]] std::vector<std::string> addressWords(const reg::Address& address);

/// Makes the index say exactly this of a row.
void setWords(Connection& db, Indexed kind, const UuidBytes& row, const std::vector<std::string>& words);

/// Reads what the words of a premises (address, postcode, holders) or a party come from, and sets them. A row
/// that is gone loses its words.
void refreshPremisesWords(Connection& db, const UuidBytes& premises);
void refreshPartyWords(Connection& db, const UuidBytes& party);

/// An SQL condition that `column` is a row of which every word of `search` begins some word; "TRUE" for no
/// words. The values for its marks are appended to `values`.
[[nodiscard]] std::string matching(Indexed kind, std::string_view search, std::string_view column,
                                   Cells& values);

}  // namespace hearth::store
