// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace hearth {

/// Bytes of the blank that `text` (UTF-8) begins with, 0 when it begins with none. Text pasted from a
/// document or shown by the program has no-break, thin and narrow no-break spaces among its blanks.
[[nodiscard]] inline std::size_t blankLength(std::string_view text) {
    constexpr std::array<std::string_view, 8> kBlanks{" ",      "\t",     "\n",     "\r",
                                                      "\u00A0", "\u2007", "\u2009", "\u202F"};
    for (const auto blank : kBlanks) {
        if (text.substr(0, blank.size()) == blank) {
            return blank.size();
        }
    }
    return 0;
}

/// `text` without the blanks at its ends.
[[nodiscard]] inline std::string_view withoutOuterBlanks(std::string_view text) {
    while (const std::size_t blank = blankLength(text)) {
        text.remove_prefix(blank);
    }
    std::size_t end = 0;  // past the last byte that is not blank
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t blank = blankLength(text.substr(at));
        at += blank > 0 ? blank : 1;
        end = blank > 0 ? end : at;
    }
    return text.substr(0, end);
}

}  // namespace hearth
