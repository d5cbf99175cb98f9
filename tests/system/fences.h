// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/system/source_text.h"

#include <string>
#include <vector>

/// The rules of the layers and of the house, each as a function from a file to its slips ("path:line: what").
/// The tests hold every file of the project against them, and bad samples, so that each is known to be able
/// to fail.
namespace hearth::testing {

/// The folder that a path of the project belongs to: "core/tightness", "ui/visit", "app", "ui" for
/// ui/precompiled.h.
[[nodiscard]] std::string folderOf(const std::string& path);

/// Includes of our own headers against the table of layers, and how they are written.
[[nodiscard]] std::vector<std::string> layerSlips(const SourceFile& file);
/// The libraries that a folder's CMakeLists.txt links, against the same table.
[[nodiscard]] std::vector<std::string> linkSlips(const SourceFile& file);
/// Qt where there is none, SQL classes outside the store, the printer, headers that the tools can't read.
[[nodiscard]] std::vector<std::string> foreignHeaderSlips(const SourceFile& file);
/// Files of ui/paper that include QPrinter; more than one is a slip (elsewhere foreignHeaderSlips finds it).
[[nodiscard]] bool includesPrinter(const SourceFile& file);
/// Colours written out.
[[nodiscard]] std::vector<std::string> colourSlips(const SourceFile& file);
/// SQL statements in strings.
[[nodiscard]] std::vector<std::string> sqlSlips(const SourceFile& file);
/// Licence line and #pragma once.
[[nodiscard]] std::vector<std::string> formSlips(const SourceFile& file);
/// Names at the top of the repository that do not belong there.
[[nodiscard]] std::vector<std::string> topLevelSlips(const std::vector<std::string>& paths);

}  // namespace hearth::testing
