// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace.h"

#include "core/quantity/units.h"
#include "core/tightness/gas_law.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::AbsolutePressure;
using quantity::kCelsius;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::Temperature;

Trace traceOf(std::initializer_list<double> readings, double every = 1.0) {
    Trace trace;
    for (const double value : readings) {
        trace.push_back({seconds(every * static_cast<double>(trace.size())), gaugeMillibar(value)});
    }
    return trace;
}

TEST(Trace, IsCutAtItsMarks) {
    const auto part = stretchOf(traceOf({1, 2, 3, 4, 5}), {seconds(1), seconds(3)});
    ASSERT_EQ(part.size(), 3U);
    EXPECT_EQ(part.front().pressure, gaugeMillibar(2));
    EXPECT_EQ(part.back().at, seconds(3));
}

TEST(Trace, AGapIsFoundAndStaysAGap) {
    auto trace = traceOf({20, 20, 20, 20, 20, 20});
    EXPECT_TRUE(gapsOf(trace).empty());
    for (std::size_t i = 3; i < trace.size(); ++i) {
        trace[i].at = trace[i].at + seconds(9);
    }
    const auto gaps = gapsOf(trace);
    ASSERT_EQ(gaps.size(), 1U);
    EXPECT_EQ(gaps[0].from, seconds(2));
    EXPECT_EQ(gaps[0].to, seconds(12));
    EXPECT_TRUE(gapsOf({}).empty());
    const auto silences = silencesIn({seconds(0), seconds(1), seconds(2), seconds(12), seconds(13)});
    ASSERT_EQ(silences.size(), 1U);
    EXPECT_EQ(silences[0].from, seconds(2));
    EXPECT_EQ(silences[0].to, seconds(12));
    EXPECT_TRUE(gapsOf(traceOf({20, 20, 20}, 60)).empty()) << "a slow gauge is not a silent one";
}

TEST(Trace, TheDisplaysStepShowsInItsReadings) {
    const struct {
        Trace trace;
        std::optional<double> step;
    } cases[] = {
        {traceOf({20.71, 20.7, 20.68, 20.63}), 0.01},
        {traceOf({20.5, 20, 19.5}), 0.5},
        {traceOf({20.5, 20.4, 20.1}), 0.1},
        {traceOf({20.5, 20.4, 20.4}), std::nullopt},
        {traceOf({20.02, 20.04, 20.08}), 0.02},
        {traceOf({20.123456, 20.2, 20.3}), std::nullopt},
        {{}, std::nullopt},
    };
    for (const auto& c : cases) {
        const auto step = stepOf(c.trace);
        ASSERT_EQ(step.has_value(), c.step.has_value());
        if (step) {
            EXPECT_DOUBLE_EQ(step->in(kMillibar), *c.step);
        }
    }
}

TEST(Trace, ABarometerThatFallsIsNoRise) {
    auto trace = traceOf({20, 20.5, 21}, 60);
    for (std::size_t i = 0; i < trace.size(); ++i) {
        trace[i].barometer = AbsolutePressure(1010 - 0.5 * static_cast<double>(i), kMillibar);
    }
    for (const auto& point : compensated(trace)) {
        EXPECT_NEAR(point.pressure.in(kMillibar), 20, 1e-9);
    }
    trace[1].barometer.reset();
    EXPECT_NEAR(compensated(trace)[2].pressure.in(kMillibar), 21, 1e-9) << "a channel with holes counts not";
    EXPECT_TRUE(compensated({}).empty());
}

TEST(Trace, ATightPipeThatCoolsIsSteadyWhenItsTemperatureIsKnown) {
    const Temperature start(15, kCelsius);
    Trace trace;
    for (int i = 0; i < 5; ++i) {
        const Temperature now(15 - 0.1 * i, kCelsius);
        trace.push_back(
            {seconds(30.0 * i), pressureWhenTight(gaugeMillibar(20), start, now), std::nullopt, now});
    }
    EXPECT_LT(trace.back().pressure.in(kMillibar), 18.6);
    for (const auto& point : compensated(trace)) {
        EXPECT_NEAR(point.pressure.in(kMillibar), 20, 1e-9);
    }
}

TEST(Trace, AStuckGaugeShowsWhereThePressureWasChanged) {
    const auto letBy = traceOf({9.1, 9.1, 9.1});
    EXPECT_TRUE(isStuck(letBy, traceOf({9.1, 9.1})));
    EXPECT_FALSE(isStuck(letBy, traceOf({20.5, 20.5, 20.5}))) << "a tight pipe's steady reading";
    EXPECT_FALSE(isStuck(letBy, traceOf({9.1, 9.2}))) << "it moves";
    EXPECT_FALSE(isStuck(letBy, {}));
    EXPECT_FALSE(isStuck({}, letBy));
}

TEST(Trace, AGaugeThatIsNotAtZeroIsSaid) {
    const auto good = zeroCheck(traceOf({0.01, 0, 0}), millibar(0.01));
    ASSERT_TRUE(good);
    EXPECT_TRUE(good->isZero);
    const auto off = zeroCheck(traceOf({-0.3, -0.3}), millibar(0.1));
    ASSERT_TRUE(off);
    EXPECT_FALSE(off->isZero);
    EXPECT_NEAR(off->reads.in(kMillibar), -0.3, 1e-12);
    EXPECT_TRUE(zeroCheck(traceOf({0.1}), millibar(0.1))->isZero) << "one step is its last digit";
    EXPECT_FALSE(zeroCheck({}, millibar(0.1)));
}

TEST(Trace, TwoGaugesAreComparedWhereBothSaw) {
    const auto fine = traceOf({20.01, 20.02, 20.03, 20.02});
    const auto coarse = traceOf({20, 20, 20, 20});
    const auto same = compareGauges(fine, millibar(0.01), coarse, millibar(0.1));
    ASSERT_TRUE(same);
    EXPECT_EQ(same->points, 4);
    EXPECT_NEAR(same->difference.in(kMillibar), 0.02, 1e-12);
    EXPECT_NEAR(same->allowed.in(kMillibar), 0.055, 1e-12);
    EXPECT_TRUE(same->agrees);
    const auto apart = compareGauges(fine, millibar(0.01), traceOf({20.3, 20.3}), millibar(0.1));
    ASSERT_TRUE(apart);
    EXPECT_FALSE(apart->agrees);
    auto later = coarse;
    for (auto& point : later) {
        point.at = point.at + seconds(60);
    }
    EXPECT_FALSE(compareGauges(fine, millibar(0.01), later, millibar(0.1)));
    EXPECT_FALSE(compareGauges({}, millibar(0.01), coarse, millibar(0.1)));
}

}  // namespace
}  // namespace hearth::tightness
