// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <cstddef>

namespace hearth::ui::words {

/// One code with its English text, marked by QT_TRANSLATE_NOOP("Words", …).
template <class Code>
struct Text {
    Code code;
    const char* english;
};

/// The text of a code; null when the table lacks it. A test asks every table for every code, so that a new
/// code without its words is found at once; the program meanwhile shows the code's own text.
template <class Code, std::size_t N>
[[nodiscard]] const char* textOf(const std::array<Text<Code>, N>& table, Code code) {
    const auto found =
        std::find_if(table.begin(), table.end(), [&](const Text<Code>& t) { return t.code == code; });
    return found == table.end() ? nullptr : found->english;
}

}  // namespace hearth::ui::words
