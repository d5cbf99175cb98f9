// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/tube.h"

#include "core/pipework/tube_tables.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace hearth::pipework {

namespace {

std::vector<Tube> allTubes() {
    std::vector<Tube> all;
    for (const auto table :
         {copperTubes(), steelMediumTubes(), steelHeavyTubes(), polyethyleneTubes(), corrugatedTubes()}) {
        all.insert(all.end(), table.begin(), table.end());
    }
    return all;
}

}  // namespace

double Tube::geometricVolume() const {
    constexpr double kSquareMillimetre = 1e-6;  // m2, and so m3 per metre
    return std::numbers::pi / 4.0 * bore() * bore() * kSquareMillimetre;
}

std::span<const Tube> tubes() {
    static const std::vector<Tube> all = allTubes();
    return all;
}

const Tube* tubeByCode(std::string_view code) {
    const auto all = tubes();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Tube& tube) { return tube.code == code; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace hearth::pipework
