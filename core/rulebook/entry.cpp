// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/entry.h"

#include "core/rulebook/code_table.h"

#include <array>

namespace hearth::rulebook {

namespace {

constexpr auto kRules = std::to_array<Code<Rule>>({
    {Rule::LetByPressure, "let_by_pressure"},
    {Rule::LetByTime, "let_by_time"},
    {Rule::TestPressure, "test_pressure"},
    {Rule::TestPressureLeast, "test_pressure_least"},
    {Rule::SettleTime, "settle_time"},
    {Rule::TestTime, "test_time"},
    {Rule::NoMovementWater, "no_movement_water"},
    {Rule::NoMovementElectronic, "no_movement_electronic"},
    {Rule::SettleMovement, "settle_movement"},
    {Rule::DropNoMeter28, "drop_no_meter_28"},
    {Rule::DropUltrasonic28, "drop_ultrasonic_28"},
    {Rule::DropDiaphragm6At28, "drop_diaphragm_6_at_28"},
    {Rule::DropDiaphragm16At28, "drop_diaphragm_16_at_28"},
    {Rule::DropNoMeter35, "drop_no_meter_35"},
    {Rule::DropUltrasonic35, "drop_ultrasonic_35"},
    {Rule::DropDiaphragm6At35, "drop_diaphragm_6_at_35"},
    {Rule::DropDiaphragm16At35, "drop_diaphragm_16_at_35"},
    {Rule::DropByVolume, "drop_by_volume"},
    {Rule::DropShortCut, "drop_short_cut"},
    {Rule::ScopeVolume, "scope_volume"},
    {Rule::ScopePipe, "scope_pipe"},
    {Rule::ScopeMeter, "scope_meter"},
    {Rule::ScopeOperatingPressure, "scope_operating_pressure"},
    {Rule::ScopeSupplyPressure, "scope_supply_pressure"},
    {Rule::PurgeVolumeSmall, "purge_volume_small"},
    {Rule::PurgeVolumeFactor, "purge_volume_factor"},
    {Rule::PurgeOpenBurnerAbove, "purge_open_burner_above"},
    {Rule::FittingsShare, "fittings_share"},
    {Rule::GaugeAccuracy, "gauge_accuracy"},
    {Rule::StandingPressureMost, "standing_pressure_most"},
    {Rule::WorkingPressure, "working_pressure"},
    {Rule::AssumedTemperatureChange, "assumed_temperature_change"},
    // --- gas
    {Rule::WorkingHeatValue, "working_heat_value"},
    {Rule::NetworkWobbeLeast, "network_wobbe_least"},
    {Rule::NetworkWobbeMost, "network_wobbe_most"},
    {Rule::NetworkDensityMost, "network_density_most"},
    {Rule::NetworkHeatValueSeen, "network_heat_value_seen"},
    // --- end of gas
    // --- pipework
    // --- end of pipework
    // --- larger
    // --- end of larger
    // --- burner
    // --- end of burner
    // --- combustion
    // --- end of combustion
    // --- air
    // --- end of air
    // --- deadlines
    // --- end of deadlines
});
static_assert(inOrder(kRules));

}  // namespace

std::string_view ruleText(Rule rule) {
    return textIn(kRules, rule);
}

std::optional<Rule> ruleFromText(std::string_view text) {
    return valueIn(kRules, text);
}

std::optional<quantity::Figure> figureOf(const Entry& entry) {
    const auto* figure = std::get_if<quantity::Figure>(&entry.value);
    return figure == nullptr ? std::nullopt : std::optional(*figure);
}

std::optional<Range> rangeOf(const Entry& entry) {
    const auto* range = std::get_if<Range>(&entry.value);
    return range == nullptr ? std::nullopt : std::optional(*range);
}

}  // namespace hearth::rulebook
