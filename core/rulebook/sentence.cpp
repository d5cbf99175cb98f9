// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/sentence.h"

#include "core/rulebook/code_table.h"

#include <array>
#include <cstddef>

namespace hearth::rulebook {

namespace {

constexpr auto kSays = std::to_array<Code<Say>>({
    {Say::ReadingMissing, "reading_missing"},
    {Say::ReadingUnusable, "reading_unusable"},
    {Say::LimitMissing, "limit_missing"},
    {Say::LimitFromMemory, "limit_from_memory"},
    {Say::LimitSecondary, "limit_secondary"},
    {Say::OutsideStated, "outside_stated"},
    {Say::EditionNotAllowed, "edition_not_allowed"},
    {Say::EditionToChoose, "edition_to_choose"},
    {Say::EditionUsed, "edition_used"},
    {Say::SafeToTouchDone, "safe_to_touch_done"},
    {Say::SafeToTouchVoltage, "safe_to_touch_voltage"},
    {Say::SafeToTouchNotDone, "safe_to_touch_not_done"},
    {Say::NoOpenEnds, "no_open_ends"},
    {Say::OpenEndsFound, "open_ends_found"},
    {Say::OpenEndsNotLooked, "open_ends_not_looked"},
    {Say::NoSmellOnArrival, "no_smell_on_arrival"},
    {Say::SmellOnArrival, "smell_on_arrival"},
    {Say::SmellNotAsked, "smell_not_asked"},
    {Say::VisualSound, "visual_sound"},
    {Say::VisualDefects, "visual_defects"},
    {Say::VisualNotDone, "visual_not_done"},
    {Say::GaugeZeroed, "gauge_zeroed"},
    {Say::GaugeNotZeroed, "gauge_not_zeroed"},
    {Say::GaugeZeroNotSaid, "gauge_zero_not_said"},
    {Say::GaugeInCalibration, "gauge_in_calibration"},
    {Say::GaugeCalibrationSoon, "gauge_calibration_soon"},
    {Say::GaugeOutOfCalibration, "gauge_out_of_calibration"},
    {Say::GaugeCalibrationUnknown, "gauge_calibration_unknown"},
    {Say::GaugeNotChosen, "gauge_not_chosen"},
    {Say::GaugeAccurateEnough, "gauge_accurate_enough"},
    {Say::GaugeTooCoarse, "gauge_too_coarse"},
    {Say::GaugeAccuracyUnknown, "gauge_accuracy_unknown"},
    {Say::OpenEndsSealed, "open_ends_sealed"},
    {Say::GaugeNotSuitable, "gauge_not_suitable"},
    {Say::VolumeWorkedOut, "volume_worked_out"},
    {Say::VolumeUnknown, "volume_unknown"},
    {Say::VolumeTableUsed, "volume_table_used"},
    {Say::VolumeGeometryUsed, "volume_geometry_used"},
    {Say::VolumeTypedUsed, "volume_typed_used"},
    {Say::ScopeWithin, "scope_within"},
    {Say::ScopeBeyondVolume, "scope_beyond_volume"},
    {Say::ScopeBeyondPipe, "scope_beyond_pipe"},
    {Say::ScopeBeyondMeter, "scope_beyond_meter"},
    {Say::ScopeBeyondPressure, "scope_beyond_pressure"},
    {Say::ScopeNotKnown, "scope_not_known"},
    {Say::ScopeUseUp1a, "scope_use_up1a"},
    {Say::ScopeUseUp1, "scope_use_up1"},
    {Say::ScopeEd4NotEntered, "scope_ed4_not_entered"},
    {Say::ScopeUseUp1aOrUp1, "scope_use_up1a_or_up1"},
    {Say::ExtentUnknown, "extent_unknown"},
    {Say::LetByNone, "let_by_none"},
    {Say::LetByFound, "let_by_found"},
    {Say::LetByFall, "let_by_fall"},
    {Say::LetByPressureOutside, "let_by_pressure_outside"},
    {Say::LetByTooShort, "let_by_too_short"},
    {Say::Settled, "settled"},
    {Say::NotSettled, "not_settled"},
    {Say::TestPressureGood, "test_pressure_good"},
    {Say::TestPressureLow, "test_pressure_low"},
    {Say::TestPressureLowAccepted, "test_pressure_low_accepted"},
    {Say::TestPressureLowUnexplained, "test_pressure_low_unexplained"},
    {Say::TestPressureHigh, "test_pressure_high"},
    {Say::TestTooShort, "test_too_short"},
    {Say::SettleTooShort, "settle_too_short"},
    {Say::TestLongEnough, "test_long_enough"},
    {Say::TightNoMovement, "tight_no_movement"},
    {Say::TightWithinDrop, "tight_within_drop"},
    {Say::FallBeyondDrop, "fall_beyond_drop"},
    {Say::FallOnNewWork, "fall_on_new_work"},
    {Say::FallOnIsolated, "fall_on_isolated"},
    {Say::RiseDuringTest, "rise_during_test"},
    {Say::SmellFails, "smell_fails"},
    {Say::SmellUnknown, "smell_unknown"},
    {Say::AppliancesUnknown, "appliances_unknown"},
    {Say::WorkUnknown, "work_unknown"},
    {Say::ShortCutHolds, "short_cut_holds"},
    {Say::RetestNeeded, "retest_needed"},
    {Say::RetestClear, "retest_clear"},
    {Say::RetestMoved, "retest_moved"},
    {Say::NewWorkRetestAppliances, "new_work_retest_appliances"},
    {Say::BandsEmpty, "bands_empty"},
    {Say::BandUsed, "band_used"},
    {Say::BeyondBands, "beyond_bands"},
    {Say::Ed3WouldAllow, "ed3_would_allow"},
    {Say::AtLimit, "at_limit"},
    {Say::LeakRate, "leak_rate"},
    {Say::TemperatureExplains, "temperature_explains"},
    {Say::TemperatureDoesNotExplain, "temperature_does_not_explain"},
    {Say::StartDrifting, "start_drifting"},
    {Say::DoFailNoSmell, "do_fail_no_smell"},
    {Say::DisplaysWithinDigit, "displays_within_digit"},
    {Say::DisplaysDiffer, "displays_differ"},
    {Say::PilotsLeftLit, "pilots_left_lit"},
    {Say::PilotsUnknown, "pilots_unknown"},
    {Say::DropClassUnknown, "drop_class_unknown"},
    {Say::PurgeVolumeNeeded, "purge_volume_needed"},
    {Say::PurgeEnough, "purge_enough"},
    {Say::PurgeShort, "purge_short"},
    {Say::PurgeNotDone, "purge_not_done"},
    {Say::PurgeNotNeeded, "purge_not_needed"},
    {Say::PurgeOpenBurner, "purge_open_burner"},
    {Say::PurgeVentilatedPlace, "purge_ventilated_place"},
    {Say::PurgeMethodWrong, "purge_method_wrong"},
    {Say::JointsProvedAndWiped, "joints_proved_and_wiped"},
    {Say::JointNotProved, "joint_not_proved"},
    {Say::JointNotWiped, "joint_not_wiped"},
    {Say::JointsNotSaid, "joints_not_said"},
    {Say::PressureGood, "pressure_good"},
    {Say::PressureOutside, "pressure_outside"},
    {Say::LockUpGood, "lock_up_good"},
    {Say::LockUpHigh, "lock_up_high"},
    {Say::PurgeNoSteadyFlame, "purge_no_steady_flame"},
    // --- gas
    {Say::NetworkWobbeGood, "network_wobbe_good"},
    {Say::NetworkWobbeLow, "network_wobbe_low"},
    {Say::NetworkWobbeHigh, "network_wobbe_high"},
    {Say::NetworkDensityGood, "network_density_good"},
    {Say::NetworkDensityHigh, "network_density_high"},
    {Say::NetworkOtherGas, "network_other_gas"},
    {Say::HeatValueUsual, "heat_value_usual"},
    {Say::HeatValueUnusual, "heat_value_unusual"},
    // --- end of gas
    // --- pipework
    // --- end of pipework
    // --- larger
    {Say::StandardUp1b, "standard_up_1b"},
    {Say::StandardBeyondUp1, "standard_beyond_up_1"},
    {Say::ReadableMovementIs, "readable_movement_is"},
    {Say::ReadableMovementNotTabled, "readable_movement_not_tabled"},
    {Say::LongestKept, "longest_kept"},
    {Say::LongestBeyond, "longest_beyond"},
    {Say::LongestUnknown, "longest_unknown"},
    {Say::AreaTypeUnknown, "area_type_unknown"},
    {Say::RoomVolumeUnknown, "room_volume_unknown"},
    {Say::VentilationUnknown, "ventilation_unknown"},
    {Say::RoomAsTypeA, "room_as_type_a"},
    {Say::RoomCappedAsTypeC, "room_capped_as_type_c"},
    {Say::LargeRoomUnproved, "large_room_unproved"},
    {Say::LargeRoomTooSmall, "large_room_too_small"},
    {Say::TestMediumUnknown, "test_medium_unknown"},
    {Say::OperatingPressureUnknown, "operating_pressure_unknown"},
    {Say::PermittedLeakIs, "permitted_leak_is"},
    {Say::LeakWithin, "leak_within"},
    {Say::LeakBeyond, "leak_beyond"},
    {Say::LeakAtLimit, "leak_at_limit"},
    {Say::SmallestLeakSeen, "smallest_leak_seen"},
    {Say::LetByFrom, "let_by_from"},
    {Say::LetByNotBelow, "let_by_not_below"},
    {Say::StrengthPressureEnough, "strength_pressure_enough"},
    {Say::StrengthPressureLow, "strength_pressure_low"},
    {Say::StrengthBoth, "strength_both"},
    {Say::IncidentalBelowOperating, "incidental_below_operating"},
    {Say::StrengthTimesKept, "strength_times_kept"},
    {Say::StrengthNoFall, "strength_no_fall"},
    {Say::StrengthFellWithin, "strength_fell_within"},
    {Say::StrengthFell, "strength_fell"},
    {Say::StrengthMediumWrong, "strength_medium_wrong"},
    {Say::StrengthPartsOff, "strength_parts_off"},
    {Say::StrengthPartsOn, "strength_parts_on"},
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
static_assert(inOrder(kSays));

constexpr auto kAll = [] {
    std::array<Say, kSays.size()> all{};
    for (std::size_t i = 0; i < kSays.size(); ++i) {
        all[i] = kSays[i].value;
    }
    return all;
}();

}  // namespace

std::string_view sayText(Say say) {
    return textIn(kSays, say);
}

std::span<const Say> allSays() {
    return kAll;
}

}  // namespace hearth::rulebook
