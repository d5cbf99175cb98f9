// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

/// Quantities are types. A number goes in and comes out only by naming its unit; gauge and absolute pressure,
/// a temperature and a temperature change, net and gross heat do not mix. Absent is std::optional, never 0.
///
///     auto start = GaugePressure(20.71, kMillibar);
///     PressureChange fall = start - end;
///     fall.in(kMillibar)
namespace hearth::quantity {

/// A unit of one dimension: its size in the dimension's base unit (factor) and, for temperatures, where its
/// zero is.
template <class Dimension>
struct Unit {
    double factor = 1.0;
    double offset = 0.0;
};

/// A difference or an amount (it can be added and scaled).
template <class Tag, class Dimension>
class Amount {
  public:
    constexpr Amount() = default;
    constexpr Amount(double value, Unit<Dimension> unit) : m_base(value * unit.factor) {}
    [[nodiscard]] constexpr double in(Unit<Dimension> unit) const { return m_base / unit.factor; }

    friend constexpr Amount operator+(Amount a, Amount b) { return fromBase(a.m_base + b.m_base); }
    friend constexpr Amount operator-(Amount a, Amount b) { return fromBase(a.m_base - b.m_base); }
    friend constexpr Amount operator-(Amount a) { return fromBase(-a.m_base); }
    friend constexpr Amount operator*(Amount a, double k) { return fromBase(a.m_base * k); }
    friend constexpr Amount operator*(double k, Amount a) { return fromBase(a.m_base * k); }
    friend constexpr Amount operator/(Amount a, double k) { return fromBase(a.m_base / k); }
    friend constexpr double operator/(Amount a, Amount b) { return a.m_base / b.m_base; }
    constexpr auto operator<=>(const Amount&) const = default;

    [[nodiscard]] static constexpr Amount fromBase(double base) {
        Amount amount;
        amount.m_base = base;
        return amount;
    }
    [[nodiscard]] constexpr double base() const { return m_base; }

  private:
    double m_base = 0.0;
};

/// A position on a scale (it can be compared; the difference of two is an Amount; two cannot be added).
template <class Tag, class Dimension, class Difference>
class Point {
  public:
    constexpr Point() = default;
    constexpr Point(double value, Unit<Dimension> unit) : m_base((value + unit.offset) * unit.factor) {}
    [[nodiscard]] constexpr double in(Unit<Dimension> unit) const {
        return m_base / unit.factor - unit.offset;
    }

    friend constexpr Difference operator-(Point a, Point b) {
        return Difference::fromBase(a.m_base - b.m_base);
    }
    friend constexpr Point operator+(Point a, Difference d) { return fromBase(a.m_base + d.base()); }
    friend constexpr Point operator-(Point a, Difference d) { return fromBase(a.m_base - d.base()); }
    constexpr auto operator<=>(const Point&) const = default;

    [[nodiscard]] static constexpr Point fromBase(double base) {
        Point point;
        point.m_base = base;
        return point;
    }
    [[nodiscard]] constexpr double base() const { return m_base; }

  private:
    double m_base = 0.0;
};

// Dimensions; the base unit of each is SI (pascal, cubic metre, metre, second, kelvin, watt, joule per cubic
// metre, square metre); a share's is one.
struct PressureDimension;
struct VolumeDimension;
struct LengthDimension;
struct TimeDimension;
struct FlowDimension;
struct TemperatureDimension;
struct PowerDimension;
struct HeatValueDimension;
struct AreaDimension;
struct ShareDimension;

using PressureChange = Amount<struct PressureChangeTag, PressureDimension>;
using GaugePressure = Point<struct GaugePressureTag, PressureDimension, PressureChange>;
using AbsolutePressure = Point<struct AbsolutePressureTag, PressureDimension, PressureChange>;
using Volume = Amount<struct VolumeTag, VolumeDimension>;
using Length = Amount<struct LengthTag, LengthDimension>;
using Duration = Amount<struct DurationTag, TimeDimension>;
using Flow = Amount<struct FlowTag, FlowDimension>;
using TemperatureChange = Amount<struct TemperatureChangeTag, TemperatureDimension>;
using Temperature = Point<struct TemperatureTag, TemperatureDimension, TemperatureChange>;
using Area = Amount<struct AreaTag, AreaDimension>;
/// Part of a mixture by volume: O2 and CO2 in per cent, CO in ppm.
using Share = Amount<struct ShareTag, ShareDimension>;
/// Heat input by the gross and by the net calorific value are two quantities: a limit for one never judges
/// the other.
using GrossPower = Amount<struct GrossPowerTag, PowerDimension>;
using NetPower = Amount<struct NetPowerTag, PowerDimension>;
/// Heat given off (to water, to a room).
using HeatOutput = Amount<struct HeatOutputTag, PowerDimension>;
/// Calorific value of a gas per cubic metre at 15 degrees C and 1013.25 mbar, dry.
using GrossHeatValue = Amount<struct GrossHeatValueTag, HeatValueDimension>;
using NetHeatValue = Amount<struct NetHeatValueTag, HeatValueDimension>;

/// Gauge plus barometer is absolute; there is no other way between the two.
[[nodiscard]] constexpr AbsolutePressure absolute(GaugePressure gauge, AbsolutePressure atmosphere) {
    return AbsolutePressure::fromBase(gauge.base() + atmosphere.base());
}

}  // namespace hearth::quantity
