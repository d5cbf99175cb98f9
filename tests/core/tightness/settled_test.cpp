// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/settled.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kSecond;

TraceFit minuteOf(double kelvin, double settles, double leak, double step) {
    simulator::Installation one;
    one.kelvin = kelvin;
    one.settles = settles;
    one.leak = leak;
    one.step = step;
    one.noise = 0.3 * step;
    one.length = 60;
    simulator::Random random(4);
    FitInput input;
    input.volume = cubicMetres(0.01);
    input.at = gaugeMillibar(20);
    input.step = millibar(step);
    return fitTrace(simulator::watch(one, random), input).value_or(TraceFit{});
}

SettlingOutlook outlookOf(double kelvin, double settles, double leak, double step) {
    return settlingOutlook(minuteOf(kelvin, settles, leak, step), seconds(60), seconds(120), millibar(0.2));
}

TEST(SettlingOutlook, SettledWhatDiedOut) {
    // 1 K and 10 s: after a minute 3.6 exp(-6) mbar are left, 0.009 (by hand)
    const auto outlook = outlookOf(1, 10, 0, 0.01);
    EXPECT_EQ(outlook.state, Settledness::Settled);
    EXPECT_EQ(outlook.wait, seconds(0));
}

TEST(SettlingOutlook, ALeakIsNoSettling) {
    EXPECT_EQ(outlookOf(1, 8, 1.0, 0.01).state, Settledness::Settled);
}

TEST(SettlingOutlook, SaysHowLongToWait) {
    // 1 K and 30 s: 3.6 exp(-(60+w)/30) (1 - exp(-4)) falls below 0.2 at 60 + w = 30 ln(17.7) = 86 s (by
    // hand)
    const auto outlook = outlookOf(1, 30, 0, 0.01);
    EXPECT_EQ(outlook.state, Settledness::NotYet);
    ASSERT_TRUE(outlook.wait);
    EXPECT_NEAR(outlook.wait->in(kSecond), 26, 6);
    const auto warming = outlookOf(-1, 30, 0, 0.01);
    EXPECT_EQ(warming.state, Settledness::NotYet);
    EXPECT_LT(warming.left.most, millibar(0));
}

TEST(SettlingOutlook, ACoarseGaugeCantTell) {
    EXPECT_EQ(outlookOf(0.05, 100, 0, 0.5).state, Settledness::CantTell);
}

}  // namespace
}  // namespace hearth::tightness
