// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/values.h"

#include "core/rulebook/finding.h"
#include "core/rulebook/values_air.h"

#include <algorithm>

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

}  // namespace

UnitFamily unitFamilyOf(Rule rule) {
    if (const auto family = airFamilyOf(rule)) {
        return *family;
    }
    switch (rule) {
        case Rule::LetByTime:
        case Rule::SettleTime:
        case Rule::TestTime:
            return UnitFamily::Time;
        case Rule::ScopeVolume:
        case Rule::PurgeVolumeSmall:
        case Rule::PurgeOpenBurnerAbove:
            return UnitFamily::Volume;
        case Rule::ScopePipe:
            return UnitFamily::Length;
        case Rule::ScopeMeter:
            return UnitFamily::Flow;
        case Rule::PurgeVolumeFactor:
        case Rule::FittingsShare:
            return UnitFamily::None;
        case Rule::AssumedTemperatureChange:
            return UnitFamily::TemperatureChange;
        // --- gas
        case Rule::WorkingHeatValue:
        case Rule::NetworkWobbeLeast:
        case Rule::NetworkWobbeMost:
        case Rule::NetworkHeatValueSeen:
            return UnitFamily::HeatValue;
        case Rule::NetworkDensityMost:
            return UnitFamily::None;
        // --- end of gas
        // --- pipework
        // --- end of pipework
        // --- larger
        case Rule::Up1aVolume:
        case Rule::LargeRoomLeast:
            return UnitFamily::Volume;
        case Rule::Up1aPipe:
            return UnitFamily::Length;
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
            return UnitFamily::Time;
        case Rule::TimeFactorGas:
        case Rule::TimeFactorAir:
        case Rule::TimeFactorRoom:
        case Rule::TimeFactorLargeRoom:
        case Rule::LeakFactorGas:
        case Rule::LeakFactorAir:
        case Rule::LeakTypeB:
        case Rule::LargerLetByShare:
        case Rule::LargerTestShare:
        case Rule::StrengthIncidental:
        case Rule::StrengthOperatingLow:
        case Rule::StrengthOperatingMiddle:
        case Rule::StrengthOperatingHigh:
        case Rule::StrengthFallLow:
        case Rule::StrengthFallMiddle:
        case Rule::StrengthFallHigh:
            return UnitFamily::None;
        case Rule::LeakNew:
        case Rule::LeakTypeA:
        case Rule::LeakTypeC:
        case Rule::LeakOutside:
        case Rule::LeakBuried:
            return UnitFamily::Flow;
        // --- end of larger
        // --- burner
        case Rule::MeterAccuracy:
        case Rule::HeatInputOver:
        case Rule::HeatInputUnder:
            return UnitFamily::Share;
        case Rule::TimingByHand:
        case Rule::MeterAverageTime:
            return UnitFamily::Time;
        case Rule::MeteringFactor:
        case Rule::HeatBalance:
            return UnitFamily::None;
        case Rule::HotWaterOutput:
            return UnitFamily::Power;
        case Rule::HotWaterFlow:
            return UnitFamily::Flow;
        // --- end of burner
        // --- combustion
        case Rule::CombustionRatioCondensing:
        case Rule::CombustionRatioNonCondensing:
        case Rule::CombustionRatioWarmAir:
        case Rule::CombustionRatioBackBoiler:
        case Rule::CombustionRatioBackBoilerFire:
        case Rule::CombustionRatioFire:
        case Rule::CombustionRatioOpenFluedWater:
        case Rule::CombustionRatioRoomSealedWater:
        case Rule::CombustionRatioFluelessSpace:
        case Rule::CombustionRatioFluelessWater:
        case Rule::CombustionRatioOven:
        case Rule::CombustionRatioGrill:
        case Rule::CombustionRatioRangeCooker:
        case Rule::CombustionRatioDryer:
        case Rule::CombustionRatio:
            return UnitFamily::None;
        case Rule::CombustionCarbonMonoxideCondensing:
        case Rule::CombustionCarbonMonoxide:
            return UnitFamily::Trace;
        case Rule::CombustionCarbonDioxide:
        case Rule::AirInletOxygen:
        case Rule::AirInletCarbonDioxide:
        case Rule::CombustionPlausibleGap:
            return UnitFamily::Share;
        // --- end of combustion
        // --- air
        // --- end of air
        // --- deadlines
        // --- end of deadlines
        default:
            return UnitFamily::Pressure;
    }
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
