// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rulebook/entry.h"

#include <string>
#include <string_view>

namespace hearth::record {

/// A rule's value as canonical JSON, decimals as text: {"figure":{"unit":"mbar","value":"0.20"}}; and back.
[[nodiscard]] std::string ruleValueJson(const rulebook::Value& value);
/// Error: RuleValueUnusable with an empty rule code, which the caller knows, and the text as what is wrong.
[[nodiscard]] Result<rulebook::Value> ruleValueFromJson(std::string_view json);

}  // namespace hearth::record
