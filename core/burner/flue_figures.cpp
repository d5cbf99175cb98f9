// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_figures.h"

#include "core/quantity/units.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace hearth::burner {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

namespace {

constexpr int kRatioDecimals = 4;
constexpr int kMostDecimals = 6;

/// How many decimals a last digit of that size has.
int decimalsOf(double digit, int least) {
    if (!(digit > 0.0)) {
        return least;
    }
    constexpr double kSlack = 1e-6;  // 0.1 as a double is not quite 10^-1
    return std::clamp(static_cast<int>(std::ceil(-std::log10(digit) - kSlack)), least, kMostDecimals);
}

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

Figure ppmRead(const ShareReading& reading, int least) {
    return ppmFigure(reading.value, decimalsOf(reading.digit.in(quantity::kPpm), least));
}

Figure percentRead(const ShareReading& reading, int least) {
    return percentFigure(reading.value, decimalsOf(reading.digit.in(quantity::kPercent), least));
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
