// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"

#include <span>

/// The tables behind tubes(), by material.
namespace hearth::pipework {

[[nodiscard]] std::span<const Tube> copperTubes();
[[nodiscard]] std::span<const Tube> steelMediumTubes();
[[nodiscard]] std::span<const Tube> steelHeavyTubes();
[[nodiscard]] std::span<const Tube> polyethyleneTubes();
[[nodiscard]] std::span<const Tube> corrugatedTubes();

}  // namespace hearth::pipework
