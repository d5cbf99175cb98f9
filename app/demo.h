// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/scenario_writer.h"
#include "core/base/result.h"

#include <filesystem>

/// The demonstration firm: the scenario of core/exchange written into a store of its own.
namespace hearth::app {

enum class Made { New, WasThere };

/// Makes the demonstration's store, with every visit at its own date and the records issued that the scenario
/// marks. A whole one that is there already is left as it is; one that was interrupted half-way is made
/// again. Errors: ScenarioInvalid, FileUnwritable where something else has that name, those of Store.
[[nodiscard]] Result<Made> makeDemonstration(const std::filesystem::path& path,
                                             Records records = Records::AsMarked);

/// The files that a store at `path` may consist of; for a caller that owns the folder and wants to begin
/// anew. Error: FileUnwritable.
[[nodiscard]] Result<void> removeStoreFiles(const std::filesystem::path& path);

}  // namespace hearth::app
