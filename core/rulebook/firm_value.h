// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/entry.h"

#include <optional>
#include <string_view>

namespace hearth::rulebook {

/// What is wrong with a value that a firm wants to lay over a rule; nothing when it can be used. The texts
/// are those of RuleBook::lay.
[[nodiscard]] std::optional<std::string_view> faultOf(Rule rule, const Value& value);

/// A value of the shape that the rule needs.
enum class ValueShape { Figure, Range, Bands };
[[nodiscard]] ValueShape shapeOf(Rule rule);

}  // namespace hearth::rulebook
