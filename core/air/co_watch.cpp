// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_watch.h"

#include "core/air/co_means.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::air {

using rulebook::Rule;

std::vector<rulebook::Entry> coLevelsInForce(const rulebook::RulesInForce& rules) {
    std::vector<rulebook::Entry> levels;
    for (const auto rule : {Rule::RoomCoDangerFrom, Rule::RoomCoLeaveFrom, Rule::RoomCoRaisedFrom,
                            Rule::RoomCoNoActionMost, Rule::RoomCoShortLimit, Rule::RoomCoLongLimit}) {
        if (const auto* entry = rules.known(rule); coLimit(entry)) {
            levels.push_back(*entry);
        }
    }
    return levels;
}

std::optional<std::size_t> highestOf(const std::vector<CoReading>& watched) {
    const auto highest =
        std::max_element(watched.begin(), watched.end(),
                         [](const CoReading& a, const CoReading& b) { return a.level < b.level; });
    return highest == watched.end() ? std::nullopt
                                    : std::optional(static_cast<std::size_t>(highest - watched.begin()));
}

std::vector<std::size_t> offeredOf(const std::vector<CoReading>& watched, quantity::Duration every) {
    std::vector<std::size_t> offered;
    const double length = every.in(quantity::kSecond);
    double next = 0.0;  // where the next stretch begins that has no reading yet
    for (std::size_t i = 0; length > 0.0 && i < watched.size(); ++i) {
        const double since = (watched[i].at - watched.front().at).in(quantity::kSecond);
        if (since >= next) {
            offered.push_back(i);
            next = (std::floor(since / length) + 1.0) * length;
        }
    }
    const auto highest = highestOf(watched);
    if (highest && std::find(offered.begin(), offered.end(), *highest) == offered.end()) {
        offered.insert(std::upper_bound(offered.begin(), offered.end(), *highest), *highest);
    }
    return offered;
}

}  // namespace hearth::air
