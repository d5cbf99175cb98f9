// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/measured.h"
#include "core/quantity/units.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <variant>

/// How much gas one appliance burns, timed at the meter. All other appliances are off, this one at its full
/// rate and warm (makers' gas-rating pages: a cold appliance passes more).
namespace hearth::burner {

/// The index of a meter read twice. `digit` is the worth of the last digit that was read. A meter whose index
/// came back to nought in between is said so, with the volume at which it does: an index that runs backwards
/// is otherwise a slip.
struct IndexReadings {
    quantity::Volume start;
    quantity::Volume end;
    quantity::Volume digit;
    std::optional<quantity::Volume> rolledOverAt = {};
};

/// What passed, worked out by hand from two readings of that digit.
struct VolumeRead {
    quantity::Volume passed;
    quantity::Volume digit;
};

/// Turns of the test dial. `division` is what the pointer is read to; nought where the same mark was passed
/// at both ends, so that the stopwatch alone counts.
struct DialTurns {
    quantity::Volume aTurn;
    double turns = 1.0;
    quantity::Volume division = {};
};

using Passed = std::variant<IndexReadings, VolumeRead, DialTurns>;

/// `byHand`: half-width of the slip of the hand at the start and again at the stop.
struct Timing {
    quantity::Duration took;
    quantity::Duration byHand;
};

/// What passed between two readings, or in whole turns, each reading known within half its last digit:
///
///     V = end - start (+ volume of the whole index where it came back to nought)
///     u(V) = sqrt(2) (digit / 2) / sqrt(3)        V = turns aTurn, with `division` as the digit
///
/// Valid for 0 < V, less than half the index where it came back to nought, turns of 1, 2, 5 or 10 ft3
/// (certification body's pocket guide Gas 3, 2019). Error: OutOfRange.
/// Source: textbook; JCGM 100:2008 4.3.7 and 5.1.2, from memory.
/// Checked: tests/core/burner/gas_rate_test.cpp
[[nodiscard]] Result<Measured<quantity::Volume>> volumePassed(const Passed& passed);

/// Gas rate:
///
///     Q = V / t        (u(Q)/Q)^2 = (u(V)/V)^2 + (u(t)/t)^2        u(t) = sqrt(2) byHand / sqrt(3)
///
/// V m3; t s, from a start and a stop by hand. Valid for t > 0, V > 0 and Q up to 1000 m3/h, which is a guard
/// against a slip of the decimal point and no limit of any standard. Error: OutOfRange.
/// Source: certification body's pocket guide Gas 3 (2019): 3600 V / t, 3600 ft3 per turn / seconds per turn;
/// JCGM 100:2008 5.1.2, from memory.
/// Checked: tests/core/burner/gas_rate_test.cpp
[[nodiscard]] Result<Measured<quantity::Flow>> gasRate(const Measured<quantity::Volume>& passed,
                                                       const Timing& timing);

/// The rate with the meter's own error counted, which may lie anywhere in +-accuracy of it:
///
///     u^2 = u^2 + (Q accuracy / sqrt(3))^2
///
/// Source: Gas (Meters) Regulations 1983 reg 3 (+-2 % from Qmax/50 to Qmax); JCGM 100:2008 4.3.7, from
/// memory. Checked: tests/core/burner/gas_rate_test.cpp
[[nodiscard]] Measured<quantity::Flow> withMeterAccuracy(const Measured<quantity::Flow>& rate,
                                                         quantity::Share accuracy);

/// How long to time, so that last digit and stopwatch leave no more than `aim` (expanded, k = 2):
///
///     t = (k / aim) sqrt(2 (digit / 2)^2 / 3 / Q^2 + 2 byHand^2 / 3)
///
/// Valid for Q > 0, aim > 0 and up to a day, beyond which nobody stands there. Error: OutOfRange. To the next
/// whole second above.
/// Source: the two formulas above, solved for t.
/// Checked: tests/core/burner/gas_rate_test.cpp
[[nodiscard]] Result<quantity::Duration> timeNeeded(quantity::Flow rate, quantity::Volume digit,
                                                    quantity::Duration byHand, quantity::Share aim);

/// What is known of one timing. Absent answers give no verdict.
struct RateInput {
    bool hasNoMeter = false;  // cylinders, or bulk LPG without one
    rulebook::Given<Passed> passed = {};
    rulebook::Given<quantity::Duration> took = {};
    std::optional<bool> othersOff = {};
    std::optional<bool> atFullRate = {};
    std::optional<bool> warm = {};
    std::optional<quantity::Flow> meterMost = {};  // the meter's badged Qmax
    bool countMeterAccuracy = true;
};

/// The finding about the timing, and the rate where there is one that belongs to this appliance at full rate.
struct JudgedRate {
    rulebook::Finding finding{rulebook::FindingKind::GasRate};
    std::optional<Measured<quantity::Flow>> rate = {};
};

/// Whether the timing is good enough, and if not how long to time. Good enough is: as good as the meter
/// itself. A coarse timing fails nothing.
/// Source: Gas (Meters) Regulations 1983 reg 3 for the aim; makers' gas-rating pages and the certification
/// body's pocket guide Gas 3 for others off, full rate and warm.
[[nodiscard]] JudgedRate judgeRate(const RateInput& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
