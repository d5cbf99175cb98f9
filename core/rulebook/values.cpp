// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/values.h"

#include "core/rulebook/finding.h"
#include "core/rulebook/values_air.h"

#include <algorithm>
#include <array>

namespace hearth::rulebook {

using quantity::Figure;
using quantity::UnitFamily;

namespace {

template <class Amount, class UnitOf>
std::optional<Amount> amountOf(const Entry& entry, UnitOf unitOf) {
    const auto* figure = std::get_if<Figure>(&entry.value);
    if (figure == nullptr) {
        return std::nullopt;
    }
    return Amount(figure->value.toDouble(), unitOf(figure->unit));
}

struct Family {
    Rule rule;
    UnitFamily family;
};
// What is not named here is a pressure.
constexpr auto kFamilies = std::to_array<Family>({
    {Rule::LetByTime, UnitFamily::Time},
    {Rule::SettleTime, UnitFamily::Time},
    {Rule::TestTime, UnitFamily::Time},
    {Rule::ScopeVolume, UnitFamily::Volume},
    {Rule::PurgeVolumeSmall, UnitFamily::Volume},
    {Rule::PurgeOpenBurnerAbove, UnitFamily::Volume},
    {Rule::ScopePipe, UnitFamily::Length},
    {Rule::ScopeMeter, UnitFamily::Flow},
    {Rule::PurgeVolumeFactor, UnitFamily::None},
    {Rule::FittingsShare, UnitFamily::None},
    {Rule::AssumedTemperatureChange, UnitFamily::TemperatureChange},
    // --- gas
    {Rule::WorkingHeatValue, UnitFamily::HeatValue},
    {Rule::NetworkWobbeLeast, UnitFamily::HeatValue},
    {Rule::NetworkWobbeMost, UnitFamily::HeatValue},
    {Rule::NetworkHeatValueSeen, UnitFamily::HeatValue},
    {Rule::NetworkDensityMost, UnitFamily::None},
    // --- end of gas
    // --- pipework
    {Rule::FittingOldElbow, UnitFamily::Length},
    {Rule::FittingOldBend, UnitFamily::Length},
    {Rule::FittingOldBend45, UnitFamily::Length},
    {Rule::FittingOldTee, UnitFamily::Length},
    {Rule::Fitting15Elbow, UnitFamily::Length},
    {Rule::Fitting15Bend, UnitFamily::Length},
    {Rule::Fitting15Bend45, UnitFamily::Length},
    {Rule::Fitting15Tee, UnitFamily::Length},
    {Rule::Fitting22Elbow, UnitFamily::Length},
    {Rule::Fitting22Bend, UnitFamily::Length},
    {Rule::Fitting22Bend45, UnitFamily::Length},
    {Rule::Fitting22Tee, UnitFamily::Length},
    {Rule::Fitting28Elbow, UnitFamily::Length},
    {Rule::Fitting28Bend, UnitFamily::Length},
    {Rule::Fitting28Bend45, UnitFamily::Length},
    {Rule::Fitting28Tee, UnitFamily::Length},
    {Rule::Fitting35Elbow, UnitFamily::Length},
    {Rule::Fitting35Bend, UnitFamily::Length},
    {Rule::Fitting35Bend45, UnitFamily::Length},
    {Rule::Fitting35Tee, UnitFamily::Length},
    {Rule::PipeEfficiency, UnitFamily::None},
    {Rule::PurgePipeFactor, UnitFamily::None},
    {Rule::PurgeMeterCycles, UnitFamily::None},
    {Rule::PurgeSpeedLeast, UnitFamily::None},
    {Rule::PurgeSpeedLarge, UnitFamily::None},
    {Rule::PurgeFlow20, UnitFamily::Flow},
    {Rule::PurgeFlow25, UnitFamily::Flow},
    {Rule::PurgeFlow32, UnitFamily::Flow},
    {Rule::PurgeFlow40, UnitFamily::Flow},
    {Rule::PurgeFlow50, UnitFamily::Flow},
    {Rule::PurgeFlow65, UnitFamily::Flow},
    {Rule::PurgeFlow80, UnitFamily::Flow},
    {Rule::PurgeFlow100, UnitFamily::Flow},
    {Rule::PurgeFlow125, UnitFamily::Flow},
    {Rule::PurgeFlow150, UnitFamily::Flow},
    {Rule::CyclicVolumeU6, UnitFamily::Volume},
    {Rule::CyclicVolumeU16, UnitFamily::Volume},
    {Rule::CyclicVolumeU25, UnitFamily::Volume},
    {Rule::CyclicVolumeU40, UnitFamily::Volume},
    {Rule::CyclicVolumeU65, UnitFamily::Volume},
    {Rule::CyclicVolumeU100, UnitFamily::Volume},
    {Rule::CyclicVolumeU160, UnitFamily::Volume},
    {Rule::PurgeEndShare, UnitFamily::Share},
    // --- end of pipework
    // --- larger
    {Rule::Up1aVolume, UnitFamily::Volume},
    {Rule::LargeRoomLeast, UnitFamily::Volume},
    {Rule::Up1aPipe, UnitFamily::Length},
    {Rule::LongestWater, UnitFamily::Time},
    {Rule::LongestDense, UnitFamily::Time},
    {Rule::LongestMercury, UnitFamily::Time},
    {Rule::LongestOneDecimal, UnitFamily::Time},
    {Rule::LongestTwoDecimals, UnitFamily::Time},
    {Rule::LongestOneDecimalWide, UnitFamily::Time},
    {Rule::LongestNoDecimal, UnitFamily::Time},
    {Rule::LargerLeastTime, UnitFamily::Time},
    {Rule::LargerLetByTime, UnitFamily::Time},
    {Rule::LargerSettleTime, UnitFamily::Time},
    {Rule::StrengthSettleLow, UnitFamily::Time},
    {Rule::StrengthSettleMiddle, UnitFamily::Time},
    {Rule::StrengthSettleHigh, UnitFamily::Time},
    {Rule::StrengthHoldLow, UnitFamily::Time},
    {Rule::StrengthHoldMiddle, UnitFamily::Time},
    {Rule::StrengthHoldHigh, UnitFamily::Time},
    {Rule::TimeFactorGas, UnitFamily::None},
    {Rule::TimeFactorAir, UnitFamily::None},
    {Rule::TimeFactorRoom, UnitFamily::None},
    {Rule::TimeFactorLargeRoom, UnitFamily::None},
    {Rule::LeakFactorGas, UnitFamily::None},
    {Rule::LeakFactorAir, UnitFamily::None},
    {Rule::LeakTypeB, UnitFamily::None},
    {Rule::LargerLetByShare, UnitFamily::None},
    {Rule::LargerTestShare, UnitFamily::None},
    {Rule::StrengthIncidental, UnitFamily::None},
    {Rule::StrengthOperatingLow, UnitFamily::None},
    {Rule::StrengthOperatingMiddle, UnitFamily::None},
    {Rule::StrengthOperatingHigh, UnitFamily::None},
    {Rule::StrengthFallLow, UnitFamily::None},
    {Rule::StrengthFallMiddle, UnitFamily::None},
    {Rule::StrengthFallHigh, UnitFamily::None},
    {Rule::LeakNew, UnitFamily::Flow},
    {Rule::LeakTypeA, UnitFamily::Flow},
    {Rule::LeakTypeC, UnitFamily::Flow},
    {Rule::LeakOutside, UnitFamily::Flow},
    {Rule::LeakBuried, UnitFamily::Flow},
    // --- end of larger
    // --- burner
    {Rule::MeterAccuracy, UnitFamily::Share},
    {Rule::HeatInputOver, UnitFamily::Share},
    {Rule::HeatInputUnder, UnitFamily::Share},
    {Rule::TimingByHand, UnitFamily::Time},
    {Rule::MeterAverageTime, UnitFamily::Time},
    {Rule::MeteringFactor, UnitFamily::None},
    {Rule::HeatBalance, UnitFamily::None},
    {Rule::HotWaterOutput, UnitFamily::Power},
    {Rule::HotWaterFlow, UnitFamily::Flow},
    // --- end of burner
    // --- combustion
    {Rule::CombustionRatioCondensing, UnitFamily::None},
    {Rule::CombustionRatioNonCondensing, UnitFamily::None},
    {Rule::CombustionRatioWarmAir, UnitFamily::None},
    {Rule::CombustionRatioBackBoiler, UnitFamily::None},
    {Rule::CombustionRatioBackBoilerFire, UnitFamily::None},
    {Rule::CombustionRatioFire, UnitFamily::None},
    {Rule::CombustionRatioOpenFluedWater, UnitFamily::None},
    {Rule::CombustionRatioRoomSealedWater, UnitFamily::None},
    {Rule::CombustionRatioFluelessSpace, UnitFamily::None},
    {Rule::CombustionRatioFluelessWater, UnitFamily::None},
    {Rule::CombustionRatioOven, UnitFamily::None},
    {Rule::CombustionRatioGrill, UnitFamily::None},
    {Rule::CombustionRatioRangeCooker, UnitFamily::None},
    {Rule::CombustionRatioDryer, UnitFamily::None},
    {Rule::CombustionRatio, UnitFamily::None},
    {Rule::CombustionCarbonMonoxideCondensing, UnitFamily::Trace},
    {Rule::CombustionCarbonMonoxide, UnitFamily::Trace},
    {Rule::CombustionCarbonDioxide, UnitFamily::Share},
    {Rule::AirInletOxygen, UnitFamily::Share},
    {Rule::AirInletCarbonDioxide, UnitFamily::Share},
    {Rule::CombustionPlausibleGap, UnitFamily::Share},
    // --- end of combustion
    // --- air
    // --- end of air
    // --- deadlines
    // --- end of deadlines
});

}  // namespace

UnitFamily unitFamilyOf(Rule rule) {
    if (const auto family = airFamilyOf(rule)) {
        return *family;
    }
    const auto* found =
        std::find_if(kFamilies.begin(), kFamilies.end(), [&](const Family& row) { return row.rule == rule; });
    return found == kFamilies.end() ? UnitFamily::Pressure : found->family;
}

quantity::UnitCode usualUnitOf(Rule rule) {
    switch (rule) {
        case Rule::ScopePipe:
            return quantity::UnitCode::Millimetre;
        case Rule::Up1aPipe:
            return quantity::UnitCode::Millimetre;
        case Rule::ScopeSupplyPressure:
        case Rule::Up1SupplyPressure:
        case Rule::StrengthMiddleBand:
            return quantity::UnitCode::Bar;
        case Rule::LongestWater:
        case Rule::LongestDense:
        case Rule::LongestMercury:
        case Rule::LongestOneDecimal:
        case Rule::LongestTwoDecimals:
        case Rule::LongestOneDecimalWide:
        case Rule::LongestNoDecimal:
        case Rule::LargerLeastTime:
        case Rule::LargerLetByTime:
        case Rule::LargerSettleTime:
        case Rule::StrengthSettleLow:
        case Rule::StrengthSettleMiddle:
        case Rule::StrengthSettleHigh:
        case Rule::StrengthHoldLow:
        case Rule::StrengthHoldMiddle:
        case Rule::StrengthHoldHigh:
            return quantity::UnitCode::Minute;
        // --- burner
        case Rule::HotWaterFlow:
            return quantity::UnitCode::LitrePerMinute;
        // --- end of burner
        default:
            break;
    }
    const auto units = quantity::unitsOf(unitFamilyOf(rule));
    return units.empty() ? quantity::UnitCode::None : units.front();
}

std::optional<quantity::PressureChange> pressureChangeOf(const Entry& entry) {
    return amountOf<quantity::PressureChange>(entry, quantity::pressureUnit);
}

std::optional<quantity::GaugePressure> gaugePressureOf(const Entry& entry) {
    return amountOf<quantity::GaugePressure>(entry, quantity::pressureUnit);
}

std::optional<quantity::Volume> volumeOf(const Entry& entry) {
    return amountOf<quantity::Volume>(entry, quantity::volumeUnit);
}

std::optional<quantity::Duration> durationOf(const Entry& entry) {
    return amountOf<quantity::Duration>(entry, quantity::timeUnit);
}

std::optional<quantity::Length> lengthOf(const Entry& entry) {
    return amountOf<quantity::Length>(entry, quantity::lengthUnit);
}

std::optional<quantity::Flow> flowOf(const Entry& entry) {
    return amountOf<quantity::Flow>(entry, quantity::flowUnit);
}

std::optional<quantity::TemperatureChange> temperatureChangeOf(const Entry& entry) {
    // A change has no zero to shift: only the unit's size counts.
    return amountOf<quantity::TemperatureChange>(entry, quantity::temperatureUnit);
}

std::optional<quantity::GrossHeatValue> grossHeatValueOf(const Entry& entry) {
    return amountOf<quantity::GrossHeatValue>(entry, quantity::heatValueUnit);
}

std::optional<double> factorOf(const Entry& entry) {
    const auto* figure = std::get_if<Figure>(&entry.value);
    return figure == nullptr ? std::nullopt : std::optional(figure->value.toDouble());
}

bool PressureRange::contains(quantity::GaugePressure pressure) const {
    const double value = pressure.in(quantity::kMillibar);
    return holds(value, Comparison::AtLeast, least.in(quantity::kMillibar)) &&
           holds(value, Comparison::AtMost, most.in(quantity::kMillibar));
}

std::optional<PressureRange> pressureRangeOf(const Entry& entry) {
    const auto* range = std::get_if<Range>(&entry.value);
    if (range == nullptr) {
        return std::nullopt;
    }
    const auto unit = quantity::pressureUnit(range->unit);
    return PressureRange{quantity::GaugePressure(range->least.toDouble(), unit),
                         quantity::GaugePressure(range->most.toDouble(), unit)};
}

const Band* bandFor(const std::vector<Band>& bands, quantity::Volume volume) {
    const double value = volume.in(quantity::kCubicMetre);
    const auto found = std::find_if(bands.begin(), bands.end(), [&](const Band& band) {
        return holds(value, Comparison::AtMost, band.upTo.toDouble());
    });
    return found == bands.end() ? nullptr : &*found;
}

quantity::PressureChange allowedBy(const Band& band) {
    return {band.allowed.toDouble(), quantity::kMillibar};
}

const std::vector<Band>* bandsOf(const Entry& entry) {
    return std::get_if<std::vector<Band>>(&entry.value);
}

}  // namespace hearth::rulebook
