// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>

/// The arithmetic of IGE/UP/1 and IGE/UP/1A: how long a test must be for the gauge to show the leak that is
/// not permitted, and what a fall is worth as a leak. Factors and limits come from the rule book.
namespace hearth::tightness {

/// What stands in the pipes during the test.
enum class TestMedium { FuelGas, Air, Nitrogen };

/// Where existing pipework runs. Of several, the strictest counts and is for the engineer to say.
enum class AreaType {
    TypeA,    // inside, a small room or one not adequately ventilated
    TypeB,    // inside, an adequately ventilated room
    TypeC,    // inside, a large ventilated room
    Outside,  // in the open
    Buried,
};

/// How long a test must be, unrounded: new pipework, or existing in area type A.
///
///     t = GRM IV F1
///
/// t in min, GRM (gauge readable movement) in mbar, IV (installation volume) in m3, F1 in min/(mbar m3).
/// Valid for: GRM, IV and F1 above nought; nothing otherwise.
/// Source: IGE/UP/1 Edition 2, from memory. Rounding: none, see wholeMinutes(). Checked:
/// tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] std::optional<quantity::Duration> timeForTypeA(quantity::PressureChange readable,
                                                             quantity::Volume volume, double factor);

/// The same for existing pipework in area type B: t = k GRM IV F1 / RV with the room's volume RV in m3 and
/// k = 2.8 m3. Valid for: all above nought; nothing otherwise.
/// Source: IGE/UP/1 Edition 2, from memory; 2.8 = 0.0014 / 0.0005 by arithmetic. Rounding: none. Checked:
/// tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] std::optional<quantity::Duration> timeForTypeB(quantity::PressureChange readable,
                                                             quantity::Volume volume, double factor,
                                                             double roomFactor, quantity::Volume room);

/// The same for existing pipework in area type C: t = k GRM IV F1 with k = 0.047. Valid for: all above
/// nought; nothing otherwise. Source: IGE/UP/1 Edition 2, from memory; 0.047 = 0.0014 / 0.03 by arithmetic.
/// Rounding: none. Checked: tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] std::optional<quantity::Duration> timeForTypeC(quantity::PressureChange readable,
                                                             quantity::Volume volume, double factor,
                                                             double largeRoomFactor);

/// A time rounded up to whole minutes, and not under `least`.
/// Source: IGE/UP/1 Edition 2, from memory (2 min). Rounding: up; a part in 10^9 of a minute is a binary
/// fraction and not a minute more. Checked: tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] quantity::Duration wholeMinutes(quantity::Duration time, quantity::Duration least);

/// What a fall is worth as a leak by the standard's formula.
///
///     LR = F3 dp IV / t
///
/// LR in m3/h, dp (fall) in mbar, IV in m3, t in min, F3 in m3/h min/(mbar m3). Valid for: t, IV and F3 above
/// nought; nothing otherwise. A rise gives a negative rate.
/// Source: IGE/UP/1 Edition 2, from memory; with F3 = 60/1013.25 it is the textbook's isothermal leak
/// (leak_rate.h). Rounding: none. Checked: tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> leakByFactor(double leakFactor, quantity::PressureChange fall,
                                                         quantity::Volume volume, quantity::Duration time);

/// The smallest leak that a test of that time can show: leakByFactor() of the gauge's readable movement.
/// Source: IGE/UP/1 Edition 2, from memory. Rounding: none. Checked:
/// tests/core/tightness/larger_method_test.cpp.
[[nodiscard]] std::optional<quantity::Flow> smallestLeak(double leakFactor, quantity::PressureChange readable,
                                                         quantity::Volume volume, quantity::Duration time);

}  // namespace hearth::tightness
