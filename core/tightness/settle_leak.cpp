// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/settle_leak.h"

#include <cmath>
#include <Eigen/Cholesky>

namespace hearth::tightness {

namespace {

constexpr double kSqrtHalf = 0.70710678118654752440;
constexpr double kDensityScale = 0.39894228040143267794;  // 1/sqrt(2 pi)
/// What keeps p0 from running away where nothing holds it, mbar.
constexpr double kStartPrior = 1000.0;
/// A reading's likelihood below this is a normal's tail.
constexpr double kLeastLikelihood = 1e-200;
/// Beyond so many standard deviations inside its interval a reading says nothing.
constexpr double kSurelyInside = 6.0;

double densityOf(double z) {
    return kDensityScale * std::exp(-0.5 * z * z);
}

double upperTail(double z) {
    return 0.5 * std::erfc(z * kSqrtHalf);
}

/// P(low < z < high), from the side on which nothing cancels.
double between(double low, double high) {
    return low > 0.0 ? upperTail(low) - upperTail(high) : upperTail(-high) - upperTail(-low);
}

/// (first - second) / (b - a) for first = exp(-a t) and second = exp(-b t): no hole at a = b.
double overlap(double first, double second, double apart, double t) {
    constexpr double kSeries = 1e-4;
    const double x = apart * t;
    return std::abs(x) < kSeries ? t * first * (1.0 - x / 2.0) : (first - second) / apart;
}

/// What the gas law adds to the curve of settle_leak.h: warm gas is fewer moles, and fewer moles settle less.
/// With e = A/pb, E = exp(-t/T), L = exp(-k t) and g the pressure that the moles would have when settled:
///
///     p = g (1 + e E) + A E        g' = -k (1 + e E) g - k A E
///
/// to the first power of e in g.
double secondOrder(double t, double rate, const FitPlace& place, double settled, double leaked) {
    constexpr double kAtmosphere = 1013.25;
    const double decay = place[2];
    const double e = place[1] / kAtmosphere;
    const double begin = (place[0] - place[1]) / (1.0 + e);
    const double first = overlap(settled, leaked, decay - rate, t);
    const double once = leaked * (1.0 - settled) / rate;
    const double twice = overlap(settled * settled, leaked, decay - 2.0 * rate, t);
    double apart = decay - rate;
    if (std::abs(apart) < 1e-3 * rate) {
        apart = 1e-3 * rate;
    }
    const double moles = begin * leaked - decay * place[1] * first;
    const double more = -decay * e * (begin * once - decay * place[1] * (twice - once) / apart);
    const double whole = (moles + more) * (1.0 + e * settled) + place[1] * settled;
    const double plain = place[0] * leaked - place[1] * rate * first;
    return whole - plain;
}

struct Likelihood {
    double value = 0.0;      // logarithm
    double slope = 0.0;      // by the curve
    double curvature = 0.0;  // negative of the second derivative
};

/// Of a reading that says: the measured value was within half a step of me.
Likelihood ofInterval(double reads, double half, double noise, double curve) {
    const double low = (reads - half - curve) / noise;
    const double high = (reads + half - curve) / noise;
    if (low < -kSurelyInside && high > kSurelyInside) {
        return {};
    }
    const double share = between(low, high);
    if (share < kLeastLikelihood) {
        const double off = low > 0.0 ? low : high;
        return {-0.5 * off * off, off / noise, 1.0 / (noise * noise)};
    }
    const double atLow = densityOf(low);
    const double atHigh = densityOf(high);
    const double slope = (atLow - atHigh) / (noise * share);
    const double bend = (low * atLow - high * atHigh) / (noise * noise * share);
    return {std::log(share), slope, std::max(0.0, slope * slope - bend)};
}

}  // namespace

SettleLeak::SettleLeak(std::vector<FitTerm> terms, const GaugeModel& gauge)
    : m_terms(std::move(terms)), m_gauge(gauge) {}

SettleLeak::Point SettleLeak::at(double t, double logTime, const FitPlace& place, double spread) {
    const double rate = std::exp(-logTime);
    const double decay = place[2];
    const double settledThere = std::exp(-rate * t);
    const double leakedThere = std::exp(-decay * t);
    // The mean of exp(-r t) over times that spread by s2 is exp(-r t) (1 + r2 s2 / 2).
    const double settled = settledThere * (1.0 + 0.5 * rate * rate * spread);
    const double leaked = leakedThere * (1.0 + 0.5 * decay * decay * spread);
    const double leakedByDecay = -t * leaked + decay * spread * leakedThere;
    const double x = (decay - rate) * t;
    double warm = 0.0;
    double warmByDecay = 0.0;
    constexpr double kSeries = 1e-3;
    if (std::abs(x) > kSeries) {
        const double apart = 1.0 - decay / rate;
        warm = (settled - leaked) / apart;
        warmByDecay = (warm / rate - leakedByDecay) / apart;
    } else {
        const double scale = -rate * t * settled;
        warm = scale * (1.0 - x / 2.0 + x * x / 6.0);
        warmByDecay = scale * t * (-0.5 + x / 3.0 - x * x / 8.0);
    }
    return {place[0] * leaked + place[1] * warm + secondOrder(t, rate, place, settledThere, leakedThere),
            {leaked, warm, place[0] * leakedByDecay + place[1] * warmByDecay}};
}

void SettleLeak::noteSlopes(const FitComponent& curve) {
    constexpr double kAside = 0.05;  // s
    for (auto& term : m_terms) {
        term.slope = (at(term.at + kAside, curve.logTime, curve.mean).value -
                      at(term.at - kAside, curve.logTime, curve.mean).value) /
                     (2.0 * kAside);
    }
}

void SettleLeak::addPrior(Sum& sum, const FitPlace& place) const {
    const Eigen::Vector3d weight(1.0 / (kStartPrior * kStartPrior),
                                 1.0 / (m_gauge.settlePrior * m_gauge.settlePrior),
                                 1.0 / (m_gauge.decayPrior * m_gauge.decayPrior));
    sum.value -= 0.5 * weight.dot(place.cwiseProduct(place));
    sum.gradient -= weight.cwiseProduct(place);
    sum.curvature.diagonal() += weight;
}

SettleLeak::Sum SettleLeak::sum(double logTime, const FitPlace& place) const {
    Sum sum;
    const double half = m_gauge.step / 2.0;
    const double variance = m_gauge.noise * m_gauge.noise;
    for (const auto& term : m_terms) {
        const Point point = at(term.at, logTime, place, term.spread);
        Likelihood one;
        if (m_gauge.showsSteps) {
            const double blur = std::sqrt(variance + term.slope * term.slope * term.spread);
            one = ofInterval(term.reads, half, blur, point.value);
        } else {
            const double off = term.reads - point.value;
            one = {-0.5 * off * off / variance, off / variance, 1.0 / variance};
        }
        sum.value += term.count * one.value;
        sum.gradient += term.count * one.slope * point.by;
        sum.curvature.selfadjointView<Eigen::Lower>().rankUpdate(point.by, term.count * one.curvature);
    }
    sum.curvature = Eigen::Matrix3d(sum.curvature.selfadjointView<Eigen::Lower>());
    addPrior(sum, place);
    return sum;
}

FitComponent SettleLeak::best(double logTime, const FitPlace& from) const {
    constexpr int kMostSteps = 40;
    constexpr double kSmallGain = 2e-3;
    FitComponent result{logTime, 0.0, from, Eigen::Matrix3d::Zero()};
    Sum here = sum(logTime, result.mean);
    for (int i = 0; i < kMostSteps; ++i) {
        const Eigen::LDLT<Eigen::Matrix3d> solver(here.curvature);
        FitPlace step = solver.solve(here.gradient);
        const double promised = 0.5 * step.dot(here.gradient);
        if (promised < kSmallGain) {
            break;
        }
        Sum there = sum(logTime, result.mean + step);
        for (int halved = 0; halved < 6 && !(there.value > here.value); ++halved) {
            step *= 0.4;
            there = sum(logTime, result.mean + step);
        }
        if (!(there.value > here.value)) {
            break;
        }
        result.mean += step;
        here = there;
    }
    const Eigen::LDLT<Eigen::Matrix3d> solver(here.curvature);
    result.spread = solver.solve(Eigen::Matrix3d::Identity());
    result.weight = here.value - 0.5 * solver.vectorD().array().max(1e-300).log().sum();
    return result;
}

}  // namespace hearth::tightness
