// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/volume_off.h"

#include "tests/core/tightness/trace_simulator.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using quantity::Flow;
using quantity::kLitrePerHour;
using quantity::kPercent;
using quantity::Share;

Within95<Flow> withIn95(double best, double least, double most) {
    return {Flow(best, kLitrePerHour), Flow(least, kLitrePerHour), Flow(most, kLitrePerHour)};
}

double litresAnHour(Flow flow) {
    return flow.in(kLitrePerHour);
}

TEST(VolumeOff, ByNothingIsTheIntervalAsItWas) {
    const auto exact = withIn95(1.0, 0.8, 1.3);
    for (const double none : {0.0, -5.0, 100.0, 1000.0}) {
        const auto same = widenedByVolume(exact, Share(none, kPercent));
        EXPECT_EQ(same.least, exact.least) << none;
        EXPECT_EQ(same.most, exact.most) << none;
    }
    EXPECT_EQ(volumeFactor(Share(0, kPercent)), 1.0);
}

// By hand: half of the interval 0.3 on a leak of 1 out of a volume that may be off by a tenth, s = 0.0577.
TEST(VolumeOff, AddsTheVariancesOfAProduct) {
    const auto wide = widenedByVolume(withIn95(1.0, 0.7, 1.3), Share(10, kPercent));
    const double half = std::sqrt(0.09 * (1 + 0.02 / 3) + 1.959964 * 1.959964 * 0.01 / 3);
    EXPECT_NEAR(litresAnHour(wide.least), 1 - half, 1e-9);
    EXPECT_NEAR(litresAnHour(wide.most), 1 + half, 1e-9);
    EXPECT_EQ(wide.best, Flow(1.0, kLitrePerHour));
}

TEST(VolumeOff, OfAKnownLeakIsNoWiderThanTheVolumeAllows) {
    const auto wide = widenedByVolume(withIn95(2.0, 2.0, 2.0), Share(20, kPercent));
    EXPECT_NEAR(litresAnHour(wide.least), 1.6, 1e-12);
    EXPECT_NEAR(litresAnHour(wide.most), 2.4, 1e-12);
}

// Against 100,000 drawn products each of a normal and a rectangular quantity: 95 in a hundred lie between, to
// half of one, however the two compare; the one side has more than the other.
TEST(VolumeOff, HoldsNinetyFiveInAHundredOfDrawnProducts) {
    simulator::Random random(5);
    constexpr int kDrawn = 100000;
    for (const double standard : {0.02, 0.1, 0.2, 0.4, 1.0, 3.0}) {
        for (const double off : {0.05, 0.2, 0.5, 0.9}) {
            const auto exact = withIn95(1.0, 1.0 - 1.959964 * standard, 1.0 + 1.959964 * standard);
            const auto wide = widenedByVolume(exact, Share(100 * off, kPercent));
            int below = 0;
            int above = 0;
            for (int i = 0; i < kDrawn; ++i) {
                const Flow drawn(
                    (1.0 + standard * random.normal()) * (1.0 + off * (2.0 * random.share() - 1.0)),
                    kLitrePerHour);
                below += drawn < wide.least ? 1 : 0;
                above += drawn > wide.most ? 1 : 0;
            }
            EXPECT_LT(below, kDrawn * 45 / 1000) << standard << " " << off;
            EXPECT_LT(above, kDrawn * 45 / 1000) << standard << " " << off;
            EXPECT_LT(below + above, kDrawn * 55 / 1000) << standard << " " << off;
        }
    }
}

// Property, over random intervals: never narrower for a volume that may be off by more; the best figure
// stays; and since a volume is above nought, what is surely a leak stays one, and what may be none stays
// that.
TEST(VolumeOff, NeverKnowsMoreAndNeverTurnsALeakIntoNone) {
    simulator::Random random(7);
    for (int i = 0; i < 400; ++i) {
        const double best = 4 * random.share() - 1;
        const auto exact = withIn95(best, best - 2 * random.share(), best + 2 * random.share());
        auto before = exact;
        for (int percent = 0; percent < 100; percent += 9) {
            const auto now = widenedByVolume(exact, Share(percent, kPercent));
            EXPECT_LE(litresAnHour(now.least), litresAnHour(before.least) + 1e-12) << i << " " << percent;
            EXPECT_GE(litresAnHour(now.most), litresAnHour(before.most) - 1e-12) << i << " " << percent;
            EXPECT_EQ(now.best, exact.best);
            EXPECT_EQ(now.least > Flow{}, exact.least > Flow{}) << i << " " << percent;
            EXPECT_EQ(now.most < Flow{}, exact.most < Flow{}) << i << " " << percent;
            const auto looser = widenedByVolume(
                {exact.best, exact.least - Flow(0.3, kLitrePerHour), exact.most + Flow(0.3, kLitrePerHour)},
                Share(percent, kPercent));
            EXPECT_LE(looser.least, now.least) << i << " " << percent;
            EXPECT_GE(looser.most, now.most) << i << " " << percent;
            before = now;
        }
    }
}

// Variance of a product about nought with its second order doubled, by hand: 1 + 2 0.3^2/3.
TEST(VolumeOff, MakesTheSmallestLeakThatShowsLarger) {
    EXPECT_NEAR(volumeFactor(Share(30, kPercent)), std::sqrt(1.06), 1e-12);
}

}  // namespace
}  // namespace hearth::tightness
