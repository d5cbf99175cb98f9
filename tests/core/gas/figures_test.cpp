// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/figures.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>
#include <limits>

namespace hearth::gas {
namespace {

TEST(GasFigures, AreRoundedOnceWithTheirUnit) {
    EXPECT_EQ(quantity::show(megajoules(37.7846)), "37.78\u00a0MJ/m³");
    EXPECT_EQ(quantity::show(megajoules(38.5)), "38.50\u00a0MJ/m³");
    EXPECT_EQ(quantity::show(densityFigure(0.55465)), "0.555");
    EXPECT_EQ(quantity::show(densityFigure(0.7)), "0.700");
}

TEST(GasFigures, WhatIsOutsideIsNamedWithItsLimits) {
    const auto error = outside(21.5, 0.0, 20.95, quantity::UnitCode::Percent).value();
    EXPECT_EQ(error.code, ErrorCode::OutOfRange);
    EXPECT_EQ(error.details, (std::vector<std::string>{"21.50\u00a0%", "0.00\u00a0%", "20.95\u00a0%"}));
    const auto none = outside(std::numeric_limits<double>::quiet_NaN(), 0.0, 1.0, quantity::UnitCode::None);
    EXPECT_EQ(none.value().details.front(), "?");
}

}  // namespace
}  // namespace hearth::gas
