// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"

#include <span>

/// The tables behind tubes(), by material.
///
/// Source: dimensions by EN 1057 (copper), EN 10255 (steel) and EN 1555-2 (polyethylene), none of them read
/// itself; each row names the page that its dimensions and its trade volume were read on, with its provenance
/// and doubt. Checked: copper_tubes_test.cpp, steel_tubes_test.cpp, plastic_tubes_test.cpp.
namespace hearth::pipework {

[[nodiscard]] std::span<const Tube> copperTubes();
[[nodiscard]] std::span<const Tube> steelMediumTubes();
[[nodiscard]] std::span<const Tube> steelHeavyTubes();
[[nodiscard]] std::span<const Tube> polyethyleneTubes();
[[nodiscard]] std::span<const Tube> corrugatedTubes();

}  // namespace hearth::pipework
