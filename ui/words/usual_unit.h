// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/item.h"

namespace hearth::ui::words {

/// The unit that stands behind a figure until somebody says another: as the trade reads it off. A heating
/// system's pressure is read in bar, and 1.2 of anything else is no system's pressure.
[[nodiscard]] inline quantity::UnitCode usualUnit(reg::Item item) {
    if (item == reg::Item::WaterPressure) {
        return quantity::UnitCode::Bar;
    }
    if (item == reg::Item::UnventedCapacity) {
        return quantity::UnitCode::Litre;  // as a cylinder's plate has it
    }
    const auto units = quantity::unitsOf(reg::infoOf(item).units);
    return units.empty() ? quantity::UnitCode::None : units.front();
}

}  // namespace hearth::ui::words
