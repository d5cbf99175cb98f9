// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/measured.h"
#include "core/rulebook/entry.h"

#include <optional>

/// Entries of the rule book in the units of this folder, whatever unit of the family a firm has typed.
namespace hearth::burner {

/// A figure in per cent or ppm; nothing when the entry is empty or of another unit.
/// Source: the entry itself.
[[nodiscard]] std::optional<quantity::Share> shareOf(const rulebook::Entry& entry);

/// A measured value as numbers in the unit of the entry, for holding it against the entry.
/// Source: unit conversion alone.
[[nodiscard]] quantity::Uncertain inUnitOf(const rulebook::Entry& entry,
                                           const Measured<quantity::Share>& share);
[[nodiscard]] quantity::Uncertain inUnitOf(const rulebook::Entry& entry,
                                           const Measured<quantity::PressureChange>& pressure);

}  // namespace hearth::burner
