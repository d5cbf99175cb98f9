// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::testing {

/// A function with its body, by the lines it takes: from the first of its head to its closing brace.
struct FunctionLength {
    std::string head;  ///< on one line, shortened
    std::size_t line = 0;
    std::size_t lines = 0;
};

/// The functions of a C++ text, lambdas at file level included; a lambda within a function belongs to it.
/// Told by braces and heads, not by a compiler: for the code style of this project.
[[nodiscard]] std::vector<FunctionLength> functionLengths(std::string_view text);

}  // namespace hearth::testing
