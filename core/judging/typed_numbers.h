// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"
#include "core/rulebook/given.h"

#include <string_view>

/// What stands behind Readings: a typed number with its unit.
namespace hearth::judging {

struct Number {
    quantity::Decimal value;
    quantity::UnitCode unit = quantity::UnitCode::None;
};

/// The family's own unit when none was said; unusable for one of another family.
[[nodiscard]] rulebook::Given<Number> numberOf(std::string_view text, quantity::UnitCode typedUnit,
                                               quantity::UnitFamily family);
/// What an entry holds: its canonical decimal; typed but not canonical is unreadable. No entry: missing.
[[nodiscard]] rulebook::Given<Number> numberOf(const reg::Entry* entry, quantity::UnitFamily family);

}  // namespace hearth::judging
