// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/settle_leak.h"

#include "tests/core/tightness/trace_simulator.h"
#include "tests/support/agreement.h"

#include <cmath>
#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

FitPlace placeOf(const simulator::Installation& one) {
    const double decay = one.leak / one.litres / 3600.0 * 1013.25 / 20.0;
    return {one.start, 1013.25 * one.kelvin / 288.15, decay};
}

TEST(SettleLeak, TheCurveIsTheGasIntegratedStepByStep) {
    testing::Agreement agreement("Pressure of a leaking pipe that settles, 100 installations",
                                 "gas law integrated by Runge-Kutta (textbook), in the tests", "mbar", 2e-4);
    simulator::Random random(5);
    for (int i = 0; i < 100; ++i) {
        auto one = simulator::someInstallation(random);
        one.every = 1.0;
        const auto truth = simulator::pressures(one);
        for (std::size_t j = 0; j < truth.size(); j += 10) {
            const double ours =
                SettleLeak::at(static_cast<double>(j), std::log(one.settles), placeOf(one)).value;
            agreement.hold(std::to_string(i), ours, truth[j]);
        }
    }
}

// Where the leak's decay and the settling have one time, the formula divides nought by nought.
TEST(SettleLeak, HasNoHoleWhereLeakAndSettlingAreOneCurve) {
    const double logTime = std::log(50.0);
    for (const double t : {0.0, 1.0, 60.0, 180.0}) {
        const double before = SettleLeak::at(t, logTime, {20, 3, 0.02 * (1 - 1e-4)}).value;
        const double there = SettleLeak::at(t, logTime, {20, 3, 0.02}).value;
        const double after = SettleLeak::at(t, logTime, {20, 3, 0.02 * (1 + 1e-4)}).value;
        EXPECT_NEAR(there, 0.5 * (before + after), 1e-4) << t;
    }
}

TEST(SettleLeak, DerivativesAreThoseOfTheCurve) {
    const FitPlace place(20.4, 0.5, 0.004);
    for (const double t : {3.0, 40.0, 170.0}) {
        const auto point = SettleLeak::at(t, std::log(30.0), place);
        for (int i = 0; i < 3; ++i) {
            const double aside = i == 2 ? 1e-6 : 1e-4;
            FitPlace more = place;
            FitPlace less = place;
            more[i] += aside;
            less[i] -= aside;
            const double by = (SettleLeak::at(t, std::log(30.0), more).value -
                               SettleLeak::at(t, std::log(30.0), less).value) /
                              (2.0 * aside);
            // The second order is left out of the derivatives: a fiftieth.
            EXPECT_NEAR(point.by[i], by, 0.03 * std::abs(by) + 1e-3) << t << ' ' << i;
        }
    }
}

TEST(SettleLeak, AMeanOverAStretchIsTheMeanOfTheCurve) {
    const FitPlace place(20.4, 2.0, 0.02);
    for (const double middle : {0.45, 30.0}) {
        double sum = 0.0;
        double spread = 0.0;
        for (int i = 0; i < 10; ++i) {
            const double t = middle + 0.1 * (i - 4.5);
            sum += SettleLeak::at(t, std::log(5.0), place).value / 10.0;
            spread += (t - middle) * (t - middle) / 10.0;
        }
        EXPECT_NEAR(SettleLeak::at(middle, std::log(5.0), place, spread).value, sum, 1e-4) << middle;
        if (middle < 1.0) {
            EXPECT_GT(std::abs(SettleLeak::at(middle, std::log(5.0), place).value - sum), 1e-3)
                << "it matters";
        }
    }
}

TEST(SettleLeak, FindsTheCurveThroughItsOwnReadings) {
    const FitPlace truth(20.4, 1.5, 0.003);
    std::vector<FitTerm> terms;
    for (int i = 0; i < 60; ++i) {
        terms.push_back({2.0 * i, 0.0, SettleLeak::at(2.0 * i, std::log(25.0), truth).value, 1.0});
    }
    GaugeModel gauge;
    gauge.noise = 0.01;
    const auto found = SettleLeak(terms, gauge).best(std::log(25.0), {20, 0, 0});
    for (int i = 0; i < 3; ++i) {
        EXPECT_NEAR(found.mean[i], truth[i], 0.5 * std::sqrt(found.spread(i, i))) << i;
    }
    // On a coarse display each reading is an interval, and the truth lies in all of them.
    gauge.step = 0.5;
    gauge.noise = 0.05;
    gauge.showsSteps = true;
    for (auto& term : terms) {
        term.reads = std::round(term.reads / 0.5) * 0.5;
    }
    const auto coarse = SettleLeak(terms, gauge).best(std::log(25.0), {20, 0, 0});
    for (int i = 0; i < 3; ++i) {
        EXPECT_NEAR(coarse.mean[i], truth[i], 3.0 * std::sqrt(coarse.spread(i, i))) << i;
        EXPECT_GT(coarse.spread(i, i), 4.0 * found.spread(i, i)) << i;
    }
}

}  // namespace
}  // namespace hearth::tightness
