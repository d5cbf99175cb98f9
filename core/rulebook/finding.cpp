// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/finding.h"

#include "core/rulebook/code_table.h"

#include <array>
#include <cassert>
#include <cmath>

namespace hearth::rulebook {

namespace {

constexpr auto kOutcomes = std::to_array<Code<Outcome>>({
    {Outcome::Pass, "pass"},
    {Outcome::Fail, "fail"},
    {Outcome::LookAgain, "look_again"},
    {Outcome::NoVerdict, "no_verdict"},
});
static_assert(inOrder(kOutcomes));

constexpr auto kKinds = std::to_array<Code<FindingKind>>({
    {FindingKind::SafeToTouch, "safe_to_touch"},
    {FindingKind::OpenEnds, "open_ends"},
    {FindingKind::SmellOnArrival, "smell_on_arrival"},
    {FindingKind::VisualInspection, "visual_inspection"},
    {FindingKind::Scope, "scope"},
    {FindingKind::Volume, "volume"},
    {FindingKind::EditionChoice, "edition_choice"},
    {FindingKind::GaugeZero, "gauge_zero"},
    {FindingKind::GaugeCalibration, "gauge_calibration"},
    {FindingKind::GaugeAccuracy, "gauge_accuracy"},
    {FindingKind::LetBy, "let_by"},
    {FindingKind::Settling, "settling"},
    {FindingKind::TestPressure, "test_pressure"},
    {FindingKind::TestTime, "test_time"},
    {FindingKind::Tightness, "tightness"},
    {FindingKind::IsolatedRetest, "isolated_retest"},
    {FindingKind::VolumeBands, "volume_bands"},
    {FindingKind::DisplaysAgree, "displays_agree"},
    {FindingKind::Purge, "purge"},
    {FindingKind::JointsProved, "joints_proved"},
    {FindingKind::StandingPressure, "standing_pressure"},
    {FindingKind::WorkingPressure, "working_pressure"},
    // --- gas
    {FindingKind::NetworkWobbe, "network_wobbe"},
    {FindingKind::NetworkDensity, "network_density"},
    {FindingKind::HeatValueSeen, "heat_value_seen"},
    // --- end of gas
    // --- pipework
    {FindingKind::PressureDropDesign, "pressure_drop_design"},
    {FindingKind::PressureDropMeasured, "pressure_drop_measured"},
    {FindingKind::PurgeVolumeLarge, "purge_volume_large"},
    {FindingKind::PurgeFlow, "purge_flow"},
    {FindingKind::PurgeEnd, "purge_end"},
    // --- end of pipework
    // --- larger
    {FindingKind::StandardChoice, "standard_choice"},
    {FindingKind::ReadableMovement, "readable_movement"},
    {FindingKind::LongestTest, "longest_test"},
    {FindingKind::PermittedLeak, "permitted_leak"},
    {FindingKind::StrengthPressure, "strength_pressure"},
    {FindingKind::StrengthTimes, "strength_times"},
    {FindingKind::Strength, "strength"},
    // --- end of larger
    // --- burner
    {FindingKind::GasRate, "gas_rate"},
    {FindingKind::HeatInput, "heat_input"},
    {FindingKind::InletDrop, "inlet_drop"},
    {FindingKind::InletPressure, "inlet_pressure"},
    {FindingKind::BurnerPressure, "burner_pressure"},
    {FindingKind::MeterAverage, "meter_average"},
    {FindingKind::HotWater, "hot_water"},
    {FindingKind::HeatBalance, "heat_balance"},
    {FindingKind::Regulation26, "regulation26"},
    // --- end of burner
    // --- combustion
    {FindingKind::CombustionRatioMaximum, "combustion_ratio_maximum"},
    {FindingKind::CombustionRatioMinimum, "combustion_ratio_minimum"},
    {FindingKind::CarbonMonoxideMaximum, "carbon_monoxide_maximum"},
    {FindingKind::CarbonMonoxideMinimum, "carbon_monoxide_minimum"},
    {FindingKind::CarbonDioxideMaximum, "carbon_dioxide_maximum"},
    {FindingKind::CarbonDioxideMinimum, "carbon_dioxide_minimum"},
    {FindingKind::Combustion, "combustion"},
    {FindingKind::AirInletOxygen, "air_inlet_oxygen"},
    {FindingKind::AirInletCarbonDioxide, "air_inlet_carbon_dioxide"},
    {FindingKind::CombustionPlausible, "combustion_plausible"},
    {FindingKind::CombustionPlausibleMinimum, "combustion_plausible_minimum"},
    {FindingKind::RatioAgrees, "ratio_agrees"},
    // --- end of combustion
    // --- air
    {FindingKind::VentScope, "vent_scope"},
    {FindingKind::VentFreeArea, "vent_free_area"},
    {FindingKind::VentHighLevel, "vent_high_level"},
    {FindingKind::VentLowLevel, "vent_low_level"},
    {FindingKind::VentOpening, "vent_opening"},
    {FindingKind::VentAllowed, "vent_allowed"},
    {FindingKind::VentSound, "vent_sound"},
    {FindingKind::VentBasement, "vent_basement"},
    {FindingKind::PlantTemperature, "plant_temperature"},
    {FindingKind::RoomCoBackground, "room_co_background"},
    {FindingKind::RoomCoLevel, "room_co_level"},
    {FindingKind::RoomCoShortMean, "room_co_short_mean"},
    {FindingKind::RoomCoLongMean, "room_co_long_mean"},
    {FindingKind::RoomCoSampling, "room_co_sampling"},
    {FindingKind::RoomCoBlood, "room_co_blood"},
    // --- end of air
    // --- deadlines
    {FindingKind::CheckDue, "check_due"},
    {FindingKind::CheckMade, "check_made"},
    // --- end of deadlines
    // --- competence
    {FindingKind::EngineerCard, "engineer_card"},
    {FindingKind::EngineerCategories, "engineer_categories"},
    {FindingKind::AnalyserCalibration, "analyser_calibration"},
    // --- end of competence
});
static_assert(inOrder(kKinds));

constexpr int gravity(Outcome outcome) {
    switch (outcome) {
        case Outcome::Pass:
            return 0;
        case Outcome::LookAgain:
            return 1;
        case Outcome::NoVerdict:
            return 2;
        case Outcome::Fail:
            break;
    }
    return 3;
}

/// One part in 10^9: far below any gauge's last digit, far above what binary fractions lose.
constexpr double kForgiven = 1e-9;

}  // namespace

std::string_view outcomeText(Outcome outcome) {
    return textIn(kOutcomes, outcome);
}

std::optional<Outcome> outcomeFromText(std::string_view text) {
    return valueIn(kOutcomes, text);
}

Outcome graver(Outcome a, Outcome b) {
    return gravity(a) >= gravity(b) ? a : b;
}

std::string_view kindText(FindingKind kind) {
    return textIn(kKinds, kind);
}

std::optional<FindingKind> kindFromText(std::string_view text) {
    return valueIn(kKinds, text);
}

Outcome decide(bool within, Provenance provenance) {
    switch (provenance) {
        case Provenance::Published:
        case Provenance::Firm:
        case Provenance::Maker:
            return within ? Outcome::Pass : Outcome::Fail;
        case Provenance::Secondary:
        case Provenance::Memory:
            return within ? Outcome::LookAgain : Outcome::Fail;
        case Provenance::CommonPractice:
            break;
    }
    return Outcome::LookAgain;
}

bool holds(double measured, Comparison comparison, double limit) {
    const double slack = kForgiven * std::abs(limit);
    switch (comparison) {
        case Comparison::AtMost:
            return measured <= limit + slack;
        case Comparison::Below:
            return measured < limit - slack;
        case Comparison::AtLeast:
            return measured >= limit - slack;
        case Comparison::Equals:
            return std::abs(measured - limit) <= slack;
        case Comparison::Within:
        case Comparison::AsGiven:
            break;
    }
    assert(!"a range or a factor is not one limit");
    return false;
}

}  // namespace hearth::rulebook
