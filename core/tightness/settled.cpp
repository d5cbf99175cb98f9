// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/settled.h"

#include "core/quantity/units.h"

#include <algorithm>

namespace hearth::tightness {

using quantity::Duration;
using quantity::PressureChange;

namespace {

PressureChange mostMoved(const Within95<PressureChange>& left) {
    return std::max(left.most, -left.least);
}

PressureChange leastMoved(const Within95<PressureChange>& left) {
    return std::max({left.least, -left.most, PressureChange{}});
}

/// From then on only the settling's end is asked for, which dies out: the first step that is settled is the
/// wait.
std::optional<Duration> waitFor(const TraceFit& fit, Duration now, Duration test, PressureChange threshold) {
    const Duration step(5.0, quantity::kSecond);
    constexpr int kMostSteps = 360;  // half an hour
    for (int i = 0; i <= kMostSteps; ++i) {
        const Duration wait = step * i;
        if (mostMoved(fit.settlingOver(now + wait, test)) < threshold) {
            return wait;
        }
    }
    return std::nullopt;
}

}  // namespace

SettlingOutlook settlingOutlook(const TraceFit& fit, Duration now, Duration test, PressureChange threshold) {
    SettlingOutlook outlook;
    outlook.left = fit.settlingOver(now, test);
    if (mostMoved(outlook.left) < threshold) {
        outlook.state = Settledness::Settled;
    } else if (leastMoved(outlook.left) > threshold) {
        outlook.state = Settledness::NotYet;
    }
    outlook.wait = waitFor(fit, now, test, threshold);
    return outlook;
}

}  // namespace hearth::tightness
