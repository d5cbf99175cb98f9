// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_fit.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <gtest/gtest.h>
#include <iostream>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kLitre;
using quantity::kLitrePerHour;
using quantity::kMillibar;
using quantity::kSecond;
using simulator::Installation;

FitInput inputFor(const Installation& one) {
    FitInput input;
    input.volume = quantity::Volume(one.litres, kLitre);
    input.at = gaugeMillibar(20);
    input.step = millibar(one.step);
    return input;
}

TraceFit fitOf(const Installation& one, std::uint64_t seed = 1) {
    simulator::Random random(seed);
    const auto fit = fitTrace(simulator::watch(one, random), inputFor(one));
    EXPECT_TRUE(fit);
    return fit.value_or(TraceFit{});
}

double litres(quantity::Flow flow) {
    return flow.in(kLitrePerHour);
}

TEST(FitTrace, ATightPipeThatCoolsHasNoLeak) {
    Installation one;
    one.kelvin = 0.5;
    const auto fit = fitOf(one);
    EXPECT_TRUE(fit.isIdentified);
    EXPECT_LE(litres(fit.leak.least), 0.0);
    EXPECT_GE(litres(fit.leak.most), 0.0);
    EXPECT_LT(litres(fit.leak.most), 0.1);
    // Half a kelvin is worth 1.8 mbar, over 30 s.
    EXPECT_NEAR(fit.settlingSize().best.in(kMillibar), 1.8, 0.1);
    EXPECT_NEAR(fit.settlingTime().in(kSecond), 30, 3);
}

TEST(FitTrace, ALeakHiddenUnderWarmingIsSeen) {
    Installation one;
    one.leak = 0.3;
    one.kelvin = -0.4;
    one.settles = 40;
    const auto fit = fitOf(one);
    EXPECT_TRUE(fit.isIdentified);
    EXPECT_GT(litres(fit.leak.least), 0.0);
    EXPECT_LE(litres(fit.leak.least), 0.3);
    EXPECT_GE(litres(fit.leak.most), 0.3);
    EXPECT_LT(fit.settlingSize().most.in(kMillibar), 0.0) << "it warms";
}

TEST(FitTrace, GasThatComesInIsALeakBelowNought) {
    Installation one;
    one.start = 8.0;
    one.leak = -0.5;  // let-by, as good as steady while the pressure is far below the supply's
    const auto fit = fitOf(one);
    EXPECT_LT(litres(fit.leak.most), 0.0);
}

// The half-litre and the three tenths are the fit's own; a 0.5 mbar display over 30 l can't do it.
TEST(FitTrace, SaysWhenItCantTell) {
    Installation one;
    one.litres = 33;
    one.step = 0.5;
    one.noise = 0.1;
    one.kelvin = 0.3;
    one.settles = 100;
    EXPECT_FALSE(fitOf(one).isIdentified);
    EXPECT_GT(litres(fitOf(one).detectable), 0.5);
    Installation quick;  // emptied as fast as it settles
    quick.litres = 2.0;
    quick.leak = 4.0;
    quick.kelvin = 0.5;
    quick.settles = 40;
    EXPECT_FALSE(fitOf(quick).isIdentified);
}

// A leak that empties the pipe while it is watched falls as a settling does that takes all of the pressure.
TEST(FitTrace, ALeakThatEmptiesThePipeIsNotCalledSettling) {
    int told = 0;
    std::uint64_t seed = 1;
    for (const double litresOfPipe : {2.0, 3.0, 5.0, 8.0, 12.0}) {
        for (const double leak : {1.0, 2.0, 3.5, 5.0}) {
            for (const double kelvin : {-0.5, 0.0, 0.25, 1.0}) {
                Installation one;
                one.litres = litresOfPipe;
                one.leak = leak;
                one.kelvin = kelvin;
                one.settles = 95.0;
                one.drift = -0.04;
                const auto fit = fitOf(one, seed++);
                if (fit.isIdentified) {
                    ++told;
                    EXPECT_NEAR(litres(fit.leak.best), leak, 0.5 * leak)
                        << litresOfPipe << " l, " << kelvin << " K, settling "
                        << fit.settlingSize().best.in(kMillibar) << " mbar";
                }
            }
        }
    }
    std::cout << told << " of 80 told\n";
    EXPECT_GT(told, 10);
}

TEST(FitTrace, OutliersAreSetAsideAndCounted) {
    Installation one;
    one.leak = 1.0;
    one.outliers = 0.02;
    const auto fit = fitOf(one);
    EXPECT_GT(fit.outliers, 15);
    EXPECT_LT(fit.outliers, 70);
    EXPECT_LE(litres(fit.leak.least), 1.0);
    EXPECT_GE(litres(fit.leak.most), 1.0);
    EXPECT_LT(litres(fit.leak.most) - litres(fit.leak.least), 0.2);
    EXPECT_EQ(fitOf(Installation{}).outliers, 0);
}

TEST(FitTrace, TheGaugesDriftWidensTheInterval) {
    Installation one;
    one.litres = 30;
    simulator::Random random(3);
    const auto trace = simulator::watch(one, random);
    auto input = inputFor(one);
    const auto steady = fitTrace(trace, input);
    input.drift = millibar(0.05);
    const auto drifting = fitTrace(trace, input);
    ASSERT_TRUE(steady && drifting);
    const double more = litres(drifting->leak.most - drifting->leak.least);
    // 0.05 mbar/min in 30 l is 0.0888 l/h; rectangular, twice 1.96 of it (by hand)
    EXPECT_GT(more, 2 * 1.96 * 0.0888 / 1.7321 * 0.99);
    EXPECT_GT(more, litres(steady->leak.most - steady->leak.least));
    EXPECT_GT(drifting->detectable, steady->detectable);
}

// Property: never narrower for a volume that may be off by more or a gauge that drifts more; what is best,
// and whether the trace tells it, is not the volume's business; nought of both is what it was without them.
TEST(FitTrace, NeverKnowsMoreForAWorseVolumeOrGauge) {
    simulator::Random random(17);
    for (int i = 0; i < 12; ++i) {
        Installation one;
        one.litres = 2 + 30 * random.share();
        one.leak = i % 3 == 0 ? 0.0 : 5 * random.share();
        one.kelvin = 2 * random.share() - 1;
        const auto trace = simulator::watch(one, random);
        auto input = inputFor(one);
        const auto plain = fitTrace(trace, input);
        ASSERT_TRUE(plain);
        auto before = *plain;
        for (int step = 0; step < 6; ++step) {
            input.volumeOff = quantity::Share(step * 18.0, quantity::kPercent);
            const auto now = fitTrace(trace, input);
            ASSERT_TRUE(now);
            EXPECT_LE(now->leak.least, before.leak.least) << step;
            EXPECT_GE(now->leak.most, before.leak.most) << step;
            EXPECT_GE(now->detectable, before.detectable) << step;
            EXPECT_EQ(now->leak.best, plain->leak.best);
            EXPECT_EQ(now->isIdentified, plain->isIdentified);
            EXPECT_EQ(now->leak.least > quantity::Flow{}, plain->leak.least > quantity::Flow{});
            EXPECT_EQ(now->leak.most < quantity::Flow{}, plain->leak.most < quantity::Flow{});
            if (step == 0) {
                EXPECT_EQ(now->leak.least, plain->leak.least);
                EXPECT_EQ(now->leak.most, plain->leak.most);
                EXPECT_EQ(now->detectable, plain->detectable);
            }
            before = *now;
        }
        for (int step = 1; step < 4; ++step) {
            input.drift = millibar(step * 0.03);
            const auto now = fitTrace(trace, input);
            ASSERT_TRUE(now);
            EXPECT_LE(now->leak.least, before.leak.least) << step;
            EXPECT_GE(now->leak.most, before.leak.most) << step;
            before = *now;
        }
        for (const double wrong : {-1.0, 100.0}) {
            input.volumeOff = quantity::Share(wrong, quantity::kPercent);
            EXPECT_FALSE(fitTrace(trace, input)) << wrong;
        }
    }
}

TEST(FitTrace, ALongerTraceShowsASmallerLeak) {
    Installation one;
    one.kelvin = 0.2;
    one.step = 0.1;
    one.noise = 0.05;
    const auto brief = fitOf(one);
    one.length = 600;
    EXPECT_LT(litres(fitOf(one).detectable), 0.3 * litres(brief.detectable));
}

TEST(FitTrace, ForeseesTheEnd) {
    Installation one;
    one.leak = 0.8;
    one.kelvin = 0.3;
    const double truth = simulator::pressures(one).back();
    one.length = 90;
    int right = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const auto end = fitOf(one, seed).pressureAt(seconds(180));
        right += end.least.in(kMillibar) <= truth && truth <= end.most.in(kMillibar) ? 1 : 0;
        EXPECT_LT((end.most - end.least).in(kMillibar), 0.3);
    }
    EXPECT_GE(right, 34) << "38 of 40 are to be expected; 33 or fewer once in a hundred times";
}

TEST(FitTrace, AGapIsBridgedByTheCurveAlone) {
    Installation one;
    one.leak = 1.0;
    simulator::Random random(9);
    auto trace = simulator::watch(one, random);
    trace.erase(trace.begin() + 400, trace.begin() + 900);
    const auto fit = fitTrace(trace, inputFor(one));
    ASSERT_TRUE(fit);
    EXPECT_LE(litres(fit->leak.least), 1.0);
    EXPECT_GE(litres(fit->leak.most), 1.0);
}

TEST(FitTrace, TooLittleHasNoAnswer) {
    const Installation one;
    simulator::Random random(1);
    const auto trace = simulator::watch(one, random);
    const auto input = inputFor(one);
    EXPECT_FALSE(fitTrace({}, input));
    EXPECT_FALSE(fitTrace(Trace(trace.begin(), trace.begin() + 19), input));
    EXPECT_FALSE(fitTrace(Trace(trace.begin(), trace.begin() + 150), input)) << "15 s";
    auto without = input;
    without.volume = {};
    EXPECT_FALSE(fitTrace(trace, without));
    without = input;
    without.at = gaugeMillibar(0);
    EXPECT_FALSE(fitTrace(trace, without));
}

TEST(FitTrace, ASteadyDisplayIsNoError) {
    Trace trace;
    for (int i = 0; i < 200; ++i) {
        trace.push_back({seconds(i), gaugeMillibar(20.5)});
    }
    FitInput input;
    input.volume = cubicMetres(0.01);
    input.at = gaugeMillibar(20);
    for (const double step : {0.01, 0.5}) {
        input.step = millibar(step);
        const auto fit = fitTrace(trace, input);
        ASSERT_TRUE(fit);
        EXPECT_NEAR(litres(fit->leak.best), 0.0, 0.05) << step;
        EXPECT_LT(litres(fit->leak.least), 0.0) << step;
        EXPECT_GT(litres(fit->leak.most), 0.0) << step;
        EXPECT_EQ(fit->outliers, 0);
    }
}

}  // namespace
}  // namespace hearth::tightness
