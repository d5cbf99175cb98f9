// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/quantity/quantity.h"

namespace hearth::gas {

/// Pressure at which water and its vapour stand together at a temperature:
///     v = T + n9 / (T - n10)
///     A = v^2 + n1 v + n2      B = n3 v^2 + n4 v + n5      C = n6 v^2 + n7 v + n8
///     p = (2 C / (-B + sqrt(B^2 - 4 A C)))^4
/// T in K, p in MPa; n1 to n10 are the formulation's coefficients. That of the pure vapour: in air at
/// atmospheric pressure it is about 0.4 % more (from memory), which is left out: 0.1 K of dew point.
/// Valid for: 273.15 K to 647.096 K; OutOfRange in degrees Celsius otherwise.
/// Source: IAPWS-IF97, region 4, saturation-pressure equation (30), from memory, coefficients too; they are
/// checked against an independent library. Rounding: none. Checked: tests/core/gas/water_vapour_test.cpp.
[[nodiscard]] Result<quantity::AbsolutePressure> saturationPressure(quantity::Temperature temperature);

/// The temperature at which vapour of that pressure begins to condense; the same equation solved for T:
///     b = p^(1/4)      E = b^2 + n3 b + n6      F = n1 b^2 + n4 b + n7      G = n2 b^2 + n5 b + n8
///     D = 2 G / (-F - sqrt(F^2 - 4 E G))
///     T = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D))) / 2
/// Valid for: 611.213 Pa to 22.064 MPa; OutOfRange in mbar otherwise.
/// Source: IAPWS-IF97, region 4, saturation-temperature equation (31), from memory as above. Rounding: none.
/// Checked: tests/core/gas/water_vapour_test.cpp.
[[nodiscard]] Result<quantity::Temperature> saturationTemperature(quantity::AbsolutePressure pressure);

}  // namespace hearth::gas
