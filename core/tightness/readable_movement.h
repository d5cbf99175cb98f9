// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"

#include <optional>

/// What can be read on a gauge in the larger standards' sense (gauge readable movement, GRM), and how long a
/// test on it may be. GRM is not the small-installation standard's perceptible movement: neither stands in
/// for the other.
namespace hearth::tightness {

enum class LargerGaugeKind { Water, DenseFluid, Mercury, Electronic };

struct LargerGauge {
    LargerGaugeKind kind = LargerGaugeKind::Electronic;
    std::optional<quantity::PressureChange> range;  // highest reading
    std::optional<int> decimals;                    // of a mbar, on an electronic display
    std::optional<quantity::PressureChange> repeatability;
};

/// The rules of a gauge's row in the table.
struct GaugeRules {
    rulebook::Rule readable;
    rulebook::Rule longest;
};

/// The row of a gauge: kind, decimals and a range no wider than the row's. Nothing when range or decimals are
/// not said or the table has no such gauge.
/// Source: trade-forum extract of a handbook's table after IGE/UP/1. Checked:
/// tests/core/tightness/readable_movement_test.cpp.
[[nodiscard]] std::optional<GaugeRules> gaugeRules(const LargerGauge& gauge);

/// The gauge as gauge.h's, for the uncertainty of a change: a fluid is read to half of its readable movement,
/// a display to its last decimal.
/// Source: JCGM 100:2008 (GUM) F.2.2.1, from memory; half a division is common practice, no source. Checked:
/// tests/core/tightness/readable_movement_test.cpp.
[[nodiscard]] Gauge asGauge(const LargerGauge& gauge, quantity::PressureChange readable);

/// The gauge's readable movement with its entry; nothing, with a finding that says why, when it is not known.
struct Readable {
    std::optional<quantity::PressureChange> movement;
    const rulebook::Entry* entry = nullptr;
    rulebook::Finding finding{rulebook::FindingKind::ReadableMovement};
};
/// Source: trade-forum extract of a handbook's table after IGE/UP/1. Checked:
/// tests/core/tightness/readable_movement_test.cpp.
[[nodiscard]] Readable readableMovement(const std::optional<LargerGauge>& gauge,
                                        const rulebook::RulesInForce& rules);

/// May a test of that time be made on the gauge? Longer: split the installation or use a finer gauge.
/// Source: the same extract for the rule; its minutes were not read and ship empty. Checked:
/// tests/core/tightness/readable_movement_test.cpp.
[[nodiscard]] rulebook::Finding longestTest(const std::optional<LargerGauge>& gauge,
                                            const std::optional<quantity::Duration>& needed,
                                            const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
