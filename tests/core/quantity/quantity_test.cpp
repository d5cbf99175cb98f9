// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.h"

#include "core/quantity/units.h"

#include <concepts>
#include <gtest/gtest.h>
#include <type_traits>

namespace hearth::quantity {
namespace {

template <class A, class B>
concept CanAdd = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept CanSubtract = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept CanDivide = requires(A a, B b) {
    a / b;
};
template <class A, class B>
concept CanCompare = requires(A a, B b) {
    a < b;
}
|| requires(A a, B b) {
    a == b;
};
template <class A>
concept CanScale = requires(A a) {
    a * 2.0;
};
template <class Quantity, class Dimension>
concept CanBeReadIn = requires(Quantity q, Unit<Dimension> u) {
    q.in(u);
};
template <class Quantity, class Dimension>
concept CanBeMadeIn = requires(Unit<Dimension> u) {
    Quantity(1.0, u);
};

// What must compile, so that what must not is known to be refused for the right reason.
static_assert(CanAdd<PressureChange, PressureChange> && CanAdd<GaugePressure, PressureChange>);
static_assert(CanSubtract<GaugePressure, GaugePressure> && CanSubtract<Temperature, Temperature>);
static_assert(CanCompare<Volume, Volume> && CanScale<Volume> && CanDivide<Volume, Volume>);
static_assert(CanBeReadIn<Volume, VolumeDimension> && CanBeMadeIn<Volume, VolumeDimension>);
static_assert(std::same_as<decltype(GaugePressure() - GaugePressure()), PressureChange>);
static_assert(std::same_as<decltype(AbsolutePressure() - AbsolutePressure()), PressureChange>);
static_assert(std::same_as<decltype(Temperature() - Temperature()), TemperatureChange>);
static_assert(std::same_as<decltype(Volume() / Volume()), double>);

// Two positions on a scale have no sum, and no multiple.
static_assert(!CanAdd<GaugePressure, GaugePressure>);
static_assert(!CanAdd<AbsolutePressure, AbsolutePressure>);
static_assert(!CanAdd<Temperature, Temperature>);
static_assert(!CanScale<GaugePressure> && !CanScale<Temperature>);
static_assert(!CanDivide<Temperature, Temperature>);

// Gauge and absolute do not mix; nor do positions and differences.
static_assert(!CanSubtract<GaugePressure, AbsolutePressure> && !CanSubtract<AbsolutePressure, GaugePressure>);
static_assert(!CanCompare<GaugePressure, AbsolutePressure> && !CanCompare<GaugePressure, PressureChange>);
static_assert(!CanCompare<Temperature, TemperatureChange>);
static_assert(!std::convertible_to<GaugePressure, AbsolutePressure>);
static_assert(!std::convertible_to<PressureChange, GaugePressure>);
static_assert(!std::constructible_from<AbsolutePressure, GaugePressure>);

// Dimensions do not mix.
static_assert(!CanCompare<Volume, Length> && !CanAdd<Volume, Length> && !CanDivide<Volume, Length>);
static_assert(!CanCompare<Duration, Length> && !CanAdd<Flow, Volume>);
static_assert(!CanAdd<Temperature, PressureChange> && !CanAdd<GaugePressure, TemperatureChange>);
static_assert(!CanBeMadeIn<Volume, LengthDimension> && !CanBeReadIn<Volume, LengthDimension>);
static_assert(!CanBeMadeIn<GaugePressure, TemperatureDimension>);

// A number goes in and comes out only by naming its unit.
static_assert(!std::convertible_to<double, Volume> && !std::constructible_from<Volume, double>);
static_assert(!std::convertible_to<Volume, double> && !std::constructible_from<GaugePressure, double>);
static_assert(!CanCompare<Volume, double> && !CanAdd<Volume, double>);

TEST(Quantity, aFallIsTheDifferenceOfTwoGaugePressures) {
    const GaugePressure start(20.71, kMillibar);
    const GaugePressure end(20.67, kMillibar);
    const PressureChange fall = start - end;
    EXPECT_NEAR(fall.in(kMillibar), 0.04, 1e-12);
    EXPECT_NEAR(fall.in(kPascal), 4.0, 1e-10);
    EXPECT_NEAR((end + fall).in(kMillibar), 20.71, 1e-12);
    EXPECT_NEAR((start - fall).in(kMillibar), 20.67, 1e-12);
    EXPECT_LT(end, start);
}

TEST(Quantity, gaugePlusBarometerIsAbsolute) {
    const auto pressure = absolute(GaugePressure(20.0, kMillibar), AbsolutePressure(1013.25, kMillibar));
    EXPECT_NEAR(pressure.in(kMillibar), 1033.25, 1e-9);
}

// The ice point is 273.15 K by definition of the degree Celsius (SI brochure, section 2.3.1).
TEST(Quantity, celsiusHasItsZeroAtTheIcePoint) {
    EXPECT_DOUBLE_EQ(Temperature(0.0, kCelsius).in(kKelvin), 273.15);
    EXPECT_NEAR(Temperature(293.15, kKelvin).in(kCelsius), 20.0, 1e-12);
    const TemperatureChange change = Temperature(21.0, kCelsius) - Temperature(20.0, kCelsius);
    EXPECT_NEAR(change.in(kKelvin), 1.0, 1e-12);
    EXPECT_NEAR(change.in(kCelsius), 1.0, 1e-12) << "a change has no zero point";
    EXPECT_DOUBLE_EQ(TemperatureChange(0.07, kCelsius).in(kKelvin), 0.07);
}

TEST(Quantity, amountsAddAndScale) {
    const Volume meter(0.008, kCubicMetre);
    const Volume pipe(1.0, kLitre);
    EXPECT_NEAR((meter + pipe * 1.1).in(kLitre), 9.1, 1e-12);
    EXPECT_NEAR((2.0 * pipe - pipe / 2.0).in(kLitre), 1.5, 1e-12);
    EXPECT_NEAR(meter / pipe, 8.0, 1e-12);
    EXPECT_LT(-pipe, Volume());
    EXPECT_EQ(Volume().in(kLitre), 0.0);
}

}  // namespace
}  // namespace hearth::quantity
