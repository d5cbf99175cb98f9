// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/figures.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

// --- burner
TEST(BurnerFigures, AreRoundedOnceWithTheirUnit) {
    const auto shown = [](const quantity::Figure& figure) { return quantity::show(figure); };
    EXPECT_EQ(shown(gasFlowFigure({2.59672, quantity::kCubicMetrePerHour})), "2.597\u00a0m³/h");
    EXPECT_EQ(shown(waterFlowFigure({9.84, quantity::kLitrePerMinute})), "9.8\u00a0l/min");
    EXPECT_EQ(shown(heatFigure(quantity::GrossPower(27.9407, quantity::kKilowatt))), "27.94\u00a0kW");
    EXPECT_EQ(shown(heatFigure(quantity::NetPower(25.1718, quantity::kKilowatt))), "25.17\u00a0kW");
    EXPECT_EQ(shown(heatFigure(quantity::HeatOutput(31.35, quantity::kKilowatt))), "31.35\u00a0kW");
    EXPECT_EQ(shown(indexFigure({412.3104, quantity::kCubicMetre})), "412.3104\u00a0m³");
    EXPECT_EQ(shown(secondsFigure({66.7, quantity::kSecond})), "67\u00a0s");
    EXPECT_EQ(shown(millibarFigure(20.705)), "20.71\u00a0mbar");
    EXPECT_EQ(shown(plainFigure(0.954, 2)), "0.95");
}
// --- end of burner

}  // namespace
}  // namespace hearth::burner
