// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/figures.h"

#include "tests/core/air/air_samples.h"

#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using quantity::UnitCode;

void isFigure(const quantity::Figure& figure, const char* text, UnitCode unit) {
    EXPECT_EQ(figure.value.text(), text);
    EXPECT_EQ(figure.unit, unit);
}

TEST(AirFigures, HaveTheDecimalsThatTheyDeserve) {
    isFigure(figureOf(samples::cm2(171.46)), "171.5", UnitCode::SquareCentimetre);
    isFigure(figureOf(samples::kw(17.456)), "17.46", UnitCode::Kilowatt);
    isFigure(figureOf(quantity::GrossPower(17.456, quantity::kKilowatt)), "17.46", UnitCode::Kilowatt);
    isFigure(figureOf(samples::m3(29.996)), "30.00", UnitCode::CubicMetre);
    isFigure(figureOf(samples::minutes(15)), "15", UnitCode::Minute);
    isFigure(figureOf(samples::minutes(15.25)), "15.3", UnitCode::Minute);
    isFigure(figureOf(samples::minutes(480)), "8", UnitCode::Hour);
    isFigure(figureOf(samples::minutes(60)), "60", UnitCode::Minute);
    isFigure(figureOf(quantity::Length(1.5, quantity::kMetre)), "1.50", UnitCode::Metre);
    isFigure(figureOf(quantity::Temperature(25.04, quantity::kCelsius)), "25.0", UnitCode::Celsius);
    isFigure(ppmFigure(samples::ppm(12.34)), "12.3", UnitCode::Ppm);
    isFigure(plainFigure(27.5, 2), "27.50", UnitCode::None);
    isFigure(plainFigure(5.0, 2), "5", UnitCode::None);
    rulebook::Entry entry;
    EXPECT_EQ(limitFigure(entry), quantity::Figure{});
    entry.value = figureOf(samples::cm2(50));
    isFigure(limitFigure(entry), "50.0", UnitCode::SquareCentimetre);
}

}  // namespace
}  // namespace hearth::air
