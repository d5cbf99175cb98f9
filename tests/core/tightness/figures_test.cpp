// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/figures.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;

TEST(Figures, KeepTheDecimalsOfTheReading) {
    EXPECT_EQ(figureOf(reading(20.7, 0.01)).value.text(), "20.70");
    EXPECT_EQ(figureOf(reading(20.7, 0.1)).value.text(), "20.7");
    EXPECT_EQ(figureOf(reading(20, 1.0)).value.text(), "20");
    EXPECT_EQ(figureOf(reading(20.674, 0.249)).value.text(), "20.7") << "a tenth of an inch of water";
    EXPECT_EQ(figureOf(reading(20.5, 1e-15)).value.text(), "20.5000");
}

TEST(Figures, ChangeIsExact) {
    const auto change = changeBetween(electronic(), reading(20.71), reading(20.67));
    EXPECT_EQ(figureOf(change).value.text(), "0.04");
    EXPECT_EQ(figureOf(change.reversed()).value.text(), "-0.04");
    EXPECT_EQ(uncertaintyOf(change).value.text(), "0.018");
    const auto none = changeBetween(electronic(), reading(20.71), reading(20.71));
    EXPECT_EQ(figureOf(none.reversed()).value.text(), "0.00") << "no negative nought";
}

TEST(Figures, OfOtherQuantities) {
    EXPECT_EQ(figureOf(cubicMetres(0.009386)).value.text(), "0.009386");
    EXPECT_EQ(figureOf(seconds(119.6)).value.text(), "120");
    EXPECT_EQ(figureOf(quantity::Flow(1.1115, quantity::kLitrePerHour)).value.text(), "1.11");
    EXPECT_EQ(figureOf(quantity::TemperatureChange(0.0697, quantity::kKelvin)).value.text(), "0.07");
    EXPECT_EQ(figureOf(gaugeMillibar(21.04)).value.text(), "21.04");
    EXPECT_EQ(millimetres(66.7).value.text(), "66.7");
}

TEST(Figures, AVolumeThatMayHaveBeenTypedHasNoNoughtsOfItsOwn) {
    EXPECT_EQ(shortFigureOf(cubicMetres(0.35)).value.text(), "0.350");
    EXPECT_EQ(shortFigureOf(cubicMetres(0.0351)).value.text(), "0.0351");
    EXPECT_EQ(shortFigureOf(cubicMetres(0.009386)).value.text(), "0.009386");
    EXPECT_EQ(shortFigureOf(cubicMetres(0.0350004)).value.text(), "0.035");
}

TEST(Figures, OnlyWholeMinutesReadAsMinutes) {
    EXPECT_EQ(minutesOf(seconds(420)).value.text(), "7");
    EXPECT_EQ(minutesOf(seconds(420)).unit, quantity::UnitCode::Minute);
    EXPECT_EQ(minutesOf(seconds(419)).value.text(), "419");
    EXPECT_EQ(minutesOf(seconds(419)).unit, quantity::UnitCode::Second);
}

TEST(Figures, AnEntrysOwnIsAsItWasWritten) {
    rulebook::Entry entry;
    entry.value = quantity::Figure{quantity::Decimal(250, 3), quantity::UnitCode::Millibar};
    EXPECT_EQ(limitOf(entry).value.text(), "0.250");
    EXPECT_EQ(limitOf(entry).unit, quantity::UnitCode::Millibar);
    entry.value = std::monostate{};
    EXPECT_EQ(limitOf(entry), quantity::Figure{}) << "an empty entry has none";
}

}  // namespace
}  // namespace hearth::tightness
