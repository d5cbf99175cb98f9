// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/answer.h"

#include "core/judging/asking.h"
#include "core/rulebook/code_table.h"

#include <array>
#include <cassert>
#include <utility>

namespace hearth::judging {

namespace {

constexpr auto kDerived = std::to_array<rulebook::Code<Derived>>({
    // --- gas_rate
    {Derived::GasFlow, "gas_flow"},
    {Derived::HeatInputGross, "heat_input_gross"},
    {Derived::HeatInputNet, "heat_input_net"},
    {Derived::TwoMinuteShortcut, "two_minute_shortcut"},
    {Derived::TimeForTwoPercent, "time_for_two_percent"},
    {Derived::MeterCorrection, "meter_correction"},
    // --- end of gas_rate
    // --- pressures
    {Derived::DropToAppliance, "drop_to_appliance"},
    // --- end of pressures
    // --- combustion
    {Derived::RatioHigh, "ratio_high"},
    {Derived::RatioLow, "ratio_low"},
    {Derived::LambdaExact, "lambda_exact"},
    {Derived::LambdaSimple, "lambda_simple"},
    {Derived::ExcessAir, "excess_air"},
    {Derived::ExcessAirSimple, "excess_air_simple"},
    {Derived::ExcessAirLow, "excess_air_low"},
    {Derived::Co2FromOxygen, "co2_from_oxygen"},
    {Derived::CoAirFree, "co_air_free"},
    {Derived::CoAirFreeLow, "co_air_free_low"},
    {Derived::CoAtThreePercent, "co_at_three_percent"},
    {Derived::CoMassNet, "co_mass_net"},
    {Derived::CoMassGross, "co_mass_gross"},
    {Derived::SiegertLoss, "siegert_loss"},
    {Derived::SiegertEfficiency, "siegert_efficiency"},
    {Derived::DryGasLoss, "dry_gas_loss"},
    {Derived::WaterVapourLoss, "water_vapour_loss"},
    {Derived::UnburnedLoss, "unburned_loss"},
    {Derived::LossesEfficiency, "losses_efficiency"},
    {Derived::FlueDewPoint, "flue_dew_point"},
    {Derived::Recirculation, "recirculation"},
    {Derived::LatentCeiling, "latent_ceiling"},
    // --- end of combustion
    // --- hot_water
    {Derived::HotWaterOutput, "hot_water_output"},
    {Derived::HotWaterExpectedFlow, "hot_water_expected_flow"},
    {Derived::HotWaterMakersFlowHere, "hot_water_makers_flow_here"},
    {Derived::HeatBalance, "heat_balance"},
    // --- end of hot_water
    // --- ventilation
    {Derived::VentNeed, "vent_need"},
    {Derived::VentNeedHigh, "vent_need_high"},
    {Derived::VentNeedLow, "vent_need_low"},
    {Derived::VentThere, "vent_there"},
    {Derived::VentInput, "vent_input"},
    // --- end of ventilation
    // --- room_co
    {Derived::CoPeak, "co_peak"},
    {Derived::CoMeanAll, "co_mean_all"},
    {Derived::CoMeanQuarter, "co_mean_quarter"},
    {Derived::CoChange, "co_change"},
    {Derived::CoMeanLong, "co_mean_long"},
    // --- end of room_co
    // --- pipes
    {Derived::VolumeWhole, "volume_whole"},
    {Derived::DropWorst, "drop_worst"},
    {Derived::VolumeTested, "volume_tested"},
    {Derived::DropMeasured, "drop_measured"},
    {Derived::CopperMore, "copper_more"},
    // --- end of pipes
    // --- purge
    {Derived::PurgeVolume, "purge_volume"},
    {Derived::PurgeTime, "purge_time"},
    {Derived::PurgeFlowLeast, "purge_flow_least"},
    // --- end of purge
    // --- larger
    {Derived::TestTimeNeeded, "test_time_needed"},
    {Derived::LargerLeak, "larger_leak"},
    {Derived::StrengthPressureNeeded, "strength_pressure_needed"},
    // --- end of larger
    // --- gas
    {Derived::GrossHeat, "gross_heat"},
    {Derived::NetHeat, "net_heat"},
    {Derived::GrossPerMass, "gross_per_mass"},
    {Derived::GrossOverNet, "gross_over_net"},
    {Derived::RelativeDensity, "relative_density"},
    {Derived::WobbeGross, "wobbe_gross"},
    {Derived::WobbeNet, "wobbe_net"},
    {Derived::AirNeeded, "air_needed"},
    {Derived::DryProducts, "dry_products"},
    {Derived::WetProducts, "wet_products"},
    {Derived::Co2Max, "co2_max"},
    {Derived::StoichiometricDewPoint, "stoichiometric_dew_point"},
    {Derived::CondensateGross, "condensate_gross"},
    // --- end of gas
});
static_assert(rulebook::inOrder(kDerived));

constexpr auto kAllDerived = [] {
    std::array<Derived, kDerived.size()> all{};
    for (std::size_t i = 0; i < kDerived.size(); ++i) {
        all[i] = kDerived[i].value;
    }
    return all;
}();

using Adapter = void (*)(Asking&);

Adapter adapterOf(Question question) {
    switch (question) {
        case Question::GasRate:
            return answerGasRate;
        case Question::Pressures:
            return answerPressures;
        case Question::Combustion:
            return answerCombustion;
        case Question::HotWater:
            return answerHotWater;
        case Question::Regulation26:
            return answerRegulation26;
        case Question::Ventilation:
            return answerVentilation;
        case Question::RoomCo:
            return answerRoomCo;
        case Question::Pipes:
            return answerPipes;
        case Question::Purge:
            return answerPurge;
        case Question::Larger:
            return answerLarger;
        case Question::Gas:
            return answerGas;
        case Question::CheckDue:
            return answerCheckDue;
    }
    assert(false);
    return answerGas;
}

}  // namespace

std::span<const Derived> allDerived() {
    return kAllDerived;
}

std::string_view derivedText(Derived derived) {
    return rulebook::textIn(kDerived, derived);
}

Answer answer(const Worksheet& sheet, const rulebook::RuleBook& book) {
    Asking asking(sheet, book);
    adapterOf(sheet.question())(asking);
    return std::move(asking.answer);
}

}  // namespace hearth::judging
