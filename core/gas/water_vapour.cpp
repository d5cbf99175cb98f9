// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/water_vapour.h"

#include "core/gas/figures.h"
#include "core/quantity/units.h"

#include <array>
#include <cmath>

namespace hearth::gas {

namespace {

/// n1 to n10 of IAPWS-IF97's region 4.
constexpr std::array kRegion4{
    0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
    0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6,  -0.23855557567849,  0.65017534844798e3};

constexpr double kColdest = 273.15;    // K
constexpr double kHottest = 647.096;   // K
constexpr double kLeast = 611.213e-6;  // MPa
constexpr double kMost = 22.064;       // MPa
constexpr double kPascalsPerMegapascal = 1.0e6;

double quadratic(double a, double b, double c, double x) {
    return (a * x + b) * x + c;
}

}  // namespace

Result<quantity::AbsolutePressure> saturationPressure(quantity::Temperature temperature) {
    const double kelvin = temperature.in(quantity::kKelvin);
    if (!(kelvin >= kColdest && kelvin <= kHottest)) {
        return outside(temperature.in(quantity::kCelsius), 0.0, kHottest - kColdest,
                       quantity::UnitCode::Celsius);
    }
    const auto& n = kRegion4;
    const double v = kelvin + n[8] / (kelvin - n[9]);
    const double a = quadratic(1.0, n[0], n[1], v);
    const double b = quadratic(n[2], n[3], n[4], v);
    const double c = quadratic(n[5], n[6], n[7], v);
    const double root = 2.0 * c / (-b + std::sqrt(b * b - 4.0 * a * c));
    return quantity::AbsolutePressure(std::pow(root, 4) * kPascalsPerMegapascal, quantity::kPascal);
}

Result<quantity::Temperature> saturationTemperature(quantity::AbsolutePressure pressure) {
    const double megapascal = pressure.in(quantity::kPascal) / kPascalsPerMegapascal;
    if (!(megapascal >= kLeast && megapascal <= kMost)) {
        constexpr double kMillibarsPerMegapascal = 1.0e4;
        return outside(pressure.in(quantity::kMillibar), kLeast * kMillibarsPerMegapascal,
                       kMost * kMillibarsPerMegapascal, quantity::UnitCode::Millibar);
    }
    const auto& n = kRegion4;
    const double beta = std::pow(megapascal, 0.25);
    const double e = quadratic(1.0, n[2], n[5], beta);
    const double f = quadratic(n[0], n[3], n[6], beta);
    const double g = quadratic(n[1], n[4], n[7], beta);
    const double d = 2.0 * g / (-f - std::sqrt(f * f - 4.0 * e * g));
    const double sum = n[9] + d;
    return quantity::Temperature((sum - std::sqrt(sum * sum - 4.0 * (n[8] + n[9] * d))) / 2.0,
                                 quantity::kKelvin);
}

}  // namespace hearth::gas
