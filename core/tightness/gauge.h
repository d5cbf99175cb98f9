// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/given.h"

#include <optional>

/// A change of pressure read twice on one gauge, and when it is too near to a limit to tell.
namespace hearth::tightness {

enum class GaugeKind { Electronic, Water };

struct Gauge {
    GaugeKind kind = GaugeKind::Electronic;
    std::optional<quantity::PressureChange> resolution;            // one step of the display or scale
    std::optional<quantity::PressureChange> repeatability;         // half-width
    std::optional<quantity::PressureChange> accuracy;              // half-width
    std::optional<quantity::PressureChange> drift = std::nullopt;  // in a minute, half-width
};

/// A reading with the worth of its last typed digit.
struct Reading {
    quantity::GaugePressure pressure;
    quantity::PressureChange digit;
};

/// One timed stage of the test, as far as it has been entered.
struct Stage {
    Given<Reading> start;
    Given<Reading> end;
    Given<quantity::Duration> took;
};

/// The coverage factor of every expanded uncertainty here (GUM): about 95 %.
inline constexpr double kCoverage = 2.0;

/// A change between two readings, positive for a fall, with its expanded uncertainty (k = 2).
struct Change {
    quantity::PressureChange fall;
    quantity::PressureChange uncertainty;
    quantity::PressureChange digit;

    [[nodiscard]] Change reversed() const { return {-fall, uncertainty, digit}; }
};

/// The uncertainty of a CHANGE read on one gauge is that of its resolution and repeatability; its accuracy
/// cancels. Each reading is known within half a readable step d/2 and within the repeatability r, both taken
/// as rectangular:
///
///     u = sqrt(2) sqrt((d/2)^2/3 + r^2/3)        U = 2 u
///
/// Source: JCGM 100:2008 (GUM) 4.3.7 and F.2.2.1 for the rectangular distribution, 6.2.1 for U, from memory;
/// the readable step by common practice, no source. Checked: gauge_test.cpp. The readable step is:
/// - electronic: the display's resolution, or the last typed digit when that is coarser or nothing else is
/// known;
///   repeatability not stated counts as one step;
/// - water: half of the scale's division (0.5 mbar where not stated), as it is read; what is typed finer than
/// that
///   was not read, and whole numbers are usual. A column of water repeats: a repeatability not stated is
///   nought.
///
/// So on a display of 0.01 mbar U is 0.018 mbar; of 0.1 mbar 0.18; on a water gauge of 0.5 mbar 0.204: with
/// no movement seen each still stands clear of its threshold of 0.2 or 0.25, and one step on a 0.1 mbar
/// display does not.
[[nodiscard]] Change changeBetween(const Gauge& gauge, const Reading& start, const Reading& end);

/// Where a change stands against a limit: within U of it, either side, it can't be told and is to be looked
/// at again. Source: none needed: two comparisons; U is that of changeBetween(). Checked: gauge_test.cpp.
enum class Standing { Within, AtLimit, Beyond };
[[nodiscard]] Standing standing(const Change& change, quantity::PressureChange limit);

/// The gauge's threshold of perceptible movement; nothing when the rule book has none.
/// Source: the entry's own (Rule::NoMovementWater, NoMovementElectronic). Checked: gauge_test.cpp.
[[nodiscard]] const rulebook::Entry* movementThreshold(const Gauge& gauge,
                                                       const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
