// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/properties.h"

#include "core/gas/named_gases.h"
#include "core/quantity/units.h"
#include "tests/support/agreement.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <string>

namespace hearth::gas {
namespace {

using quantity::kMegajoulePerCubicMetre;
using testing::Agreement;

/// In kJ/m3, as the worked example prints.
template <class Heat>
double kilojoules(Heat heat) {
    return heat.in(kMegajoulePerCubicMetre)*1000.0;
}

Composition workedExample() {
    const std::array parts{Part{Component::CH4, 0.9247},    Part{Component::C2H6, 0.0350},
                           Part{Component::C3H8, 0.0098},   Part{Component::nC4H10, 0.0022},
                           Part{Component::iC4H10, 0.0034}, Part{Component::nC5H12, 0.0006},
                           Part{Component::N2, 0.0175},     Part{Component::CO2, 0.0068}};
    return compositionOf(parts).value();
}

constexpr const char* kGuide1995 = "validation table of an open-source library's guide, ISO 6976:1995";
constexpr const char* kGuide2016 = "validation table of an open-source library's guide, ISO 6976:2016";

TEST(Iso6976Data, AgreeWithTheWorkedExampleOf1995) {
    const auto found = properties(workedExample(), Iso6976::Y1995);
    Agreement heat("Calorific values of a natural gas, 15/15", kGuide1995, "kJ/m3", 0.0051);
    heat.hold("gross", kilojoules(found.gross), 38959.47);
    heat.hold("net", kilojoules(found.net), 35144.88);
    // The table's density and indices follow with the molar mass of air of 2016 (28.96546): the standard of
    // 1995 has 28.9626. Held as they are to that difference, and with it to the digits printed.
    const double air = 28.9626 / 28.96546;
    Agreement wobbe("Wobbe indices of a natural gas, 15/15", kGuide1995, "kJ/m3", 2.6);
    wobbe.hold("gross", kilojoules(found.grossWobbe), 50107.50);
    wobbe.hold("net", kilojoules(found.netWobbe), 45201.38);
    EXPECT_NEAR(kilojoules(found.grossWobbe) / std::sqrt(air), 50107.50, 0.0051);
    EXPECT_NEAR(kilojoules(found.netWobbe) / std::sqrt(air), 45201.38, 0.0051);
    Agreement density("Relative density of a natural gas", kGuide1995, "", 0.00007);
    density.hold("relative density", found.relativeDensity, 0.60453);
    EXPECT_NEAR(found.relativeDensity * air, 0.60453, 0.0000051);
    Agreement compression("Compression factor of a natural gas", kGuide1995, "", 0.0000051);
    compression.hold("Z", found.compression, 0.99771);
    Agreement mass("Molar mass of a natural gas", kGuide1995, "kg/kmol", 0.000051);
    mass.hold("M", found.molarMass, 17.4778);
}

TEST(Iso6976Data, AgreeWithTheWorkedExampleOf2016) {
    const auto found = properties(workedExample(), Iso6976::Y2016);
    Agreement heat("Gross calorific value and Wobbe index of a natural gas, 15/15", kGuide2016, "kJ/m3",
                   0.0051);
    heat.hold("gross", kilojoules(found.gross), 38956.95);
    heat.hold("gross Wobbe", kilojoules(found.grossWobbe), 50105.18);
    // The table repeats the net value of 1995, to the digit; the formula of 2016 gives 2 kJ/m3 less.
    Agreement net("Net calorific value and Wobbe index of a natural gas, 15/15", kGuide2016, "kJ/m3", 3.0);
    net.hold("net", kilojoules(found.net), 35144.88);
    net.hold("net Wobbe", kilojoules(found.netWobbe), 45201.56);
    Agreement rest("Relative density and compression factor of a natural gas", kGuide2016, "", 0.0000051);
    rest.hold("relative density", found.relativeDensity, 0.60451);
    rest.hold("Z", found.compression, 0.99773);
    Agreement mass("Molar mass of a natural gas", kGuide2016, "kg/kmol", 0.000051);
    mass.hold("M", found.molarMass, 17.4773);
}

struct TestGas {
    const char* code;
    double netWobbe, net, grossWobbe, gross, density;
};

void holdTestGas(const TestGas& row, Agreement& heat, Agreement& density) {
    const auto found = properties(namedGas(row.code)->composition, Iso6976::Y1995);
    const std::string name = row.code;
    heat.hold(name + " net Wobbe", found.netWobbe.in(kMegajoulePerCubicMetre), row.netWobbe);
    heat.hold(name + " net", found.net.in(kMegajoulePerCubicMetre), row.net);
    heat.hold(name + " gross Wobbe", found.grossWobbe.in(kMegajoulePerCubicMetre), row.grossWobbe);
    heat.hold(name + " gross", found.gross.in(kMegajoulePerCubicMetre), row.gross);
    density.hold(name, found.relativeDensity, row.density);
}

TEST(Iso6976Data, AgreeWithTheTestGases) {
    {
        Agreement heat("Calorific values and Wobbe indices, G23", "a page of BS EN 437:2003+A1:2009", "MJ/m3",
                       0.011);
        Agreement density("Relative density, G23", "a page of BS EN 437:2003+A1:2009", "", 0.00051);
        holdTestGas({"g23", 41.11, 31.46, 45.66, 34.95, 0.586}, heat, density);
    }
    // EN 437's own component data are not known: held to two of the last digit, as one rounding differs.
    Agreement heat("Calorific values and Wobbe indices, G20, G25, G30, G31", "EN 437 (from memory)", "MJ/m3",
                   0.021);
    Agreement density("Relative density, G20, G25, G30, G31", "EN 437 (from memory)", "", 0.0011);
    holdTestGas({"g20", 45.67, 34.02, 50.72, 37.78, 0.555}, heat, density);
    holdTestGas({"g25", 37.38, 29.25, 41.52, 32.49, 0.612}, heat, density);
    holdTestGas({"g30", 80.58, 116.09, 87.33, 125.81, 2.075}, heat, density);
    holdTestGas({"g31", 70.69, 88.00, 76.84, 95.65, 1.550}, heat, density);
    // Of methane with propane the standard takes another Z than ISO 6976's mixing rule: 0.3 %.
    Agreement mixed("Calorific values and Wobbe indices, G21", "EN 437 (from memory)", "MJ/m3", 0.13);
    Agreement mixedDensity("Relative density, G21", "EN 437 (from memory)", "", 0.0024);
    holdTestGas({"g21", 49.60, 41.01, 54.76, 45.28, 0.684}, mixed, mixedDensity);
}

// By hand from the component data that the guide prints: 891.51 / 16.04246 and so on.
TEST(Iso6976Data, ByMassAreMolarValuesOverMolarMasses) {
    Agreement agreement("Calorific values by mass", "by hand from the component data of ISO 6976:2016",
                        "MJ/kg", 0.0051);
    const auto hold = [&](const char* code, double gross, double net) {
        const auto found = properties(namedGas(code)->composition);
        agreement.hold(std::string(code) + " gross", found.grossPerKilogram, gross);
        agreement.hold(std::string(code) + " net", found.netPerKilogram, net);
    };
    hold("g20", 55.57, 50.03);
    hold("propane", 50.37, 46.34);
    hold("butane", 49.47, 45.65);
    const auto methane = properties(namedGas("g20")->composition);
    EXPECT_NEAR(methane.density * methane.grossPerKilogram, methane.gross.in(kMegajoulePerCubicMetre), 1e-9);
    EXPECT_NEAR(methane.grossMolar - methane.netMolar, 2 * 44.431, 1e-9);
}

// Approved Document J: 70 kW net is 77.7 kW gross; the trade's 1.11 of natural gas.
TEST(GrossOverNet, IsTheTradesOnePointEleven) {
    Agreement agreement("Gross over net calorific value, natural gas",
                        "Approved Document J (70 kW is 77.7 kW)", "", 0.0051);
    agreement.hold("usual mix", grossOverNet(namedGas("natural_typical")->composition).value(), 77.7 / 70.0);
    agreement.hold("methane", grossOverNet(namedGas("g20")->composition, Iso6976::Y1995).value(),
                   77.7 / 70.0);
    EXPECT_NEAR(grossOverNet(namedGas("propane")->composition).value(), 1.087, 0.0006);
    EXPECT_NEAR(grossOverNet(namedGas("butane")->composition).value(), 1.084, 0.0006);
    EXPECT_FALSE(grossOverNet(compositionOf(std::array{Part{Component::N2, 1.0}}).value()));
}

// Worked out in the trade's facts with the molar mass of air, argon and all; here argon counts as nitrogen.
TEST(PropaneAirProperties, AreThoseOfTheMixture) {
    Agreement heat("Calorific value of propane-air, 50, 55 and 58 %", "by hand from ISO 6976", "MJ/m3",
                   0.051);
    Agreement density("Relative density of propane-air, 50, 55 and 58 %", "by hand from ISO 6976", "",
                      0.0025);
    struct Row {
        double percent, gross, net, density;
    };
    for (const auto& row :
         {Row{50, 47.2, 43.5, 1.268}, Row{55, 52.0, 47.9, 1.296}, Row{58, 54.9, 50.5, 1.312}}) {
        const auto found = properties(propaneAir({row.percent, quantity::kPercent}).value());
        heat.hold(std::to_string(row.percent) + " % gross", found.gross.in(kMegajoulePerCubicMetre),
                  row.gross);
        heat.hold(std::to_string(row.percent) + " % net", found.net.in(kMegajoulePerCubicMetre), row.net);
        density.hold(std::to_string(row.percent) + " %", found.relativeDensity, row.density);
    }
}

TEST(WobbeIndex, IsHeatOverTheRootOfDensity) {
    const quantity::GrossHeatValue gross(36.0, kMegajoulePerCubicMetre);
    const quantity::NetHeatValue net(32.0, kMegajoulePerCubicMetre);
    EXPECT_DOUBLE_EQ(wobbeOf(gross, 0.64)->in(kMegajoulePerCubicMetre), 45.0);
    EXPECT_DOUBLE_EQ(wobbeOf(net, 0.64)->in(kMegajoulePerCubicMetre), 40.0);
    EXPECT_FALSE(wobbeOf(gross, 0.0));
    EXPECT_FALSE(wobbeOf(gross, -0.6));
    EXPECT_FALSE(wobbeOf(net, 0.0));
    EXPECT_FALSE(wobbeOf(net, -0.6));
}

}  // namespace
}  // namespace hearth::gas
