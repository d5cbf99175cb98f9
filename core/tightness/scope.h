// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/tube.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/given.h"

#include <optional>

namespace hearth::tightness {

/// The whole installation of the premises (not only the part under test), as far as the scope goes by it.
struct ScopeInput {
    std::optional<quantity::Volume> volume;
    double largestNominal = 0.0;  // mm
    bool nominalKnown = false;
    const pipework::Meter* meter = nullptr;    // none: not said yet
    Given<quantity::GaugePressure> operating;  // at the meter or final regulator outlet
    Given<quantity::GaugePressure> supply;     // most at the emergency control valve's outlet
};

/// Is the installation within the scope of IGEM/UP/1B? Beyond any limit it is not, and the finding names the
/// standard that applies instead. What is not known gives no verdict. While Edition 4's scope has not been
/// entered there is no verdict either; what lies beyond Edition 3's is said for information.
/// Source: institution's own page on IGEM/UP/1B Edition 3 +A:2012. Checked: scope_test.cpp.
[[nodiscard]] rulebook::Finding scope(const ScopeInput& input, const rulebook::RulesInForce& rules);

/// Which standard applies to what is too large for IGEM/UP/1B: IGE/UP/1A for natural gas to 1 m3, 40 mbar and
/// 150 mm, else IGE/UP/1; which of the two when it can't be told.
/// Source: institution's own page on IGE/UP/1A; the 150 mm from memory. Checked: scope_test.cpp.
[[nodiscard]] rulebook::Say standardInstead(const ScopeInput& input, rulebook::Gas gas);

}  // namespace hearth::tightness
