// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_meaning.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using simulator::Installation;

auto fitOfInstallation(const Installation& one) {
    simulator::Random random(7);
    FitInput input;
    input.volume = quantity::Volume(one.litres, quantity::kLitre);
    input.at = gaugeMillibar(20);
    input.step = millibar(one.step);
    return fitTrace(simulator::watch(one, random), input);
}

TraceMeaning meaning(const Installation& one) {
    const auto fit = fitOfInstallation(one);
    EXPECT_TRUE(fit);
    return fit ? meaningOf(*fit) : TraceMeaning::CantTell;
}

// Each from an installation whose truth is known (trace_simulator.h).
TEST(TraceMeaning, TellsOneFromTheOther) {
    Installation one;
    EXPECT_EQ(meaning(one), TraceMeaning::Still);
    one.kelvin = 0.2;
    EXPECT_EQ(meaning(one), TraceMeaning::Cooling);
    one.kelvin = -0.2;
    EXPECT_EQ(meaning(one), TraceMeaning::Warming);
    one.kelvin = 0.0;
    one.leak = 1.0;
    EXPECT_EQ(meaning(one), TraceMeaning::Leak);
    one.kelvin = -0.3;  // warming hides it from two readings
    EXPECT_EQ(meaning(one), TraceMeaning::Leak);
    one.kelvin = 0.0;
    one.leak = -1.0;
    EXPECT_EQ(meaning(one), TraceMeaning::GasComesIn);
}

TEST(TraceMeaning, OfTheSettlingAloneLeavesALeakOut) {
    Installation one;
    one.kelvin = 0.2;
    one.leak = 1.0;
    const auto fit = fitOfInstallation(one);
    ASSERT_TRUE(fit);
    EXPECT_EQ(meaningOf(*fit), TraceMeaning::Leak);
    EXPECT_EQ(settlingMeaning(*fit), TraceMeaning::Cooling);
}

TEST(TraceMeaning, CallsNothingTightThatItCantTell) {
    Installation one;
    one.length = 25;
    one.step = 0.5;
    one.noise = 0.3;
    one.litres = 35;
    EXPECT_EQ(meaning(one), TraceMeaning::CantTell);
}

TEST(TraceMeaning, ALeakThatEmptiesThePipeIsNoMatterOfWaiting) {
    for (const double kelvin : {-0.3, 0.0, 0.25}) {
        Installation one;
        one.litres = 2;
        one.leak = 5;
        one.kelvin = kelvin;
        one.settles = 95;
        EXPECT_EQ(meaning(one), TraceMeaning::MostIsGone) << kelvin;
    }
}

}  // namespace
}  // namespace hearth::tightness
