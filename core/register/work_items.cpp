// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/work_items.h"

#include <array>

namespace hearth::reg {

namespace {

using quantity::UnitFamily;

constexpr std::array kYesNoWork{Choice{choice::kYes}, Choice{choice::kNo}};
constexpr std::array kGasFamilies{Choice{choice::kNaturalGas}, Choice{choice::kPropane},
                                  Choice{choice::kButane}, Choice{choice::kLpgAir}};
/// The codes are those of gas::namedGases(), and "typed".
constexpr std::array kGasMixes{Choice{choice::kNaturalTypical},
                               Choice{choice::kNaturalRichInCo2},
                               Choice{choice::kG20},
                               Choice{choice::kG21},
                               Choice{choice::kG23},
                               Choice{choice::kG25},
                               Choice{choice::kG30},
                               Choice{choice::kG31},
                               Choice{choice::kPropane},
                               Choice{choice::kButane},
                               Choice{choice::kTyped}};
constexpr std::array kAreas{Choice{choice::kAreaA}, Choice{choice::kAreaB}, Choice{choice::kAreaC},
                            Choice{choice::kOutdoors}, Choice{choice::kBuried}};
constexpr std::array kLargerGauges{Choice{choice::kWater},           Choice{choice::kHeavyFluid},
                                   Choice{choice::kElectronic1},     Choice{choice::kElectronic2},
                                   Choice{choice::kElectronic1Wide}, Choice{choice::kElectronic0},
                                   Choice{choice::kMercury},         Choice{choice::kOther}};
constexpr std::array kMedia{Choice{choice::kFuelGas}, Choice{choice::kAirOrNitrogen}};
constexpr std::array kApplianceKinds{Choice{choice::kCondensingBoiler},
                                     Choice{choice::kNonCondensingBoiler},
                                     Choice{choice::kWarmAirHeater},
                                     Choice{choice::kBackBoiler},
                                     Choice{choice::kBackBoilerFire},
                                     Choice{choice::kGasFire},
                                     Choice{choice::kOpenFluedWaterHeater},
                                     Choice{choice::kRoomSealedWaterHeater},
                                     Choice{choice::kFluelessSpaceHeater},
                                     Choice{choice::kFluelessWaterHeater},
                                     Choice{choice::kOven},
                                     Choice{choice::kGrill},
                                     Choice{choice::kHotplate},
                                     Choice{choice::kRangeCooker},
                                     Choice{choice::kDecorativeFire},
                                     Choice{choice::kCabinetHeater},
                                     Choice{choice::kTumbleDryer},
                                     Choice{choice::kCatering},
                                     Choice{choice::kLeisureVehicle},
                                     Choice{choice::kBoat},
                                     Choice{choice::kUnventedCylinder},
                                     Choice{choice::kOther}};
constexpr std::array kFlues{Choice{choice::kRoomSealed}, Choice{choice::kOpenFlued},
                            Choice{choice::kFlueless}};
constexpr std::array kBases{Choice{choice::kNet}, Choice{choice::kGross}};
constexpr std::array kRateMeters{Choice{choice::kMetric}, Choice{choice::kImperial}, Choice{choice::kByHand},
                                 Choice{choice::kNone}};
constexpr std::array kDials{Choice{choice::kDial1}, Choice{choice::kDial2}, Choice{choice::kDial5},
                            Choice{choice::kDial10}};
constexpr std::array kCorrections{Choice{choice::kNone}, Choice{choice::kFixed}, Choice{choice::kStatutory}};
constexpr std::array kSpaces{Choice{choice::kRoom},
                             Choice{choice::kInternalSpace},
                             Choice{choice::kCompartmentToRoom},
                             Choice{choice::kCompartmentToOutside},
                             Choice{choice::kBoilerRoom},
                             Choice{choice::kBoilerEnclosure}};
constexpr std::array kSummers{Choice{choice::kSummerHalf}, Choice{choice::kSummerMost},
                              Choice{choice::kSummerAll}};
constexpr std::array kUnderTest{Choice{choice::kFlued}, Choice{choice::kFlueless}, Choice{choice::kCooker}};
constexpr std::array kOpenings{Choice{choice::kYes}, Choice{choice::kDoor}, Choice{choice::kNo}};
constexpr std::array kYesNoUnknown{Choice{choice::kYes}, Choice{choice::kNo}, Choice{choice::kUnknown}};
constexpr std::array kVentTo{Choice{choice::kOutside}, Choice{choice::kOneWall}, Choice{choice::kMoreWalls}};
constexpr std::array kVentLevels{Choice{choice::kHigh}, Choice{choice::kLow}};
constexpr std::array kCoPlaces{Choice{choice::kOutdoors}, Choice{choice::kRoom}, Choice{choice::kAppliance},
                               Choice{choice::kElsewhere}};
constexpr std::array kCheckCountries{Choice{choice::kGreatBritain}, Choice{choice::kNorthernIreland}};
constexpr std::array kWorkDone{Choice{choice::kExisting}, Choice{choice::kNew}};

constexpr std::array kFittingsEditions{Choice{choice::kFrom2015}, Choice{choice::kBefore2015}};
constexpr std::array kPurgeSizes{Choice{choice::kSmall}, Choice{choice::kLarger}};
constexpr std::array kLoads{Choice{choice::kLoadHigh}, Choice{choice::kLoadLess}};
constexpr std::array kExaminedFlue{Choice{choice::kGood}, Choice{choice::kWrong}, Choice{choice::kNotFitted}};
constexpr std::array kExamined{Choice{choice::kGood}, Choice{choice::kWrong}};
constexpr std::array kReadingTaken{Choice{choice::kInOrder}, Choice{choice::kWrong},
                                   Choice{choice::kLookAgain}, Choice{choice::kNotTaken}};
constexpr std::array kNotAskedFor{Choice{choice::kAskedAll}, Choice{choice::kDisconnected},
                                  Choice{choice::kHarmlessPurging}};
constexpr std::array kWhyNeither{Choice{choice::kNoMeter}, Choice{choice::kMeterNotReached},
                                 Choice{choice::kDisplayDead}, Choice{choice::kOther}};

constexpr ItemInfo ofInstallation(Item item, std::string_view code, ItemKind kind,
                                  UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Installation, units, choices};
}
constexpr ItemInfo ofAppliance(Item item, std::string_view code, ItemKind kind,
                               UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Appliance, units, choices};
}
constexpr ItemInfo ofRoom(Item item, std::string_view code, ItemKind kind,
                          UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Room, units, choices};
}

// In the order of the enumeration.
constexpr std::array kWorkItems{
    // gas: what burns
    ofInstallation(Item::GasFamily, "gas.family", ItemKind::Choice, UnitFamily::None, kGasFamilies),
    ofInstallation(Item::GasMix, "gas.mix", ItemKind::Choice, UnitFamily::None, kGasMixes),
    ofInstallation(Item::GasMethane, "gas.methane", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasEthane, "gas.ethane", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasPropane, "gas.propane", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasButanes, "gas.butanes", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasPentanes, "gas.pentanes", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasHydrogen, "gas.hydrogen", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasCarbonMonoxide, "gas.carbon_monoxide", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasNitrogen, "gas.nitrogen", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasCarbonDioxide, "gas.carbon_dioxide", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasOxygen, "gas.oxygen", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasLpgShare, "gas.lpg_share", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::GasHeatValue, "gas.heat_value", ItemKind::Number, UnitFamily::HeatValue),
    ofInstallation(Item::GasDensity, "gas.relative_density", ItemKind::Number),
    // pipe: one section a row
    ofInstallation(Item::SectionTube, "section.tube", ItemKind::Text),
    ofInstallation(Item::SectionLength, "section.length", ItemKind::Number, UnitFamily::Length),
    ofInstallation(Item::SectionAfter, "section.after", ItemKind::Number),
    ofInstallation(Item::SectionElbows, "section.elbows", ItemKind::Number),
    ofInstallation(Item::SectionTees, "section.tees", ItemKind::Number),
    ofInstallation(Item::SectionBends, "section.bends", ItemKind::Number),
    ofInstallation(Item::SectionDemand, "section.demand", ItemKind::Number, UnitFamily::Power),
    ofInstallation(Item::SectionMeasured, "section.measured", ItemKind::Number, UnitFamily::Flow),
    ofInstallation(Item::SectionName, "section.name", ItemKind::Text),
    ofInstallation(Item::SectionBends45, "section.bends_45", ItemKind::Number),
    ofInstallation(Item::SectionFittings, "section.fittings", ItemKind::Number, UnitFamily::Length),
    ofInstallation(Item::SectionUnderTest, "section.under_test", ItemKind::YesNo, UnitFamily::None,
                   kYesNoWork),
    ofInstallation(Item::PipeEdition, "pipe.edition", ItemKind::Choice, UnitFamily::None, kFittingsEditions),
    // larger installations, purge
    ofInstallation(Item::PurgeVolumeKnown, "purge.installation_volume", ItemKind::Number, UnitFamily::Volume),
    ofInstallation(Item::PurgeMeter, "purge.meter", ItemKind::Text),
    ofInstallation(Item::PurgePipe, "purge.largest_pipe", ItemKind::Number, UnitFamily::Length),
    ofInstallation(Item::PurgeFlow, "purge.flow", ItemKind::Number, UnitFamily::Flow),
    ofInstallation(Item::PurgeSize, "purge.size", ItemKind::Choice, UnitFamily::None, kPurgeSizes),
    ofInstallation(Item::PurgePipes, "purge.pipes", ItemKind::Number, UnitFamily::Volume),
    ofInstallation(Item::PurgePlate, "purge.plate_cyclic", ItemKind::Number, UnitFamily::Volume),
    ofInstallation(Item::PurgePassed, "purge.passed", ItemKind::Number, UnitFamily::Volume),
    ofInstallation(Item::PurgeBurner, "purge.burner", ItemKind::Number, UnitFamily::Power),
    ofInstallation(Item::PurgeEndGas, "purge.end_gas", ItemKind::Number, UnitFamily::Share),
    ofInstallation(Item::LargerOperatingPressure, "larger.operating_pressure", ItemKind::Number,
                   UnitFamily::Pressure),
    ofInstallation(Item::LargerIncidentalPressure, "larger.incidental_pressure", ItemKind::Number,
                   UnitFamily::Pressure),
    ofInstallation(Item::LargerArea, "larger.area", ItemKind::Choice, UnitFamily::None, kAreas),
    ofInstallation(Item::LargerRoomVolume, "larger.room_volume", ItemKind::Number, UnitFamily::Volume),
    ofInstallation(Item::LargerGauge, "larger.gauge", ItemKind::Choice, UnitFamily::None, kLargerGauges),
    ofInstallation(Item::LargerMedium, "larger.medium", ItemKind::Choice, UnitFamily::None, kMedia),
    ofInstallation(Item::LargerWork, "larger.work", ItemKind::Choice, UnitFamily::None, kWorkDone),
    ofInstallation(Item::LargerSmell, "larger.smell", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofInstallation(Item::LargerStart, "larger.start", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerEnd, "larger.end", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerTook, "larger.took", ItemKind::Number, UnitFamily::Time),
    ofInstallation(Item::StrengthStart, "strength.start", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::StrengthEnd, "strength.end", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::StrengthTook, "strength.took", ItemKind::Number, UnitFamily::Time),
    ofInstallation(Item::LargerSupplyPressure, "larger.supply_pressure", ItemKind::Number,
                   UnitFamily::Pressure),
    ofInstallation(Item::LargerVentilated, "larger.ventilated", ItemKind::YesNo, UnitFamily::None,
                   kYesNoWork),
    ofInstallation(Item::LargerLetByStart, "larger.let_by_start", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerLetByEnd, "larger.let_by_end", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerLetByTook, "larger.let_by_took", ItemKind::Number, UnitFamily::Time),
    ofInstallation(Item::LargerSettleStart, "larger.settle_start", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerSettleEnd, "larger.settle_end", ItemKind::Number, UnitFamily::Pressure),
    ofInstallation(Item::LargerSettleTook, "larger.settle_took", ItemKind::Number, UnitFamily::Time),
    ofInstallation(Item::StrengthMostOperating, "strength.most_operating", ItemKind::Number,
                   UnitFamily::Pressure),
    ofInstallation(Item::StrengthMedium, "strength.medium", ItemKind::Choice, UnitFamily::None, kMedia),
    ofInstallation(Item::StrengthGauge, "strength.gauge", ItemKind::Choice, UnitFamily::None, kLargerGauges),
    ofInstallation(Item::StrengthSettled, "strength.settled", ItemKind::Number, UnitFamily::Time),
    ofInstallation(Item::StrengthPartsOff, "strength.parts_off", ItemKind::YesNo, UnitFamily::None,
                   kYesNoWork),
    // appliance: what it is
    ofAppliance(Item::ApplianceKind, "appliance.kind", ItemKind::Choice, UnitFamily::None, kApplianceKinds),
    ofAppliance(Item::ApplianceFlue, "appliance.flue", ItemKind::Choice, UnitFamily::None, kFlues),
    ofAppliance(Item::ApplianceInput, "appliance.input", ItemKind::Number, UnitFamily::Power),
    ofAppliance(Item::ApplianceInputBasis, "appliance.input_basis", ItemKind::Choice, UnitFamily::None,
                kBases),
    ofAppliance(Item::ApplianceTolerance, "appliance.tolerance", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::ApplianceVentArea, "appliance.vent_area", ItemKind::Number, UnitFamily::Area),
    ofAppliance(Item::ApplianceToleranceUnder, "appliance.tolerance_under", ItemKind::Number,
                UnitFamily::Share),
    ofAppliance(Item::ApplianceToleranceSource, "appliance.tolerance_source", ItemKind::Text),
    // appliance: gas rate
    ofAppliance(Item::RateMeter, "rate.meter", ItemKind::Choice, UnitFamily::None, kRateMeters),
    ofAppliance(Item::RateIndexStart, "rate.index_start", ItemKind::Number, UnitFamily::Volume),
    ofAppliance(Item::RateIndexEnd, "rate.index_end", ItemKind::Number, UnitFamily::Volume),
    ofAppliance(Item::RateDial, "rate.dial", ItemKind::Choice, UnitFamily::None, kDials),
    ofAppliance(Item::RateTurns, "rate.turns", ItemKind::Number),
    ofAppliance(Item::RateTime, "rate.time", ItemKind::Number, UnitFamily::Time),
    ofAppliance(Item::RateCorrection, "rate.correction", ItemKind::Choice, UnitFamily::None, kCorrections),
    ofAppliance(Item::RateMeterPressure, "rate.meter_pressure", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::RateGasTemperature, "rate.gas_temperature", ItemKind::Number, UnitFamily::Temperature),
    ofAppliance(Item::RateAltitude, "rate.altitude", ItemKind::Number, UnitFamily::Length),
    ofAppliance(Item::RateOthersOff, "rate.others_off", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::RateFullRate, "rate.full_rate", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::RateWarm, "rate.warm", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::RateMeterMost, "rate.meter_most", ItemKind::Number, UnitFamily::Flow),
    ofAppliance(Item::RateIndexWhole, "rate.index_whole", ItemKind::Number, UnitFamily::Volume),
    ofAppliance(Item::RatePassed, "rate.passed", ItemKind::Number, UnitFamily::Volume),
    ofAppliance(Item::RateDialDivision, "rate.dial_division", ItemKind::Number, UnitFamily::Volume),
    // appliance: pressures
    ofAppliance(Item::MeterWorkingPressure, "pressure.meter_working", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::InletPressure, "pressure.inlet", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::InletLeast, "pressure.inlet_least", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::InletMost, "pressure.inlet_most", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::BurnerPressure, "pressure.burner", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::BurnerLeast, "pressure.burner_least", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::BurnerMost, "pressure.burner_most", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::MeterStandingPressure, "pressure.meter_standing", ItemKind::Number,
                UnitFamily::Pressure),
    ofAppliance(Item::InletStanding, "pressure.inlet_standing", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::InletFullRate, "pressure.full_rate", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::PressureSameGauge, "pressure.same_gauge", ItemKind::YesNo, UnitFamily::None,
                kYesNoWork),
    ofAppliance(Item::MeterAverage, "pressure.meter_average", ItemKind::Number, UnitFamily::Pressure),
    ofAppliance(Item::MeterAverageTime, "pressure.meter_average_time", ItemKind::Number,
                UnitFamily::LongTime),
    ofAppliance(Item::MeterLoad, "pressure.meter_load", ItemKind::Choice, UnitFamily::None, kLoads),
    ofAppliance(Item::PressureMakerSource, "pressure.maker_source", ItemKind::Text),
    ofAppliance(Item::GaugeAccuracy, "pressure.gauge_accuracy", ItemKind::Number, UnitFamily::Pressure),
    // appliance: combustion
    ofAppliance(Item::FlueCoHigh, "flue.co_high", ItemKind::Number, UnitFamily::Trace),
    ofAppliance(Item::FlueCo2High, "flue.co2_high", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::FlueO2High, "flue.o2_high", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::FlueRatioPrinted, "flue.ratio_printed", ItemKind::Number),
    ofAppliance(Item::FlueTemperature, "flue.temperature", ItemKind::Number, UnitFamily::Temperature),
    ofAppliance(Item::FlueAirTemperature, "flue.air_temperature", ItemKind::Number, UnitFamily::Temperature),
    ofAppliance(Item::FlueHumidity, "flue.humidity", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::FlueCoLow, "flue.co_low", ItemKind::Number, UnitFamily::Trace),
    ofAppliance(Item::FlueCo2Low, "flue.co2_low", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::FlueO2Low, "flue.o2_low", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::MakerCo, "maker.co", ItemKind::Number, UnitFamily::Trace),
    ofAppliance(Item::MakerRatio, "maker.ratio", ItemKind::Number),
    ofAppliance(Item::InletO2, "inlet.o2", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::InletCo2, "inlet.co2", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::AnalyserComputes, "analyser.computes_co2", ItemKind::YesNo, UnitFamily::None,
                kYesNoWork),
    ofAppliance(Item::AnalyserZeroed, "analyser.zeroed", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::MakerCo2Least, "maker.co2_least", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::MakerCo2Most, "maker.co2_most", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::MakerCo2LeastLow, "maker.co2_least_low", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::MakerCo2MostLow, "maker.co2_most_low", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::MakerCombustionSource, "maker.combustion_source", ItemKind::Text),
    ofAppliance(Item::AnalyserCoAccuracy, "analyser.co_accuracy", ItemKind::Number, UnitFamily::Trace),
    ofAppliance(Item::AnalyserCo2Accuracy, "analyser.co2_accuracy", ItemKind::Number, UnitFamily::Share),
    ofAppliance(Item::AnalyserO2Accuracy, "analyser.o2_accuracy", ItemKind::Number, UnitFamily::Share),
    // appliance: hot water
    ofAppliance(Item::HotWaterFlow, "water.flow", ItemKind::Number, UnitFamily::Flow),
    ofAppliance(Item::HotWaterCold, "water.cold", ItemKind::Number, UnitFamily::Temperature),
    ofAppliance(Item::HotWaterHot, "water.hot", ItemKind::Number, UnitFamily::Temperature),
    ofAppliance(Item::HotWaterMakerFlow, "water.maker_flow", ItemKind::Number, UnitFamily::Flow),
    ofAppliance(Item::HotWaterMakerRise, "water.maker_rise", ItemKind::Number, UnitFamily::TemperatureChange),
    ofAppliance(Item::HotWaterNetInput, "water.net_input", ItemKind::Number, UnitFamily::Power),
    ofAppliance(Item::HotWaterFullRate, "water.full_rate", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::HotWaterMakerOutput, "water.maker_output", ItemKind::Number, UnitFamily::Power),
    ofAppliance(Item::HotWaterMakerSource, "water.maker_source", ItemKind::Text),
    // appliance: what the law wants examined
    ofAppliance(Item::ExaminedFlue, "examined.flue", ItemKind::Choice, UnitFamily::None, kExaminedFlue),
    ofAppliance(Item::ExaminedAir, "examined.air", ItemKind::Choice, UnitFamily::None, kExamined),
    ofAppliance(Item::ExaminedPressure, "examined.pressure", ItemKind::Choice, UnitFamily::None,
                kReadingTaken),
    ofAppliance(Item::ExaminedHeatInput, "examined.heat_input", ItemKind::Choice, UnitFamily::None,
                kReadingTaken),
    ofAppliance(Item::ExaminedCombustion, "examined.combustion", ItemKind::Choice, UnitFamily::None,
                kReadingTaken),
    ofAppliance(Item::WhyNeitherTaken, "examined.why_neither", ItemKind::Text),
    ofAppliance(Item::ExaminedOperation, "examined.operation", ItemKind::Choice, UnitFamily::None, kExamined),
    ofAppliance(Item::ExaminedBoth, "examined.both", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofAppliance(Item::ExaminedNotAsked, "examined.not_asked", ItemKind::Choice, UnitFamily::None,
                kNotAskedFor),
    ofAppliance(Item::WhyNeither, "examined.why_neither_kind", ItemKind::Choice, UnitFamily::None,
                kWhyNeither),
    // room
    ofRoom(Item::RoomVolume, "room.volume", ItemKind::Number, UnitFamily::Volume),
    ofRoom(Item::RoomSpace, "room.space", ItemKind::Choice, UnitFamily::None, kSpaces),
    ofRoom(Item::RoomOpening, "room.opening", ItemKind::Choice, UnitFamily::None, kOpenings),
    ofRoom(Item::RoomTight, "room.tight", ItemKind::Choice, UnitFamily::None, kYesNoUnknown),
    ofRoom(Item::RoomBedSitting, "room.bed_sitting", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::VentArea, "vent.area", ItemKind::Number, UnitFamily::Area),
    ofRoom(Item::VentTo, "vent.to", ItemKind::Choice, UnitFamily::None, kVentTo),
    ofRoom(Item::VentLevel, "vent.level", ItemKind::Choice, UnitFamily::None, kVentLevels),
    ofRoom(Item::VentSound, "vent.sound", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::RoomVents, "room.vents", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::RoomBasement, "room.basement", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::VentSleeved, "vent.sleeved", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::PlantSummer, "plant.summer", ItemKind::Choice, UnitFamily::None, kSummers),
    ofRoom(Item::PlantFloor, "plant.floor", ItemKind::Number, UnitFamily::Temperature),
    ofRoom(Item::PlantMiddle, "plant.middle", ItemKind::Number, UnitFamily::Temperature),
    ofRoom(Item::PlantCeiling, "plant.ceiling", ItemKind::Number, UnitFamily::Temperature),
    // room: carbon monoxide, one reading a row
    ofRoom(Item::RoomCoDistance, "room_co.distance", ItemKind::YesNo, UnitFamily::None, kYesNoWork),
    ofRoom(Item::RoomCoAt, "room_co.at", ItemKind::Number, UnitFamily::LongTime),
    ofRoom(Item::RoomCoPlace, "room_co.place", ItemKind::Choice, UnitFamily::None, kCoPlaces),
    ofRoom(Item::RoomCo, "room_co.reading", ItemKind::Number, UnitFamily::Trace),
    ofRoom(Item::RoomCoAppliance, "room_co.appliance", ItemKind::Choice, UnitFamily::None, kUnderTest),
    ofRoom(Item::RoomCoHeight, "room_co.height", ItemKind::Number, UnitFamily::Length),
    ofRoom(Item::RoomCoFromAppliance, "room_co.from_appliance", ItemKind::Number, UnitFamily::Length),
    ofRoom(Item::RoomCoAccuracy, "room_co.accuracy", ItemKind::Number, UnitFamily::Trace),
    // when is the next check due
    ofInstallation(Item::CheckCountry, "check.country", ItemKind::Choice, UnitFamily::None, kCheckCountries),
    ofInstallation(Item::CheckInstalled, "check.installed", ItemKind::Date),
    ofInstallation(Item::CheckLast, "check.last", ItemKind::Date),
    ofInstallation(Item::CheckDone, "check.done", ItemKind::Date),
    ofInstallation(Item::CheckLease, "check.lease", ItemKind::Date),
    ofInstallation(Item::CheckOthersDue, "check.others_due", ItemKind::Date),
    ofInstallation(Item::CheckTenant, "check.tenant", ItemKind::Choice, UnitFamily::None, kWorkDone),
    ofInstallation(Item::CheckMovesIn, "check.moves_in", ItemKind::Date),
};

}  // namespace

std::span<const ItemInfo> workItems() {
    return kWorkItems;
}

}  // namespace hearth::reg
