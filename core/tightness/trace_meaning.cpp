// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_meaning.h"

namespace hearth::tightness {

namespace {

bool isMostGone(const TraceFit& fit) {
    const auto began = fit.pressureAt(fit.begin).best.base();
    return began > 0.0 && fit.pressureAt(fit.end).best.base() <= 0.5 * began;
}

}  // namespace

TraceMeaning meaningOf(const TraceFit& fit) {
    if (!fit.isIdentified) {
        return isMostGone(fit) ? TraceMeaning::MostIsGone : TraceMeaning::CantTell;
    }
    const quantity::Flow none{};
    if (fit.leak.least > none) {
        return TraceMeaning::Leak;
    }
    if (fit.leak.most < none) {
        return TraceMeaning::GasComesIn;
    }
    return settlingMeaning(fit);
}

TraceMeaning settlingMeaning(const TraceFit& fit) {
    const auto settling = fit.settlingSize();
    const quantity::PressureChange still{};
    if (settling.least > still) {
        return TraceMeaning::Cooling;
    }
    return settling.most < still ? TraceMeaning::Warming : TraceMeaning::Still;
}

}  // namespace hearth::tightness
