// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/leak_rate.h"

#include "core/quantity/units.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kCubicMetrePerHour;
using quantity::kKelvin;
using quantity::kLitrePerHour;
using quantity::kMillibar;

Change fallWith(double value, double uncertainty = 0) {
    return {millibar(value), millibar(uncertainty), millibar(0.01)};
}

LeakRate rate(double volume, double fall, double minutes) {
    return leakRate({cubicMetres(volume), fallWith(fall), gaugeMillibar(20), seconds(minutes * 60), {}, {}});
}

struct RateCase {
    const char* source;
    double volume;
    double fall;
    double minutes;
    double litresPerHour;
    double slack;
};

// Q = V dp/1013.25 x 60/t: textbook; it equals the trade's 0.059 factor.
TEST(LeakRate, AgreesWithTheWorkedExamples) {
    const RateCase cases[] = {
        {"G4 and 9 m of 15 mm, 4 mbar in 2 min (textbook arithmetic on the pocket guide's volume)", 0.009386,
         4, 2, 1.11, 0.005},
        {"Dutch rule, NEN 1078: 50 l, 1 mbar in 3 min is about 1 l/h", 0.050, 1, 3, 0.987, 0.0005},
        {"0.3 m3, 0.5 mbar in 6.3 min is about 0.0014 m3/h (IGE/UP/1 form, from memory)", 0.3, 0.5, 6.3, 1.4,
         0.02},
        {"8 mbar in 0.0059 m3: 0.0014 m3/h", 0.0059, 8, 2, 1.4, 0.01},
        {"4 mbar in 0.0118 m3", 0.0118, 4, 2, 1.4, 0.01},
        {"1 mbar in 0.0473 m3", 0.0473, 1, 2, 1.4, 0.01},
    };
    for (const auto& c : cases) {
        EXPECT_NEAR(rate(c.volume, c.fall, c.minutes).rate.in(kLitrePerHour), c.litresPerHour, c.slack)
            << c.source;
    }
}

TEST(LeakRate, FactorIsTheTradesPointZeroFiveNine) {
    EXPECT_NEAR(rate(1, 1, 1).rate.in(kCubicMetrePerHour), 60 / 1013.25, 1e-12);
}

// GUM 4.3.7 and 5.1.2 (from memory): independent parts add in squares; k = 2.
TEST(LeakRate, UncertaintyAddsGaugeAndTemperatureInSquares) {
    LeakInput input{cubicMetres(0.01), fallWith(2, 0.1), gaugeMillibar(20),
                    seconds(120),      millibar(0.3),    {0.07, kKelvin}};
    const double perMillibar = 0.01 / 1013.25 * 30 * 1000;  // l/h
    const double ofGauge = 0.1 / 2;
    const double ofSlope = 2 * 0.3 / 20 / std::sqrt(3.0);
    const double ofTemperature = 0.07 * 1033.25 / 288.15 / std::sqrt(3.0);
    const double expected =
        2 * perMillibar * std::sqrt(ofGauge * ofGauge + ofSlope * ofSlope + ofTemperature * ofTemperature);
    EXPECT_NEAR(leakRate(input).uncertainty.in(kLitrePerHour), expected, 1e-9);
    input.accuracy.reset();
    input.assumed = {};
    EXPECT_NEAR(leakRate(input).uncertainty.in(kLitrePerHour), perMillibar * 0.1, 1e-9);
}

// By hand: a fall of 2 mbar in a volume that may be off by a tenth, on a gauge that may drift 0.05 mbar a
// minute; rectangular, in squares, k = 2.
TEST(LeakRate, TakesInHowFarTheVolumeMayBeOffAndTheGaugesDrift) {
    LeakInput input{cubicMetres(0.01), fallWith(2, 0.1), gaugeMillibar(20), seconds(120), {}, {}};
    const double perMillibar = 0.01 / 1013.25 * 30 * 1000;  // l/h
    const double plain = leakRate(input).uncertainty.in(kLitrePerHour);
    input.volumeOff = quantity::Share(0, quantity::kPercent);
    input.drift = millibar(0);
    EXPECT_EQ(leakRate(input).uncertainty.in(kLitrePerHour), plain);
    input.volumeOff = quantity::Share(10, quantity::kPercent);
    input.drift = millibar(0.05);
    const double ofVolume = 2 * 0.1 / std::sqrt(3.0);
    const double ofDrift = 0.05 * 2 / std::sqrt(3.0);
    EXPECT_NEAR(leakRate(input).uncertainty.in(kLitrePerHour),
                2 * perMillibar * std::sqrt(0.05 * 0.05 + ofVolume * ofVolume + ofDrift * ofDrift), 1e-9);
}

// Property: never narrower for a larger one of either, over random falls.
TEST(LeakRate, NeverKnowsMoreForAWorseVolumeOrGauge) {
    simulator::Random random(11);
    for (int i = 0; i < 500; ++i) {
        LeakInput input{cubicMetres(0.002 + 0.03 * random.share()),
                        fallWith(4 * random.share() - 1, 0.05),
                        gaugeMillibar(20),
                        seconds(120),
                        {},
                        {}};
        double before = 0.0;
        for (int step = 0; step < 8; ++step) {
            input.volumeOff = quantity::Share(step * 12.0, quantity::kPercent);
            input.drift = millibar(step * 0.02);
            const double now = leakRate(input).uncertainty.in(kLitrePerHour);
            EXPECT_GE(now, before);
            before = now;
        }
    }
}

struct KelvinCase {
    double gauge;
    double millibarPerKelvin;
};

// p_abs / T at 15 degrees Celsius (textbook).
TEST(Temperature, OneKelvinIsWorthAsMuch) {
    const KelvinCase cases[] = {{20, 3.59}, {37, 3.64}, {82.5, 3.80}};
    for (const auto& c : cases) {
        EXPECT_NEAR(worthOfOneKelvin(gaugeMillibar(c.gauge)).in(kMillibar), c.millibarPerKelvin, 0.005)
            << c.gauge;
    }
    EXPECT_NEAR(coolingFor(millibar(0.25), gaugeMillibar(20)).in(kKelvin), 0.07, 0.0005);
    EXPECT_NEAR(coolingFor(millibar(0.5), gaugeMillibar(20)).in(kKelvin), 0.14, 0.001);
}

// The closed-vessel form of 40 CFR 1065.644 at constant amount of gas: p/T stays.
TEST(Temperature, AgreesWithTheGasLaw) {
    const double before = (20 + 1013.25) / 288.15;
    const double cooled = before * (288.15 - 0.14) - 1013.25;
    EXPECT_NEAR(coolingFor(millibar(20 - cooled), gaugeMillibar(20)).in(kKelvin), 0.14, 1e-9);
}

}  // namespace
}  // namespace hearth::tightness
