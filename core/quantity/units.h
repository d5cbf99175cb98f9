// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string_view>

/// Units by name. Exact by definition (SI, international foot and pound 1959) unless said; every factor is
/// checked against GNU units in tests/core/quantity/units_test.cpp.
namespace hearth::quantity {

inline constexpr Unit<PressureDimension> kPascal{1.0};
inline constexpr Unit<PressureDimension> kMillibar{100.0};
inline constexpr Unit<PressureDimension> kBar{100000.0};
inline constexpr Unit<PressureDimension> kKilopascal{1000.0};
/// Conventional inch of water (1000 kg/m3, standard gravity 9.80665 m/s2).
inline constexpr Unit<PressureDimension> kInchWater{249.08891};
inline constexpr Unit<PressureDimension> kMillimetreWater{9.80665};

inline constexpr Unit<VolumeDimension> kCubicMetre{1.0};
inline constexpr Unit<VolumeDimension> kLitre{0.001};
inline constexpr Unit<VolumeDimension> kCubicFoot{0.028316846592};

inline constexpr Unit<LengthDimension> kMetre{1.0};
inline constexpr Unit<LengthDimension> kMillimetre{0.001};
inline constexpr Unit<LengthDimension> kFoot{0.3048};
inline constexpr Unit<LengthDimension> kInch{0.0254};

inline constexpr Unit<TimeDimension> kSecond{1.0};
inline constexpr Unit<TimeDimension> kMinute{60.0};
inline constexpr Unit<TimeDimension> kHour{3600.0};

inline constexpr Unit<FlowDimension> kCubicMetrePerSecond{1.0};
inline constexpr Unit<FlowDimension> kCubicMetrePerHour{1.0 / 3600.0};
inline constexpr Unit<FlowDimension> kLitrePerHour{0.001 / 3600.0};
inline constexpr Unit<FlowDimension> kLitrePerMinute{0.001 / 60.0};
inline constexpr Unit<FlowDimension> kCubicFootPerHour{0.028316846592 / 3600.0};

inline constexpr Unit<PowerDimension> kWatt{1.0};
inline constexpr Unit<PowerDimension> kKilowatt{1000.0};
/// International table British thermal unit (1055.05585262 J) an hour.
inline constexpr Unit<PowerDimension> kBtuPerHour{1055.05585262 / 3600.0};

inline constexpr Unit<HeatValueDimension> kMegajoulePerCubicMetre{1.0e6};
inline constexpr Unit<HeatValueDimension> kKilowattHourPerCubicMetre{3.6e6};
inline constexpr Unit<HeatValueDimension> kBtuPerCubicFoot{1055.05585262 / 0.028316846592};

inline constexpr Unit<AreaDimension> kSquareMetre{1.0};
inline constexpr Unit<AreaDimension> kSquareCentimetre{1.0e-4};
inline constexpr Unit<AreaDimension> kSquareMillimetre{1.0e-6};

inline constexpr Unit<ShareDimension> kOne{1.0};
inline constexpr Unit<ShareDimension> kPercent{0.01};
inline constexpr Unit<ShareDimension> kPpm{1.0e-6};

inline constexpr Unit<TemperatureDimension> kKelvin{1.0};
inline constexpr Unit<TemperatureDimension> kCelsius{1.0, 273.15};

/// Units that can be typed, stored and printed. The code is what files hold; never renumbered, never reused.
enum class UnitCode {
    None,
    Millibar,
    Pascal,
    Kilopascal,
    Bar,
    InchWater,
    MillimetreWater,
    CubicMetre,
    Litre,
    CubicFoot,
    Metre,
    Millimetre,
    Foot,
    Second,
    Minute,
    CubicMetrePerHour,
    LitrePerHour,
    Celsius,
    Kelvin,
    Inch,
    LitrePerMinute,
    CubicFootPerHour,
    Kilowatt,
    BtuPerHour,
    MegajoulePerCubicMetre,
    KilowattHourPerCubicMetre,
    BtuPerCubicFoot,
    SquareCentimetre,
    SquareMillimetre,
    Percent,
    Ppm,
    MilligramPerCubicMetre,  // of CO in air: a share only at a stated temperature (see core/air)
    MilligramPerKilowattHour,
    Hour,
    Watt,
};

/// Which units an entry may be typed in.
/// Share: main parts of a mixture (O2, CO2); Trace: small ones (CO); Emission: mg/kWh; LongTime: exposures
/// and rounds.
enum class UnitFamily {
    None,
    Pressure,
    Volume,
    Length,
    Time,
    Flow,
    Temperature,
    TemperatureChange,
    Power,
    HeatValue,
    Area,
    Share,
    Trace,
    Emission,
    LongTime,
};

/// Stable text in files: "mbar", "m3", "l/h".
[[nodiscard]] std::string_view unitText(UnitCode unit);
[[nodiscard]] std::optional<UnitCode> unitFromText(std::string_view text);
/// What a person reads, UTF-8: "mbar", "m³", "l/h", "°C".
[[nodiscard]] std::string_view unitSymbol(UnitCode unit);
/// Units of a family; the first is the default.
[[nodiscard]] std::span<const UnitCode> unitsOf(UnitFamily family);

/// The code's size in base units, by dimension; a code of another dimension is a bug (assert).
[[nodiscard]] Unit<PressureDimension> pressureUnit(UnitCode unit);
[[nodiscard]] Unit<VolumeDimension> volumeUnit(UnitCode unit);
[[nodiscard]] Unit<LengthDimension> lengthUnit(UnitCode unit);
[[nodiscard]] Unit<TimeDimension> timeUnit(UnitCode unit);
[[nodiscard]] Unit<FlowDimension> flowUnit(UnitCode unit);
[[nodiscard]] Unit<TemperatureDimension> temperatureUnit(UnitCode unit);
[[nodiscard]] Unit<PowerDimension> powerUnit(UnitCode unit);
[[nodiscard]] Unit<HeatValueDimension> heatValueUnit(UnitCode unit);
[[nodiscard]] Unit<AreaDimension> areaUnit(UnitCode unit);
[[nodiscard]] Unit<ShareDimension> shareUnit(UnitCode unit);

}  // namespace hearth::quantity
