// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/system/source_text.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::testing {

/// A free function that a header declares, with the doc block that speaks for it.
struct FreeFunction {
    std::string name;  ///< "leakRate", "operator+"
    std::size_t line = 0;
    std::string doc;  ///< without its slashes, on one line; empty when there is none
};

/// The free functions of a header; members of classes and structs are not among them. The doc block of one is
/// the unbroken run of /// lines directly above it. One that has none, but follows the declaration before it
/// without an empty line, shares that one's block. Told by braces and heads, not by a compiler: for the code
/// style of this project.
[[nodiscard]] std::vector<FreeFunction> freeFunctions(std::string_view header);

/// The doc block directly above the header's first namespace; empty when there is none.
[[nodiscard]] std::string namespaceDoc(std::string_view header);

/// Free functions of a header for which no published source is named: "Source:" and a word after it, in the
/// function's block or in the one above the namespace, which speaks for the whole file.
[[nodiscard]] std::vector<std::string> sourceSlips(const SourceFile& header);

/// Free functions of a header whose name none of the `tests` uses outside comments and strings. An overloaded
/// name counts once; operators are exempt, since no test writes out their names.
[[nodiscard]] std::vector<std::string> untestedSlips(const SourceFile& header,
                                                     const std::vector<SourceFile>& tests);

}  // namespace hearth::testing
