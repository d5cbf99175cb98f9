// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/fit_mixture.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace hearth::tightness {

namespace {

const double kShortestTime = std::log(2.0);   // s
const double kLongestTime = std::log(400.0);  // s
constexpr int kFirstLook = 10;
constexpr int kComponents = 15;
/// Curves whose evidence is less than exp(-8) of the best count no more.
constexpr double kWorthCounting = 8.0;
constexpr double kGolden = 0.61803398874989485;

double tailAbove(double z) {
    return 0.5 * std::erfc(z / std::sqrt(2.0));
}

/// The furthest settling time in the direction of `bound` whose evidence still counts.
double reach(const SettleLeak& model, const FitComponent& best, double bound) {
    const auto counts = [&](double logTime) {
        return model.best(logTime, best.mean).weight > best.weight - kWorthCounting;
    };
    double inside = best.logTime;
    double step = bound > inside ? 0.01 : -0.01;
    double outside = bound;
    for (;;) {
        const double next = inside + step;
        if ((step > 0.0 && next >= bound) || (step < 0.0 && next <= bound)) {
            if (counts(bound)) {
                return bound;
            }
            break;
        }
        if (!counts(next)) {
            outside = next;
            break;
        }
        inside = next;
        step *= 2.0;
    }
    for (int i = 0; i < 2; ++i) {
        const double middle = 0.5 * (inside + outside);
        (counts(middle) ? inside : outside) = middle;
    }
    return outside;
}

FitComponent betterCurve(const FitComponent& a, const FitComponent& b) {
    return b.weight > a.weight ? b : a;
}

/// The best settling time between two bounds (golden section).
FitComponent refined(const SettleLeak& model, FitComponent best, double low, double high) {
    constexpr int kSteps = 9;
    FitComponent left = model.best(high - kGolden * (high - low), best.mean);
    FitComponent right = model.best(low + kGolden * (high - low), best.mean);
    for (int i = 0; i < kSteps; ++i) {
        best = betterCurve(betterCurve(best, left), right);
        if (left.weight > right.weight) {
            high = right.logTime;
            right = left;
            left = model.best(high - kGolden * (high - low), best.mean);
        } else {
            low = left.logTime;
            left = right;
            right = model.best(low + kGolden * (high - low), best.mean);
        }
    }
    return betterCurve(betterCurve(best, left), right);
}

/// A sum of two decays does not tell which of them is the leak: the same curve with the two exchanged, where
/// it is in reach. For k and T it has 1/T and 1/k.
std::optional<FitComponent> exchanged(const SettleLeak& model, const FitComponent& one) {
    const double decay = one.mean[2];
    if (decay <= 0.0 || -std::log(decay) < kShortestTime || -std::log(decay) > kLongestTime + 1.0) {
        return std::nullopt;
    }
    const double rate = std::exp(-one.logTime);
    const double apart = 1.0 - decay / rate;
    if (std::abs(apart) < 1e-3) {
        return std::nullopt;
    }
    const double settling = (1.0 - rate / decay) * (one.mean[0] - one.mean[1] / apart);
    const double logTime = std::min(kLongestTime, -std::log(decay));
    const FitComponent other = model.best(logTime, {one.mean[0], settling, rate});
    return refined(model, other, std::max(kShortestTime, logTime - 0.3),
                   std::min(kLongestTime, logTime + 0.3));
}

}  // namespace

FitComponent FitMixture::likeliest(const SettleLeak& model, const FitPlace& from) {
    const double step = (kLongestTime - kShortestTime) / (kFirstLook - 1);
    FitComponent best;
    FitPlace start = from;
    const FitPlace tight(from[0], 0.0, 0.0);
    int at = 0;
    for (int i = 0; i < kFirstLook; ++i) {
        const double logTime = kShortestTime + step * i;
        const FitComponent one = betterCurve(model.best(logTime, start), model.best(logTime, tight));
        if (i == 0 || one.weight > best.weight) {
            best = one;
            at = i;
        }
        start = one.mean;
    }
    best = refined(model, best, kShortestTime + step * std::max(0, at - 1),
                   kShortestTime + step * std::min(kFirstLook - 1, at + 1));
    if (const auto other = exchanged(model, best)) {
        best = betterCurve(best, *other);
    }
    return best;
}

FitComponent FitMixture::nearby(const SettleLeak& model, const FitComponent& curve) {
    constexpr double kAside = 0.25;
    const FitComponent here = model.best(curve.logTime, curve.mean);
    return refined(model, here, std::max(kShortestTime, here.logTime - kAside),
                   std::min(kLongestTime, here.logTime + kAside));
}

FitMixture FitMixture::around(const SettleLeak& model, const FitComponent& likeliest) {
    FitMixture result;
    result.addAbout(model, likeliest);
    const auto other = exchanged(model, likeliest);
    if (other && other->weight > likeliest.weight - kWorthCounting && !result.reaches(other->logTime)) {
        result.addAbout(model, *other);
    }
    double most = likeliest.weight;
    for (const auto& one : result.m_components) {
        most = std::max(most, one.weight);
    }
    double sum = 0.0;
    for (auto& one : result.m_components) {
        one.weight = std::exp(one.weight - most);
        sum += one.weight;
    }
    for (auto& one : result.m_components) {
        one.weight /= sum;
    }
    return result;
}

bool FitMixture::reaches(double logTime) const {
    const auto [least, most] = std::minmax_element(
        m_components.begin(), m_components.end(),
        [](const FitComponent& a, const FitComponent& b) { return a.logTime < b.logTime; });
    return logTime >= least->logTime && logTime <= most->logTime;
}

void FitMixture::addAbout(const SettleLeak& model, const FitComponent& mode) {
    const double low = reach(model, mode, kShortestTime);
    const double high = reach(model, mode, kLongestTime);
    const double apart = (high - low) / (kComponents - 1);
    // From the mode outwards, so that each curve begins at its neighbour's.
    const int middle = static_cast<int>(std::lround((mode.logTime - low) / apart));
    for (const int direction : {-1, 1}) {
        FitPlace start = mode.mean;
        for (int i = direction < 0 ? middle : middle + 1; i >= 0 && i < kComponents; i += direction) {
            m_components.push_back(model.best(low + apart * i, start));
            start = m_components.back().mean;
            const bool isEnd = i == 0 || i + 1 == kComponents;
            m_components.back().weight += std::log(apart * (isEnd ? 0.5 : 1.0));
        }
    }
}

double FitMixture::mean() const {
    double sum = 0.0;
    for (const auto& one : m_components) {
        sum += one.weight * one.mean[2];
    }
    return sum;
}

double FitMixture::standardDeviation() const {
    const double about = mean();
    double sum = 0.0;
    for (const auto& one : m_components) {
        sum += one.weight * (one.spread(2, 2) + (one.mean[2] - about) * (one.mean[2] - about));
    }
    return std::sqrt(sum);
}

std::pair<double, double> FitMixture::interval() const {
    std::vector<NormalPart> parts;
    for (const auto& one : m_components) {
        parts.push_back({one.weight, one.mean[2], std::sqrt(one.spread(2, 2))});
    }
    return {quantileOf(parts, 0.025), quantileOf(parts, 0.975)};
}

double quantileOf(const std::vector<NormalPart>& parts, double probability) {
    double low = 0.0;
    double high = 0.0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const double reach = 10.0 * parts[i].standard;
        low = i == 0 ? parts[i].mean - reach : std::min(low, parts[i].mean - reach);
        high = i == 0 ? parts[i].mean + reach : std::max(high, parts[i].mean + reach);
    }
    for (int halved = 0; halved < 50; ++halved) {
        const double middle = 0.5 * (low + high);
        double below = 0.0;
        for (const auto& part : parts) {
            below += part.weight * tailAbove((part.mean - middle) / std::max(part.standard, 1e-300));
        }
        (below < probability ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

}  // namespace hearth::tightness
