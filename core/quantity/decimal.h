// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace hearth::quantity {

inline constexpr std::string_view kMinusSign = "\u2212";

/// An exact decimal as somebody typed or a gauge showed it: 20.70 keeps its last zero, since the number of decimals
/// says how finely the gauge reads. At most 15 digits. Equality and order are by value (20.7 == 20.70).
class Decimal {
  public:
    Decimal() = default;
    /// mantissa x 10^-decimals.
    Decimal(std::int64_t mantissa, int decimals) : m_mantissa(mantissa), m_decimals(decimals) {}

    /// Reads what a person types: point or comma as the decimal mark, a leading + or - (hyphen or U+2212), blanks
    /// around it. No thousands separators, so nothing is ambiguous: "1,234.5" and "1 234" are errors.
    /// Errors: NumberMissing, NumberUnreadable, NumberAmbiguous, NumberTooLong.
    [[nodiscard]] static Result<Decimal> parse(std::string_view typed);
    /// The nearest decimal with that many decimals (0 to 15), halves away from zero. The one place where the program
    /// rounds. A double is taken at its first 15 digits, so 1.005 is a half and becomes 1.01. A value that is not
    /// finite is a bug (assert); it and a value past 10^17 come out as nines, never as a plausible figure.
    [[nodiscard]] static Decimal rounded(double value, int decimals);

    /// Canonical text: point as the mark, all decimals: "20.70", "-0.04".
    [[nodiscard]] std::string text() const;
    [[nodiscard]] double toDouble() const;
    [[nodiscard]] int decimals() const { return m_decimals; }
    [[nodiscard]] std::int64_t mantissa() const { return m_mantissa; }
    /// The value of one step of the last digit: 0.01 for 20.70.
    [[nodiscard]] double lastDigit() const;

    /// Exact difference, with the finer of the two numbers of decimals; only a difference of more than 18 digits loses
    /// its last decimals (rounded).
    friend Decimal operator-(const Decimal& a, const Decimal& b);
    friend std::strong_ordering operator<=>(const Decimal& a, const Decimal& b);
    friend bool operator==(const Decimal& a, const Decimal& b);

  private:
    std::int64_t m_mantissa = 0;
    int m_decimals = 0;
};

}  // namespace hearth::quantity
