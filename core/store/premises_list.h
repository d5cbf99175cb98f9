// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/lines.h"

#include <optional>
#include <string>
#include <vector>

/// The list of premises, by town and address. Everything throws Failure.
namespace hearth::store {

/// Those found by the words of `search`, the newest `limit` of them; all for no words.
[[nodiscard]] std::vector<PremisesLine> findPremises(const Connection& db, const std::string& search,
                                                     int limit);

[[nodiscard]] int countPremises(const Connection& db);
[[nodiscard]] std::vector<PremisesLine> readPremisesPage(const Connection& db, int first, int count,
                                                         std::optional<int> all = {});
[[nodiscard]] std::optional<int> rowOfPremises(const Connection& db, reg::PremisesId id);

}  // namespace hearth::store
