// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/route.h"

#include <optional>
#include <random>
#include <string_view>
#include <vector>

/// Pipes for the tests of this folder. Invented.
namespace hearth::pipework::samples {

[[nodiscard]] TreeSection fromMeter(std::string_view tube, double metres);
[[nodiscard]] TreeSection after(std::size_t feeder, std::string_view tube, double metres);
/// The section with an appliance at its end; m3/h.
[[nodiscard]] TreeSection drawing(TreeSection section, double design, std::optional<double> measured = {});
[[nodiscard]] Tree treeOf(std::vector<TreeSection> sections);

/// The rule book as shipped, on a day of 2026.
[[nodiscard]] const rulebook::RuleBook& shippedBook();
/// The shipped book with these entries confirmed by the firm, at their shipped values.
[[nodiscard]] rulebook::RuleBook confirmed(const std::vector<rulebook::RuleKey>& keys);
[[nodiscard]] rulebook::RulesInForce rulesOf(const rulebook::RuleBook& book,
                                             rulebook::Gas gas = rulebook::Gas::NaturalGas);

/// A random tree of copper, 10 to 28 mm, without fittings; every end draws something.
[[nodiscard]] std::vector<TreeSection> randomSections(std::mt19937& random, std::size_t count);

}  // namespace hearth::pipework::samples
