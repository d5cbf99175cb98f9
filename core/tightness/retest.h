// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"

#include <optional>

namespace hearth::tightness {

/// The repeat with the appliances isolated: is the pipework clear of movement? A perceptible fall fails,
/// whatever else is wrong with the stage; it needs the test's pressure and time as the test does.
/// Source: gas register's bulletin on IGEM/UP/1B Edition 4, second edition: a movement must be shown not to
/// come from the pipework; that isolation is how: common practice, no source. Checked: retest_test.cpp.
[[nodiscard]] rulebook::Finding isolatedRetest(const Stage& stage, const std::optional<Gauge>& gauge,
                                               bool lowPressureExplained,
                                               const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness
