// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/firm_value.h"

#include "core/rulebook/rule_book.h"
#include "core/rulebook/values.h"

#include <algorithm>

namespace hearth::rulebook {

namespace {

using quantity::UnitCode;
using quantity::UnitFamily;

bool unitFits(Rule rule, UnitCode unit) {
    const auto family = unitFamilyOf(rule);
    if (family == UnitFamily::None) {
        return unit == UnitCode::None;
    }
    const auto units = quantity::unitsOf(family);
    return std::find(units.begin(), units.end(), unit) != units.end();
}

std::optional<std::string_view> faultOfFigure(Rule rule, const quantity::Figure& figure) {
    if (!unitFits(rule, figure.unit)) {
        return "unit";
    }
    // A firm may hold that there is no share for fittings, assume that nothing cools, or allow a strength
    // test no fall; no other limit is nought.
    const bool mayBeNought = rule == Rule::FittingsShare || rule == Rule::AssumedTemperatureChange ||
                             rule == Rule::StrengthFallLow || rule == Rule::StrengthFallMiddle ||
                             rule == Rule::StrengthFallHigh;
    const auto sign = figure.value.mantissa();
    return sign < 0 || (sign == 0 && !mayBeNought) ? std::optional<std::string_view>("not_positive")
                                                   : std::nullopt;
}

std::optional<std::string_view> faultOfRange(Rule rule, const Range& range) {
    if (!unitFits(rule, range.unit)) {
        return "unit";
    }
    if (range.least.mantissa() < 0 || range.most.mantissa() <= 0) {
        return "not_positive";
    }
    return range.least > range.most ? std::optional<std::string_view>("range_reversed") : std::nullopt;
}

std::optional<std::string_view> faultOfBands(const std::vector<Band>& bands) {
    for (const auto& doubt : checkBands(bands)) {
        if (doubt.slip != BandSlip::LeakRateOutOfOrder) {
            return slipText(doubt.slip);
        }
    }
    return std::nullopt;
}

}  // namespace

ValueShape shapeOf(Rule rule) {
    switch (rule) {
        case Rule::LetByPressure:
        case Rule::TestPressure:
        case Rule::WorkingPressure:
        case Rule::NetworkHeatValueSeen:
        case Rule::CombustionCarbonDioxide:
        // --- burner
        case Rule::InletPressure:
        case Rule::BurnerPressure:
        case Rule::MeterAverage:
        case Rule::HeatBalance:
            // --- end of burner
            return ValueShape::Range;
        case Rule::DropByVolume:
            return ValueShape::Bands;
        default:
            return ValueShape::Figure;
    }
}

std::optional<std::string_view> faultOf(Rule rule, const Value& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        return "missing";
    }
    const auto shape = shapeOf(rule);
    if (const auto* figure = std::get_if<quantity::Figure>(&value)) {
        return shape == ValueShape::Figure ? faultOfFigure(rule, *figure) : "shape";
    }
    if (const auto* range = std::get_if<Range>(&value)) {
        return shape == ValueShape::Range ? faultOfRange(rule, *range) : "shape";
    }
    return shape == ValueShape::Bands ? faultOfBands(std::get<std::vector<Band>>(value)) : "shape";
}

}  // namespace hearth::rulebook
