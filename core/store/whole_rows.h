// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/record/whole.h"
#include "core/store/connection.h"

#include <filesystem>
#include <functional>
#include <vector>

/// A store out as rows and in again. Everything throws Failure.
namespace hearth::store {

/// Every table but those that are derived (the index of words) or say what the file itself went through (its
/// migrations), with its columns as they are in this file.
[[nodiscard]] std::vector<record::WholeTable> wholeTables(const Connection& db);

/// The rows of a table by its first column.
void eachWholeRow(const Connection& db, const record::WholeTable& table,
                  const std::function<void(const record::WholeRow&)>& take);

/// Makes a new store of what `rows` hands over: at the schema that it names, brought up to date afterwards.
/// Every link must hold, every record and the change log must be what their digests say; else there is no
/// store.
void createFromRows(const std::filesystem::path& path, const Clock& clock,
                    const std::function<Result<void>(record::WholeSink&)>& rows);

}  // namespace hearth::store
