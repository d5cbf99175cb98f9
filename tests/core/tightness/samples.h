// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/rules_in_force.h"
#include "core/tightness/gauge.h"
#include "core/tightness/verdict.h"

#include <initializer_list>

/// Books, gauges and stages that the tests of this folder vary.
namespace hearth::tightness::samples {

[[nodiscard]] quantity::PressureChange millibar(double value);
[[nodiscard]] quantity::GaugePressure gaugeMillibar(double value);
[[nodiscard]] quantity::Volume cubicMetres(double value);
[[nodiscard]] quantity::Duration seconds(double value);

/// A reading on a display with that step.
[[nodiscard]] Reading reading(double millibar, double digit = 0.01);
[[nodiscard]] Stage stage(double start, double end, double took, double digit = 0.01);
[[nodiscard]] Gauge electronic(double step = 0.01);
[[nodiscard]] Gauge water();

/// The shipped book with every entry that has a value confirmed by the firm.
[[nodiscard]] rulebook::RuleBook allConfirmed();
/// The same with one rule of an edition and gas given a provenance, or emptied.
void setProvenance(rulebook::RuleBook& book, const rulebook::RuleKey& key, rulebook::Provenance provenance);
void empty(rulebook::RuleBook& book, const rulebook::RuleKey& key);
/// Lays a figure over a key as the firm's own.
void layFigure(rulebook::RuleBook& book, const rulebook::RuleKey& key, const quantity::Figure& figure);
/// Lays bands over a key; they are invented and of no standard.
void layBands(rulebook::RuleBook& book, const rulebook::RuleKey& key);

extern const calendar::Date kSeptember;  // 2026-09-15: both editions
extern const calendar::Date kNovember;   // 2026-11-10: Edition 4 alone

[[nodiscard]] rulebook::RulesInForce edition3(const rulebook::RuleBook& book,
                                              rulebook::Gas gas = rulebook::Gas::NaturalGas);
[[nodiscard]] rulebook::RulesInForce edition4(const rulebook::RuleBook& book,
                                              rulebook::Gas gas = rulebook::Gas::NaturalGas);

/// A part under test: meter by code and largest pipe.
[[nodiscard]] TestedPart part(const char* meter, double nominal, double volume = 0.0115);

/// A whole test of an existing installation with appliances connected, and its verdict with every stage
/// before it right.
[[nodiscard]] TightnessInput test(double fall, double digit = 0.01);
[[nodiscard]] TightnessFindings judged(const TightnessInput& input, const rulebook::RulesInForce& rules);

}  // namespace hearth::tightness::samples
