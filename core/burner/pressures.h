// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/uncertain.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <string>

/// Pressures of one appliance with the gas on. Working pressure at the meter and lock-up are core/tightness'.
/// Regulators' safety devices of LPG (over- and under-pressure shut-off) are not judged here.
namespace hearth::burner {

/// A reading with the worth of its last digit and the gauge's accuracy (half-width; nought: not counted).
struct PressureRead {
    quantity::GaugePressure pressure;
    quantity::PressureChange digit;
    quantity::PressureChange accuracy = {};
};

/// The reading in mbar with its uncertainty: half the last digit and the accuracy, both rectangular.
/// Source: JCGM 100:2008 4.3.7, from memory.
/// Checked: tests/core/burner/pressures_test.cpp
[[nodiscard]] quantity::Uncertain inMillibar(const PressureRead& reading);

/// What falls off between meter and appliance. Read on one gauge, its accuracy cancels.
///
///     meter - inlet
///
/// Source: textbook; JCGM 100:2008 5.1.2, from memory.
/// Checked: tests/core/burner/pressures_test.cpp
[[nodiscard]] quantity::Uncertain pressureDrop(const PressureRead& meter, const PressureRead& inlet,
                                               bool sameGauge);

/// The maker's range of a pressure.
struct MakersRange {
    quantity::GaugePressure least;
    quantity::GaugePressure most;
    std::string source;
};

/// What was running while pressures were read. High operating load: the appliance of highest output at its
/// maximum (a combination boiler with two hot taps full), other heaters at their maximum, others about half.
enum class Load { High, Less };

struct InletInput {
    rulebook::Given<PressureRead> standing = {};
    rulebook::Given<PressureRead> working = {};
    std::optional<bool> atFullRate = {};
    std::optional<MakersRange> maker = {};
};

struct MeterAverageInput {
    rulebook::Given<PressureRead> average = {};
    rulebook::Given<quantity::Duration> over = {};
    std::optional<Load> load = {};
};

/// Working pressure at the appliance: the maker's range, else the gas's.
/// Source: the entry InletPressure, or the maker.
[[nodiscard]] rulebook::Finding inletPressure(const InletInput& input, const rulebook::RulesInForce& rules);
/// Burner pressure against the maker's range; there is no other.
/// Source: the maker.
[[nodiscard]] rulebook::Finding burnerPressure(const rulebook::Given<PressureRead>& pressure,
                                               const std::optional<MakersRange>& maker);
/// The average at the meter over some minutes, for information: a proposal fails nothing, and passes nothing.
/// Source: the entries MeterAverage and MeterAverageTime.
[[nodiscard]] rulebook::Finding meterAverage(const MeterAverageInput& input,
                                             const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
