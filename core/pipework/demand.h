// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>

namespace hearth::pipework {

/// What an appliance draws: Q = P / H, heat input over calorific value, both gross or both net. W and J/m3
/// give m3/s at the calorific value's reference state (15 degrees C, 1013.25 mbar). Valid for P not below 0
/// and H above 0; nothing otherwise. Unrounded. Source: definition (heat input = flow x calorific value).
/// Checked: demand_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> demandFlow(quantity::GrossPower input,
                                                       quantity::GrossHeatValue heatValue);
/// The same by net figures. Source: as above. Checked: demand_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> demandFlow(quantity::NetPower input,
                                                       quantity::NetHeatValue heatValue);

}  // namespace hearth::pipework
