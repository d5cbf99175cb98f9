// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_series.h"

#include "tests/core/air/air_samples.h"
#include "tests/support/agreement.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <utility>

namespace hearth::air {
namespace {

using quantity::kMinute;
using quantity::kPpm;
using samples::minutes;
using samples::ppm;

using Pairs = std::vector<std::pair<double, double>>;

/// Minutes and ppm.
std::vector<CoReading> seriesOf(const Pairs& pairs) {
    std::vector<CoReading> readings;
    for (const auto& [t, x] : pairs) {
        readings.push_back({minutes(t), ppm(x)});
    }
    return readings;
}

TEST(CoSeries, ReadingsOfAPlaceByTime) {
    CoSeries series;
    series.readings = {{minutes(5), ppm(3), CoPlace::Room},
                       {minutes(0), ppm(1), CoPlace::Outside},
                       {minutes(2), ppm(9), CoPlace::Room},
                       {minutes(5), ppm(4), CoPlace::Room}};
    const auto room = readingsAt(series, CoPlace::Room);
    ASSERT_EQ(room.size(), 3u);
    EXPECT_EQ(room[0].level, ppm(9));
    EXPECT_EQ(room[1].level, ppm(3));
    EXPECT_EQ(room[2].level, ppm(4));
    EXPECT_TRUE(readingsAt(series, CoPlace::NextRoom).empty());
    EXPECT_EQ(*peakOf(series), ppm(9));
    EXPECT_FALSE(peakOf({}));
}

TEST(CoSeries, TheMeanIsOverWhatWasMeasured) {
    testing::Agreement agreement("Mean of readings over time", "trapezium rule by hand (textbook)", "ppm",
                                 1e-9);
    const auto mean = [](const Pairs& pairs) { return meanOf(seriesOf(pairs))->mean.in(kPpm); };
    agreement.hold("level", mean({{0, 10}, {30, 10}}), 10);
    agreement.hold("triangle", mean({{0, 0}, {10, 20}, {20, 0}}), 10);
    agreement.hold("uneven", mean({{0, 10}, {1, 10}, {9, 30}, {10, 30}}), (10 + 8 * 20 + 30) / 10.0);
    agreement.hold("jump", mean({{0, 10}, {5, 10}, {5, 50}, {10, 50}}), 30);
    const auto uneven = meanOf(seriesOf({{3, 10}, {4, 10}, {12, 30}}));
    EXPECT_NEAR(uneven->measured.in(kMinute), 9, 1e-9);
    EXPECT_NEAR(uneven->longestGap.in(kMinute), 8, 1e-9);
    EXPECT_FALSE(meanOf({}));
    EXPECT_FALSE(meanOf(seriesOf({{3, 10}})));
    EXPECT_FALSE(meanOf(seriesOf({{3, 10}, {3, 20}})));
}

TEST(CoSeries, TheHighestMeanOfAStretch) {
    testing::Agreement agreement("Highest mean over a stretch of readings",
                                 "worked by hand (maximum of a piecewise quadratic, textbook)", "ppm", 1e-9);
    const auto highest = [](const Pairs& pairs, double window) {
        return highestMean(seriesOf(pairs), minutes(window))->mean.in(kPpm);
    };
    // A peak of 20 in the middle of 20 min: the best 10 min begin at 5 min, at equal heights of 10.
    agreement.hold("triangle", highest({{0, 0}, {10, 20}, {20, 0}}, 10), 15);
    // A skew triangle, 0 to 30 in 10 min and back in 20: heights h at both ends of w = 15: the base of the
    // cut-off triangle is 30 (1 - h / 30) = 15, h = 15: mean (15 + 30) / 2.
    agreement.hold("skew", highest({{0, 0}, {10, 30}, {30, 0}}, 15), 22.5);
    agreement.hold("rising", highest({{0, 0}, {30, 30}}, 10), 25);
    agreement.hold("falling", highest({{0, 30}, {30, 0}}, 10), 25);
    agreement.hold("step", highest({{0, 0}, {10, 0}, {10, 40}, {15, 40}, {15, 0}, {30, 0}}, 10), 20);
    agreement.hold("shorter than the stretch", highest({{0, 0}, {10, 20}}, 15), 10);
    const auto partial = highestMean(seriesOf({{0, 0}, {10, 20}}), minutes(15));
    EXPECT_NEAR(partial->measured.in(kMinute), 10, 1e-9);
    EXPECT_FALSE(highestMean(seriesOf({{0, 5}}), minutes(15)));
}

TEST(CoSeries, MeansLieBetweenLeastAndMostAndNoStretchIsHigherThanTheHighest) {
    std::mt19937 random(20261110);
    std::uniform_real_distribution<double> level(0.0, 200.0);
    std::uniform_real_distribution<double> step(0.2, 9.0);
    for (int run = 0; run < 200; ++run) {
        Pairs pairs;
        double t = 0.0;
        for (int i = 0; i < 12; ++i) {
            pairs.emplace_back(t, level(random));
            t += step(random);
        }
        const auto readings = seriesOf(pairs);
        const auto [least, most] = std::minmax_element(
            pairs.begin(), pairs.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
        const auto mean = meanOf(readings)->mean.in(kPpm);
        EXPECT_GE(mean, least->second);
        EXPECT_LE(mean, most->second);
        const double window = 0.4 * readings.back().at.in(kMinute);
        const auto highest = highestMean(readings, minutes(window))->mean.in(kPpm);
        EXPECT_GE(highest, least->second - 1e-9);
        EXPECT_LE(highest, most->second + 1e-9);
        EXPECT_GE(highest, highestMean(readings, minutes(1.2 * window))->mean.in(kPpm)*0.5);
        // By brute force: stretches that begin anywhere, each cut out and its mean taken by itself.
        for (double from = 0.0; from + window <= readings.back().at.in(kMinute); from += 0.05) {
            const auto at = [&](double when) {
                std::size_t i = 1;
                while (i + 1 < pairs.size() && pairs[i].first < when) {
                    ++i;
                }
                const auto& a = pairs[i - 1];
                const auto& b = pairs[i];
                return a.second + (b.second - a.second) * (when - a.first) / (b.first - a.first);
            };
            Pairs cut{{from, at(from)}};
            for (const auto& pair : pairs) {
                if (pair.first > from && pair.first < from + window) {
                    cut.push_back(pair);
                }
            }
            cut.emplace_back(from + window, at(from + window));
            ASSERT_LE(meanOf(seriesOf(cut))->mean.in(kPpm), highest + 1e-9) << run << " from " << from;
        }
        // More of it is never less.
        auto more = pairs;
        more[static_cast<std::size_t>(run) % more.size()].second += 5.0;
        EXPECT_GE(meanOf(seriesOf(more))->mean.in(kPpm), mean);
        EXPECT_GE(highestMean(seriesOf(more), minutes(window))->mean.in(kPpm), highest - 1e-9);
    }
}

TEST(CoSeries, TheTrendByLeastSquares) {
    struct Case {
        Pairs pairs;
        double digit;
        double window;
        Trend trend;
    };
    const Case cases[] = {
        {{{0, 5}, {5, 5}, {10, 5}}, 1, 60, Trend::Steady},
        {{{0, 5}, {5, 10}, {10, 15}, {15, 20}}, 1, 60, Trend::Rising},
        {{{0, 20}, {5, 15}, {10, 10}, {15, 5}}, 1, 60, Trend::Falling},
        {{{0, 5}, {5, 25}, {10, 3}, {15, 22}}, 1, 60, Trend::Unknown},
        {{{0, 5}, {10, 9}}, 1, 60, Trend::Unknown},
        {{{0, 5}, {0, 6}, {10, 9}, {10, 8}}, 1, 60, Trend::Unknown},
        {{}, 1, 60, Trend::Unknown},
        // Only the last quarter of an hour is looked at.
        {{{0, 5}, {15, 50}, {20, 50}, {25, 50}, {30, 50}}, 1, 15, Trend::Steady},
        // One step of a coarse display, at the end: it may be the beginning of a rise.
        {{{0, 0}, {5, 0}, {10, 0}, {15, 10}}, 10, 60, Trend::Unknown},
        // A rise that can be made out is one, however little of the display's digit it is.
        {{{0, 5}, {5, 5}, {10, 5}, {15, 6}, {20, 6}, {25, 6}}, 1, 60, Trend::Rising},
    };
    for (const auto& c : cases) {
        EXPECT_EQ(trendOf(seriesOf(c.pairs), ppm(c.digit), minutes(c.window)).trend, c.trend)
            << c.pairs.size() << " of " << c.digit;
    }
}

TEST(CoSeries, TheTrendsFiguresAreThoseOfARegressionByHand) {
    // x = 10, 12, 17, 19 at 0, 5, 10, 15 min: slope 80/125 = 0.64 ppm/min; residuals 0.3, -0.9, 0.9, -0.3,
    // s^2 = 1.8 / 2; u = root of (0.9 + 1/12) / 125.
    const auto trend = trendOf(seriesOf({{0, 10}, {5, 12}, {10, 17}, {15, 19}}), ppm(1), minutes(60));
    testing::Agreement agreement("Trend: change and its expanded uncertainty",
                                 "simple linear regression by hand (textbook)", "ppm", 1e-9);
    agreement.hold("change", trend.change.in(kPpm), 9.6);
    agreement.hold("uncertainty", trend.uncertainty.in(kPpm), 2 * 15 * std::sqrt((0.9 + 1.0 / 12) / 125));
    EXPECT_EQ(trend.trend, Trend::Rising);
    EXPECT_NEAR(trend.over.in(kMinute), 15, 1e-9);
}

TEST(CoSeries, WhatCantBeReadIsSaidBeforeWhatIsMissing) {
    CoSeries series;
    EXPECT_EQ(gapIn(series), std::nullopt);
    series.someMissing = true;
    EXPECT_EQ(gapIn(series), rulebook::Say::ReadingMissing);
    series.someUnreadable = true;
    EXPECT_EQ(gapIn(series), rulebook::Say::ReadingUnusable);
}

}  // namespace
}  // namespace hearth::air
