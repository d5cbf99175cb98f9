// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_told.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::Duration;
using quantity::kMillibar;
using quantity::kSecond;
using simulator::Installation;

// Natural gas, IGEM/UP/1B (certification body's pocket guide, Edition 3): 7 to 10 mbar for a minute, 20 to 21
// mbar, a minute to settle, two minutes.
StageBands usualBands() {
    return {gaugeMillibar(7),        gaugeMillibar(10),       gaugeMillibar(20),
            Duration(60.0, kSecond), Duration(60.0, kSecond), Duration(120.0, kSecond)};
}

/// What is done to the pipe: held at let-by pressure, raised, held at test pressure.
struct WholeTest {
    Installation letBy;
    Installation test;
    double heldFor = 75.0;  // s, before it is raised
    bool isStuck = false;
};

WholeTest tightTest() {
    WholeTest whole;
    whole.letBy.start = 8.5;
    whole.letBy.length = 75.0;
    whole.test.length = 185.0;
    return whole;
}

void append(Trace& trace, const Trace& more, double from) {
    for (auto point : more) {
        point.at = point.at + Duration(from, kSecond);
        trace.push_back(point);
    }
}

/// Three seconds at nought, two to come up; five to raise.
Trace watchWhole(const WholeTest& whole, std::uint64_t seed = 11) {
    simulator::Random random(seed);
    Trace trace;
    const auto ramp = [&](double from, double to, double begin, double seconds) {
        for (double t = 0.0; t < seconds - 0.05; t += 0.1) {
            trace.push_back({Duration(begin + t, kSecond),
                             gaugeMillibar(std::round((from + (to - from) * t / seconds) * 100) / 100)});
        }
    };
    ramp(0.0, 0.0, 0.0, 3.0);
    ramp(0.0, whole.letBy.start, 3.0, 2.0);
    append(trace, simulator::watch(whole.letBy, random), 5.0);
    const double raise = trace.back().at.in(kSecond) + 0.1;
    ramp(trace.back().pressure.in(kMillibar), whole.test.start, raise, 5.0);
    append(trace, simulator::watch(whole.test, random), raise + 5.0);
    if (whole.isStuck) {
        for (auto& point : trace) {
            point.pressure = point.at > Duration(5.0, kSecond) ? gaugeMillibar(8.5) : point.pressure;
        }
    }
    return trace;
}

TellInput inputFor(double litres) {
    TellInput input;
    input.volume = quantity::Volume(litres, quantity::kLitre);
    input.step = millibar(0.01);
    input.threshold = millibar(0.2);
    input.testTime = Duration(120.0, kSecond);
    return input;
}

TEST(GuessedStages, lieWhereThePressureWasHeld) {
    const auto stages = guessStages(watchWhole(tightTest()), usualBands());
    ASSERT_TRUE(stages.letBy && stages.settling && stages.timing);
    // Held from 5 s to 80 s, at test pressure from 85.1 s to 270.1 s.
    EXPECT_NEAR(stages.letBy->to.in(kSecond), 79.0, 2.5);
    EXPECT_NEAR(stages.letBy->to.in(kSecond)-stages.letBy->from.in(kSecond), 60.0, 0.2);
    EXPECT_NEAR(stages.settling->from.in(kSecond), 85.0, 1.5);
    EXPECT_NEAR(stages.settling->to.in(kSecond)-stages.settling->from.in(kSecond), 60.0, 0.2);
    EXPECT_EQ(stages.timing->from.in(kSecond), stages.settling->to.in(kSecond));
    EXPECT_NEAR(stages.timing->to.in(kSecond)-stages.timing->from.in(kSecond), 120.0, 0.2);
}

TEST(GuessedStages, areThoseThatTheTraceIsLongEnoughFor) {
    auto trace = watchWhole(tightTest());
    auto short1 = stretchOf(trace, {Duration{}, Duration(120.0, kSecond)});
    auto stages = guessStages(short1, usualBands());
    EXPECT_TRUE(stages.letBy && stages.settling);
    EXPECT_FALSE(stages.timing);
    short1 = stretchOf(trace, {Duration{}, Duration(60.0, kSecond)});
    stages = guessStages(short1, usualBands());
    ASSERT_TRUE(stages.letBy);
    EXPECT_LT(stages.letBy->to - stages.letBy->from, Duration(57.0, kSecond));
    EXPECT_FALSE(stages.settling || stages.timing);
    // Never raised: the test alone was watched.
    stages = guessStages(stretchOf(trace, {Duration(90.0, kSecond), Duration(270.0, kSecond)}), usualBands());
    EXPECT_FALSE(stages.letBy);
    ASSERT_TRUE(stages.settling && stages.timing);
    EXPECT_NEAR(stages.timing->from.in(kSecond), 150.0, 0.2);
    stages = guessStages({}, usualBands());
    EXPECT_FALSE(stages.letBy || stages.settling || stages.timing);
    // The gauge open to the air is no let-by.
    stages = guessStages(stretchOf(trace, {Duration{}, Duration(2.5, kSecond)}), usualBands());
    EXPECT_FALSE(stages.letBy);
}

// Each from an installation whose truth is known (trace_simulator.h).
TEST(ToldTrace, tellsOneFromTheOther) {
    struct Case {
        const char* what;
        TraceSays says;
        void (*change)(WholeTest&);
    };
    const Case cases[]{
        {"tight and steady", TraceSays::Still, [](WholeTest&) {}},
        {"tight, and cools", TraceSays::Cooling, [](WholeTest& one) { one.test.kelvin = 0.25; }},
        {"tight, and warms", TraceSays::Warming, [](WholeTest& one) { one.test.kelvin = -0.25; }},
        {"a leak", TraceSays::Leak,
         [](WholeTest& one) {
             one.letBy.leak = 1.0;
             one.test.leak = 1.0;
         }},
        {"a small leak under warming", TraceSays::HiddenLeak,
         [](WholeTest& one) {
             one.test.leak = 0.6;
             one.test.kelvin = -0.3;
         }},
        {"let-by", TraceSays::LetsBy,
         [](WholeTest& one) {
             one.letBy.leak = -1.0;
             one.test.leak = -0.2;
         }},
        {"gas comes in", TraceSays::GasComesIn, [](WholeTest& one) { one.test.leak = -1.0; }},
        {"a stuck gauge", TraceSays::StuckGauge, [](WholeTest& one) { one.isStuck = true; }},
        {"a pipe that empties", TraceSays::MostIsGone,
         [](WholeTest& one) {
             one.test.litres = 2;
             one.test.leak = 5;
         }},
        {"a coarse gauge on a large pipe", TraceSays::CantTell,
         [](WholeTest& one) {
             one.test.step = 0.5;
             one.test.noise = 0.3;
             one.test.litres = 35;
             one.test.length = 25;
         }},
    };
    for (const auto& one : cases) {
        auto whole = tightTest();
        one.change(whole);
        const auto trace = watchWhole(whole);
        auto stages = guessStages(trace, usualBands());
        if (whole.isStuck) {  // it shows no raise: the fitter says when it was
            EXPECT_FALSE(stages.timing) << one.what;
            stages.letBy = Span{Duration(15.0, kSecond), Duration(75.0, kSecond)};
            stages.timing = Span{Duration(145.0, kSecond), Duration(265.0, kSecond)};
        }
        auto input = inputFor(whole.test.litres);
        input.step = millibar(whole.test.step);
        EXPECT_EQ(static_cast<int>(tellTrace(trace, stages, input).says), static_cast<int>(one.says))
            << one.what;
    }
}

// From a supply at a higher pressure it comes in at a falling rate, which looks like warming to a fit of one
// minute.
TEST(ToldTrace, callsARiseBeyondTheThresholdLetByWhateverItsShape) {
    Trace trace;
    for (int i = 0; i < 700; ++i) {
        trace.push_back({Duration(i * 0.1, kSecond),
                         gaugeMillibar(std::round((21.0 - 12.5 * std::exp(-i * 0.1 / 1000.0)) * 100) / 100)});
    }
    const TraceStages stages{Span{Duration{}, Duration(60.0, kSecond)}, std::nullopt, std::nullopt};
    // 12.5 mbar (1 - exp(-0.054)) = 0.66 mbar from the first tenth's middle to the last's
    auto told = tellTrace(trace, stages, inputFor(10));
    EXPECT_EQ(told.says, TraceSays::LetsBy);
    ASSERT_TRUE(told.letByRise);
    EXPECT_NEAR(told.letByRise->in(kMillibar), 0.66, 0.01);
    auto input = inputFor(10);
    input.volume.reset();
    EXPECT_EQ(tellTrace(trace, stages, input).says, TraceSays::LetsBy);
    input.threshold = millibar(1.0);
    EXPECT_EQ(tellTrace(trace, stages, input).says, TraceSays::NothingToGoBy);
}

// Without noise a fit would take a hundredth of a step for a leak.
TEST(ToldTrace, callsNothingALeakThatTheDisplayCouldNotShow) {
    Trace trace;
    for (int i = 0; i <= 1850; ++i) {
        const double t = i * 0.1;
        trace.push_back({Duration(t, kSecond),
                         gaugeMillibar(std::round((20.6 + 0.8 * (std::exp(-t / 30.0) - 1.0)) * 100) / 100)});
    }
    const TraceStages stages{std::nullopt, Span{Duration{}, Duration(60.0, kSecond)},
                             Span{Duration(60.0, kSecond), Duration(180.0, kSecond)}};
    EXPECT_EQ(tellTrace(trace, stages, inputFor(10)).says, TraceSays::Cooling);
}

// A tight pipe's display that never moves is no stuck gauge: it moved when the pressure was raised.
TEST(ToldTrace, neverCallsASteadyReadingStuck) {
    Trace trace;
    for (int i = 0; i < 2600; ++i) {
        trace.push_back({Duration(i * 0.1, kSecond), gaugeMillibar(i < 700 ? 8.5 : 20.5)});
    }
    const auto stages = guessStages(trace, usualBands());
    ASSERT_TRUE(stages.letBy && stages.timing);
    EXPECT_EQ(tellTrace(trace, stages, inputFor(10)).says, TraceSays::Still);
}

TEST(ToldTrace, isNothingWithoutAVolumeOrStages) {
    const auto trace = watchWhole(tightTest());
    const auto stages = guessStages(trace, usualBands());
    auto input = inputFor(10);
    EXPECT_EQ(tellTrace(trace, {}, input).says, TraceSays::NothingToGoBy);
    input.volume.reset();
    EXPECT_EQ(tellTrace(trace, stages, input).says, TraceSays::NothingToGoBy);
    EXPECT_EQ(tellTrace({}, {}, input).says, TraceSays::NothingToGoBy);
}

TEST(ToldTrace, saysWhetherItWasSettledAsTheTimingBegan) {
    auto whole = tightTest();
    whole.test.kelvin = 0.5;
    whole.test.settles = 60.0;
    auto input = inputFor(10);
    const auto trace = watchWhole(whole);
    const auto stages = guessStages(trace, usualBands());
    // 0.5 K are 1.8 mbar; after a minute 0.66 mbar are left, of which 0.57 go in two minutes.
    auto told = tellTrace(trace, stages, input);
    ASSERT_TRUE(told.outlook);
    EXPECT_EQ(told.outlook->state, Settledness::NotYet);
    EXPECT_NEAR(told.outlook->left.best.in(kMillibar), 0.57, 0.1);
    whole.test.kelvin = 0.05;
    const auto calm = watchWhole(whole);
    told = tellTrace(calm, guessStages(calm, usualBands()), input);
    ASSERT_TRUE(told.outlook);
    EXPECT_EQ(told.outlook->state, Settledness::Settled);
    input.threshold.reset();
    EXPECT_FALSE(tellTrace(calm, guessStages(calm, usualBands()), input).outlook);
}

// Set again between settling and timing: the jump is in no fit.
TEST(ToldTrace, leavesOutWhatLiesBetweenSettlingAndTiming) {
    Trace trace;
    for (int i = 0; i < 2000; ++i) {
        trace.push_back({Duration(i * 0.1, kSecond), gaugeMillibar(i < 600 ? 19.0 : 20.5)});
    }
    const TraceStages stages{std::nullopt, Span{Duration{}, Duration(59.0, kSecond)},
                             Span{Duration(62.0, kSecond), Duration(182.0, kSecond)}};
    const auto told = tellTrace(trace, stages, inputFor(10));
    EXPECT_EQ(told.says, TraceSays::Still);
    ASSERT_TRUE(told.test);
    EXPECT_EQ(told.test->points, 1201);
}

}  // namespace
}  // namespace hearth::tightness
