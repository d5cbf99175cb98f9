// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/properties.h"

#include "core/quantity/units.h"

#include <cmath>

namespace hearth::gas {

namespace {

struct ComponentData {
    double molarMass;  // kg/kmol
    double gross;      // kJ/mol at 15 degrees C
    double net;        // kJ/mol at 15 degrees C
    double summation;  // at 15 degrees C and 1013.25 mbar
};
using DataTable = std::array<ComponentData, kComponents.size()>;

struct EditionData {
    double gasConstant;     // J/(mol K)
    double airMolarMass;    // kg/kmol
    double airCompression;  // Z of air
    DataTable components;
};

/// kJ/mol that condensing one mole of water gives at 15 degrees C (2016).
constexpr double kHeatOfCondensing = 44.431;

constexpr ComponentData of2016(double molarMass, double gross, int hydrogen, double summation) {
    return {molarMass, gross, gross - kHeatOfCondensing * hydrogen / 2.0, summation};
}

// Hydrogen's summation factor of 1995 is negative (-0.005) and left out: the standard's rule for hydrogen is
// another, and at the tenth of a per cent that a network may carry it is nothing.
constexpr EditionData k1995{8.314510,
                            28.9626,
                            0.99958,
                            {{{16.043, 891.56, 802.69, 0.0447},
                              {30.070, 1562.14, 1428.84, 0.0922},
                              {44.097, 2221.10, 2043.37, 0.1338},
                              {58.123, 2879.76, 2657.60, 0.1871},
                              {58.123, 2870.58, 2648.42, 0.1789},
                              {72.150, 3538.60, 3272.00, 0.2510},
                              {72.150, 3531.68, 3265.08, 0.2280},
                              {86.177, 4198.24, 3887.21, 0.2950},
                              {2.0159, 286.15, 241.72, 0.0},
                              {28.010, 282.91, 282.91, 0.0224},
                              {28.0135, 0.0, 0.0, 0.0173},
                              {44.010, 0.0, 0.0, 0.0748},
                              {31.9988, 0.0, 0.0, 0.0283}}}};

constexpr EditionData k2016{
    8.3144621,
    28.96546,
    0.999595,
    {{of2016(16.04246, 891.51, 4, 0.04452), of2016(30.06904, 1562.14, 6, 0.0919),
      of2016(44.09562, 2221.10, 8, 0.1344), of2016(58.1222, 2879.76, 10, 0.1840),
      of2016(58.1222, 2870.58, 10, 0.1722), of2016(72.14878, 3538.60, 12, 0.2361),
      of2016(72.14878, 3531.68, 12, 0.2251), of2016(86.17536, 4198.24, 14, 0.3001),
      of2016(2.01588, 286.15, 2, -0.0100), of2016(28.0101, 282.91, 0, 0.0212),
      of2016(28.0134, 0.0, 0, 0.0170), of2016(44.0095, 0.0, 0, 0.0752), of2016(31.9988, 0.0, 0, 0.0276)}}};

constexpr double kPressure = 101.325;    // kPa
constexpr double kTemperature = 288.15;  // K

const EditionData& dataOf(Iso6976 edition) {
    return edition == Iso6976::Y1995 ? k1995 : k2016;
}

}  // namespace

Properties properties(const Composition& composition, Iso6976 edition) {
    const EditionData& data = dataOf(edition);
    Properties result;
    double summation = 0.0;
    for (const auto component : kComponents) {
        const double fraction = composition.of(component);
        const ComponentData& one = data.components[placeOf(component)];
        result.molarMass += fraction * one.molarMass;
        result.grossMolar += fraction * one.gross;
        result.netMolar += fraction * one.net;
        summation += fraction * one.summation;
    }
    result.compression = 1.0 - summation * summation;
    // mol of real gas in a litre, kmol in a cubic metre
    const double amount = kPressure / (data.gasConstant * kTemperature * result.compression);
    result.gross = quantity::GrossHeatValue(result.grossMolar * amount, quantity::kMegajoulePerCubicMetre);
    result.net = quantity::NetHeatValue(result.netMolar * amount, quantity::kMegajoulePerCubicMetre);
    result.grossPerKilogram = result.grossMolar / result.molarMass;
    result.netPerKilogram = result.netMolar / result.molarMass;
    result.density = result.molarMass * amount;
    result.relativeDensity = result.molarMass / data.airMolarMass * data.airCompression / result.compression;
    const double root = std::sqrt(result.relativeDensity);
    result.grossWobbe = GrossWobbe::fromBase(result.gross.base() / root);
    result.netWobbe = NetWobbe::fromBase(result.net.base() / root);
    return result;
}

std::optional<double> grossOverNet(const Composition& composition, Iso6976 edition) {
    const Properties found = properties(composition, edition);
    if (!(found.netMolar > 0.0)) {
        return std::nullopt;
    }
    return found.grossMolar / found.netMolar;
}

std::optional<GrossWobbe> wobbeOf(quantity::GrossHeatValue gross, double relativeDensity) {
    if (!(relativeDensity > 0.0)) {
        return std::nullopt;
    }
    return GrossWobbe::fromBase(gross.base() / std::sqrt(relativeDensity));
}

std::optional<NetWobbe> wobbeOf(quantity::NetHeatValue net, double relativeDensity) {
    if (!(relativeDensity > 0.0)) {
        return std::nullopt;
    }
    return NetWobbe::fromBase(net.base() / std::sqrt(relativeDensity));
}

}  // namespace hearth::gas
