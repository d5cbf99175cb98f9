// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "ui/words/words.h"

#include <QString>

namespace hearth::ui::visit {

/// A volume for the sheet, in m3 to the millilitre: "0.009386 m³".
[[nodiscard]] inline QString volumeText(quantity::Volume volume, const words::Words& words) {
    constexpr int kDecimals = 6;
    return words.figure({quantity::Decimal::rounded(volume.in(quantity::kCubicMetre), kDecimals),
                         quantity::UnitCode::CubicMetre});
}

}  // namespace hearth::ui::visit
