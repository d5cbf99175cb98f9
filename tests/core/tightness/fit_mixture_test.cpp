// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/fit_mixture.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

// The normal distribution's 1.959964 (textbook table).
TEST(QuantileOf, OneNormalDistributionHasItsTabledQuantiles) {
    EXPECT_NEAR(quantileOf({{1.0, 0.0, 1.0}}, 0.975), 1.959964, 1e-5);
    EXPECT_NEAR(quantileOf({{1.0, 3.0, 2.0}}, 0.025), 3.0 - 2.0 * 1.959964, 1e-5);
    EXPECT_NEAR(quantileOf({{1.0, -1.0, 0.5}}, 0.5), -1.0, 1e-6);
}

TEST(QuantileOf, TwoFarApartAreEachTheirOwn) {
    const std::vector<NormalPart> parts{{0.5, 0.0, 1.0}, {0.5, 100.0, 1.0}};
    EXPECT_NEAR(quantileOf(parts, 0.025), -1.644854, 1e-4);  // a twentieth of the first
    EXPECT_NEAR(quantileOf(parts, 0.975), 101.644854, 1e-4);
}

}  // namespace
}  // namespace hearth::tightness
