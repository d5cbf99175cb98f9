// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_units.h"

#include "core/quantity/units.h"

#include <cassert>

namespace hearth::air {

using quantity::Share;

namespace {

constexpr double kCoGasConstant = 8.314462618;  // J/(mol K)
constexpr double kCoMolarMass = 28.010;         // g/mol
constexpr double kCoAtmosphere = 101325.0;      // Pa

/// mg/m3 of pure carbon monoxide.
double pureMilligrams(quantity::Temperature at) {
    const double kelvin = at.in(quantity::kKelvin);
    assert(kelvin > 0.0);
    constexpr double kMilligramsPerGram = 1000.0;
    return kMilligramsPerGram * kCoMolarMass * kCoAtmosphere / (kCoGasConstant * kelvin);
}

}  // namespace

Share shareFromMass(MassConcentration mass, quantity::Temperature at) {
    return {mass.milligramsPerCubicMetre / pureMilligrams(at), quantity::kOne};
}

MassConcentration massFromShare(Share share, quantity::Temperature at) {
    return {share.in(quantity::kOne)*pureMilligrams(at)};
}

std::optional<Share> coShare(const quantity::Figure& figure) {
    const double value = figure.value.toDouble();
    switch (figure.unit) {
        case quantity::UnitCode::Ppm:
            return Share(value, quantity::kPpm);
        case quantity::UnitCode::Percent:
            return Share(value, quantity::kPercent);
        case quantity::UnitCode::MilligramPerCubicMetre:
            return shareFromMass({value});
        default:
            return std::nullopt;
    }
}

}  // namespace hearth::air
