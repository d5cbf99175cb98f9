// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/uncertain.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::quantity {
namespace {

// Source of the expected values: JCGM 100:2008 (GUM) 4.3.7 and 5.1.2, by hand.
TEST(Uncertain, aRectangularHalfWidthIsDividedByTheRootOfThree) {
    EXPECT_NEAR(rectangular(0.5), 0.288675134594813, 1e-15);
    EXPECT_NEAR(readOff(20.7, 0.1).u, 0.05 / std::sqrt(3.0), 1e-15);
    EXPECT_NEAR(readOff(20.7, 0.0, 0.3).u, 0.3 / std::sqrt(3.0), 1e-15);
}

TEST(Uncertain, sumsAddSquaresAndProductsAddRelativeSquares) {
    const Uncertain a{10.0, 0.3};
    const Uncertain b{4.0, 0.4};
    EXPECT_DOUBLE_EQ((a + b).u, 0.5);
    EXPECT_DOUBLE_EQ((a - b).u, 0.5);
    EXPECT_NEAR((a * b).u / 40.0, std::hypot(0.03, 0.1), 1e-15);
    EXPECT_NEAR((a / b).u / 2.5, std::hypot(0.03, 0.1), 1e-15);
    EXPECT_DOUBLE_EQ((a * -2.0).u, 0.6);
    EXPECT_DOUBLE_EQ((a / 2.0).u, 0.15);
    EXPECT_DOUBLE_EQ(expanded(a), 0.6);
}

// A law: the uncertainty of what is read grows with the step of the display, in proportion when that is all
// of it.
TEST(Uncertain, scalesWithTheResolution) {
    for (const double step : {0.01, 0.1, 0.5, 1.0}) {
        EXPECT_NEAR(readOff(8.0, step).u / readOff(8.0, 1.0).u, step, 1e-12);
        EXPECT_LT(readOff(8.0, step, 0.3).u, readOff(8.0, 2 * step, 0.3).u);
    }
}

}  // namespace
}  // namespace hearth::quantity
