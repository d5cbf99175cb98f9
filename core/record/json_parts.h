// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "core/rulebook/finding.h"

#include <nlohmann/json.hpp>
#include <string>

/// JSON of the parts of a snapshot; for this folder only. Numbers that mean something are texts: JSON's own
/// would be read back as doubles by half of the world.
namespace hearth::record {

using Json = nlohmann::json;

[[nodiscard]] Json jsonOf(const Document& document);
/// Throws std::exception when the JSON is not a document's.
[[nodiscard]] Document documentOf(const Json& json);

[[nodiscard]] Json jsonOf(const Plots& plots);
[[nodiscard]] Plots plotsOf(const Json& json);  // throws likewise

[[nodiscard]] Json jsonOf(const Diagram& diagram);
[[nodiscard]] Diagram diagramOf(const Json& json);  // throws likewise

[[nodiscard]] Json jsonOf(const rulebook::Value& value);
[[nodiscard]] Json jsonOf(const rulebook::Finding& finding);

/// Sorted keys, no blanks. What is not UTF-8 becomes U+FFFD, so that a record is never refused for one byte.
[[nodiscard]] std::string canonicalText(const Json& json);

}  // namespace hearth::record
