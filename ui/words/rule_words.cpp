// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"

#include <QStringList>

namespace hearth::ui::words {

namespace {

using rulebook::Comparison;
using rulebook::Edition;
using rulebook::Provenance;
using rulebook::Rule;

using RuleTitle = Text<Rule>;
constexpr std::array kRules{
    RuleTitle{Rule::LetByPressure, QT_TRANSLATE_NOOP("Words", "Let-by pressure")},
    RuleTitle{Rule::LetByTime, QT_TRANSLATE_NOOP("Words", "Let-by time")},
    RuleTitle{Rule::TestPressure, QT_TRANSLATE_NOOP("Words", "Test pressure")},
    RuleTitle{Rule::TestPressureLeast,
              QT_TRANSLATE_NOOP("Words", "Test pressure where the full one can't be reached")},
    RuleTitle{Rule::SettleTime, QT_TRANSLATE_NOOP("Words", "Settling time")},
    RuleTitle{Rule::TestTime, QT_TRANSLATE_NOOP("Words", "Tightness test time")},
    RuleTitle{Rule::NoMovementWater, QT_TRANSLATE_NOOP("Words", "No perceptible movement, water gauge")},
    RuleTitle{Rule::NoMovementElectronic,
              QT_TRANSLATE_NOOP("Words", "No perceptible movement, electronic gauge")},
    RuleTitle{Rule::SettleMovement, QT_TRANSLATE_NOOP("Words", "Steady enough to start timing")},
    RuleTitle{Rule::DropNoMeter28,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, no meter in the part, pipe to 28 mm")},
    RuleTitle{Rule::DropUltrasonic28,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, ultrasonic meter to 6 m³/h, pipe to 28 mm")},
    RuleTitle{Rule::DropDiaphragm6At28,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, diaphragm meter to 6 m³/h, pipe to 28 mm")},
    RuleTitle{Rule::DropDiaphragm16At28,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe to 28 mm")},
    RuleTitle{Rule::DropNoMeter35,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, no meter in the part, pipe above 28 to 35 mm")},
    RuleTitle{Rule::DropUltrasonic35,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, ultrasonic meter to 6 m³/h, pipe above 28 to 35 mm")},
    RuleTitle{Rule::DropDiaphragm6At35,
              QT_TRANSLATE_NOOP("Words", "Drop allowed, diaphragm meter to 6 m³/h, pipe above 28 to 35 mm")},
    RuleTitle{Rule::DropDiaphragm16At35,
              QT_TRANSLATE_NOOP("Words",
                                "Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe above 28 to 35 mm")},
    RuleTitle{Rule::DropByVolume, QT_TRANSLATE_NOOP("Words", "Drop allowed by installation volume")},
    RuleTitle{Rule::DropShortCut,
              QT_TRANSLATE_NOOP("Words", "Fall for which the volume need not be worked out")},
    RuleTitle{Rule::ScopeVolume, QT_TRANSLATE_NOOP("Words", "Scope, installation volume")},
    RuleTitle{Rule::ScopePipe, QT_TRANSLATE_NOOP("Words", "Scope, pipe size")},
    RuleTitle{Rule::ScopeMeter, QT_TRANSLATE_NOOP("Words", "Scope, meter's badged capacity")},
    RuleTitle{Rule::ScopeOperatingPressure, QT_TRANSLATE_NOOP("Words", "Scope, operating pressure")},
    RuleTitle{Rule::ScopeSupplyPressure,
              QT_TRANSLATE_NOOP("Words", "Scope, supply pressure at the emergency control valve")},
    RuleTitle{Rule::PurgeVolumeSmall,
              QT_TRANSLATE_NOOP("Words", "Purge volume, meter to 6 m³/h and pipe to 28 mm")},
    RuleTitle{Rule::PurgeVolumeFactor,
              QT_TRANSLATE_NOOP("Words", "Purge volume, times the installation volume")},
    RuleTitle{Rule::PurgeOpenBurnerAbove,
              QT_TRANSLATE_NOOP("Words", "Volume that may be purged without an open burner")},
    RuleTitle{Rule::FittingsShare,
              QT_TRANSLATE_NOOP("Words", "Share of the pipes' volume added for fittings")},
    RuleTitle{Rule::GaugeAccuracy, QT_TRANSLATE_NOOP("Words", "Gauge accuracy")},
    RuleTitle{Rule::StandingPressureMost,
              QT_TRANSLATE_NOOP("Words", "Standing pressure (regulator lock-up)")},
    RuleTitle{Rule::WorkingPressure, QT_TRANSLATE_NOOP("Words", "Working pressure at the meter")},
    RuleTitle{Rule::AssumedTemperatureChange,
              QT_TRANSLATE_NOOP("Words", "Temperature change assumed during the test")},
    // --- gas
    RuleTitle{Rule::WorkingHeatValue,
              QT_TRANSLATE_NOOP("Words", "Calorific value (gross) where the bill gives none")},
    RuleTitle{Rule::NetworkWobbeLeast, QT_TRANSLATE_NOOP("Words", "Network gas, lowest Wobbe index (gross)")},
    RuleTitle{Rule::NetworkWobbeMost, QT_TRANSLATE_NOOP("Words", "Network gas, highest Wobbe index (gross)")},
    RuleTitle{Rule::NetworkDensityMost, QT_TRANSLATE_NOOP("Words", "Network gas, highest relative density")},
    RuleTitle{Rule::NetworkHeatValueSeen,
              QT_TRANSLATE_NOOP("Words", "Network gas, calorific values (gross) that are seen")},
    // --- end of gas
    // --- pipework
    // --- end of pipework
    // --- larger
    RuleTitle{Rule::Up1aVolume, QT_TRANSLATE_NOOP("Words", "Scope of IGE/UP/1A, installation volume")},
    RuleTitle{Rule::Up1aPipe, QT_TRANSLATE_NOOP("Words", "Scope of IGE/UP/1A, pipe size")},
    RuleTitle{Rule::Up1aOperatingPressure,
              QT_TRANSLATE_NOOP("Words", "Scope of IGE/UP/1A, operating pressure")},
    RuleTitle{Rule::Up1SupplyPressure,
              QT_TRANSLATE_NOOP("Words", "Scope of IGE/UP/1, maximum operating pressure")},
    RuleTitle{Rule::ReadableWater, QT_TRANSLATE_NOOP("Words", "Readable movement, water gauge to 120 mbar")},
    RuleTitle{Rule::ReadableDense,
              QT_TRANSLATE_NOOP("Words", "Readable movement, gauge with dense fluid (1.99) to 200 mbar")},
    RuleTitle{Rule::ReadableMercury,
              QT_TRANSLATE_NOOP("Words", "Readable movement, mercury gauge to 1000 mbar")},
    RuleTitle{Rule::ReadableOneDecimal,
              QT_TRANSLATE_NOOP("Words", "Readable movement, electronic gauge with one decimal to 200 mbar")},
    RuleTitle{
        Rule::ReadableTwoDecimals,
        QT_TRANSLATE_NOOP("Words", "Readable movement, electronic gauge with two decimals to 200 mbar")},
    RuleTitle{Rule::ReadableOneDecimalWide,
              QT_TRANSLATE_NOOP(
                  "Words", "Readable movement, electronic gauge with one decimal above 200 to 2000 mbar")},
    RuleTitle{Rule::ReadableNoDecimal,
              QT_TRANSLATE_NOOP("Words", "Readable movement, electronic gauge without decimals to 20 bar")},
    RuleTitle{Rule::LongestWater,
              QT_TRANSLATE_NOOP("Words", "Longest tightness test, water gauge to 120 mbar")},
    RuleTitle{
        Rule::LongestDense,
        QT_TRANSLATE_NOOP("Words", "Longest tightness test, gauge with dense fluid (1.99) to 200 mbar")},
    RuleTitle{Rule::LongestMercury,
              QT_TRANSLATE_NOOP("Words", "Longest tightness test, mercury gauge to 1000 mbar")},
    RuleTitle{
        Rule::LongestOneDecimal,
        QT_TRANSLATE_NOOP("Words", "Longest tightness test, electronic gauge with one decimal to 200 mbar")},
    RuleTitle{
        Rule::LongestTwoDecimals,
        QT_TRANSLATE_NOOP("Words", "Longest tightness test, electronic gauge with two decimals to 200 mbar")},
    RuleTitle{
        Rule::LongestOneDecimalWide,
        QT_TRANSLATE_NOOP(
            "Words", "Longest tightness test, electronic gauge with one decimal above 200 to 2000 mbar")},
    RuleTitle{
        Rule::LongestNoDecimal,
        QT_TRANSLATE_NOOP("Words", "Longest tightness test, electronic gauge without decimals to 20 bar")},
    RuleTitle{Rule::LargerLeastTime,
              QT_TRANSLATE_NOOP("Words", "Least time of a tightness test, larger installation")},
    RuleTitle{Rule::TimeFactorGas, QT_TRANSLATE_NOOP("Words", "Time factor F1, tested with the fuel gas")},
    RuleTitle{Rule::TimeFactorAir, QT_TRANSLATE_NOOP("Words", "Time factor F1, tested with air or nitrogen")},
    RuleTitle{Rule::TimeFactorRoom,
              QT_TRANSLATE_NOOP("Words",
                                "Time multiplier for a ventilated room (type B), divided by the room's m³")},
    RuleTitle{Rule::TimeFactorLargeRoom,
              QT_TRANSLATE_NOOP("Words", "Time multiplier for a large ventilated room (type C)")},
    RuleTitle{Rule::LeakFactorGas, QT_TRANSLATE_NOOP("Words", "Leak factor F3, tested with the fuel gas")},
    RuleTitle{Rule::LeakFactorAir, QT_TRANSLATE_NOOP("Words", "Leak factor F3, tested with air or nitrogen")},
    RuleTitle{Rule::LeakNew,
              QT_TRANSLATE_NOOP("Words", "Leak permitted, new pipework of a larger installation")},
    RuleTitle{
        Rule::LeakTypeA,
        QT_TRANSLATE_NOOP("Words", "Leak permitted, existing, small or poorly ventilated room (type A)")},
    RuleTitle{Rule::LeakTypeB,
              QT_TRANSLATE_NOOP(
                  "Words", "Leak permitted, existing, ventilated room (type B), m³/h for each m³ of room")},
    RuleTitle{Rule::LeakTypeC,
              QT_TRANSLATE_NOOP("Words", "Leak permitted, existing, large ventilated room (type C)")},
    RuleTitle{Rule::LargeRoomLeast,
              QT_TRANSLATE_NOOP("Words", "Least volume of a room that counts as type C")},
    RuleTitle{Rule::LeakOutside, QT_TRANSLATE_NOOP("Words", "Leak permitted, existing, in the open")},
    RuleTitle{Rule::LeakBuried, QT_TRANSLATE_NOOP("Words", "Leak permitted, existing, buried")},
    RuleTitle{Rule::LargerLetByShare,
              QT_TRANSLATE_NOOP("Words",
                                "Let-by pressure of a larger installation, share of the operating pressure")},
    RuleTitle{Rule::LargerLetByTime, QT_TRANSLATE_NOOP("Words", "Let-by time, larger installation")},
    RuleTitle{Rule::LargerSettleTime, QT_TRANSLATE_NOOP("Words", "Settling time, larger installation")},
    RuleTitle{Rule::LargerTestShare,
              QT_TRANSLATE_NOOP("Words",
                                "Test pressure of a larger installation, share of the operating pressure")},
    RuleTitle{Rule::StrengthIncidental,
              QT_TRANSLATE_NOOP("Words", "Strength test, times the maximum incidental pressure")},
    RuleTitle{Rule::StrengthLowBand,
              QT_TRANSLATE_NOOP("Words", "Strength test, operating pressure to which the low band goes")},
    RuleTitle{Rule::StrengthMiddleBand,
              QT_TRANSLATE_NOOP("Words", "Strength test, operating pressure to which the middle band goes")},
    RuleTitle{Rule::StrengthOperatingLow,
              QT_TRANSLATE_NOOP("Words", "Strength test, times the maximum operating pressure, low band")},
    RuleTitle{Rule::StrengthOperatingMiddle,
              QT_TRANSLATE_NOOP("Words", "Strength test, times the maximum operating pressure, middle band")},
    RuleTitle{Rule::StrengthOperatingHigh,
              QT_TRANSLATE_NOOP("Words", "Strength test, times the maximum operating pressure, high band")},
    RuleTitle{Rule::StrengthSettleLow, QT_TRANSLATE_NOOP("Words", "Strength test, settling time, low band")},
    RuleTitle{Rule::StrengthSettleMiddle,
              QT_TRANSLATE_NOOP("Words", "Strength test, settling time, middle band")},
    RuleTitle{Rule::StrengthSettleHigh,
              QT_TRANSLATE_NOOP("Words", "Strength test, settling time, high band")},
    RuleTitle{Rule::StrengthHoldLow, QT_TRANSLATE_NOOP("Words", "Strength test, time held, low band")},
    RuleTitle{Rule::StrengthHoldMiddle, QT_TRANSLATE_NOOP("Words", "Strength test, time held, middle band")},
    RuleTitle{Rule::StrengthHoldHigh, QT_TRANSLATE_NOOP("Words", "Strength test, time held, high band")},
    RuleTitle{
        Rule::StrengthFallLow,
        QT_TRANSLATE_NOOP("Words", "Strength test, share of the pressure that it may fall by, low band")},
    RuleTitle{
        Rule::StrengthFallMiddle,
        QT_TRANSLATE_NOOP("Words", "Strength test, share of the pressure that it may fall by, middle band")},
    RuleTitle{
        Rule::StrengthFallHigh,
        QT_TRANSLATE_NOOP("Words", "Strength test, share of the pressure that it may fall by, high band")},
    // --- end of larger
    // --- burner
    RuleTitle{Rule::MeterAccuracy, QT_TRANSLATE_NOOP("Words", "Meter accuracy")},
    RuleTitle{Rule::TimingByHand, QT_TRANSLATE_NOOP("Words", "Slip of the hand at a stopwatch")},
    RuleTitle{Rule::MeteringFactor,
              QT_TRANSLATE_NOOP("Words", "Metered volume to standard conditions, fixed factor")},
    RuleTitle{Rule::HeatInputOver, QT_TRANSLATE_NOOP("Words", "Heat input above the plate")},
    RuleTitle{Rule::HeatInputUnder, QT_TRANSLATE_NOOP("Words", "Heat input below the plate")},
    RuleTitle{Rule::InletPressure, QT_TRANSLATE_NOOP("Words", "Working pressure at the appliance")},
    RuleTitle{Rule::BurnerPressure, QT_TRANSLATE_NOOP("Words", "Burner pressure")},
    RuleTitle{Rule::MeterAverage, QT_TRANSLATE_NOOP("Words", "Average pressure at the meter")},
    RuleTitle{Rule::MeterAverageTime, QT_TRANSLATE_NOOP("Words", "Time for the average at the meter")},
    RuleTitle{Rule::HotWaterOutput, QT_TRANSLATE_NOOP("Words", "Hot water output")},
    RuleTitle{Rule::HotWaterFlow, QT_TRANSLATE_NOOP("Words", "Hot water flow")},
    RuleTitle{Rule::HeatBalance, QT_TRANSLATE_NOOP("Words", "Hot water output over net heat input")},
    // --- end of burner
    // --- combustion
    RuleTitle{Rule::CombustionRatioCondensing, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, condensing boiler")},
    RuleTitle{Rule::CombustionCarbonMonoxideCondensing,
              QT_TRANSLATE_NOOP("Words", "CO in the flue gas, condensing boiler")},
    RuleTitle{Rule::CombustionRatioNonCondensing,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, non-condensing boiler")},
    RuleTitle{Rule::CombustionRatioWarmAir,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, warm-air heater or circulator")},
    RuleTitle{Rule::CombustionRatioBackBoiler, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, back boiler")},
    RuleTitle{Rule::CombustionRatioBackBoilerFire,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, fire of a back boiler unit")},
    RuleTitle{Rule::CombustionRatioFire,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, gas fire or open-flued space heater")},
    RuleTitle{Rule::CombustionRatioOpenFluedWater,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, open-flued water heater")},
    RuleTitle{Rule::CombustionRatioRoomSealedWater,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, room-sealed water heater")},
    RuleTitle{Rule::CombustionRatioFluelessSpace,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, flueless space heater")},
    RuleTitle{Rule::CombustionRatioFluelessWater,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, flueless water heater")},
    RuleTitle{Rule::CombustionRatioOven, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, oven")},
    RuleTitle{Rule::CombustionRatioGrill, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, grill")},
    RuleTitle{Rule::CombustionRatioRangeCooker,
              QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, flued range cooker")},
    RuleTitle{Rule::CombustionRatioDryer, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, tumble dryer")},
    RuleTitle{Rule::CombustionRatio, QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio")},
    RuleTitle{Rule::CombustionCarbonMonoxide, QT_TRANSLATE_NOOP("Words", "CO in the flue gas")},
    RuleTitle{Rule::CombustionCarbonDioxide, QT_TRANSLATE_NOOP("Words", "CO₂ in the flue gas")},
    RuleTitle{Rule::AirInletOxygen, QT_TRANSLATE_NOOP("Words", "O₂ at the air inlet")},
    RuleTitle{Rule::AirInletCarbonDioxide, QT_TRANSLATE_NOOP("Words", "CO₂ at the air inlet")},
    RuleTitle{Rule::CombustionPlausibleGap, QT_TRANSLATE_NOOP("Words", "O₂ and CO₂ off the fuel's line")},
    // --- end of combustion
    // --- air
    RuleTitle{Rule::VentAdventitiousInput,
              QT_TRANSLATE_NOOP("Words", "Heat input that air leaking into a room serves")},
    RuleTitle{Rule::VentOpenFluedPerKilowatt,
              QT_TRANSLATE_NOOP("Words", "Vent for open-flued appliances, cm² for each further kW")},
    RuleTitle{
        Rule::VentScopeInput,
        QT_TRANSLATE_NOOP("Words", "Scope of the domestic ventilation standard, heat input in one space")},
    RuleTitle{Rule::VentThroughWallFactor,
              QT_TRANSLATE_NOOP("Words", "Vents through an inside wall, times the area")},
    RuleTitle{
        Rule::VentTightPerKilowatt,
        QT_TRANSLATE_NOOP("Words", "Vent for open-flued appliances in a tight dwelling, cm² for each kW")},
    RuleTitle{Rule::VentSeveralGroups,
              QT_TRANSLATE_NOOP("Words", "Several appliances in a room, how many groups' needs are added")},
    RuleTitle{Rule::VentDecorativeFire, QT_TRANSLATE_NOOP("Words", "Vent for a decorative fuel effect fire")},
    RuleTitle{Rule::VentDecorativeInputMost,
              QT_TRANSLATE_NOOP("Words", "Decorative fuel effect fire, heat input")},
    RuleTitle{Rule::VentFireInputWithout,
              QT_TRANSLATE_NOOP("Words", "Radiant or inset fire without a vent, heat input")},
    RuleTitle{Rule::VentMakersArea, QT_TRANSLATE_NOOP("Words", "Vent that the appliance's maker asks for")},
    RuleTitle{Rule::VentOpenToRoomHigh,
              QT_TRANSLATE_NOOP("Words", "Compartment, open-flued, high vent to a room, cm² for each kW")},
    RuleTitle{Rule::VentOpenToRoomLow,
              QT_TRANSLATE_NOOP("Words", "Compartment, open-flued, low vent to a room, cm² for each kW")},
    RuleTitle{Rule::VentOpenOutsideHigh,
              QT_TRANSLATE_NOOP("Words", "Compartment, open-flued, high vent to outside, cm² for each kW")},
    RuleTitle{Rule::VentOpenOutsideLow,
              QT_TRANSLATE_NOOP("Words", "Compartment, open-flued, low vent to outside, cm² for each kW")},
    RuleTitle{Rule::VentSealedToRoomHigh,
              QT_TRANSLATE_NOOP("Words", "Compartment, room-sealed, high vent to a room, cm² for each kW")},
    RuleTitle{Rule::VentSealedToRoomLow,
              QT_TRANSLATE_NOOP("Words", "Compartment, room-sealed, low vent to a room, cm² for each kW")},
    RuleTitle{Rule::VentSealedOutsideHigh,
              QT_TRANSLATE_NOOP("Words", "Compartment, room-sealed, high vent to outside, cm² for each kW")},
    RuleTitle{Rule::VentSealedOutsideLow,
              QT_TRANSLATE_NOOP("Words", "Compartment, room-sealed, low vent to outside, cm² for each kW")},
    RuleTitle{Rule::VentCookerVolumeSmall,
              QT_TRANSLATE_NOOP("Words", "Cooker, room below which the larger vent is needed")},
    RuleTitle{Rule::VentCookerVolumeMedium,
              QT_TRANSLATE_NOOP("Words", "Cooker, room up to which the smaller vent is needed")},
    RuleTitle{Rule::VentCookerSmall, QT_TRANSLATE_NOOP("Words", "Cooker, vent in the smallest rooms")},
    RuleTitle{Rule::VentCookerMedium, QT_TRANSLATE_NOOP("Words", "Cooker, vent in small rooms")},
    RuleTitle{Rule::VentCookerBedSit,
              QT_TRANSLATE_NOOP("Words", "Cooker in a bed-sitting room, room volume")},
    RuleTitle{Rule::VentCookerBasement, QT_TRANSLATE_NOOP("Words", "Cooker in a basement, vent advised")},
    RuleTitle{Rule::VentWaterHeaterInputMost,
              QT_TRANSLATE_NOOP("Words", "Flueless water heater, heat input")},
    RuleTitle{Rule::VentWaterHeaterVolumeLeast,
              QT_TRANSLATE_NOOP("Words", "Flueless water heater, room volume")},
    RuleTitle{
        Rule::VentWaterHeaterVolumeMedium,
        QT_TRANSLATE_NOOP("Words", "Flueless water heater, room up to which the larger vent is needed")},
    RuleTitle{
        Rule::VentWaterHeaterVolumeLarge,
        QT_TRANSLATE_NOOP("Words", "Flueless water heater, room up to which the smaller vent is needed")},
    RuleTitle{Rule::VentWaterHeaterSmall,
              QT_TRANSLATE_NOOP("Words", "Flueless water heater, vent in small rooms")},
    RuleTitle{Rule::VentWaterHeaterMedium,
              QT_TRANSLATE_NOOP("Words", "Flueless water heater, vent in medium rooms")},
    RuleTitle{Rule::VentHeaterWattsRoom,
              QT_TRANSLATE_NOOP("Words", "Flueless space heater in a room, W for each m³")},
    RuleTitle{Rule::VentHeaterWattsInternal,
              QT_TRANSLATE_NOOP("Words", "Flueless space heater in an internal space, W for each m³")},
    RuleTitle{Rule::VentHeaterBase, QT_TRANSLATE_NOOP("Words", "Flueless space heater, vent to begin with")},
    RuleTitle{
        Rule::VentHeaterInputRoom,
        QT_TRANSLATE_NOOP("Words", "Flueless space heater in a room, heat input that the first vent serves")},
    RuleTitle{Rule::VentHeaterPerKilowattRoom,
              QT_TRANSLATE_NOOP("Words", "Flueless space heater in a room, cm² for each further kW")},
    RuleTitle{
        Rule::VentHeaterInputInternal,
        QT_TRANSLATE_NOOP(
            "Words", "Flueless space heater in an internal space, heat input that the first vent serves")},
    RuleTitle{
        Rule::VentHeaterPerKilowattInternal,
        QT_TRANSLATE_NOOP("Words", "Flueless space heater in an internal space, cm² for each further kW")},
    RuleTitle{Rule::VentCabinetWattsRoom,
              QT_TRANSLATE_NOOP("Words", "LPG cabinet heater in a room, W for each m³")},
    RuleTitle{Rule::VentCabinetWattsInternal,
              QT_TRANSLATE_NOOP("Words", "LPG cabinet heater in an internal space, W for each m³")},
    RuleTitle{Rule::VentCabinetVolumeLeast, QT_TRANSLATE_NOOP("Words", "LPG cabinet heater, room volume")},
    RuleTitle{Rule::VentCabinetPerKilowatt,
              QT_TRANSLATE_NOOP("Words", "LPG cabinet heater, cm² for each kW at high and at low level")},
    RuleTitle{Rule::VentCabinetLeast,
              QT_TRANSLATE_NOOP("Words", "LPG cabinet heater, least vent at high and at low level")},
    RuleTitle{Rule::VentDryer, QT_TRANSLATE_NOOP("Words", "Flueless tumble dryer, vent")},
    RuleTitle{Rule::PlantInputMost,
              QT_TRANSLATE_NOOP("Words", "Scope of the boiler room standard, heat input")},
    RuleTitle{Rule::PlantRoomLow,
              QT_TRANSLATE_NOOP("Words", "Boiler room, low vent to outside, cm² for each kW")},
    RuleTitle{Rule::PlantRoomHigh,
              QT_TRANSLATE_NOOP("Words", "Boiler room, high vent to outside, cm² for each kW")},
    RuleTitle{Rule::PlantEnclosureLowHalf,
              QT_TRANSLATE_NOOP(
                  "Words", "Boiler enclosure, low vent, used up to half of the summer, cm² for each kW")},
    RuleTitle{Rule::PlantEnclosureHighHalf,
              QT_TRANSLATE_NOOP(
                  "Words", "Boiler enclosure, high vent, used up to half of the summer, cm² for each kW")},
    RuleTitle{Rule::PlantEnclosureLowMost,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "Boiler enclosure, low vent, used half to three quarters of the summer, cm² for each kW")},
    RuleTitle{Rule::PlantEnclosureHighMost,
              QT_TRANSLATE_NOOP(
                  "Words",
                  "Boiler enclosure, high vent, used half to three quarters of the summer, cm² for each kW")},
    RuleTitle{
        Rule::PlantEnclosureLowAll,
        QT_TRANSLATE_NOOP("Words", "Boiler enclosure, low vent, used most of the summer, cm² for each kW")},
    RuleTitle{
        Rule::PlantEnclosureHighAll,
        QT_TRANSLATE_NOOP("Words", "Boiler enclosure, high vent, used most of the summer, cm² for each kW")},
    RuleTitle{Rule::PlantSummerMost,
              QT_TRANSLATE_NOOP(
                  "Words", "Boiler room used half to three quarters of the summer, cm² added for each kW")},
    RuleTitle{Rule::PlantSummerAll,
              QT_TRANSLATE_NOOP("Words", "Boiler room used most of the summer, cm² added for each kW")},
    RuleTitle{Rule::PlantTemperatureFloor,
              QT_TRANSLATE_NOOP("Words", "Boiler room temperature, 100 mm above the floor")},
    RuleTitle{Rule::PlantTemperatureMiddle, QT_TRANSLATE_NOOP("Words", "Boiler room temperature, at 1.5 m")},
    RuleTitle{Rule::PlantTemperatureCeiling,
              QT_TRANSLATE_NOOP("Words", "Boiler room temperature, 100 mm below the ceiling")},
    RuleTitle{Rule::RoomCoShortLimit,
              QT_TRANSLATE_NOOP("Words", "Carbon monoxide at work, mean of 15 minutes")},
    RuleTitle{Rule::RoomCoLongLimit, QT_TRANSLATE_NOOP("Words", "Carbon monoxide at work, mean of 8 hours")},
    RuleTitle{Rule::RoomCoDangerFrom,
              QT_TRANSLATE_NOOP("Words", "Carbon monoxide, any reading that warns everyone to leave")},
    RuleTitle{Rule::RoomCoRaisedFrom,
              QT_TRANSLATE_NOOP("Words", "Carbon monoxide, any reading that warns to find the source")},
    RuleTitle{Rule::RoomCoNoActionMost,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide that needs no action")},
    RuleTitle{Rule::RoomCoLeaveFrom,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide at which everyone leaves")},
    RuleTitle{Rule::RoomCoCookerPeakMost,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide, short peak of a cooker")},
    RuleTitle{Rule::RoomCoSampleHeight,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide, height of sampling")},
    RuleTitle{Rule::RoomCoSampleDistance,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide, distance from the appliance")},
    RuleTitle{Rule::RoomCoTimeFlued,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide test with flued appliances, time")},
    RuleTitle{Rule::RoomCoTimeFlueless,
              QT_TRANSLATE_NOOP("Words", "Room carbon monoxide test with flueless appliances, time")},
    RuleTitle{Rule::RoomCoBloodLimit,
              QT_TRANSLATE_NOOP("Words", "Carbon monoxide in the blood that guidelines mean to stay below")},
    // --- end of air
    // --- deadlines
    // --- end of deadlines
};

// Proper names: the same in every language.
constexpr std::array kEditions{
    Text<Edition>{Edition::General, ""},
    Text<Edition>{Edition::Up1bEd3, "IGEM/UP/1B Edition 3"},
    Text<Edition>{Edition::Up1bEd4, "IGEM/UP/1B Edition 4"},
};

using ProvenanceText = Text<Provenance>;
constexpr std::array kProvenances{
    ProvenanceText{Provenance::Published, QT_TRANSLATE_NOOP("Words", "published")},
    ProvenanceText{Provenance::Secondary, QT_TRANSLATE_NOOP("Words", "read second-hand")},
    ProvenanceText{Provenance::Memory, QT_TRANSLATE_NOOP("Words", "from memory")},
    ProvenanceText{Provenance::CommonPractice, QT_TRANSLATE_NOOP("Words", "common practice")},
    ProvenanceText{Provenance::Firm, QT_TRANSLATE_NOOP("Words", "confirmed by the firm")},
    ProvenanceText{Provenance::Maker, QT_TRANSLATE_NOOP("Words", "the maker's figure")},
};
constexpr std::array kMeanings{
    ProvenanceText{Provenance::Published,
                   QT_TRANSLATE_NOOP("Words",
                                     "Read in the law, in the standard's or its publisher's own words, or in "
                                     "a regulator's, register's "
                                     "or certification body's text. It decides.")},
    ProvenanceText{
        Provenance::Secondary,
        QT_TRANSLATE_NOOP(
            "Words",
            "Read in training notes or the trade press. Beyond it a test fails; within it, look again until "
            "the firm has confirmed it from its own copy.")},
    ProvenanceText{
        Provenance::Memory,
        QT_TRANSLATE_NOOP(
            "Words",
            "Recalled from the named standard, not read. Beyond it a test fails; within it, look again until "
            "the firm has confirmed it from its own copy. Nothing passes on memory alone.")},
    ProvenanceText{
        Provenance::CommonPractice,
        QT_TRANSLATE_NOOP(
            "Words", "A habit of the trade, with no source. It advises; it never fails anything alone.")},
    ProvenanceText{Provenance::Firm, QT_TRANSLATE_NOOP("Words",
                                                       "Entered or confirmed by the firm from its own copy, "
                                                       "with name and date. It decides, and replaces "
                                                       "the value that came with the program.")},
    ProvenanceText{Provenance::Maker, QT_TRANSLATE_NOOP("Words",
                                                        "From the appliance maker's instructions, kept with "
                                                        "the appliance. It decides before all others.")},
};

using ComparisonText = Text<Comparison>;
constexpr std::array kComparisons{
    ComparisonText{Comparison::AtMost, QT_TRANSLATE_NOOP("Words", "at most")},
    ComparisonText{Comparison::Below, QT_TRANSLATE_NOOP("Words", "below")},
    ComparisonText{Comparison::AtLeast, QT_TRANSLATE_NOOP("Words", "at least")},
    ComparisonText{Comparison::Within, QT_TRANSLATE_NOOP("Words", "within")},
    ComparisonText{Comparison::Equals, QT_TRANSLATE_NOOP("Words", "exactly")},
    ComparisonText{Comparison::AsGiven, QT_TRANSLATE_NOOP("Words", "as given")},
};
constexpr std::array kCompared{
    ComparisonText{Comparison::AtMost, QT_TRANSLATE_NOOP("Words", "at most %1")},
    ComparisonText{Comparison::Below, QT_TRANSLATE_NOOP("Words", "below %1")},
    ComparisonText{Comparison::AtLeast, QT_TRANSLATE_NOOP("Words", "at least %1")},
    ComparisonText{Comparison::Within, QT_TRANSLATE_NOOP("Words", "within %1")},
    ComparisonText{Comparison::Equals, QT_TRANSLATE_NOOP("Words", "exactly %1")},
    ComparisonText{Comparison::AsGiven, QT_TRANSLATE_NOOP("Words", "%1")},
};

QString rangeText(const Words& words, const rulebook::Range& range) {
    return words.say(QT_TRANSLATE_NOOP("Words", "%1 to %2"),
                     {qstring(quantity::show({range.least, quantity::UnitCode::None})),
                      qstring(quantity::show({range.most, range.unit}))});
}

QString bandsText(const Words& words, const std::vector<rulebook::Band>& bands) {
    QStringList lines;
    for (const auto& band : bands) {
        lines << words.say(QT_TRANSLATE_NOOP("Words", "up to %1: %2"),
                           {words.figure({band.upTo, quantity::UnitCode::CubicMetre}),
                            words.figure({band.allowed, quantity::UnitCode::Millibar})});
    }
    return lines.join(QStringLiteral("; "));
}

/// A word of comparison with its figure; "as given" is the figure alone.
QString compared(const Words& words, Comparison comparison, const quantity::Figure& figure) {
    return words.say(textOf(kCompared, comparison), {words.figure(figure)});
}

/// Who stands for an entry: "published", or "confirmed by J. Example, 3 Oct 2026".
QString warrant(const Words& words, const rulebook::Entry& entry) {
    if (entry.provenance != Provenance::Firm || entry.confirmedBy.empty()) {
        return words.provenance(entry.provenance);
    }
    if (!entry.confirmedOn) {
        return words.say(QT_TRANSLATE_NOOP("Words", "confirmed by %1"), {qstring(entry.confirmedBy)});
    }
    return words.say(QT_TRANSLATE_NOOP("Words", "confirmed by %1, %2"),
                     {qstring(entry.confirmedBy), words.shortDate(*entry.confirmedOn)});
}

}  // namespace

QString Words::edition(Edition edition) const {
    return edition == Edition::General ? say(QT_TRANSLATE_NOOP("Words", "any edition"))
                                       : QString::fromUtf8(textOf(kEditions, edition));
}

QString Words::provenance(Provenance provenance) const {
    return say(textOf(kProvenances, provenance));
}
QString Words::provenanceMeaning(Provenance provenance) const {
    return say(textOf(kMeanings, provenance));
}
QString Words::comparison(Comparison comparison) const {
    return say(textOf(kComparisons, comparison));
}

QString Words::rule(Rule rule) const {
    const char* text = textOf(kRules, rule);
    return text != nullptr ? say(text) : qstring(std::string(rulebook::ruleText(rule)));
}

QString Words::ruleValue(const rulebook::Entry& entry) const {
    if (const auto* figure = std::get_if<quantity::Figure>(&entry.value)) {
        return compared(*this, entry.comparison, *figure);
    }
    if (const auto* range = std::get_if<rulebook::Range>(&entry.value)) {
        return rangeText(*this, *range);
    }
    if (const auto* bands = std::get_if<std::vector<rulebook::Band>>(&entry.value)) {
        return bandsText(*this, *bands);
    }
    return say(QT_TRANSLATE_NOOP("Words", "not entered"));
}

QString Words::source(const rulebook::Entry& entry) const {
    QString name = qstring(entry.standard);
    if (!entry.clause.empty()) {
        name += (name.isEmpty() ? QString() : QStringLiteral(", ")) + qstring(entry.clause);
    }
    const QString known =
        entry.isKnown() ? warrant(*this, entry) : say(QT_TRANSLATE_NOOP("Words", "not entered"));
    return name.isEmpty() ? known : name + QStringLiteral(" · ") + known;
}

QString Words::measuredAgainst(const rulebook::Finding& finding) const {
    if (!finding.measured) {
        return {};
    }
    const QString measured = figure(*finding.measured);
    const auto range = finding.limits.empty() ? std::nullopt : rulebook::rangeOf(finding.limits.front());
    if (range && finding.comparison == Comparison::Within) {
        return say(QT_TRANSLATE_NOOP("Words", "%1 (band: %2)"), {measured, rangeText(*this, *range)});
    }
    if (!finding.limit) {
        return measured;
    }
    return say(QT_TRANSLATE_NOOP("Words", "%1 (limit: %2)"),
               {measured, compared(*this, finding.comparison, *finding.limit)});
}

}  // namespace hearth::ui::words
