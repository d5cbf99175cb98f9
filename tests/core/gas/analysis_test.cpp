// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/analysis.h"

#include "core/gas/named_gases.h"
#include "core/quantity/units.h"
#include "tests/support/agreement.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace hearth::gas {
namespace {

using quantity::kMegajoulePerCubicMetre;

constexpr std::array kHandbookMix{
    AnalysedPart{Component::CH4, 0.926, 0.001},  AnalysedPart{Component::C2H6, 0.036, 0.001},
    AnalysedPart{Component::C3H8, 0.008, 0.001}, AnalysedPart{Component::nC4H10, 0.002, 0.001},
    AnalysedPart{Component::N2, 0.026, 0.001},   AnalysedPart{Component::CO2, 0.002, 0.001}};

TEST(Analysis, HasThePropertiesOfItsComposition) {
    const auto found = analysed(kHandbookMix).value();
    const auto expected = properties(namedGas("natural_typical")->composition);
    EXPECT_DOUBLE_EQ(found.gross.value.base(), expected.gross.base());
    EXPECT_DOUBLE_EQ(found.relativeDensity.value, expected.relativeDensity);
    EXPECT_DOUBLE_EQ(found.grossWobbe.value.base(), expected.grossWobbe.base());
    EXPECT_TRUE(found.composition == namedGas("natural_typical")->composition);
}

// By another way: 20 000 gases that would all be printed as this one, each part anywhere in +- half a digit.
TEST(Analysis, DigitsSpreadAsRandomGasesDo) {
    constexpr int kGases = 20000;
    std::mt19937 random(6976);
    std::uniform_real_distribution<double> within(-0.5, 0.5);
    double sum[2] = {};
    double squares[2] = {};
    for (int i = 0; i < kGases; ++i) {
        std::vector<Part> parts;
        for (const auto& part : kHandbookMix) {
            parts.push_back({part.component, part.fraction + part.digit * within(random)});
        }
        const auto one = properties(compositionOf(parts, Fractions::Normalised).value());
        const double figures[2] = {one.grossWobbe.in(kMegajoulePerCubicMetre), one.relativeDensity};
        for (int k = 0; k < 2; ++k) {
            sum[k] += figures[k];
            squares[k] += figures[k] * figures[k];
        }
    }
    const auto spread = [&](int k) { return std::sqrt(squares[k] / kGases - std::pow(sum[k] / kGases, 2)); };
    const auto found = analysed(kHandbookMix).value();
    testing::Agreement agreement("Digits of an analysis in Wobbe index and relative density",
                                 "20,000 random gases (JCGM 101:2008, from memory)", "%", 2.0);
    agreement.holdRelative("Wobbe index",
                           found.grossWobbe.digit.in(kMegajoulePerCubicMetre) / std::sqrt(12.0), spread(0));
    agreement.holdRelative("relative density", found.relativeDensity.digit / std::sqrt(12.0), spread(1));
}

TEST(Analysis, ExactPartsHaveExactProperties) {
    const auto methane = analysed(std::array{AnalysedPart{Component::CH4, 1.0, 0.0}}).value();
    EXPECT_DOUBLE_EQ(methane.gross.digit.base(), 0.0);
    EXPECT_DOUBLE_EQ(methane.relativeDensity.digit, 0.0);
    EXPECT_DOUBLE_EQ(methane.grossWobbe.digit.base(), 0.0);
}

TEST(Analysis, ThatDoesNotAddUpIsRefused) {
    EXPECT_EQ(analysed(std::array{AnalysedPart{Component::CH4, 0.9, 0.01}}).error().code,
              ErrorCode::OutOfRange);
    EXPECT_FALSE(
        analysed(std::array{AnalysedPart{Component::CH4, 1.1, 0.1}, AnalysedPart{Component::N2, -0.1}}));
    EXPECT_FALSE(analysed({}));
}

// By hand: 38.76 / sqrt(0.600) = 50.0389; a digit of 0.01 in the one and 0.001 in the other is 0.0129 and
// 0.0417 of the index, together 0.0437.
TEST(WobbeStated, IsByHand) {
    const Stated<quantity::GrossHeatValue> gross{{38.76, kMegajoulePerCubicMetre},
                                                 {0.01, kMegajoulePerCubicMetre}};
    const auto found = wobbeStated(gross, {0.600, 0.001}).value();
    testing::Agreement agreement("Wobbe index of 38.76 MJ/m3 and 0.600, and its digit", "by hand", "MJ/m3",
                                 0.00006);
    agreement.hold("index", found.value.in(kMegajoulePerCubicMetre), 50.0389);
    agreement.hold("digit", found.digit.in(kMegajoulePerCubicMetre), 0.0437);
    EXPECT_FALSE(wobbeStated(gross, {0.0, 0.001}));
    EXPECT_FALSE(wobbeStated(gross, {-0.6, 0.001}));
    EXPECT_FALSE(wobbeStated({}, {0.6, 0.001}));
}

}  // namespace
}  // namespace hearth::gas
