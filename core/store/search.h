// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

#include <array>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// From texts to the words by which they are found: small letters without accents, so that "llyr" finds
/// "Llŷr".
namespace hearth::store {

/// The words of a text, folded: small letters, no accents, no apostrophes (O'Brien is "obrien", and also "o"
/// and "brien").
[[nodiscard]] std::vector<std::string> searchWords(std::string_view text);

/// What somebody typed, in order, without the parts of O'Brien.
[[nodiscard]] std::vector<std::string> typedWords(std::string_view text);

/// Letters and digits of a number in one word, folded: "QA2 3BC" is "qa23bc".
[[nodiscard]] std::string joinedWord(std::string_view text);

/// A United Kingdom number in one word as it is dialled within the country: "+44 (0)20 7946 0123" is
/// "02079460123". Other digits stay as they are.
[[nodiscard]] std::string nationalDigits(std::string_view digits);

/// Where in a thing a word stands; the rarer before the more common.
enum class SearchField { Numbers, Names, Streets, Towns };
inline constexpr std::size_t kSearchFields = 4;

/// The words of one thing.
class SearchDocument {
  public:
    void addName(std::string_view text) { add(SearchField::Names, text); }
    /// It is often the name again.
    void addEmail(std::string_view text) { add(SearchField::Names, text); }
    /// A street without its postcode; the town goes with the postcode, which is found with its blank and
    /// without.
    void addAddress(const reg::Address& address);
    /// A number of any kind: its parts, and all of it as one word.
    void addNumber(std::string_view text);
    /// Also without the blanks, with the country's code or without.
    void addTelephone(std::string_view text);
    /// "BCD-000123": also without its zeros.
    void addRecordNumber(std::string_view text);

    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] const std::set<std::string>& words(SearchField field) const {
        return m_words.at(static_cast<std::size_t>(field));
    }
    bool operator==(const SearchDocument&) const = default;

  private:
    void add(SearchField field, std::string_view text);
    void addWord(SearchField field, std::string word);

    std::array<std::set<std::string>, kSearchFields> m_words;
};

}  // namespace hearth::store
