// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/quantity/units.h"
#include "core/rulebook/entry.h"

#include <optional>

/// An entry's value as a quantity, whatever unit of its family it is held in. Nothing when the entry is empty
/// or of another shape.
namespace hearth::rulebook {

[[nodiscard]] quantity::UnitFamily unitFamilyOf(Rule rule);
/// The unit in which standards state the rule, for a field that is to be filled in: a pipe's size is in
/// millimetres, though other lengths are typed in metres.
[[nodiscard]] quantity::UnitCode usualUnitOf(Rule rule);

[[nodiscard]] std::optional<quantity::PressureChange> pressureChangeOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::GaugePressure> gaugePressureOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::Volume> volumeOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::Duration> durationOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::Length> lengthOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::Flow> flowOf(const Entry& entry);
[[nodiscard]] std::optional<quantity::TemperatureChange> temperatureChangeOf(const Entry& entry);
/// Calorific values in the rule book are gross, as bills state them.
[[nodiscard]] std::optional<quantity::GrossHeatValue> grossHeatValueOf(const Entry& entry);
/// A factor or share: a figure without a unit.
[[nodiscard]] std::optional<double> factorOf(const Entry& entry);

struct PressureRange {
    quantity::GaugePressure least;
    quantity::GaugePressure most;
    [[nodiscard]] bool contains(quantity::GaugePressure pressure) const;
};
[[nodiscard]] std::optional<PressureRange> pressureRangeOf(const Entry& entry);

/// What the band that `volume` falls into allows; nothing beyond the last band.
[[nodiscard]] const Band* bandFor(const std::vector<Band>& bands, quantity::Volume volume);
[[nodiscard]] quantity::PressureChange allowedBy(const Band& band);
/// The bands of an entry; nothing when it is empty or of another shape.
[[nodiscard]] const std::vector<Band>* bandsOf(const Entry& entry);

}  // namespace hearth::rulebook
