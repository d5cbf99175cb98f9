// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/correction.h"
#include "core/burner/gas_rate.h"
#include "core/gas/fuel.h"
#include "core/quantity/units.h"

#include <string>
#include <variant>

/// Heat input from gas rate and calorific value, gross and net never mixed, and against the plate.
namespace hearth::burner {

/// Heat input by the gross calorific value:
///
///     P = Q f CV        Q: m3/s metered; f: correction; CV: J/m3 at 15 degrees C, 1013.25 mbar, dry
///
/// The factor's own uncertainty is not counted.
/// Source: training cards "gas rate and heat input": kW = m3/h CV / 3.6 with CV in MJ/m3.
/// Checked: tests/core/burner/heat_input_test.cpp (worked examples)
[[nodiscard]] Measured<quantity::GrossPower> grossHeatInput(
    const Measured<quantity::Flow>& rate, const Measured<quantity::GrossHeatValue>& calorific,
    const Correction& correction);

/// Net heat input: gross / ratio, the ratio being gross over net calorific value (about 1.11 for natural
/// gas). Valid for a ratio from 1 to 1.2 (no fuel gas lies beyond; hydrogen 1.18). Error: OutOfRange.
/// Source: technical note "Gas rate and gas flow rate" by a UK gas installer.
/// Checked: tests/core/burner/heat_input_test.cpp (worked examples)
[[nodiscard]] Result<Measured<quantity::NetPower>> netHeatInput(const Measured<quantity::GrossPower>& gross,
                                                                double grossToNet);

/// Gross over net calorific value of a fuel; nothing where the net one is not known.
/// Source: definition, textbook.
/// Checked: tests/core/burner/heat_input_test.cpp
[[nodiscard]] std::optional<double> grossToNet(const gas::Fuel& fuel);

/// The two-minute shortcut, for cross-checking alone; the stopwatch is taken to have shown 120 s:
///
///     kW = V 30 CV        V: m3 in two minutes; CV: kWh/m3
///
/// Source: technical note "Gas rate and gas flow rate" by a UK gas installer; training cards.
/// Checked: tests/core/burner/heat_input_test.cpp
[[nodiscard]] quantity::GrossPower twoMinuteShortcut(quantity::Volume passed,
                                                     quantity::GrossHeatValue calorific);

/// What the plate says; its figure is of one kind, and a figure whose kind is not said judges nothing.
using PlatePower = std::variant<quantity::GrossPower, quantity::NetPower>;

/// The maker's own tolerance, per cent of the plate's figure either way.
struct MakersTolerance {
    quantity::Share over;
    quantity::Share under;
    std::string source;  // where the maker says so
};

struct Plate {
    rulebook::Given<PlatePower> heatInput = {};
    bool kindNotSaid = false;  // there is a figure, and whether gross or net can't be told
    std::optional<MakersTolerance> tolerance = {};
};

struct HeatInputCase {
    JudgedRate rate = {};
    RateInput timing = {};                     // for the shortcut
    std::optional<gas::Fuel> fuel = {};        // none: no calorific value is known
    quantity::GrossHeatValue calorificU = {};  // its standard uncertainty, where it is known
    Correction correction = {};
    Plate plate = {};
};

/// What was worked out, and what it means.
struct JudgedHeatInput {
    rulebook::Finding finding{rulebook::FindingKind::HeatInput};
    std::optional<Measured<quantity::GrossPower>> gross = {};
    std::optional<Measured<quantity::NetPower>> net = {};
    Correction correction = {};
};

/// Heat input against the plate, gross with gross or net with net. Over- and under-rated are told apart; the
/// maker's tolerance decides before the rule book's. The heat inputs are there without a plate too.
/// Source: the entries HeatInputOver and HeatInputUnder, or the maker.
[[nodiscard]] JudgedHeatInput judgeHeatInput(const HeatInputCase& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
