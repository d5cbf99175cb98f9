// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/burner/measured.h"
#include "core/quantity/units.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <string>
#include <variant>

/// What an appliance gives to water.
namespace hearth::burner {

/// Heat given to flowing water:
///
///     P = q rho c dT        q: m3/s; rho: 1000 kg/m3; c: 4180 J/(kg K); dT: K
///
/// which is l/min dT / 14.35 in kW. One litre is taken as one kilogram: measured hot, at 60 degrees C, it is
/// 1.7 % less. Valid for flow >= 0 and a rise from 0 to 100 K. Error: OutOfRange.
/// Source: textbook.
/// Checked: tests/core/burner/hot_water_test.cpp (worked example)
[[nodiscard]] Result<Measured<quantity::HeatOutput>> waterOutput(
    const Measured<quantity::Flow>& flow, const Measured<quantity::TemperatureChange>& rise);

/// Flow that an output heats by a rise, the same solved for q: tap water (l/min) and heating water (l/h)
/// alike. Valid for output >= 0 and a rise above 0 up to 100 K. Error: OutOfRange.
/// Source: textbook.
/// Checked: tests/core/burner/hot_water_test.cpp
[[nodiscard]] Result<quantity::Flow> waterFlow(quantity::HeatOutput output, quantity::TemperatureChange rise);

/// Output over net heat input, as a plain ratio. Valid for input > 0. Error: OutOfRange.
/// Source: definition of efficiency by the net calorific value, textbook.
/// Checked: tests/core/burner/hot_water_test.cpp
[[nodiscard]] Result<quantity::Uncertain> heatBalance(const Measured<quantity::HeatOutput>& output,
                                                      const Measured<quantity::NetPower>& input);

/// The maker's figure: an output, or a flow at a stated rise (of EN 13203-1 at 30 K, brochures often 35 K).
struct FlowAtRise {
    quantity::Flow flow;
    quantity::TemperatureChange rise;
};
using MakersHotWater = std::variant<quantity::HeatOutput, FlowAtRise>;

struct HotWaterInput {
    rulebook::Given<Measured<quantity::Flow>> flow = {};
    rulebook::Given<Measured<quantity::TemperatureChange>> rise = {};
    std::optional<bool> atFullRate = {};  // the burner at its maximum while this was read
    std::optional<MakersHotWater> maker = {};
    std::string makersSource = {};
    std::optional<Measured<quantity::NetPower>> heatInput = {};
};

/// Output at the tap against the maker's figure. Without one, the output alone and no verdict.
/// Source: the maker.
[[nodiscard]] rulebook::Finding hotWater(const HotWaterInput& input);
/// Whether output and heat input go together; outside the usual, flow or temperatures are to be read again.
/// Source: the entry HeatBalance (common practice, no source): advises only.
[[nodiscard]] rulebook::Finding heatBalanceFinding(const HotWaterInput& input,
                                                   const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
