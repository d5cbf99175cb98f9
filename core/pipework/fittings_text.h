// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tree.h"

#include <optional>
#include <string_view>

namespace hearth::pipework {

/// What was typed for a section's fittings.
struct FittingsRead {
    bool said = false;        // something was typed that can be read: "none" is said, nothing is not
    bool unreadable = false;  // something was typed that can't be read
    Fittings counts;
    std::optional<quantity::Length> typed;  // what they are worth in metres of this pipe, instead of counts
};

/// Reads "3 elbows 1 tee", "3e 1t", "2 bends, 1 45", "none", "0", or what they are worth: "1.5 m". Each kind
/// by its word or the first letter of it (e, b, t; a bend of 45 degrees: 45, 4, "45 bend"), with its number
/// before it; a kind without a number is one of it. The same kind twice adds up. Blanks, commas and plus
/// signs part them. A length may have any unit of length, which must be there. Source: none needed: words, no
/// formula. Checked: fittings_text_test.cpp.
[[nodiscard]] FittingsRead readFittings(std::string_view typed);

}  // namespace hearth::pipework
