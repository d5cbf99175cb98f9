// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/volume_off.h"

#include <algorithm>
#include <cmath>

namespace hearth::tightness {

using quantity::Flow;
using quantity::kOne;
using quantity::Share;

namespace {

/// The normal distribution's two-sided 95 %.
constexpr double kBothSides95 = 1.959964;

/// Half of an interval on one side of `best`.
double widened(double half, double best, double off) {
    const double standard = off / std::sqrt(3.0);
    return std::hypot(half * std::sqrt(1.0 + 2.0 * standard * standard), kBothSides95 * standard * best);
}

}  // namespace

Within95<Flow> widenedByVolume(const Within95<Flow>& exact, Share off) {
    if (off <= Share{} || off >= kVolumeOffBelow) {
        return exact;
    }
    const double part = off.in(kOne);
    const double best = exact.best.base();
    const double least = exact.least.base();
    const double most = exact.most.base();
    const double lowest = least * (least > 0.0 ? 1.0 - part : 1.0 + part);
    const double highest = most * (most > 0.0 ? 1.0 + part : 1.0 - part);
    return {exact.best, Flow::fromBase(std::max(lowest, best - widened(best - least, best, part))),
            Flow::fromBase(std::min(highest, best + widened(most - best, best, part)))};
}

double volumeFactor(Share off) {
    const double part = off.in(kOne);
    return std::sqrt(1.0 + 2.0 * part * part / 3.0);
}

}  // namespace hearth::tightness
