// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/gauges_over_test.h"

#include "core/quantity/units.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;

PressureChange apart(double value) {
    return {value, kMillibar};
}

Span spanOf(double from, double to) {
    return {Duration(from, kSecond), Duration(to, kSecond)};
}

Trace sawPipe(double every, double shift, const std::function<double(double)>& pressure, double until = 240) {
    Trace trace;
    for (double t = shift; t <= until; t += every) {
        trace.push_back({Duration(t, kSecond), GaugePressure(pressure(t), kMillibar)});
    }
    return trace;
}

/// Let-by to 60 s, raised by 64 s, settling to 120 s, timed to 240 s.
TraceStages comparedStages() {
    return {spanOf(0, 60), spanOf(64, 120), spanOf(120, 240)};
}

double pipeAt(double t) {
    return t < 60 ? 8.5 : t < 64 ? 8.5 + (t - 60) * 3 : 20.5 - (t - 64) * 0.002;
}

std::optional<GaugesOverTest> compareGaugesOver(const Trace& one, const Trace& other, double step = 0.01) {
    return compareOverTest({one, apart(step)}, {other, apart(step)}, comparedStages());
}

// Two gauges that read at other moments and other rates see the same pipe, raise and fall and all.
TEST(GaugesOverTest, SeesNoDifferenceWhereThereIsNone) {
    const auto compared = compareGaugesOver(sawPipe(0.5, 0, pipeAt), sawPipe(0.7, 0.2, pipeAt));
    ASSERT_TRUE(compared);
    EXPECT_TRUE(compared->isTimed);
    EXPECT_NEAR(compared->atStart.in(kMillibar), 0, 1e-9);
    EXPECT_NEAR(compared->atEnd.in(kMillibar), 0, 1e-9);
    EXPECT_NEAR(compared->greatest.in(kMillibar), 0, 1e-9);
    EXPECT_TRUE(compared->allows(compared->greatest));
    EXPECT_NEAR(compared->allowed.in(kMillibar), 0.01, 1e-12);
}

// One that drifts from 0.00 at 120 s to 0.12 at 240 s (0.001 mbar a second), by hand: two seconds' means.
TEST(GaugesOverTest, TellsStartEndAndWhereItIsGreatest) {
    const auto drifting = [](double t) { return pipeAt(t) - std::max(0.0, t - 120) * 0.001; };
    const auto compared = compareGaugesOver(sawPipe(0.5, 0, pipeAt), sawPipe(0.5, 0, drifting));
    ASSERT_TRUE(compared);
    EXPECT_NEAR(compared->atStart.in(kMillibar), 0.001, 1e-9);
    EXPECT_NEAR(compared->atEnd.in(kMillibar), 0.119, 1e-9);
    EXPECT_NEAR(compared->greatest.in(kMillibar), 0.119, 1e-9);
    EXPECT_NEAR(compared->greatestAt.in(kSecond), 238, 1e-9);
    EXPECT_TRUE(compared->allows(compared->atStart));
    EXPECT_FALSE(compared->allows(compared->atEnd));
}

// A bump in the settling counts as the greatest, with its sign; one reading of it does not.
TEST(GaugesOverTest, FindsTheGreatestInAnyStageAndNotInOneReading) {
    const auto bump = [](double t) { return pipeAt(t) + (t > 80 && t < 84 ? 0.3 : 0.0); };
    const auto compared = compareGaugesOver(sawPipe(0.5, 0, pipeAt), sawPipe(0.5, 0, bump));
    ASSERT_TRUE(compared);
    EXPECT_NEAR(compared->greatest.in(kMillibar), -0.3, 1e-9);
    EXPECT_TRUE(compared->allows(compared->atStart) && compared->allows(compared->atEnd));
    const auto spike = [](double t) { return pipeAt(t) + (std::abs(t - 80) < 0.01 ? 0.04 : 0.0); };
    const auto calm = compareGaugesOver(sawPipe(0.5, 0, pipeAt), sawPipe(0.5, 0, spike));
    EXPECT_TRUE(calm->allows(calm->greatest));
}

// While it is raised no two gauges keep step: one that lags by a second differs by 3 mbar there, and by 0.002
// in the stages.
TEST(GaugesOverTest, LeavesOutTheRaising) {
    const auto lags = [](double t) { return pipeAt(t < 65 ? t - 1 : t); };
    const auto compared = compareGaugesOver(sawPipe(0.5, 0, pipeAt), sawPipe(0.5, 0, lags));
    ASSERT_TRUE(compared);
    EXPECT_GT(std::abs(compared->greatest.in(kMillibar)), 0.1) << "the stage is marked a second too soon";
    auto later = comparedStages();
    later.settling = spanOf(66, 120);
    const auto marked =
        compareOverTest({sawPipe(0.5, 0, pipeAt), apart(0.01)}, {sawPipe(0.5, 0, lags), apart(0.01)}, later);
    EXPECT_NEAR(marked->greatest.in(kMillibar), 0, 1e-9);
}

// Where the first was silent nothing lies between its readings.
TEST(GaugesOverTest, ComparesNothingAcrossASilence) {
    auto first = sawPipe(0.5, 0, pipeAt);
    std::erase_if(first, [](const TracePoint& point) {
        return point.at > Duration(100, kSecond) && point.at < Duration(239, kSecond);
    });
    const auto other = [](double t) { return pipeAt(t) + (t > 110 && t < 200 ? 5.0 : 0.0); };
    const auto compared = compareGaugesOver(first, sawPipe(0.5, 0, other));
    ASSERT_TRUE(compared);
    EXPECT_NEAR(compared->greatest.in(kMillibar), 0, 1e-9);
}

TEST(GaugesOverTest, NeedsBothAtOnce) {
    const auto early = sawPipe(0.5, 0, pipeAt, 50);
    auto late = sawPipe(0.5, 70, pipeAt);
    EXPECT_FALSE(compareGaugesOver(early, late));
    EXPECT_FALSE(compareGaugesOver(early, {}));
    EXPECT_FALSE(compareGaugesOver({}, late));
    const auto whole = compareOverTest({early, apart(0.01)}, {early, apart(0.1)}, {});
    ASSERT_TRUE(whole) << "without stages over all of it";
    EXPECT_FALSE(whole->isTimed);
    EXPECT_NEAR(whole->allowed.in(kMillibar), 0.055, 1e-12);
}

}  // namespace
}  // namespace hearth::tightness
