// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"

#include <string>
#include <string_view>

/// A document in two languages: each caption and sentence in the first, then in the second; what is the same
/// in both (values, names) once.
namespace hearth::record {

/// Parts the two languages of one text: the unit separator of ASCII, which nobody types.
inline constexpr char kBeside = '\x1F';

struct PartedText {
    std::string_view first;
    std::string_view beside;  // empty: the text is in one language
};
[[nodiscard]] PartedText parted(std::string_view text);
/// Both, or the first alone where they are the same.
[[nodiscard]] std::string pairedText(const std::string& first, const std::string& beside);
/// "date / dyddiad": for a line of plain text, which has no second size.
[[nodiscard]] std::string inOneLine(std::string_view text);

/// `first` with each text of `beside` after its own; number, revision and logo are the first's. Both must be
/// worded from the same input: blocks that do not answer each other are kept, one after the other, so that
/// nothing is lost.
[[nodiscard]] Document pairedDocument(Document first, const Document& beside);

}  // namespace hearth::record
