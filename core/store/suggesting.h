// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/kept.h"
#include "core/store/session.h"

#include <string>
#include <vector>

/// What was used before, for the next time. Everything throws Failure.
namespace hearth::store {

/// How much a value that was used `times` times, last `days` days ago, is worth: its times, halved for each
/// year since. Common practice, no source.
[[nodiscard]] double suggestionWorth(std::int64_t times, double days);

[[nodiscard]] std::vector<std::string> readSuggestions(const Session& session, Suggest what,
                                                       const std::string& typed, const std::string& make,
                                                       int limit);
[[nodiscard]] std::vector<reg::Appliance> readLastAppliances(Connection& db, reg::PremisesId id);

}  // namespace hearth::store
