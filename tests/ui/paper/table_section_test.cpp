// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/table_section.h"

#include <gtest/gtest.h>
#include <numeric>

namespace hearth::ui::paper {
namespace {

double sum(const std::vector<double>& values) {
    return std::accumulate(values.begin(), values.end(), 0.0);
}

TEST(ShareWidths, goesByWeightWhereWordsFit) {
    const auto widths = shareWidths({2, 1, 1}, {10, 5, 5}, 100);
    EXPECT_DOUBLE_EQ(widths[0], 50);
    EXPECT_DOUBLE_EQ(widths[1], 25);
    EXPECT_DOUBLE_EQ(widths[2], 25);
}

TEST(ShareWidths, aLongWordTakesFromThoseWithRoom) {
    const auto widths = shareWidths({1, 1, 2}, {40, 10, 20}, 100);
    EXPECT_DOUBLE_EQ(widths[0], 40);
    EXPECT_NEAR(sum(widths), 100, 1e-9);
    EXPECT_GE(widths[1], 10);
    EXPECT_GE(widths[2], 20);
    EXPECT_LT(widths[1], 25);
    EXPECT_LT(widths[2], 50);
}

TEST(ShareWidths, whereNothingIsEnoughNobodyFallsBelowTheirOwn) {
    const auto widths = shareWidths({1, 1}, {200, 20}, 100);
    EXPECT_NEAR(sum(widths), 100, 1e-9);
    EXPECT_NEAR(widths[1], 20, 1e-9);
    EXPECT_NEAR(widths[0], 80, 1e-9);
}

TEST(ShareWidths, whereAllAreTooLongTheWeightsStand) {
    const auto widths = shareWidths({3, 1}, {300, 200}, 100);
    EXPECT_DOUBLE_EQ(widths[0], 75);
    EXPECT_DOUBLE_EQ(widths[1], 25);
}

}  // namespace
}  // namespace hearth::ui::paper
