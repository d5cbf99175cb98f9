// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/correction.h"

#include "core/burner/validity.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <cmath>

namespace hearth::burner {

namespace {

constexpr double kCorrectionStandardPressure = 1013.25;    // mbar
constexpr double kCorrectionStandardTemperature = 288.15;  // K
constexpr double kCorrectionBand = 2.5;                    // m
constexpr double kCorrectionSlope = 0.120206;              // mbar/m
constexpr double kCorrectionMostAltitude = 200.0;          // m
constexpr double kCorrectionMostPressure = 500.0;          // mbar
constexpr double kCorrectionLeastTemperature = -20.0;      // degrees C
constexpr double kCorrectionMostTemperature = 50.0;

}  // namespace

Result<quantity::PressureChange> heightDeduction(quantity::Length altitude) {
    const double height = altitude.in(quantity::kMetre);
    if (!(height <= kCorrectionMostAltitude)) {
        return outside(height, 0.0, kCorrectionMostAltitude, 1);
    }
    if (height <= 0.0) {
        return quantity::PressureChange{};
    }
    // A height typed as the top of its band is in it, whatever its last binary digit.
    constexpr double kSlack = 1e-9;
    const double top = std::ceil(height / kCorrectionBand - kSlack) * kCorrectionBand;
    return quantity::PressureChange(std::round(kCorrectionSlope * top * 1000.0) / 1000.0,
                                    quantity::kMillibar);
}

Result<double> pressureFactor(quantity::GaugePressure meter, quantity::PressureChange deduction) {
    const double gauge = meter.in(quantity::kMillibar);
    if (!(gauge >= 0.0 && gauge <= kCorrectionMostPressure)) {
        return outside(gauge, 0.0, kCorrectionMostPressure, 2);
    }
    return (kCorrectionStandardPressure + gauge - deduction.in(quantity::kMillibar)) /
           kCorrectionStandardPressure;
}

Result<double> temperatureFactor(quantity::Temperature gas) {
    const double celsius = gas.in(quantity::kCelsius);
    if (!(celsius >= kCorrectionLeastTemperature && celsius <= kCorrectionMostTemperature)) {
        return outside(celsius, kCorrectionLeastTemperature, kCorrectionMostTemperature, 1);
    }
    return kCorrectionStandardTemperature / gas.in(quantity::kKelvin);
}

Result<Correction> correctionAsMeasured(const MeterState& state) {
    const auto deduction = heightDeduction(state.altitude);
    if (!deduction) {
        return tl::unexpected(deduction.error());
    }
    const auto pressure = pressureFactor(state.pressure, *deduction);
    if (!pressure) {
        return tl::unexpected(pressure.error());
    }
    const auto temperature = temperatureFactor(state.temperature);
    if (!temperature) {
        return tl::unexpected(temperature.error());
    }
    return Correction{CorrectionKind::AsMeasured, *pressure * *temperature, nullptr};
}

std::optional<Correction> fixedCorrection(const rulebook::RulesInForce& rules) {
    const auto* entry = rules.known(rulebook::Rule::MeteringFactor);
    if (entry == nullptr) {
        return std::nullopt;
    }
    return Correction{CorrectionKind::FixedFactor, *rulebook::factorOf(*entry), entry};
}

}  // namespace hearth::burner
