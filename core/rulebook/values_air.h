// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/units.h"
#include "core/rulebook/entry.h"

#include <optional>

namespace hearth::rulebook {

/// In which units a rule of ventilation or room carbon monoxide is stated; nothing for any other rule.
[[nodiscard]] std::optional<quantity::UnitFamily> airFamilyOf(Rule rule);

}  // namespace hearth::rulebook
