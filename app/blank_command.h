// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"
#include "core/store/store.h"

#include <string>
#include <vector>

namespace hearth::app {

/// Takes the next numbers of the blanks' own run: "B-KTM-000012". The letters are drawn by lot where a store
/// first makes blanks; a copy of it in another place draws its own, so that no two sheets of paper have the
/// same number. A number that was taken and never printed is no gap in any book: records are numbered apart.
/// Errors: those of Store.
[[nodiscard]] Result<std::vector<std::string>> takeBlankNumbers(store::Store& store, int count);

[[nodiscard]] Exit runBlank(const CommandLine& line, store::Store& store, const Desk& desk);

}  // namespace hearth::app
