// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/dew_point.h"

#include "core/gas/figures.h"
#include "core/gas/properties.h"
#include "core/gas/water_vapour.h"

namespace hearth::gas {

namespace {

constexpr double kWaterMolarMass = 18.01528;  // g/mol
constexpr double kCoolestAir = 0.0;           // degrees C
constexpr double kWarmestAir = 60.0;          // degrees C
constexpr double kMostLambda = 100.0;         // beyond it there is no flue gas to speak of, and no dew point

}  // namespace

Result<double> vapourPerDryAir(const CombustionAir& air, quantity::AbsolutePressure barometer) {
    if (!(air.relativeHumidity >= 0.0 && air.relativeHumidity <= 1.0)) {
        return outside(air.relativeHumidity * 100.0, 0.0, 100.0, quantity::UnitCode::Percent);
    }
    const double celsius = air.temperature.in(quantity::kCelsius);
    if (!(celsius >= kCoolestAir && celsius <= kWarmestAir)) {
        return outside(celsius, kCoolestAir, kWarmestAir, quantity::UnitCode::Celsius);
    }
    const auto saturated = saturationPressure(air.temperature);
    if (!saturated) {
        return tl::unexpected(saturated.error());
    }
    const double vapour = air.relativeHumidity * saturated->in(quantity::kMillibar);
    const double whole = barometer.in(quantity::kMillibar);
    if (!(whole > vapour)) {
        return outside(whole, vapour, kAtmosphere.in(quantity::kMillibar), quantity::UnitCode::Millibar);
    }
    return vapour / (whole - vapour);
}

Result<quantity::Temperature> dewPoint(const Stoichiometry& burning, double lambda,
                                       const std::optional<CombustionAir>& air,
                                       quantity::AbsolutePressure barometer) {
    if (!(lambda >= 1.0 && lambda <= kMostLambda)) {
        return outside(lambda, 1.0, kMostLambda, quantity::UnitCode::None);
    }
    double moisture = 0.0;
    if (air) {
        const auto found = vapourPerDryAir(*air, barometer);
        if (!found) {
            return tl::unexpected(found.error());
        }
        moisture = *found;
    }
    const double water = burning.water + lambda * burning.air * moisture;
    const double dry = burning.dryFlue + (lambda - 1.0) * burning.air;
    return saturationTemperature(
        quantity::AbsolutePressure::fromBase(barometer.base() * water / (dry + water)));
}

Result<quantity::Temperature> dewPointAtOxygen(const Stoichiometry& burning, quantity::Share oxygenDry,
                                               const std::optional<CombustionAir>& air,
                                               quantity::AbsolutePressure barometer) {
    const auto lambda = lambdaAtOxygen(burning, oxygenDry);
    if (!lambda) {
        return tl::unexpected(lambda.error());
    }
    return dewPoint(burning, *lambda, air, barometer);
}

std::optional<CondensateCeiling> condensateCeiling(const Composition& composition) {
    const auto burning = stoichiometry(composition);
    const Properties heat = properties(composition);
    if (!burning || !(heat.netMolar > 0.0)) {
        return std::nullopt;
    }
    constexpr double kKilojoulesPerKilowattHour = 3600.0;
    const double kilograms = burning->water * kWaterMolarMass / 1000.0;  // per mole of gas
    return CondensateCeiling{kKilojoulesPerKilowattHour * kilograms / heat.grossMolar,
                             kKilojoulesPerKilowattHour * kilograms / heat.netMolar};
}

}  // namespace hearth::gas
