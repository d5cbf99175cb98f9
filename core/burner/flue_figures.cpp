// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_figures.h"

#include "core/quantity/units.h"

#include <string>

namespace hearth::burner {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

namespace {

constexpr int kRatioDecimals = 4;

}  // namespace

Figure ratioFigure(double ratio) {
    return {Decimal::rounded(ratio, kRatioDecimals), UnitCode::None};
}

Figure ratioUncertaintyFigure(double uncertainty) {
    return {Decimal::rounded(uncertainty, kRatioDecimals + 1), UnitCode::None};
}

Figure ppmFigure(quantity::Share share, int decimals) {
    return {Decimal::rounded(share.in(quantity::kPpm), decimals), UnitCode::Ppm};
}

Figure percentFigure(quantity::Share share, int decimals) {
    return {Decimal::rounded(share.in(quantity::kPercent), decimals), UnitCode::Percent};
}

Figure emissionFigure(double milligramsPerKilowattHour) {
    return {Decimal::rounded(milligramsPerKilowattHour, 0), UnitCode::MilligramPerKilowattHour};
}

Figure degreesFigure(quantity::Temperature temperature) {
    return {Decimal::rounded(temperature.in(quantity::kCelsius), 0), UnitCode::Celsius};
}

tl::unexpected<Error> outOfRange(double value, std::string_view least, std::string_view most) {
    return fail(ErrorCode::OutOfRange,
                {Decimal::rounded(value, 4).text(), std::string(least), std::string(most)});
}

}  // namespace hearth::burner
