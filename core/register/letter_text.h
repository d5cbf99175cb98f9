// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The texts of letters, with placeholders for what differs from one to the next: "{customer}".
namespace hearth::reg {

enum class LetterKind { Reminder, NoAccess, Covering };
inline constexpr std::array kLetterKinds{LetterKind::Reminder, LetterKind::NoAccess, LetterKind::Covering};
/// As Letter::kind keeps it: "reminder", "no_access", "covering".
[[nodiscard]] std::string_view codeOf(LetterKind kind);
[[nodiscard]] std::optional<LetterKind> letterKindFromCode(std::string_view code);

enum class Placeholder {
    Customer,      // to whom
    Premises,      // the address, in one line
    DateDue,       // by when the check is due
    Attempted,     // when somebody came and could not get in
    Worked,        // date of the work that the record is about
    Today,         // date of the letter
    Firm,          // name
    Telephone,     // the firm's
    Email,         // the firm's
    Registration,  // the firm's
};
/// What stands between the braces: "due".
[[nodiscard]] std::string_view codeOf(Placeholder placeholder);
/// Those that a letter of that kind can use, in order.
[[nodiscard]] std::vector<Placeholder> placeholdersOf(LetterKind kind);

/// Whether every placeholder is one that the letter can use. Errors: PlaceholderUnknown with the name as
/// typed; PlaceholderOpen for a brace that belongs to none.
[[nodiscard]] Result<void> checkLetter(LetterKind kind, std::string_view text);

using LetterValues = std::map<Placeholder, std::string>;
/// The text with its placeholders filled, in one pass: a value may hold braces. Errors: as checkLetter(), and
/// LetterLacks for one that has no value or an empty one: no letter goes out with a hole in it.
[[nodiscard]] Result<std::string> fillLetter(LetterKind kind, std::string_view text,
                                             const LetterValues& values);

}  // namespace hearth::reg
