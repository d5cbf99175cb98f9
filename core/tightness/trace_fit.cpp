// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_fit.h"

#include "core/quantity/units.h"
#include "core/tightness/fit_mixture.h"
#include "core/tightness/fit_readings.h"
#include "core/tightness/gas_law.h"
#include "core/tightness/volume_off.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::tightness {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;

namespace {

constexpr std::size_t kFewestPoints = 20;
constexpr double kShortestTrace = 20.0;  // s
/// Below this part of a step the noise does not smooth a display's steps: what is left of them is
/// (1/pi) exp(-2 pi^2 0.45^2), under a hundredth of a step.
constexpr double kSmooths = 0.45;
/// A display is taken to be sharp to a tenth of its step.
constexpr double kSharpest = 0.1;
constexpr double kOutlier = 5.0;  // standard deviations
/// Where nothing was measured finer, a gauge is not believed to be finer than a thousandth of a millibar.
constexpr double kLeastNoise = 1e-3;
constexpr int kRounds = 5;
/// Currie's 1.645 + 1.645 standard deviations.
constexpr double kDetectable = 3.29;
/// The normal distribution's two-sided 95 %.
constexpr double kNormal95 = 1.959964;

/// The largest noise that is nearly as likely as the likeliest, on a display that shows its steps: where few
/// readings tell the noise, to take the likeliest would promise too much.
void findNoise(SettleLeak& model, const FitComponent& curve) {
    constexpr double kNearly = 0.7;  // of the evidence's logarithm
    constexpr std::array<double, 8> kParts{0.1, 0.14, 0.2, 0.28, 0.4, 0.5, 0.63, 0.8};
    GaugeModel gauge = model.gauge();
    std::array<double, kParts.size()> weights{};
    for (std::size_t i = 0; i < kParts.size(); ++i) {
        gauge.noise = kParts[i] * gauge.step;
        model.setGauge(gauge);
        weights[i] = model.best(curve.logTime, curve.mean).weight;
    }
    const double most = *std::max_element(weights.begin(), weights.end());
    for (std::size_t i = 0; i < kParts.size(); ++i) {
        if (weights[i] > most - kNearly) {
            gauge.noise = kParts[i] * gauge.step;
        }
    }
    model.setGauge(gauge);
}

GaugeModel gaugeFor(double scatter, double step) {
    GaugeModel gauge;
    gauge.step = step;
    const double own = std::sqrt(std::max(0.0, scatter * scatter - step * step / 12.0));
    gauge.showsSteps = step > 0.0 && own < kSmooths * step;
    gauge.noise = gauge.showsSteps ? std::max(own, kSharpest * step) : std::max(scatter, kLeastNoise);
    return gauge;
}

struct Fitted {
    FitMixture mixture;
    GaugeModel gauge;
    int outliers = 0;
};

/// First as if each reading were a value; then by what that leaves over.
Fitted lay(FitReadings& readings, double step) {
    GaugeModel gauge;
    gauge.noise = std::max({readings.roughScatter(), step / 3.0, kLeastNoise});
    gauge.step = step;
    SettleLeak model(readings.means(), gauge);
    FitComponent curve = FitMixture::likeliest(model, readings.firstGuess());
    for (int round = 0; round < kRounds; ++round) {
        const int before = readings.outliers();
        readings.setAside(curve, kOutlier * std::max(readings.scatterAbout(curve), kLeastNoise) + step);
        const bool isSame = readings.outliers() == before;
        gauge.noise = std::max(readings.scatterAbout(curve), kLeastNoise);
        model = SettleLeak(readings.means(), gauge);
        curve = isSame ? FitMixture::nearby(model, curve) : FitMixture::likeliest(model, curve.mean);
        if (isSame) {
            break;
        }
    }
    gauge = gaugeFor(readings.scatterAbout(curve), step);
    model = SettleLeak(gauge.showsSteps ? readings.levels() : readings.means(), gauge);
    if (gauge.showsSteps) {
        model.noteSlopes(curve);
        findNoise(model, curve);
        curve = FitMixture::nearby(model, curve);
    }
    return {FitMixture::around(model, curve), model.gauge(), readings.outliers()};
}

/// The leak is told where its own decay is slow against the settling (else the two are one curve), where the
/// settling takes no such part of the pressure as a leak does that empties the pipe, and where the interval
/// is narrow enough to be of use. Common practice, no source; what it does to the interval's honesty is
/// printed by trace_statistics_test.cpp.
bool tellsLeak(const TraceFit& fit, double mostDecay, GaugePressure at) {
    constexpr double kSlow = 0.3;
    constexpr double kMostSettled = 0.5;  // of the pressure; 2 K of 20 mbar are a third
    constexpr double kPart = 0.3;
    const quantity::Flow narrow(0.5, quantity::kLitrePerHour);
    const double half = 0.5 * (fit.leak.most - fit.leak.least).base();
    return mostDecay * fit.settlingTime().in(kSecond) < kSlow &&
           std::abs(fit.settlingSize().best.in(kMillibar)) < kMostSettled * at.in(kMillibar) &&
           half < std::max(narrow.base(), kPart * std::abs(fit.leak.best.base()));
}

/// How far the gauge's drift may carry k in 95 of 100, 1/s; rectangular.
double driftOfDecay(const FitInput& input) {
    constexpr double kRectangular = 1.7320508075688772;
    return kNormal95 * input.drift.in(kMillibar) / 60.0 / input.at.in(kMillibar) / kRectangular;
}

}  // namespace

std::optional<TraceFit> fitTrace(const Trace& trace, const FitInput& input) {
    if (trace.size() < kFewestPoints || input.at <= GaugePressure{} || input.volume <= quantity::Volume{} ||
        input.volumeOff < quantity::Share{} || input.volumeOff >= kVolumeOffBelow ||
        (trace.back().at - trace.front().at).in(kSecond) < kShortestTrace) {
        return std::nullopt;
    }
    TraceFit fit;
    fit.step = input.step ? input.step : stepOf(trace);
    fit.begin = trace.front().at;
    fit.end = trace.back().at;
    FitReadings readings(trace);
    const double step = fit.step ? fit.step->in(kMillibar) : 0.0;
    Fitted fitted = lay(readings, step);
    fit.outliers = fitted.outliers;
    fit.points = static_cast<int>(trace.size()) - fit.outliers;
    fit.noise = PressureChange(fitted.gauge.noise, kMillibar);
    const auto leak = [&](double decay) { return leakOf(decay, input.at, input.volume, input.gas); };
    // Student's instead of the normal distribution, as the noise is not known beforehand.
    const double student = 1.0 + 1.21 / (fit.points - 4.0);
    const double drift = driftOfDecay(input);
    const double mean = fitted.mixture.mean();
    auto [low, high] = fitted.mixture.interval();
    low = mean - std::hypot((mean - low) * student, drift);
    high = mean + std::hypot((high - mean) * student, drift);
    fit.leak = {leak(mean), leak(low), leak(high)};
    fit.detectable =
        leak(kDetectable * std::hypot(fitted.mixture.standardDeviation() * student, drift / kNormal95)) *
        volumeFactor(input.volumeOff);
    fit.components = fitted.mixture.components();
    const double mostDecay = std::max(std::abs(low), std::abs(high));
    fit.isIdentified = tellsLeak(fit, mostDecay, input.at);
    fit.leak = widenedByVolume(fit.leak, input.volumeOff);
    return fit;
}

}  // namespace hearth::tightness
