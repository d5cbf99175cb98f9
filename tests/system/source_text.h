// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace hearth::testing {

/// One file of the project, by its path from the repository root.
struct SourceFile {
    std::string path;
    std::string text;
};

/// The project's own files below `folders` (app, core ...) whose names end in one of `endings`, in order of
/// path.
[[nodiscard]] std::vector<SourceFile> sourceFiles(const std::vector<std::string>& folders,
                                                  const std::vector<std::string>& endings);

/// A string literal, without its quotes and escapes as written; adjacent ones are joined, as the compiler
/// does.
struct Literal {
    std::size_t line = 0;  ///< of its first piece, from 1
    std::string text;
};

/// C++ text taken apart: `code` has blanks for comments and for what stands in quotes, and as many lines as
/// before.
struct CodeText {
    std::string code;
    std::vector<Literal> literals;
};

/// Include lines keep their quoted path, so that they can be read from `code`; they give no literals.
[[nodiscard]] CodeText takeApart(std::string_view text);

/// Line number (from 1) of a place in a text.
[[nodiscard]] std::size_t lineAt(std::string_view text, std::size_t place);

/// Number of lines; a last line without its end counts too.
[[nodiscard]] std::size_t lineCount(std::string_view text);

}  // namespace hearth::testing
