// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/quantity/decimal.h"
#include "core/quantity/units.h"

namespace hearth::quantity {

/// A number as it was typed, with its unit. `text` is kept to the letter, also when it can't be read; `value` is
/// there only when it can.
struct Typed {
    std::string text;
    UnitCode unit = UnitCode::None;

    bool operator==(const Typed&) const = default;
    [[nodiscard]] Result<Decimal> value() const { return Decimal::parse(text); }
};

/// Splits "20,7 mbar" or "8.3in wg" into number and unit; without a unit the family's default is taken. The text kept
/// is the number's part as typed. Errors: those of Decimal::parse, UnitUnknown.
[[nodiscard]] Result<Typed> parseTyped(std::string_view typed, UnitFamily family);

/// A figure to show: rounded once, here, for screen, print and export alike. `decimals` of the value stay.
struct Figure {
    Decimal value;
    UnitCode unit = UnitCode::None;

    bool operator==(const Figure&) const = default;
};

enum class DecimalMark { Point, Comma };
enum class Sign { WhenNegative, Always };

/// "20.70 mbar", "−0.03 mbar" (U+2212), "0.009386 m³"; a no-break space before the unit.
[[nodiscard]] std::string show(const Figure& figure, DecimalMark mark = DecimalMark::Point, Sign sign = Sign::WhenNegative);

}  // namespace hearth::quantity
