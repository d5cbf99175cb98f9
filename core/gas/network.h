// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/gas/properties.h"
#include "core/gas/stated.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/given.h"
#include "core/rulebook/rules_in_force.h"

/// Is the gas what a public network may deliver? Limits are the rule book's, of the day.
namespace hearth::gas {

/// Wobbe index against the least and the greatest that the law allows. Another gas than natural gas, or an
/// index that was not given, has no verdict.
/// Source: Gas Safety (Management) Regulations 1996, Schedule 3, as the entries NetworkWobbeLeast and
/// NetworkWobbeMost say where each was read.
/// Checked: tests/core/gas/network_test.cpp.
[[nodiscard]] rulebook::Finding networkWobbe(const rulebook::Given<Stated<GrossWobbe>>& wobbe,
                                             const rulebook::RulesInForce& rules);

/// Relative density against the greatest; before 6 April 2023 there was no such limit and there is no
/// verdict. Source: the same Schedule as amended in 2023, as the entry NetworkDensityMost says. Checked:
/// tests/core/gas/network_test.cpp.
[[nodiscard]] rulebook::Finding networkDensity(const rulebook::Given<Stated<double>>& relativeDensity,
                                               const rulebook::RulesInForce& rules);

/// Whether a calorific value is one that networks are seen to carry. Information only: beyond the range it
/// is "look again", whatever the entry's provenance.
/// Source: as the entry NetworkHeatValueSeen says.
/// Checked: tests/core/gas/network_test.cpp.
[[nodiscard]] rulebook::Finding heatValueSeen(const rulebook::Given<Stated<quantity::GrossHeatValue>>& gross,
                                              const rulebook::RulesInForce& rules);

}  // namespace hearth::gas
