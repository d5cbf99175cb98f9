// SPDX-License-Identifier: GPL-3.0-or-later
// What the fit claims, held against random installations whose truth is known: 2,000 with HEARTH_FULL=1, else
// 60.
#include "core/quantity/units.h"
#include "core/tightness/settled.h"
#include "core/tightness/trace_fit.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"

#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <iostream>
#include <string>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kLitre;
using quantity::kLitrePerHour;
using quantity::kMillibar;
using quantity::kSecond;
using simulator::Installation;

constexpr double kThreshold =
    0.2;  // mbar: no perceptible movement on an electronic gauge (the facts' doubt 4)

int howMany() {
    const char* full = std::getenv("HEARTH_FULL");
    return full != nullptr && std::string(full) == "1" ? 2000 : 60;
}

FitInput toldOf(const Installation& one) {
    FitInput input;
    input.volume = quantity::Volume(one.litres, kLitre);
    input.at = gaugeMillibar(20);
    input.step = millibar(one.step);
    return input;
}

struct Tally {
    int all = 0;
    int covered = 0;
    double bias = 0.0;  // in whole widths of the interval

    void add(const TraceFit& fit, double truth) {
        const double least = fit.leak.least.in(kLitrePerHour);
        const double most = fit.leak.most.in(kLitrePerHour);
        ++all;
        covered += truth >= least && truth <= most ? 1 : 0;
        bias += (fit.leak.best.in(kLitrePerHour)-truth) / (most - least);
    }
    [[nodiscard]] double coverage() const { return 100.0 * covered / all; }
    [[nodiscard]] double meanBias() const { return bias / all; }
    void print(const char* name) const {
        std::cout << name << ": " << all << " traces, the 95 % interval holds the truth in " << coverage()
                  << " %, bias " << meanBias() << " of its width\n";
    }
};

/// How far a share measured on n may be off, three standard deviations.
double slack(double share, int n) {
    return 300.0 * std::sqrt(share / 100.0 * (1.0 - share / 100.0) / n);
}

TEST(TraceStatistics, TheIntervalHoldsTheTruthAsOftenAsItSays) {
    Tally all;
    Tally told;
    Tally steps[3];
    for (int i = 0; i < howMany(); ++i) {
        simulator::Random random(1000 + static_cast<std::uint64_t>(i));
        const auto one = simulator::someInstallation(random);
        const auto fit = fitTrace(simulator::watch(one, random), toldOf(one));
        ASSERT_TRUE(fit);
        all.add(*fit, one.leak);
        if (fit->isIdentified) {
            told.add(*fit, one.leak);
            steps[one.step < 0.05 ? 0 : one.step < 0.3 ? 1 : 2].add(*fit, one.leak);
        }
    }
    all.print("all");
    told.print("identified");
    steps[0].print("  of them with a step of 0.01 mbar");
    steps[1].print("  of them with a step of 0.1 mbar");
    steps[2].print("  of them with a step of 0.5 mbar");
    // In full the goal is held as it stands; on few, as far as few can tell.
    const bool isFull = howMany() == 2000;
    EXPECT_GE(told.coverage(), 93.0 - (isFull ? 0.0 : slack(93, told.all)));
    EXPECT_LE(told.coverage(), 97.0 + (isFull ? 0.0 : slack(97, told.all)));
    EXPECT_LT(std::abs(told.meanBias()), isFull ? 0.1 : 0.2);
    EXPECT_GT(told.all, all.all / 2) << "a fit that never tells anything is never wrong";
}

// The volume was worked out up to a fifth too large or too small, and the gauge drifts up to 0.05 mbar a
// minute either way: where that is said the interval holds the truth, and where it is not said it does not.
TEST(TraceStatistics, TheIntervalHoldsTheTruthOfAVolumeThatIsOffAndAGaugeThatDrifts) {
    constexpr double kOff = 0.2;
    constexpr double kDrift = 0.05;  // mbar a minute
    Tally said;
    Tally unsaid;
    for (int i = 0; i < howMany(); ++i) {
        simulator::Random random(7000 + static_cast<std::uint64_t>(i));
        auto one = simulator::someInstallation(random);
        one.drift = random.from(-kDrift, kDrift);
        auto input = toldOf(one);
        input.volume = input.volume / random.from(1.0 - kOff, 1.0 + kOff);
        const auto trace = simulator::watch(one, random);
        const auto exact = fitTrace(trace, input);
        input.volumeOff = quantity::Share(kOff, quantity::kOne);
        input.drift = millibar(kDrift);
        const auto fit = fitTrace(trace, input);
        ASSERT_TRUE(fit && exact);
        if (fit->isIdentified) {
            said.add(*fit, one.leak);
            unsaid.add(*exact, one.leak);
        }
    }
    said.print("volume off by a fifth, gauge drifting, both said");
    unsaid.print("the same, neither said");
    const bool isFull = howMany() == 2000;
    EXPECT_GE(said.coverage(), 93.0 - (isFull ? 0.0 : slack(93, said.all)));
    EXPECT_LT(unsaid.coverage(), said.coverage());
    EXPECT_LT(std::abs(said.meanBias()), isFull ? 0.1 : 0.2);
}

double settlingLeft(const Installation& one) {
    const double worth = (1013.25 + 20.0) / 288.15 * one.kelvin;
    return std::abs(worth) * (std::exp(-60.0 / one.settles) - std::exp(-180.0 / one.settles));
}

TEST(TraceStatistics, SettledIsSaidWhenItIs) {
    int said = 0;
    int right = 0;
    int silent = 0;
    int settledWrongly = 0;
    for (int i = 0; i < howMany(); ++i) {
        simulator::Random random(50000 + static_cast<std::uint64_t>(i));
        auto one = simulator::someInstallation(random);
        one.length = 60;
        const auto fit = fitTrace(simulator::watch(one, random), toldOf(one));
        ASSERT_TRUE(fit);
        const auto outlook = settlingOutlook(*fit, seconds(60), seconds(120), millibar(kThreshold));
        if (outlook.state == Settledness::CantTell) {
            ++silent;
            continue;
        }
        ++said;
        const bool isSettled = settlingLeft(one) < kThreshold;
        right += isSettled == (outlook.state == Settledness::Settled) ? 1 : 0;
        settledWrongly += !isSettled && outlook.state == Settledness::Settled ? 1 : 0;
    }
    std::cout << "settled or not after one minute: said of " << said << " of " << howMany() << ", right in "
              << 100.0 * right / said << " %; wrongly said to be settled " << settledWrongly
              << "; can't tell " << silent << '\n';
    EXPECT_GE(100.0 * right / said, 95.0 - (howMany() == 2000 ? 0.0 : slack(95, said)));
    EXPECT_GT(said, howMany() / 3);
}

double leakAlone(const Installation& one) {
    const double decay = one.leak / one.litres / 3600.0 * 1013.25 / 20.0;
    return 20.0 * (1.0 - std::exp(-120.0 * decay));
}

// Both are asked: does this pipe leak so much that the leak alone moves the gauge perceptibly in two minutes?
TEST(TraceStatistics, TheTwoReadingsMisjudgeMoreOften) {
    int byTwoMissed = 0;
    int byTwoFalse = 0;
    int byTraceMissed = 0;
    int byTraceFalse = 0;
    int silent = 0;
    int byTwoWhereSilent = 0;
    int leaky = 0;
    for (int i = 0; i < howMany(); ++i) {
        simulator::Random random(90000 + static_cast<std::uint64_t>(i));
        auto one = simulator::someInstallation(random);
        one.outliers = 0.0;  // a person does not write one down
        const auto trace = simulator::watch(one, random);
        const bool leaks = leakAlone(one) > kThreshold;
        leaky += leaks ? 1 : 0;
        const auto timed = stretchOf(trace, {seconds(60), seconds(181)});
        const double fall = (timed.front().pressure - timed.back().pressure).in(kMillibar);
        const auto fit = fitTrace(trace, toldOf(one));
        ASSERT_TRUE(fit);
        const bool missed = leaks && fall <= kThreshold;
        const bool alarmed = !leaks && fall > kThreshold;
        if (!fit->isIdentified) {
            ++silent;
            byTwoWhereSilent += missed || alarmed ? 1 : 0;
            continue;
        }
        byTwoMissed += missed ? 1 : 0;
        byTwoFalse += alarmed ? 1 : 0;
        // The leak whose own movement is the threshold, at 20 mbar.
        const double worth =
            -std::log(1.0 - kThreshold / 20.0) / 120.0 * one.litres * 3600.0 * 20.0 / 1013.25;
        const bool said = fit->leak.best.in(kLitrePerHour) > worth;
        byTraceMissed += leaks && !said ? 1 : 0;
        byTraceFalse += !leaks && said ? 1 : 0;
    }
    std::cout << howMany() << " traces, " << leaky
              << " of them with a leak that moves the gauge perceptibly.\n"
              << "where the trace tells the leak (" << howMany() - silent << "): two readings missed "
              << byTwoMissed << " and alarmed falsely " << byTwoFalse << "; the trace missed "
              << byTraceMissed << " and alarmed falsely " << byTraceFalse << '\n'
              << "where it can't tell (" << silent << "): two readings misjudged " << byTwoWhereSilent
              << '\n';
    EXPECT_LT(byTraceMissed + byTraceFalse, byTwoMissed + byTwoFalse);
}

}  // namespace
}  // namespace hearth::tightness
