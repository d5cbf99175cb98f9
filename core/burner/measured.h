// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/uncertain.h"

namespace hearth::burner {

/// An amount with its standard uncertainty `u`, both as quantities.
template <class Amount>
struct Measured {
    Amount value;
    Amount u = {};

    bool operator==(const Measured&) const = default;
    /// As numbers of one unit, for arithmetic and for holding against an entry.
    template <class Unit>
    [[nodiscard]] quantity::Uncertain in(Unit unit) const {
        return {value.in(unit), u.in(unit)};
    }
    /// Expanded uncertainty (k = 2) as a share of the value, which must not be nought.
    [[nodiscard]] quantity::Share relative() const {
        return quantity::Share::fromBase(quantity::kCoverage * (u / value));
    }
};

/// Back from numbers of one unit.
/// Source: none needed, no arithmetic.
template <class Amount, class Unit>
[[nodiscard]] Measured<Amount> measuredIn(const quantity::Uncertain& number, Unit unit) {
    return {Amount(number.value, unit), Amount(number.u, unit)};
}

}  // namespace hearth::burner
