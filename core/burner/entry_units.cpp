// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/entry_units.h"

#include "core/quantity/units.h"
#include "core/rulebook/values.h"

#include <algorithm>

namespace hearth::burner {

using quantity::UnitCode;
using quantity::UnitFamily;

namespace {

/// The entry's unit if it is one of the family; else the family's first.
UnitCode entryUnitIn(const rulebook::Entry& entry, UnitFamily family) {
    UnitCode unit = UnitCode::None;
    if (const auto figure = rulebook::figureOf(entry)) {
        unit = figure->unit;
    } else if (const auto range = rulebook::rangeOf(entry)) {
        unit = range->unit;
    }
    const auto units = quantity::unitsOf(family);
    return std::find(units.begin(), units.end(), unit) == units.end() ? units.front() : unit;
}

}  // namespace

std::optional<quantity::Share> shareOf(const rulebook::Entry& entry) {
    const auto figure = rulebook::figureOf(entry);
    if (!figure || entryUnitIn(entry, UnitFamily::Share) != figure->unit) {
        return std::nullopt;
    }
    return quantity::Share(figure->value.toDouble(), quantity::shareUnit(figure->unit));
}

quantity::Uncertain inUnitOf(const rulebook::Entry& entry, const Measured<quantity::Share>& share) {
    return share.in(quantity::shareUnit(entryUnitIn(entry, UnitFamily::Share)));
}

quantity::Uncertain inUnitOf(const rulebook::Entry& entry,
                             const Measured<quantity::PressureChange>& pressure) {
    return pressure.in(quantity::pressureUnit(entryUnitIn(entry, UnitFamily::Pressure)));
}

}  // namespace hearth::burner
