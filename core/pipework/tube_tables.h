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

/// Source: EN 1057, with where it was read in the table. Checked: copper_tubes_test.cpp.
[[nodiscard]] std::span<const Tube> copperTubes();
/// Source: EN 10255, medium series, with where it was read in the table. Checked: steel_tubes_test.cpp.
[[nodiscard]] std::span<const Tube> steelMediumTubes();
/// Source: EN 10255, heavy series, with where it was read in the table. Checked: steel_tubes_test.cpp.
[[nodiscard]] std::span<const Tube> steelHeavyTubes();
/// Source: EN 1555-2, with where it was read in the table. Checked: plastic_tubes_test.cpp.
[[nodiscard]] std::span<const Tube> polyethyleneTubes();
/// Source: EN 15266, with where it was read in the table. Checked: plastic_tubes_test.cpp.
[[nodiscard]] std::span<const Tube> corrugatedTubes();

}  // namespace hearth::pipework
