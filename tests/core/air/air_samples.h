// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/ventilation.h"
#include "core/quantity/units.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <vector>

/// Rooms, vents, appliances and books that the tests on air vary.
namespace hearth::air::samples {

[[nodiscard]] quantity::Area cm2(double value);
[[nodiscard]] quantity::NetPower kw(double value);
[[nodiscard]] quantity::Volume m3(double value);
[[nodiscard]] quantity::Share ppm(double value);
[[nodiscard]] quantity::Duration minutes(double value);

[[nodiscard]] Appliance appliance(ApplianceKind kind, Flue flue, double kilowatt);
/// Open, not closable, no fly-screen, sleeved.
[[nodiscard]] Vent vent(double squareCentimetres, VentLeadsTo leadsTo = VentLeadsTo::Outside);
/// 30 m3, no tight dwelling, a window that opens, no door to outside, no vents.
[[nodiscard]] Room roomWith(std::vector<Appliance> appliances);

/// The shipped book with every entry that has a value confirmed by the firm.
[[nodiscard]] rulebook::RuleBook confirmedBook();
/// The same with a value of the firm's in place of one entry's.
[[nodiscard]] rulebook::RuleBook bookWith(rulebook::Rule rule, double value, quantity::UnitCode unit);
/// A book with the same again.
void enter(rulebook::RuleBook& book, rulebook::Rule rule, double value, quantity::UnitCode unit);
[[nodiscard]] rulebook::RulesInForce airRules(const rulebook::RuleBook& book);

/// The first of a kind; fails the test and gives an empty one where there is none.
[[nodiscard]] rulebook::Finding findingOf(const std::vector<rulebook::Finding>& findings,
                                          rulebook::FindingKind kind);

}  // namespace hearth::air::samples
