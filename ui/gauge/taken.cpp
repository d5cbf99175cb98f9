// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/taken.h"

#include "core/quantity/units.h"

#include <algorithm>

namespace hearth::ui::gauge {

namespace {

constexpr std::array kSourceKinds{SourceKind::Serial, SourceKind::Network, SourceKind::Simulator};

}  // namespace

std::string_view codeOf(SourceKind kind) {
    switch (kind) {
        case SourceKind::Serial:
            return "serial";
        case SourceKind::Network:
            return "network";
        case SourceKind::Simulator:
            break;
    }
    return "simulator";
}

std::string_view codeOf(GaugeEvent event) {
    switch (event) {
        case GaugeEvent::LetBy:
            return "let_by";
        case GaugeEvent::Settling:
            return "settling";
        case GaugeEvent::Timing:
            return "timing";
        case GaugeEvent::TestEnd:
            return "test_end";
        case GaugeEvent::ValveShut:
            return "valve_shut";
        case GaugeEvent::PumpRemoved:
            return "pump_removed";
        case GaugeEvent::DoorOpened:
            break;
    }
    return "door_opened";
}

std::optional<SourceKind> sourceKindFromCode(std::string_view code) {
    const auto* found = std::find_if(kSourceKinds.begin(), kSourceKinds.end(),
                                     [code](SourceKind kind) { return codeOf(kind) == code; });
    return found == kSourceKinds.end() ? std::nullopt : std::optional(*found);
}

std::optional<GaugeEvent> gaugeEventFromCode(std::string_view code) {
    const auto* found = std::find_if(kGaugeEvents.begin(), kGaugeEvents.end(),
                                     [code](GaugeEvent event) { return codeOf(event) == code; });
    return found == kGaugeEvents.end() ? std::nullopt : std::optional(*found);
}

std::optional<quantity::GaugePressure> pressureOf(const quantity::Decimal& value, quantity::UnitCode unit) {
    const auto units = quantity::unitsOf(quantity::UnitFamily::Pressure);
    if (std::find(units.begin(), units.end(), unit) == units.end()) {
        return std::nullopt;
    }
    return quantity::GaugePressure(value.toDouble(), quantity::pressureUnit(unit));
}

std::optional<quantity::Share> coOf(const quantity::Decimal& value, quantity::UnitCode unit) {
    return unit == quantity::UnitCode::Ppm ? std::optional(quantity::Share(value.toDouble(), quantity::kPpm))
                                           : std::nullopt;
}

}  // namespace hearth::ui::gauge
