// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/words.h"

#include <string>
#include <string_view>
#include <vector>

/// Words for what goes out in files and comes in, by the codes of core/exchange (which this folder does not
/// know).
namespace hearth::ui::words {

/// What an import says of a row or of the file (core/exchange/import_problem.h), with its arguments.
[[nodiscard]] QString importProblem(const Words& words, std::string_view code,
                                    const std::vector<std::string>& arguments);
/// What a column holds (core/exchange/import_columns.h): "Postcode".
[[nodiscard]] QString importField(const Words& words, std::string_view code);
/// What becomes of a row: "new", "merged" …
[[nodiscard]] QString importFate(const Words& words, std::string_view code);

/// The name of a list (core/exchange/lists.h): "Premises".
[[nodiscard]] QString listName(const Words& words, std::string_view code);
/// A column's heading; `number` counts columns that come several times, 0 is once. In English each heading of
/// the premises list is one that the import knows.
[[nodiscard]] QString listHeading(const Words& words, std::string_view code, int number);
/// A code of a vocabulary in words; the code itself where there is none.
[[nodiscard]] QString listWord(const Words& words, std::string_view vocabulary, const std::string& code);

/// Every code that has words here, for the tests that hold them against core/exchange.
[[nodiscard]] std::vector<std::string_view> knownImportProblems();
[[nodiscard]] std::vector<std::string_view> knownImportFields();
[[nodiscard]] std::vector<std::string_view> knownListHeadings();

}  // namespace hearth::ui::words
