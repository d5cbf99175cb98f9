// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/figures.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::air {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

Figure figureOf(quantity::Area area) {
    return {Decimal::rounded(area.in(quantity::kSquareCentimetre), 1), UnitCode::SquareCentimetre};
}

Figure figureOf(quantity::NetPower power) {
    return {Decimal::rounded(power.in(quantity::kKilowatt), 2), UnitCode::Kilowatt};
}

Figure figureOf(quantity::GrossPower power) {
    return {Decimal::rounded(power.in(quantity::kKilowatt), 2), UnitCode::Kilowatt};
}

Figure figureOf(quantity::Volume volume) {
    return {Decimal::rounded(volume.in(quantity::kCubicMetre), 2), UnitCode::CubicMetre};
}

Figure figureOf(quantity::Duration duration) {
    const double hours = duration.in(quantity::kHour);
    if (hours >= 8.0 && std::abs(hours - std::round(hours)) < 1e-9) {
        return {Decimal::rounded(hours, 0), UnitCode::Hour};
    }
    const double minutes = duration.in(quantity::kMinute);
    const bool whole = std::abs(minutes - std::round(minutes)) < 1e-9;
    return {Decimal::rounded(minutes, whole ? 0 : 1), UnitCode::Minute};
}

Figure figureOf(quantity::Length length) {
    return {Decimal::rounded(length.in(quantity::kMetre), 2), UnitCode::Metre};
}

Figure figureOf(quantity::Temperature temperature) {
    return {Decimal::rounded(temperature.in(quantity::kCelsius), 1), UnitCode::Celsius};
}

Figure ppmFigure(quantity::Share share) {
    return {Decimal::rounded(share.in(quantity::kPpm), 1), UnitCode::Ppm};
}

Figure plainFigure(double value, int decimals) {
    const bool whole = std::abs(value - std::round(value)) < 1e-9;
    return {Decimal::rounded(value, whole ? 0 : decimals), UnitCode::None};
}

Figure limitFigure(const rulebook::Entry& entry) {
    return rulebook::figureOf(entry).value_or(Figure{});
}

}  // namespace hearth::air
