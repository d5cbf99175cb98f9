// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/figures.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::tightness {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

namespace {

constexpr int kMostDecimals = 4;

/// Decimals of a mbar figure whose last digit is worth `digit`: 0.01 has two; a tenth of an inch of water
/// two.
int decimalsFor(quantity::PressureChange digit) {
    const double millibar = digit.in(quantity::kMillibar);
    if (millibar <= 0.0) {
        return kMostDecimals;
    }
    constexpr double kSlack = 1e-9;  // log10 of 0.01 is not quite -2
    const double decimals = std::ceil(-std::log10(millibar) - kSlack);
    return std::min(kMostDecimals, std::max(0, static_cast<int>(decimals)));
}

Figure millibar(quantity::PressureChange change, int decimals) {
    return {Decimal::rounded(change.in(quantity::kMillibar), decimals), UnitCode::Millibar};
}

}  // namespace

Figure figureOf(const Reading& reading) {
    return {Decimal::rounded(reading.pressure.in(quantity::kMillibar), decimalsFor(reading.digit)),
            UnitCode::Millibar};
}

Figure figureOf(const Change& change) {
    return millibar(change.fall, decimalsFor(change.digit));
}

Figure uncertaintyOf(const Change& change) {
    // One more than the reading's, so that a small uncertainty does not read as nought.
    return millibar(change.uncertainty, std::min(kMostDecimals, decimalsFor(change.digit) + 1));
}

Figure figureOf(quantity::GaugePressure pressure) {
    return {Decimal::rounded(pressure.in(quantity::kMillibar), 2), UnitCode::Millibar};
}

Figure figureOf(quantity::Duration duration) {
    return {Decimal::rounded(duration.in(quantity::kSecond), 0), UnitCode::Second};
}

Figure figureOf(quantity::Volume volume) {
    return {Decimal::rounded(volume.in(quantity::kCubicMetre), 6), UnitCode::CubicMetre};
}

Figure shortFigureOf(quantity::Volume volume) {
    constexpr int kLeastDecimals = 3;
    const Figure whole = figureOf(volume);
    for (int decimals = kLeastDecimals; decimals < whole.value.decimals(); ++decimals) {
        const Decimal shorter = Decimal::rounded(volume.in(quantity::kCubicMetre), decimals);
        if (std::abs(shorter.toDouble() - whole.value.toDouble()) < whole.value.lastDigit() / 2.0) {
            return {shorter, UnitCode::CubicMetre};
        }
    }
    return whole;
}

Figure figureOf(quantity::Flow flow) {
    return {Decimal::rounded(flow.in(quantity::kLitrePerHour), 2), UnitCode::LitrePerHour};
}

Figure figureOf(quantity::TemperatureChange change) {
    return {Decimal::rounded(change.in(quantity::kKelvin), 2), UnitCode::Kelvin};
}

Figure millimetres(double nominal) {
    return {Decimal::rounded(nominal, 1), UnitCode::Millimetre};
}

Figure minutesOf(quantity::Duration duration) {
    const double minutes = duration.in(quantity::kMinute);
    constexpr double kWhole = 1e-6;
    if (std::abs(minutes - std::round(minutes)) > kWhole) {
        return figureOf(duration);
    }
    return {Decimal::rounded(minutes, 0), UnitCode::Minute};
}

Figure limitOf(const rulebook::Entry& entry) {
    return rulebook::figureOf(entry).value_or(Figure{});
}

}  // namespace hearth::tightness
