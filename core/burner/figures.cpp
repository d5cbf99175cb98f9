// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/figures.h"

#include "core/quantity/units.h"

namespace hearth::burner {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

// --- burner
Figure gasFlowFigure(quantity::Flow flow) {
    return {Decimal::rounded(flow.in(quantity::kCubicMetrePerHour), 3), UnitCode::CubicMetrePerHour};
}

Figure waterFlowFigure(quantity::Flow flow) {
    return {Decimal::rounded(flow.in(quantity::kLitrePerMinute), 1), UnitCode::LitrePerMinute};
}

Figure heatFigure(quantity::GrossPower power) {
    return {Decimal::rounded(power.in(quantity::kKilowatt), 2), UnitCode::Kilowatt};
}

Figure heatFigure(quantity::NetPower power) {
    return {Decimal::rounded(power.in(quantity::kKilowatt), 2), UnitCode::Kilowatt};
}

Figure heatFigure(quantity::HeatOutput power) {
    return {Decimal::rounded(power.in(quantity::kKilowatt), 2), UnitCode::Kilowatt};
}

Figure indexFigure(quantity::Volume volume) {
    return {Decimal::rounded(volume.in(quantity::kCubicMetre), 4), UnitCode::CubicMetre};
}

Figure secondsFigure(quantity::Duration duration) {
    return {Decimal::rounded(duration.in(quantity::kSecond), 0), UnitCode::Second};
}

Figure millibarFigure(double millibar) {
    return {Decimal::rounded(millibar, 2), UnitCode::Millibar};
}

Figure plainFigure(double number, int decimals) {
    return {Decimal::rounded(number, decimals), UnitCode::None};
}
// --- end of burner

}  // namespace hearth::burner
