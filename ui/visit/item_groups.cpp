// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/asked_part.h"

#include <QtGlobal>

#include <array>

namespace hearth::ui::visit {

using reg::Item;

namespace {

constexpr std::array kSeeIt{Item::ApplianceInspected, Item::NotInspectedWhy,  Item::CheckedOn,
                            Item::LastCheckCounted,   Item::NewOrReplacement, Item::ServiceKind,
                            Item::ServiceSymptoms};
constexpr std::array kCappedSeen{Item::CappedHow, Item::CappedWhere, Item::CappedProved, Item::CappedLabel};
constexpr std::array kLpgSystem{
    Item::LpgDataBadge,     Item::LpgUnitNumber,       Item::LpgUse,       Item::LpgCylinders,
    Item::LpgCylinderPlace, Item::LpgCylindersSecured, Item::LpgRegulator, Item::LpgRegulatorDate,
    Item::LpgHoseDates,     Item::LpgShutOffs,         Item::LpgLockUp,    Item::LpgBubbleTester,
    Item::LpgVentilation,   Item::LpgVentHigh,         Item::LpgVentLow,   Item::LpgDrains};
constexpr std::array kKitchen{Item::CateringInterlock, Item::CateringInterlockProved,
                              Item::CateringShutOff,   Item::CateringGasProving,
                              Item::CateringExtract,   Item::CateringMakeUpAir,
                              Item::CateringCo2Place,  Item::CateringCo2Start,
                              Item::CateringCo2End,    Item::CateringCo};
constexpr std::array kCylinder{
    Item::UnventedCapacity,   Item::UnventedExpansion,  Item::UnventedRelief,    Item::UnventedPressureValves,
    Item::UnventedDischarge1, Item::UnventedDischarge2, Item::UnventedCompetence};
constexpr std::array kPlace{Item::LocationSeen, Item::StabilitySeen, Item::ClearancesSeen, Item::DistressSeen,
                            Item::ConnectionSeen};
constexpr std::array kFlueAndAir{
    Item::FlueRoute,    Item::FlueSeen,        Item::TerminalSeen, Item::FlueHidden,   Item::FlueNotSeen,
    Item::CaseSealSeen, Item::VentilationSeen, Item::FlueFlowTest, Item::SpillageTest, Item::SpillageFans};
constexpr std::array kGas{Item::PipeSizing,    Item::MeterStandingPressure, Item::MeterWorkingPressure,
                          Item::InletStanding, Item::InletPressure,         Item::BurnerPressure,
                          Item::GasRateRead,   Item::HeatInputRead,         Item::HeatInputBasis};
constexpr std::array kBurning{
    Item::BeforeCoHigh,     Item::BeforeCo2High, Item::BeforeCoLow, Item::BeforeCo2Low, Item::ServiceAdjusted,
    Item::InletO2,          Item::InletCo2,      Item::FlueCoHigh,  Item::FlueCo2High,  Item::FlueO2High,
    Item::FlueRatioPrinted, Item::FlueCoLow,     Item::FlueCo2Low,  Item::FlueO2Low};
constexpr std::array kSafety{Item::FlameSeen,      Item::SafetyDevices,   Item::PressureRelief,
                             Item::CondensateSeen, Item::CondensateRoute, Item::CondensateEnd,
                             Item::TrapFilled};
constexpr std::array kWaterHeat{Item::HeatingFlow,      Item::HeatingReturn, Item::HotWaterGasRate,
                                Item::HotWaterPressure, Item::HotWaterCold,  Item::HotWaterHot,
                                Item::HotWaterFlow};
constexpr std::array kControls{Item::ControlTime,   Item::ControlRoom, Item::ControlInterlock,
                               Item::ControlZones,  Item::ControlTrvs, Item::ControlCylinder,
                               Item::ControlBypass, Item::CombiMeasure};
constexpr std::array kSystem{Item::WaterCleaned,  Item::WaterCleaner, Item::WaterInhibitor, Item::WaterFilter,
                             Item::WaterHardness, Item::ScaleReducer, Item::WaterPressure,  Item::DesignFlow,
                             Item::VesselSeen,    Item::InhibitorSeen};
constexpr std::array kDone{Item::ServiceTasks,    Item::ServiceParts,  Item::ByMaker,
                           Item::ServiceInterval, Item::ServicedToday, Item::NextServiceDue};
constexpr std::array kExamined{Item::ExaminedFlue,      Item::ExaminedAir,        Item::ExaminedPressure,
                               Item::ExaminedHeatInput, Item::ExaminedBoth,       Item::WhyNeither,
                               Item::WhyNeitherTaken,   Item::ExaminedCombustion, Item::ExaminedOperation,
                               Item::CheckCovered};
constexpr std::array kComesOfIt{Item::DefectsFound, Item::DefectsText, Item::ActionTaken,
                                Item::ActionOn,     Item::ActionBy,    Item::SafeToUse};
constexpr std::array kApplianceGroups{
    ItemGroup{"", kSeeIt},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "How it is capped"), kCappedSeen},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "The LPG system"), kLpgSystem},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "The kitchen"), kKitchen},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "The cylinder, noted only"), kCylinder},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Where it stands"), kPlace},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Flue and air"), kFlueAndAir},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Gas"), kGas},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Combustion"), kBurning},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Flame and safety"), kSafety},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Heating and hot water"), kWaterHeat},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Controls"), kControls},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Water of the system"), kSystem},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Work done"), kDone},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "What regulation 26(9) asks"), kExamined},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "What comes of it"), kComesOfIt},
};

constexpr std::array kLargerWhat{
    Item::LargerOperatingPressure, Item::LargerIncidentalPressure, Item::LargerArea,
    Item::LargerRoomVolume,        Item::PurgeVolumeKnown,         Item::LargerWork};
constexpr std::array kStrength{Item::StrengthMostOperating, Item::StrengthMedium,  Item::StrengthGauge,
                               Item::StrengthPartsOff,      Item::StrengthSettled, Item::StrengthStart,
                               Item::StrengthEnd,           Item::StrengthTook};
constexpr std::array kLargerTest{Item::LargerGauge,     Item::LargerMedium,     Item::LargerLetByStart,
                                 Item::LargerLetByEnd,  Item::LargerLetByTook,  Item::LargerSettleStart,
                                 Item::LargerSettleEnd, Item::LargerSettleTook, Item::LargerStart,
                                 Item::LargerEnd,       Item::LargerTook,       Item::LargerSmell};
constexpr std::array kLargerPurge{Item::PurgeFlow, Item::PurgePassed, Item::PurgeEndGas};
constexpr std::array kLargerGroups{
    ItemGroup{"", kLargerWhat},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Strength"), kStrength},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Let-by, settling, tightness"), kLargerTest},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Purge"), kLargerPurge},
};

constexpr std::array kCall{Item::CallFrom,          Item::EmergencyReference, Item::AlarmMake,
                           Item::AlarmExpiry,       Item::AlarmPeak,          Item::Symptoms,
                           Item::MedicalAdvice,     Item::OccupantsThere,     Item::WeatherThere,
                           Item::AdjoiningPremises, Item::OtherFuels};
constexpr std::array kInvestigationGroups{
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "The call"), kCall},
};

constexpr std::array kUnsafe{
    Item::SituationGasEscape,   Item::SituationPerson,      Item::SituationPermission,
    Item::SituationMadeSafe,    Item::SituationMadeSafeHow, Item::SituationLabel,
    Item::SituationLabelNumber, Item::SituationRefusedBy,   Item::SituationRefusalWords,
    Item::SituationSupplyLeft,  Item::SituationWorkNeeded};
constexpr std::array kToldWhom{Item::SituationTold,          Item::SituationToldAt,
                               Item::SituationToldReference, Item::SituationReceipt,
                               Item::SituationReceivedBy,    Item::SituationCopyLeft};
constexpr std::array kReport{Item::SituationReportable,     Item::SituationReportWhy,
                             Item::SituationKnownOn,        Item::SituationWorkBy,
                             Item::SituationPersons,        Item::SituationReportedOn,
                             Item::SituationReportReference};
constexpr std::array kSituationGroups{
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Made safe"), kUnsafe},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "Who was told"), kToldWhom},
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "To be reported"), kReport},
};

constexpr std::array kShown{Item::HandoverShown,       Item::HandoverInstructions, Item::HandoverReadings,
                            Item::HandoverAdvice,      Item::ControlsInformation,  Item::WorkCompleted,
                            Item::BuildingNotification};
// What came of an investigation is known once the appliances have been looked at.
constexpr std::array kCause{Item::CauseFound, Item::InvestigationActions, Item::LeftAs};
constexpr std::array kHandOverGroups{
    ItemGroup{QT_TRANSLATE_NOOP("hearth::ui::visit::AskedPart", "What came of it"), kCause},
    ItemGroup{"", kShown}};

}  // namespace

std::span<const ItemGroup> applianceGroups() {
    return kApplianceGroups;
}
std::span<const ItemGroup> largerGroups() {
    return kLargerGroups;
}
std::span<const ItemGroup> investigationGroups() {
    return kInvestigationGroups;
}
std::span<const ItemGroup> situationGroups() {
    return kSituationGroups;
}
std::span<const ItemGroup> handOverGroups() {
    return kHandOverGroups;
}

}  // namespace hearth::ui::visit
