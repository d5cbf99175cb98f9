// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/figures.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::pipework {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

Figure figureOf(quantity::PressureChange drop) {
    return {Decimal::rounded(drop.in(quantity::kMillibar), 3), UnitCode::Millibar};
}

Figure figureOf(quantity::Flow flow) {
    return {Decimal::rounded(flow.in(quantity::kCubicMetrePerHour), 3), UnitCode::CubicMetrePerHour};
}

Figure figureOf(quantity::Volume volume) {
    return {Decimal::rounded(volume.in(quantity::kCubicMetre), 6), UnitCode::CubicMetre};
}

Figure figureOf(quantity::Duration needed) {
    constexpr double kSlack = 1e-9;  // 80.19 s needs 81; 80.0000000001 s needs 80
    return {Decimal::rounded(std::ceil(needed.in(quantity::kSecond)-kSlack), 0), UnitCode::Second};
}

Figure figureOf(quantity::Share share) {
    return {Decimal::rounded(share.in(quantity::kPercent), 1), UnitCode::Percent};
}

Figure bareFigure(double value) {
    return {Decimal::rounded(value, 2), UnitCode::None};
}

}  // namespace hearth::pipework
