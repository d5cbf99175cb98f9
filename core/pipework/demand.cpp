// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/demand.h"

#include "core/quantity/units.h"

namespace hearth::pipework {

namespace {

template <class Power, class HeatValue>
std::optional<quantity::Flow> flowOfHeat(Power input, HeatValue heatValue) {
    if (!(input >= Power{}) || !(heatValue > HeatValue{})) {
        return std::nullopt;
    }
    return quantity::Flow(input.base() / heatValue.base(), quantity::kCubicMetrePerSecond);
}

}  // namespace

std::optional<quantity::Flow> demandFlow(quantity::GrossPower input, quantity::GrossHeatValue heatValue) {
    return flowOfHeat(input, heatValue);
}

std::optional<quantity::Flow> demandFlow(quantity::NetPower input, quantity::NetHeatValue heatValue) {
    return flowOfHeat(input, heatValue);
}

}  // namespace hearth::pipework
