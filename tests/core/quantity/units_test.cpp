// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/units.h"

#include "tests/support/files.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace hearth::quantity {
namespace {

constexpr std::array kFamilies{
    UnitFamily::None,  UnitFamily::Pressure,  UnitFamily::Volume,      UnitFamily::Length,
    UnitFamily::Time,  UnitFamily::Flow,      UnitFamily::Temperature, UnitFamily::TemperatureChange,
    UnitFamily::Power, UnitFamily::HeatValue, UnitFamily::Area,        UnitFamily::Share,
    UnitFamily::Trace, UnitFamily::Emission,  UnitFamily::LongTime};

constexpr int kCodes = static_cast<int>(UnitCode::Watt) + 1;

// Source of every expected value: GNU units, Debian's package units. A missing program fails the test.
double byGnuUnits(const std::string& have, const std::string& want) {
    const auto answer =
        testing::runCommand("units --terse --output-format %.17g '" + have + "' '" + want + "' 2>&1");
    EXPECT_EQ(answer.exitCode, 0) << "GNU units (package units) must be installed: " << answer.text;
    try {
        return std::stod(answer.text);
    } catch (const std::exception&) {
        ADD_FAILURE() << have << " in " << want << ": " << answer.text;
        return std::nan("");
    }
}

template <class Dimension>
void expectFactor(Unit<Dimension> unit, const std::string& gnuUnit, const std::string& gnuBase) {
    const double expected = byGnuUnits(gnuUnit, gnuBase);
    EXPECT_NEAR(unit.factor / expected, 1.0, 1e-14) << gnuUnit;
    EXPECT_EQ(unit.offset, 0.0) << gnuUnit;
}

TEST(Units, everyNamedUnitIsWhatGnuUnitsSays) {
    expectFactor(kPascal, "pascal", "Pa");
    expectFactor(kMillibar, "millibar", "Pa");
    expectFactor(kBar, "bar", "Pa");
    expectFactor(kKilopascal, "kilopascal", "Pa");
    expectFactor(kInchWater, "inH2O", "Pa");
    expectFactor(kMillimetreWater, "mmH2O", "Pa");
    expectFactor(kCubicMetre, "m^3", "m^3");
    expectFactor(kLitre, "litre", "m^3");
    expectFactor(kCubicFoot, "ft^3", "m^3");
    expectFactor(kMetre, "metre", "m");
    expectFactor(kMillimetre, "millimetre", "m");
    expectFactor(kFoot, "foot", "m");
    expectFactor(kSecond, "second", "s");
    expectFactor(kMinute, "minute", "s");
    expectFactor(kHour, "hour", "s");
    expectFactor(kCubicMetrePerSecond, "m^3/second", "m^3/s");
    expectFactor(kCubicMetrePerHour, "m^3/hour", "m^3/s");
    expectFactor(kLitrePerHour, "litre/hour", "m^3/s");
    expectFactor(kKelvin, "kelvin", "K");
    expectFactor(kInch, "inch", "m");
    expectFactor(kLitrePerMinute, "litre/minute", "m^3/s");
    expectFactor(kCubicFootPerHour, "ft^3/hour", "m^3/s");
    expectFactor(kWatt, "watt", "W");
    expectFactor(kKilowatt, "kilowatt", "W");
    expectFactor(kBtuPerHour, "btu/hour", "W");
    expectFactor(kMegajoulePerCubicMetre, "MJ/m^3", "J/m^3");
    expectFactor(kKilowattHourPerCubicMetre, "kWh/m^3", "J/m^3");
    expectFactor(kBtuPerCubicFoot, "btu/ft^3", "J/m^3");
    expectFactor(kSquareMetre, "m^2", "m^2");
    expectFactor(kSquareCentimetre, "cm^2", "m^2");
    expectFactor(kSquareMillimetre, "mm^2", "m^2");
    expectFactor(kOne, "1", "1");
    expectFactor(kPercent, "percent", "1");
    expectFactor(kPpm, "ppm", "1");
    EXPECT_DOUBLE_EQ(Temperature(20.0, kCelsius).in(kKelvin), byGnuUnits("tempC(20)", "tempK"));
    EXPECT_DOUBLE_EQ(Temperature(-40.5, kCelsius).in(kKelvin), byGnuUnits("tempC(-40.5)", "tempK"));
}

struct Family {
    UnitFamily family;
    std::string gnuBase;
    double (*factor)(UnitCode);
};

const std::map<UnitCode, std::string>& gnuNames() {
    static const std::map<UnitCode, std::string> names{
        {UnitCode::Millibar, "mbar"},
        {UnitCode::Pascal, "Pa"},
        {UnitCode::Kilopascal, "kPa"},
        {UnitCode::Bar, "bar"},
        {UnitCode::InchWater, "inH2O"},
        {UnitCode::MillimetreWater, "mmH2O"},
        {UnitCode::CubicMetre, "m^3"},
        {UnitCode::Litre, "l"},
        {UnitCode::CubicFoot, "ft^3"},
        {UnitCode::Metre, "m"},
        {UnitCode::Millimetre, "mm"},
        {UnitCode::Foot, "ft"},
        {UnitCode::Second, "s"},
        {UnitCode::Minute, "min"},
        {UnitCode::CubicMetrePerHour, "m^3/hour"},
        {UnitCode::LitrePerHour, "l/hour"},
        {UnitCode::Celsius, "degC"},
        {UnitCode::Kelvin, "K"},
        {UnitCode::Inch, "inch"},
        {UnitCode::LitrePerMinute, "l/min"},
        {UnitCode::CubicFootPerHour, "ft^3/hour"},
        {UnitCode::Watt, "W"},
        {UnitCode::Kilowatt, "kW"},
        {UnitCode::BtuPerHour, "btu/hour"},
        {UnitCode::MegajoulePerCubicMetre, "MJ/m^3"},
        {UnitCode::KilowattHourPerCubicMetre, "kWh/m^3"},
        {UnitCode::BtuPerCubicFoot, "btu/ft^3"},
        {UnitCode::SquareCentimetre, "cm^2"},
        {UnitCode::SquareMillimetre, "mm^2"},
        {UnitCode::Percent, "percent"},
        {UnitCode::Ppm, "ppm"},
        {UnitCode::Hour, "hour"},
    };
    return names;
}

TEST(Units, everyCodeThatCanBeTypedIsWhatGnuUnitsSays) {
    const std::vector<Family> families{
        {UnitFamily::Pressure, "Pa", [](UnitCode u) { return pressureUnit(u).factor; }},
        {UnitFamily::Volume, "m^3", [](UnitCode u) { return volumeUnit(u).factor; }},
        {UnitFamily::Length, "m", [](UnitCode u) { return lengthUnit(u).factor; }},
        {UnitFamily::Time, "s", [](UnitCode u) { return timeUnit(u).factor; }},
        {UnitFamily::Flow, "m^3/s", [](UnitCode u) { return flowUnit(u).factor; }},
        {UnitFamily::Temperature, "K", [](UnitCode u) { return temperatureUnit(u).factor; }},
        {UnitFamily::TemperatureChange, "K", [](UnitCode u) { return temperatureUnit(u).factor; }},
        {UnitFamily::Power, "W", [](UnitCode u) { return powerUnit(u).factor; }},
        {UnitFamily::HeatValue, "J/m^3", [](UnitCode u) { return heatValueUnit(u).factor; }},
        {UnitFamily::Area, "m^2", [](UnitCode u) { return areaUnit(u).factor; }},
        {UnitFamily::Share, "1", [](UnitCode u) { return shareUnit(u).factor; }},
        {UnitFamily::LongTime, "s", [](UnitCode u) { return timeUnit(u).factor; }},
    };
    std::set<UnitCode> checked;
    for (const auto& family : families) {
        for (const UnitCode unit : unitsOf(family.family)) {
            ASSERT_TRUE(gnuNames().contains(unit)) << unitText(unit) << " has no check by GNU units";
            const double expected = byGnuUnits(gnuNames().at(unit), family.gnuBase);
            EXPECT_NEAR(family.factor(unit) / expected, 1.0, 1e-14) << unitText(unit);
            checked.insert(unit);
        }
    }
    // Of a mass for each volume or heat there is no share without a temperature or a gas: core/air and
    // core/burner have those factors.
    constexpr std::size_t kWithoutFactor = 2;
    EXPECT_EQ(checked.size(), static_cast<std::size_t>(kCodes - 1) - kWithoutFactor)
        << "a unit code is in no family";
    EXPECT_DOUBLE_EQ(Temperature(20.0, temperatureUnit(UnitCode::Celsius)).in(kKelvin),
                     byGnuUnits("tempC(20)", "tempK"));
}

TEST(Units, textsAreStableAndRoundTrip) {
    std::set<std::string_view> texts;
    for (int i = 0; i < kCodes; ++i) {
        const auto unit = static_cast<UnitCode>(i);
        EXPECT_TRUE(texts.insert(unitText(unit)).second) << unitText(unit);
        EXPECT_EQ(unitFromText(unitText(unit)), unit);
        EXPECT_EQ(unitSymbol(unit).empty(), unit == UnitCode::None);
    }
    EXPECT_EQ(unitText(UnitCode::Millibar), "mbar");
    EXPECT_EQ(unitText(UnitCode::CubicMetre), "m3");
    EXPECT_EQ(unitText(UnitCode::LitrePerHour), "l/h");
    EXPECT_EQ(unitSymbol(UnitCode::Celsius), "\u00B0C");
    EXPECT_FALSE(unitFromText("furlong"));
    EXPECT_FALSE(unitFromText("MBAR"));
}

TEST(Units, everyFamilyHasADefaultAndNoUnitTwice) {
    for (const UnitFamily family : kFamilies) {
        const auto units = unitsOf(family);
        ASSERT_FALSE(units.empty());
        EXPECT_EQ(std::set<UnitCode>(units.begin(), units.end()).size(), units.size());
    }
    EXPECT_EQ(unitsOf(UnitFamily::Pressure).front(), UnitCode::Millibar);
    EXPECT_EQ(unitsOf(UnitFamily::None).front(), UnitCode::None);
}

#ifdef NDEBUG
TEST(Units, aCodeOfAnotherDimensionLetsNothingPass) {
    EXPECT_TRUE(std::isnan(pressureUnit(UnitCode::Litre).factor));
    EXPECT_TRUE(std::isnan(temperatureUnit(UnitCode::None).factor));
}
#else
TEST(UnitsDeathTest, aCodeOfAnotherDimensionIsABug) {
    EXPECT_DEATH((void)pressureUnit(UnitCode::Litre), "");
    EXPECT_DEATH((void)temperatureUnit(UnitCode::None), "");
}
#endif

}  // namespace
}  // namespace hearth::quantity
