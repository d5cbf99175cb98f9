// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace hearth::exchange {

/// A text as it is compared: small letters, no accents, anything but letters and digits one blank, none at
/// the ends; an apostrophe nothing ("O'Neill" is "oneill"). Letters beyond Latin stay as they are. Source:
/// Unicode decompositions of U+00C0 to U+017F. Checked: folded_test.cpp.
[[nodiscard]] std::string folded(std::string_view text);
/// Its words.
[[nodiscard]] std::vector<std::string> foldedWords(std::string_view text);
/// Without blanks, line ends and no-break spaces at both ends, and with single blanks within.
[[nodiscard]] std::string tidied(std::string_view text);

}  // namespace hearth::exchange
