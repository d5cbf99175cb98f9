// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/units.h"
#include "core/tightness/fit_mixture.h"
#include "core/tightness/gas_law.h"
#include "core/tightness/trace_fit.h"

#include <cmath>
#include <functional>

namespace hearth::tightness {

using quantity::Duration;
using quantity::GaugePressure;
using quantity::kMillibar;
using quantity::kSecond;
using quantity::PressureChange;

namespace {

using PartOf = std::function<NormalPart(const FitComponent&)>;

/// A is the settling of the barometer's part of the absolute pressure; the gauge's part settles too.
double worthOf(const FitComponent& one) {
    return 1.0 + one.mean[0] / referenceState().pressure.in(kMillibar);
}

struct Spread95 {
    double best = 0.0;
    double least = 0.0;
    double most = 0.0;
};

Spread95 spreadOf(const std::vector<FitComponent>& components, const PartOf& partOf) {
    std::vector<NormalPart> parts;
    double mean = 0.0;
    for (const auto& one : components) {
        parts.push_back(partOf(one));
        parts.back().weight = one.weight;
        mean += one.weight * parts.back().mean;
    }
    return {mean, quantileOf(parts, 0.025), quantileOf(parts, 0.975)};
}

}  // namespace

Within95<GaugePressure> TraceFit::pressureAt(Duration time) const {
    const double at = (time - begin).in(kSecond);
    const auto spread = spreadOf(components, [&](const FitComponent& one) {
        const auto point = SettleLeak::at(at, one.logTime, one.mean);
        return NormalPart{0.0, point.value, std::sqrt(point.by.dot(one.spread * point.by))};
    });
    return {GaugePressure(spread.best, kMillibar), GaugePressure(spread.least, kMillibar),
            GaugePressure(spread.most, kMillibar)};
}

Within95<PressureChange> TraceFit::settlingOver(Duration from, Duration length) const {
    const double start = (from - begin).in(kSecond);
    const auto spread = spreadOf(components, [&](const FitComponent& one) {
        const double rate = std::exp(-one.logTime);
        const double part = worthOf(one) * std::exp(-rate * start) * -std::expm1(-rate * length.in(kSecond));
        return NormalPart{0.0, one.mean[1] * part, std::sqrt(one.spread(1, 1)) * part};
    });
    return {PressureChange(spread.best, kMillibar), PressureChange(spread.least, kMillibar),
            PressureChange(spread.most, kMillibar)};
}

Within95<PressureChange> TraceFit::settlingSize() const {
    const auto spread = spreadOf(components, [](const FitComponent& one) {
        return NormalPart{0.0, worthOf(one) * one.mean[1], worthOf(one) * std::sqrt(one.spread(1, 1))};
    });
    return {PressureChange(spread.best, kMillibar), PressureChange(spread.least, kMillibar),
            PressureChange(spread.most, kMillibar)};
}

Duration TraceFit::settlingTime() const {
    double mean = 0.0;
    for (const auto& one : components) {
        mean += one.weight * one.logTime;
    }
    return {std::exp(mean), kSecond};
}

}  // namespace hearth::tightness
