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
    {Rule::Up1aVolume, "up_1a_volume"},
    {Rule::Up1aPipe, "up_1a_pipe"},
    {Rule::Up1aOperatingPressure, "up_1a_operating_pressure"},
    {Rule::Up1SupplyPressure, "up_1_supply_pressure"},
    {Rule::ReadableWater, "readable_water"},
    {Rule::ReadableDense, "readable_dense"},
    {Rule::ReadableMercury, "readable_mercury"},
    {Rule::ReadableOneDecimal, "readable_one_decimal"},
    {Rule::ReadableTwoDecimals, "readable_two_decimals"},
    {Rule::ReadableOneDecimalWide, "readable_one_decimal_wide"},
    {Rule::ReadableNoDecimal, "readable_no_decimal"},
    {Rule::LongestWater, "longest_water"},
    {Rule::LongestDense, "longest_dense"},
    {Rule::LongestMercury, "longest_mercury"},
    {Rule::LongestOneDecimal, "longest_one_decimal"},
    {Rule::LongestTwoDecimals, "longest_two_decimals"},
    {Rule::LongestOneDecimalWide, "longest_one_decimal_wide"},
    {Rule::LongestNoDecimal, "longest_no_decimal"},
    {Rule::LargerLeastTime, "larger_least_time"},
    {Rule::TimeFactorGas, "time_factor_gas"},
    {Rule::TimeFactorAir, "time_factor_air"},
    {Rule::TimeFactorRoom, "time_factor_room"},
    {Rule::TimeFactorLargeRoom, "time_factor_large_room"},
    {Rule::LeakFactorGas, "leak_factor_gas"},
    {Rule::LeakFactorAir, "leak_factor_air"},
    {Rule::LeakNew, "leak_new"},
    {Rule::LeakTypeA, "leak_type_a"},
    {Rule::LeakTypeB, "leak_type_b"},
    {Rule::LeakTypeC, "leak_type_c"},
    {Rule::LargeRoomLeast, "large_room_least"},
    {Rule::LeakOutside, "leak_outside"},
    {Rule::LeakBuried, "leak_buried"},
    {Rule::LargerLetByShare, "larger_let_by_share"},
    {Rule::LargerLetByTime, "larger_let_by_time"},
    {Rule::LargerSettleTime, "larger_settle_time"},
    {Rule::LargerTestShare, "larger_test_share"},
    {Rule::StrengthIncidental, "strength_incidental"},
    {Rule::StrengthLowBand, "strength_low_band"},
    {Rule::StrengthMiddleBand, "strength_middle_band"},
    {Rule::StrengthOperatingLow, "strength_operating_low"},
    {Rule::StrengthOperatingMiddle, "strength_operating_middle"},
    {Rule::StrengthOperatingHigh, "strength_operating_high"},
    {Rule::StrengthSettleLow, "strength_settle_low"},
    {Rule::StrengthSettleMiddle, "strength_settle_middle"},
    {Rule::StrengthSettleHigh, "strength_settle_high"},
    {Rule::StrengthHoldLow, "strength_hold_low"},
    {Rule::StrengthHoldMiddle, "strength_hold_middle"},
    {Rule::StrengthHoldHigh, "strength_hold_high"},
    {Rule::StrengthFallLow, "strength_fall_low"},
    {Rule::StrengthFallMiddle, "strength_fall_middle"},
    {Rule::StrengthFallHigh, "strength_fall_high"},
    // --- end of larger
    // --- burner
    {Rule::MeterAccuracy, "meter_accuracy"},
    {Rule::TimingByHand, "timing_by_hand"},
    {Rule::MeteringFactor, "metering_factor"},
    {Rule::HeatInputOver, "heat_input_over"},
    {Rule::HeatInputUnder, "heat_input_under"},
    {Rule::InletPressure, "inlet_pressure"},
    {Rule::BurnerPressure, "burner_pressure"},
    {Rule::MeterAverage, "meter_average"},
    {Rule::MeterAverageTime, "meter_average_time"},
    {Rule::HotWaterOutput, "hot_water_output"},
    {Rule::HotWaterFlow, "hot_water_flow"},
    {Rule::HeatBalance, "heat_balance"},
    // --- end of burner
    // --- combustion
    {Rule::CombustionRatioCondensing, "combustion_ratio_condensing"},
    {Rule::CombustionCarbonMonoxideCondensing, "combustion_carbon_monoxide_condensing"},
    {Rule::CombustionRatioNonCondensing, "combustion_ratio_non_condensing"},
    {Rule::CombustionRatioWarmAir, "combustion_ratio_warm_air"},
    {Rule::CombustionRatioBackBoiler, "combustion_ratio_back_boiler"},
    {Rule::CombustionRatioBackBoilerFire, "combustion_ratio_back_boiler_fire"},
    {Rule::CombustionRatioFire, "combustion_ratio_fire"},
    {Rule::CombustionRatioOpenFluedWater, "combustion_ratio_open_flued_water"},
    {Rule::CombustionRatioRoomSealedWater, "combustion_ratio_room_sealed_water"},
    {Rule::CombustionRatioFluelessSpace, "combustion_ratio_flueless_space"},
    {Rule::CombustionRatioFluelessWater, "combustion_ratio_flueless_water"},
    {Rule::CombustionRatioOven, "combustion_ratio_oven"},
    {Rule::CombustionRatioGrill, "combustion_ratio_grill"},
    {Rule::CombustionRatioRangeCooker, "combustion_ratio_range_cooker"},
    {Rule::CombustionRatioDryer, "combustion_ratio_dryer"},
    {Rule::CombustionRatio, "combustion_ratio"},
    {Rule::CombustionCarbonMonoxide, "combustion_carbon_monoxide"},
    {Rule::CombustionCarbonDioxide, "combustion_carbon_dioxide"},
    {Rule::AirInletOxygen, "air_inlet_oxygen"},
    {Rule::AirInletCarbonDioxide, "air_inlet_carbon_dioxide"},
    {Rule::CombustionPlausibleGap, "combustion_plausible_gap"},
    // --- end of combustion
    // --- air
    {Rule::VentAdventitiousInput, "vent_adventitious_input"},
    {Rule::VentOpenFluedPerKilowatt, "vent_open_flued_per_kilowatt"},
    {Rule::VentScopeInput, "vent_scope_input"},
    {Rule::VentThroughWallFactor, "vent_through_wall_factor"},
    {Rule::VentTightPerKilowatt, "vent_tight_per_kilowatt"},
    {Rule::VentSeveralGroups, "vent_several_groups"},
    {Rule::VentDecorativeFire, "vent_decorative_fire"},
    {Rule::VentDecorativeInputMost, "vent_decorative_input_most"},
    {Rule::VentFireInputWithout, "vent_fire_input_without"},
    {Rule::VentMakersArea, "vent_makers_area"},
    {Rule::VentOpenToRoomHigh, "vent_open_to_room_high"},
    {Rule::VentOpenToRoomLow, "vent_open_to_room_low"},
    {Rule::VentOpenOutsideHigh, "vent_open_outside_high"},
    {Rule::VentOpenOutsideLow, "vent_open_outside_low"},
    {Rule::VentSealedToRoomHigh, "vent_sealed_to_room_high"},
    {Rule::VentSealedToRoomLow, "vent_sealed_to_room_low"},
    {Rule::VentSealedOutsideHigh, "vent_sealed_outside_high"},
    {Rule::VentSealedOutsideLow, "vent_sealed_outside_low"},
    {Rule::VentCookerVolumeSmall, "vent_cooker_volume_small"},
    {Rule::VentCookerVolumeMedium, "vent_cooker_volume_medium"},
    {Rule::VentCookerSmall, "vent_cooker_small"},
    {Rule::VentCookerMedium, "vent_cooker_medium"},
    {Rule::VentCookerBedSit, "vent_cooker_bed_sit"},
    {Rule::VentCookerBasement, "vent_cooker_basement"},
    {Rule::VentWaterHeaterInputMost, "vent_water_heater_input_most"},
    {Rule::VentWaterHeaterVolumeLeast, "vent_water_heater_volume_least"},
    {Rule::VentWaterHeaterVolumeMedium, "vent_water_heater_volume_medium"},
    {Rule::VentWaterHeaterVolumeLarge, "vent_water_heater_volume_large"},
    {Rule::VentWaterHeaterSmall, "vent_water_heater_small"},
    {Rule::VentWaterHeaterMedium, "vent_water_heater_medium"},
    {Rule::VentHeaterWattsRoom, "vent_heater_watts_room"},
    {Rule::VentHeaterWattsInternal, "vent_heater_watts_internal"},
    {Rule::VentHeaterBase, "vent_heater_base"},
    {Rule::VentHeaterInputRoom, "vent_heater_input_room"},
    {Rule::VentHeaterPerKilowattRoom, "vent_heater_per_kilowatt_room"},
    {Rule::VentHeaterInputInternal, "vent_heater_input_internal"},
    {Rule::VentHeaterPerKilowattInternal, "vent_heater_per_kilowatt_internal"},
    {Rule::VentCabinetWattsRoom, "vent_cabinet_watts_room"},
    {Rule::VentCabinetWattsInternal, "vent_cabinet_watts_internal"},
    {Rule::VentCabinetVolumeLeast, "vent_cabinet_volume_least"},
    {Rule::VentCabinetPerKilowatt, "vent_cabinet_per_kilowatt"},
    {Rule::VentCabinetLeast, "vent_cabinet_least"},
    {Rule::VentDryer, "vent_dryer"},
    {Rule::PlantInputMost, "plant_input_most"},
    {Rule::PlantRoomLow, "plant_room_low"},
    {Rule::PlantRoomHigh, "plant_room_high"},
    {Rule::PlantEnclosureLowHalf, "plant_enclosure_low_half"},
    {Rule::PlantEnclosureHighHalf, "plant_enclosure_high_half"},
    {Rule::PlantEnclosureLowMost, "plant_enclosure_low_most"},
    {Rule::PlantEnclosureHighMost, "plant_enclosure_high_most"},
    {Rule::PlantEnclosureLowAll, "plant_enclosure_low_all"},
    {Rule::PlantEnclosureHighAll, "plant_enclosure_high_all"},
    {Rule::PlantSummerMost, "plant_summer_most"},
    {Rule::PlantSummerAll, "plant_summer_all"},
    {Rule::PlantTemperatureFloor, "plant_temperature_floor"},
    {Rule::PlantTemperatureMiddle, "plant_temperature_middle"},
    {Rule::PlantTemperatureCeiling, "plant_temperature_ceiling"},
    {Rule::RoomCoShortLimit, "room_co_short_limit"},
    {Rule::RoomCoLongLimit, "room_co_long_limit"},
    {Rule::RoomCoDangerFrom, "room_co_danger_from"},
    {Rule::RoomCoRaisedFrom, "room_co_raised_from"},
    {Rule::RoomCoNoActionMost, "room_co_no_action_most"},
    {Rule::RoomCoLeaveFrom, "room_co_leave_from"},
    {Rule::RoomCoCookerPeakMost, "room_co_cooker_peak_most"},
    {Rule::RoomCoSampleHeight, "room_co_sample_height"},
    {Rule::RoomCoSampleDistance, "room_co_sample_distance"},
    {Rule::RoomCoTimeFlued, "room_co_time_flued"},
    {Rule::RoomCoTimeFlueless, "room_co_time_flueless"},
    {Rule::RoomCoBloodLimit, "room_co_blood_limit"},
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
