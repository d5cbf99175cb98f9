// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/units.h"

#include <array>
#include <cassert>
#include <cstddef>
#include <limits>

namespace hearth::quantity {
namespace {

struct UnitRow {
    UnitCode code;
    std::string_view text;
    std::string_view symbol;
};

// In the order of the enumeration, so that a code is its own index; the static_assert below holds it.
constexpr std::array kRows{
    UnitRow{UnitCode::None, "", ""},
    UnitRow{UnitCode::Millibar, "mbar", "mbar"},
    UnitRow{UnitCode::Pascal, "Pa", "Pa"},
    UnitRow{UnitCode::Kilopascal, "kPa", "kPa"},
    UnitRow{UnitCode::Bar, "bar", "bar"},
    UnitRow{UnitCode::InchWater, "inwg", "in wg"},
    UnitRow{UnitCode::MillimetreWater, "mmwg", "mm wg"},
    UnitRow{UnitCode::CubicMetre, "m3", "m\u00B3"},
    UnitRow{UnitCode::Litre, "l", "l"},
    UnitRow{UnitCode::CubicFoot, "ft3", "ft\u00B3"},
    UnitRow{UnitCode::Metre, "m", "m"},
    UnitRow{UnitCode::Millimetre, "mm", "mm"},
    UnitRow{UnitCode::Foot, "ft", "ft"},
    UnitRow{UnitCode::Second, "s", "s"},
    UnitRow{UnitCode::Minute, "min", "min"},
    UnitRow{UnitCode::CubicMetrePerHour, "m3/h", "m\u00B3/h"},
    UnitRow{UnitCode::LitrePerHour, "l/h", "l/h"},
    UnitRow{UnitCode::Celsius, "degC", "\u00B0C"},
    UnitRow{UnitCode::Kelvin, "K", "K"},
    UnitRow{UnitCode::Inch, "in", "in"},
    UnitRow{UnitCode::LitrePerMinute, "l/min", "l/min"},
    UnitRow{UnitCode::CubicFootPerHour, "ft3/h", "ft\u00B3/h"},
    UnitRow{UnitCode::Kilowatt, "kW", "kW"},
    UnitRow{UnitCode::BtuPerHour, "Btu/h", "Btu/h"},
    UnitRow{UnitCode::MegajoulePerCubicMetre, "MJ/m3", "MJ/m\u00B3"},
    UnitRow{UnitCode::KilowattHourPerCubicMetre, "kWh/m3", "kWh/m\u00B3"},
    UnitRow{UnitCode::BtuPerCubicFoot, "Btu/ft3", "Btu/ft\u00B3"},
    UnitRow{UnitCode::SquareCentimetre, "cm2", "cm\u00B2"},
    UnitRow{UnitCode::SquareMillimetre, "mm2", "mm\u00B2"},
    UnitRow{UnitCode::Percent, "%", "%"},
    UnitRow{UnitCode::Ppm, "ppm", "ppm"},
    UnitRow{UnitCode::MilligramPerCubicMetre, "mg/m3", "mg/m\u00B3"},
    UnitRow{UnitCode::MilligramPerKilowattHour, "mg/kWh", "mg/kWh"},
    UnitRow{UnitCode::Hour, "h", "h"},
    UnitRow{UnitCode::Watt, "W", "W"},
};

constexpr bool isEveryCodeItsIndex() {
    for (std::size_t i = 0; i < kRows.size(); ++i) {
        if (static_cast<std::size_t>(kRows[i].code) != i) {
            return false;
        }
    }
    return true;
}
static_assert(isEveryCodeItsIndex());

const UnitRow& rowOf(UnitCode unit) {
    const auto index = static_cast<std::size_t>(unit);
    assert(index < kRows.size());
    return kRows[index];
}

constexpr std::array kNone{UnitCode::None};
constexpr std::array kPressures{UnitCode::Millibar, UnitCode::Pascal,    UnitCode::Kilopascal,
                                UnitCode::Bar,      UnitCode::InchWater, UnitCode::MillimetreWater};
constexpr std::array kVolumes{UnitCode::CubicMetre, UnitCode::Litre, UnitCode::CubicFoot};
constexpr std::array kLengths{UnitCode::Metre, UnitCode::Millimetre, UnitCode::Foot, UnitCode::Inch};
constexpr std::array kTimes{UnitCode::Second, UnitCode::Minute};
constexpr std::array kFlows{UnitCode::CubicMetrePerHour, UnitCode::LitrePerHour, UnitCode::LitrePerMinute,
                            UnitCode::CubicFootPerHour};
constexpr std::array kTemperatures{UnitCode::Celsius, UnitCode::Kelvin};
constexpr std::array kTemperatureChanges{UnitCode::Kelvin, UnitCode::Celsius};
constexpr std::array kPowers{UnitCode::Kilowatt, UnitCode::Watt, UnitCode::BtuPerHour};
constexpr std::array kHeatValues{UnitCode::MegajoulePerCubicMetre, UnitCode::KilowattHourPerCubicMetre,
                                 UnitCode::BtuPerCubicFoot};
constexpr std::array kAreas{UnitCode::SquareCentimetre, UnitCode::SquareMillimetre};
constexpr std::array kShares{UnitCode::Percent, UnitCode::Ppm};
constexpr std::array kTraces{UnitCode::Ppm, UnitCode::Percent, UnitCode::MilligramPerCubicMetre};
constexpr std::array kEmissions{UnitCode::MilligramPerKilowattHour};
constexpr std::array kLongTimes{UnitCode::Minute, UnitCode::Hour, UnitCode::Second};

// A code of another dimension is a bug. Without asserts the result is not a number, which no comparison lets
// pass.
template <class Dimension>
Unit<Dimension> notOfThisDimension() {
    assert(false);
    return Unit<Dimension>{std::numeric_limits<double>::quiet_NaN()};
}

}  // namespace

std::string_view unitText(UnitCode unit) {
    return rowOf(unit).text;
}

std::optional<UnitCode> unitFromText(std::string_view text) {
    for (const auto& row : kRows) {
        if (row.text == text) {
            return row.code;
        }
    }
    return std::nullopt;
}

std::string_view unitSymbol(UnitCode unit) {
    return rowOf(unit).symbol;
}

std::span<const UnitCode> unitsOf(UnitFamily family) {
    switch (family) {
        case UnitFamily::None:
            return kNone;
        case UnitFamily::Pressure:
            return kPressures;
        case UnitFamily::Volume:
            return kVolumes;
        case UnitFamily::Length:
            return kLengths;
        case UnitFamily::Time:
            return kTimes;
        case UnitFamily::Flow:
            return kFlows;
        case UnitFamily::Temperature:
            return kTemperatures;
        case UnitFamily::TemperatureChange:
            return kTemperatureChanges;
        case UnitFamily::Power:
            return kPowers;
        case UnitFamily::HeatValue:
            return kHeatValues;
        case UnitFamily::Area:
            return kAreas;
        case UnitFamily::Share:
            return kShares;
        case UnitFamily::Trace:
            return kTraces;
        case UnitFamily::Emission:
            return kEmissions;
        case UnitFamily::LongTime:
            return kLongTimes;
    }
    assert(false);
    return kNone;
}

Unit<PressureDimension> pressureUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Millibar:
            return kMillibar;
        case UnitCode::Pascal:
            return kPascal;
        case UnitCode::Kilopascal:
            return kKilopascal;
        case UnitCode::Bar:
            return kBar;
        case UnitCode::InchWater:
            return kInchWater;
        case UnitCode::MillimetreWater:
            return kMillimetreWater;
        default:
            return notOfThisDimension<PressureDimension>();
    }
}

Unit<VolumeDimension> volumeUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::CubicMetre:
            return kCubicMetre;
        case UnitCode::Litre:
            return kLitre;
        case UnitCode::CubicFoot:
            return kCubicFoot;
        default:
            return notOfThisDimension<VolumeDimension>();
    }
}

Unit<LengthDimension> lengthUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Metre:
            return kMetre;
        case UnitCode::Millimetre:
            return kMillimetre;
        case UnitCode::Foot:
            return kFoot;
        case UnitCode::Inch:
            return kInch;
        default:
            return notOfThisDimension<LengthDimension>();
    }
}

Unit<TimeDimension> timeUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Second:
            return kSecond;
        case UnitCode::Minute:
            return kMinute;
        case UnitCode::Hour:
            return kHour;
        default:
            return notOfThisDimension<TimeDimension>();
    }
}

Unit<FlowDimension> flowUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::CubicMetrePerHour:
            return kCubicMetrePerHour;
        case UnitCode::LitrePerHour:
            return kLitrePerHour;
        case UnitCode::LitrePerMinute:
            return kLitrePerMinute;
        case UnitCode::CubicFootPerHour:
            return kCubicFootPerHour;
        default:
            return notOfThisDimension<FlowDimension>();
    }
}

Unit<TemperatureDimension> temperatureUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Celsius:
            return kCelsius;
        case UnitCode::Kelvin:
            return kKelvin;
        default:
            return notOfThisDimension<TemperatureDimension>();
    }
}

Unit<PowerDimension> powerUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Watt:
            return kWatt;
        case UnitCode::Kilowatt:
            return kKilowatt;
        case UnitCode::BtuPerHour:
            return kBtuPerHour;
        default:
            return notOfThisDimension<PowerDimension>();
    }
}

Unit<HeatValueDimension> heatValueUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::MegajoulePerCubicMetre:
            return kMegajoulePerCubicMetre;
        case UnitCode::KilowattHourPerCubicMetre:
            return kKilowattHourPerCubicMetre;
        case UnitCode::BtuPerCubicFoot:
            return kBtuPerCubicFoot;
        default:
            return notOfThisDimension<HeatValueDimension>();
    }
}

Unit<AreaDimension> areaUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::SquareCentimetre:
            return kSquareCentimetre;
        case UnitCode::SquareMillimetre:
            return kSquareMillimetre;
        default:
            return notOfThisDimension<AreaDimension>();
    }
}

Unit<ShareDimension> shareUnit(UnitCode unit) {
    switch (unit) {
        case UnitCode::Percent:
            return kPercent;
        case UnitCode::Ppm:
            return kPpm;
        default:
            return notOfThisDimension<ShareDimension>();
    }
}

}  // namespace hearth::quantity
