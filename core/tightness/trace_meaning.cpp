// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/trace_meaning.h"

namespace hearth::tightness {

TraceMeaning meaningOf(const TraceFit& fit) {
    if (!fit.isIdentified) {
        return TraceMeaning::CantTell;
    }
    const quantity::Flow none{};
    if (fit.leak.least > none) {
        return TraceMeaning::Leak;
    }
    if (fit.leak.most < none) {
        return TraceMeaning::GasComesIn;
    }
    const auto settling = fit.settlingSize();
    const quantity::PressureChange still{};
    if (settling.least > still) {
        return TraceMeaning::Cooling;
    }
    return settling.most < still ? TraceMeaning::Warming : TraceMeaning::Still;
}

}  // namespace hearth::tightness
