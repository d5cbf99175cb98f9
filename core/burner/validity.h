// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/quantity/decimal.h"

#include <string>

namespace hearth::burner {

/// OutOfRange with the figure and the ends of where the formula is valid, all in one unit.
/// Source: none needed, no arithmetic.
[[nodiscard]] inline tl::unexpected<Error> outside(double value, double least, double most, int decimals) {
    const auto text = [&](double number) { return quantity::Decimal::rounded(number, decimals).text(); };
    return fail(ErrorCode::OutOfRange, {text(value), text(least), text(most)});
}

}  // namespace hearth::burner
