// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/analyser.h"
#include "core/gas/named_gases.h"
#include "core/gas/properties.h"
#include "core/gas/stoichiometry.h"
#include "core/rulebook/rules_in_force.h"

/// Readings, gases and books that the tests on flue gas vary.
namespace hearth::burner::flue {

[[nodiscard]] quantity::Share ppm(double value);
[[nodiscard]] quantity::Share percent(double value);
[[nodiscard]] quantity::Temperature celsius(double value);
/// Typed with a last digit of that worth.
[[nodiscard]] ShareReading ppmRead(double value, double digit = 1.0);
[[nodiscard]] ShareReading percentRead(double value, double digit = 0.1);
/// CO in ppm, CO2 and O2 in per cent.
[[nodiscard]] FlueReadings read(double carbonMonoxide, double carbonDioxide, double oxygen = 4.5);
/// With a fresh-air setting outdoors.
[[nodiscard]] Analyser zeroed();

/// Of a named gas ("g20").
[[nodiscard]] const gas::Composition& named(const char* code);
[[nodiscard]] gas::Stoichiometry burning(const char* code);

/// The shipped book with every entry that has a value confirmed by the firm.
[[nodiscard]] rulebook::RuleBook confirmed();
[[nodiscard]] rulebook::RulesInForce inForce(const rulebook::RuleBook& book);

}  // namespace hearth::burner::flue
