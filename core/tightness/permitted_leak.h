// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/larger_method.h"
#include "core/tightness/verdict.h"

#include <optional>
#include <vector>

namespace hearth::tightness {

/// Where the pipework runs; each is nothing until it is said.
struct Surroundings {
    std::optional<Work> work;
    std::optional<AreaType> area;          // asked of existing pipework
    std::optional<quantity::Volume> room;  // of types B and C
    std::optional<bool> ventilated;        // adequately, of types B and C
};

/// What may leak, with the entries that say so; `limit` is nothing when it can't be said, and the finding
/// says why. `unproved`: a figure is there (beyond it a test fails) but that the place deserves it is not
/// shown.
struct Permitted {
    std::optional<quantity::Flow> limit;
    std::vector<const rulebook::Entry*> entries;
    bool unproved = false;
    rulebook::Finding finding{rulebook::FindingKind::PermittedLeak};
};

/// The leak permitted in a ventilated room: rate for each cubic metre times the room's volume, 0.0005 RV
/// m3/h. Valid for: both above nought; nothing otherwise. Source: IGE/UP/1, from memory; an uncited
/// question-and-answer page has the same figure. Rounding: none. Checked:
/// tests/core/tightness/permitted_leak_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> leakForRoom(double perCubicMetre, quantity::Volume room);

/// Maximum permitted leak rate by work and area type. A room that is not adequately ventilated counts as type
/// A; a type B room never gets more than the figure for a large one; a large room must have the volume from
/// which it counts as one. LPG, pipework in the open and buried pipework have no figure that was read.
/// Source: IGE/UP/1 and IGE/UP/1A, from memory. Checked: tests/core/tightness/permitted_leak_test.cpp.
[[nodiscard]] Permitted permittedLeak(const Surroundings& place, const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
