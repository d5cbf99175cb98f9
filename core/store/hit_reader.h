// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/finding.h"
#include "core/store/search_query.h"

#include <optional>

namespace hearth::store {

/// What there is to show of a thing that was found in that field: nothing when it is gone or lies in the bin.
[[nodiscard]] std::optional<Hit> readHit(const Connection& db, Indexed kind, const UuidBytes& row,
                                         SearchField field, const SearchQuery& query);

}  // namespace hearth::store
