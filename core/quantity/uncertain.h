// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A number with its standard uncertainty, and how that passes through arithmetic: first order, inputs
/// independent. Source: all of it JCGM 100:2008 (GUM), clauses 4.3.7 (rectangular distribution), 5.1.2
/// (law of propagation) and 6.2.1 (expanded uncertainty), from memory.
namespace hearth::quantity {

/// `u` is one standard uncertainty, in the unit of `value`.
struct Uncertain {
    double value = 0.0;
    double u = 0.0;
    bool operator==(const Uncertain&) const = default;
};

/// Coverage factor: an expanded uncertainty of 2 u covers about 95 %.
inline constexpr double kCoverage = 2.0;

/// Standard uncertainty of anything in +-halfWidth, all equally likely: halfWidth / sqrt(3).
/// Source: GUM 4.3.7, equation (7).
[[nodiscard]] double rectangular(double halfWidth);

/// A reading of `value` on a display whose last digit is worth `step`, by an instrument accurate to
/// +-`accuracy` (0: not counted), both rectangular. Source: GUM 4.3.7 and F.2.2.1.
[[nodiscard]] Uncertain readOff(double value, double step, double accuracy = 0.0);

/// Two or three independent standard uncertainties together: the root of the sum of squares. Source:
/// GUM 5.1.2.
[[nodiscard]] double together(double a, double b, double c = 0.0);

[[nodiscard]] Uncertain operator+(const Uncertain& a, const Uncertain& b);
[[nodiscard]] Uncertain operator-(const Uncertain& a, const Uncertain& b);
[[nodiscard]] Uncertain operator*(const Uncertain& a, const Uncertain& b);
/// The divisor must not be nought (assert).
[[nodiscard]] Uncertain operator/(const Uncertain& a, const Uncertain& b);
[[nodiscard]] Uncertain operator*(const Uncertain& a, double k);
[[nodiscard]] Uncertain operator/(const Uncertain& a, double k);

/// 2 u. Source: GUM 6.2.1.
[[nodiscard]] inline double expanded(const Uncertain& value) {
    return kCoverage * value.u;
}

}  // namespace hearth::quantity
