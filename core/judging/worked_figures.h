// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/typed.h"

namespace hearth::judging {

/// A worked figure as it is shown, rounded once.
[[nodiscard]] inline quantity::Figure shown(double value, int decimals,
                                            quantity::UnitCode unit = quantity::UnitCode::None) {
    return {quantity::Decimal::rounded(value, decimals), unit};
}

}  // namespace hearth::judging
