// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/heat_input.h"
#include "core/rulebook/rule_book.h"

/// Books, timings and fuels that the tests of gas rate, heat input, pressures and hot water vary.
namespace hearth::burner::ratesamples {

/// The shipped book with every entry that has a value confirmed by the firm.
[[nodiscard]] rulebook::RuleBook allConfirmed();
/// The book without one rule.
[[nodiscard]] rulebook::RuleBook without(const rulebook::RuleBook& book, rulebook::Rule rule);
[[nodiscard]] rulebook::RulesInForce on(const rulebook::RuleBook& book,
                                        rulebook::Gas gas = rulebook::Gas::NaturalGas);

[[nodiscard]] quantity::Volume cubicMetres(double value);
[[nodiscard]] quantity::Duration seconds(double value);
[[nodiscard]] quantity::Flow hourly(double cubicMetres);
[[nodiscard]] quantity::Share percent(double value);

/// A fuel of that gross calorific value (MJ/m3) and ratio of gross to net.
[[nodiscard]] gas::Fuel fuel(double gross, double ratio = 1.11);
/// A timing with everything said as it should be, on a meter that shows litres.
[[nodiscard]] RateInput timed(double passed, double took);

}  // namespace hearth::burner::ratesamples
