// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/requirements.h"

#include <array>

/// Records of work on appliances. Lines about an appliance, a room or a situation that stand together are
/// asked of each.
namespace hearth::record {

namespace {

using reg::Item;

constexpr std::string_view kCommonWork = "common practice";
constexpr std::string_view kLaw3Work = "Gas Safety (Installation and Use) Regulations 1998, regulation 3";
constexpr std::string_view kLaw29 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 29, from memory";
constexpr std::string_view kLaw33 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 33, from memory";
constexpr std::string_view kLaw26Work =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)";
constexpr std::string_view kLaw26aWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(a)";
constexpr std::string_view kLaw26bWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(b)";
constexpr std::string_view kLaw26cWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(c)";
constexpr std::string_view kLaw26caWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(ca)";
constexpr std::string_view kLaw26dWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(d), from memory";
constexpr std::string_view kLaw26tailWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9), from memory";
constexpr std::string_view kReason26Work =
    "report on the Gas Safety (Amendment) Regulations 2018, quoting HSE";
constexpr std::string_view kDeclaredWork =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(5)";
constexpr std::string_view kBs6798 = "BS 6798, from memory";
constexpr std::string_view kBs7593 = "BS 7593, from memory";
constexpr std::string_view kAdL = "Approved Document L, volume 1 (2021), from memory";
constexpr std::string_view kAdJ = "Approved Document J, from memory";
constexpr std::string_view kBoilerPlus = "Guidance on how to comply with Part L from April 2018";
constexpr std::string_view kInletBulletin = "GB gas register's bulletin on condensing boilers, from memory";
constexpr std::string_view kVoidsWork = "GB gas register, Technical Bulletin 008 Edition 3";
constexpr std::string_view kBuilding20 = "Building Regulations 2010, regulation 20";
constexpr std::string_view kBuilding40 = "Building Regulations 2010, regulation 40";
constexpr std::string_view kG11Work = "IGEM/G/11 Edition 2";

// What either tells beside the appliance: what was used, the alarms, defects with their class.
constexpr std::array kWorkAround{
    wantedItem(Item::VisitAnalyser, kCommonWork, When::AnalyserUsed),
    wantedField(Field::AnalyserSerial, kCommonWork, When::AnalyserUsed),
    wantedField(Field::AnalyserCalibration, kCommonWork, When::AnalyserUsed),
    wantedItem(Item::VisitGauge, kCommonWork, When::WhenTyped),
    // alarms
    wantedItem(Item::RoomName, kCommonWork),
    wantedItem(Item::RoomCoAlarm, kAdJ),
    wantedItem(Item::RoomCoAlarmExpiry, kCommonWork, When::WhenTyped),
    wantedItem(Item::RoomSmokeAlarm, kCommonWork, When::WhenTyped),
    wantedItem(Item::RoomSmokeAlarmExpiry, kCommonWork, When::WhenTyped),
    wantedItem(Item::RoomAlarmNotes, kCommonWork, When::WhenTyped),
    // defects with their class
    wantedField(Field::SituationDanger, kG11Work),
    wantedField(Field::SituationWhat, kG11Work),
    // signatures
    wantedItem(Item::VisitRemarks, kCommonWork, When::WhenTyped),
};

constexpr std::array kCommissioningFirst{
    // who and where
    wantedField(Field::FirmName, kBs6798),
    wantedField(Field::FirmAddress, kBs6798),
    wantedField(Field::FirmRegistration, kLaw3Work),
    wantedField(Field::PremisesAddress, kBs6798),
    wantedField(Field::PremisesPostcode, kBs6798),
    wantedField(Field::CustomerName, kBs6798),
    wantedField(Field::EngineerName, kBs6798),
    wantedField(Field::EngineerCard, kBs6798),
    wantedField(Field::VisitDate, kBs6798),
    wantedItem(Item::VisitReference, kBs6798, When::WhenTyped),
    wantedItem(Item::VisitPresent, kBs6798, When::WhenTyped),
    wantedItem(Item::WorkCompleted, kBuilding20),
    wantedItem(Item::BuildingNotification, kBuilding20, When::NewWork),
    // each appliance
    wantedField(Field::ApplianceKind, kBs6798),
    wantedField(Field::ApplianceMake, kBs6798),
    wantedField(Field::ApplianceModel, kBs6798),
    wantedField(Field::ApplianceSerial, kBs6798),
    wantedField(Field::AppliancePlace, kBs6798),
    wantedField(Field::ApplianceFlue, kBs6798),
    wantedItem(Item::ApplianceInspected, kLaw26Work),
    wantedItem(Item::NewOrReplacement, kBs6798),
    // controls
    wantedItem(Item::ControlTime, kBs6798, When::Boiler),
    wantedItem(Item::ControlRoom, kBs6798, When::Boiler),
    wantedItem(Item::ControlInterlock, kBs6798, When::Boiler),
    wantedItem(Item::ControlZones, kBs6798, When::WhenTyped),
    wantedItem(Item::ControlTrvs, kBs6798, When::Boiler),
    wantedItem(Item::ControlCylinder, kBs6798, When::Boiler),
    wantedItem(Item::ControlBypass, kBs6798, When::Boiler),
    wantedItem(Item::CombiMeasure, kBoilerPlus, When::Boiler),
    // water
    wantedItem(Item::WaterCleaned, kBs7593, When::Boiler),
    wantedItem(Item::WaterCleaner, kBs7593, When::Boiler),
    wantedItem(Item::WaterInhibitor, kBs7593, When::Boiler),
    wantedItem(Item::WaterFilter, kBs7593, When::Boiler),
    wantedItem(Item::WaterHardness, kAdL, When::Boiler),
    wantedItem(Item::ScaleReducer, kAdL, When::Boiler),
    wantedItem(Item::WaterPressure, kBs6798, When::Boiler),
    wantedItem(Item::DesignFlow, kAdL, When::Boiler),
    // heating and hot water
    wantedItem(Item::GasRateRead, kBs6798),
    wantedItem(Item::HeatInputRead, kBs6798),
    wantedItem(Item::HeatInputBasis, kBs6798),
    wantedItem(Item::HeatingFlow, kBs6798, When::Boiler),
    wantedItem(Item::HeatingReturn, kBs6798, When::Boiler),
    wantedItem(Item::HotWaterGasRate, kBs6798, When::WhenTyped),
    wantedItem(Item::HotWaterPressure, kBs6798, When::WhenTyped),
    wantedItem(Item::HotWaterCold, kBs6798, When::WhenTyped),
    wantedItem(Item::HotWaterHot, kBs6798, When::WhenTyped),
    wantedItem(Item::HotWaterFlow, kBs6798, When::WhenTyped),
    // supply
    wantedItem(Item::MeterStandingPressure, kBs6798),
    wantedItem(Item::MeterWorkingPressure, kBs6798),
    wantedItem(Item::InletPressure, kBs6798),
    wantedItem(Item::InletStanding, kBs6798, When::WhenTyped),
    wantedItem(Item::BurnerPressure, kBs6798, When::WhenTyped),
    wantedItem(Item::PipeSizing, kBs6798),
    // flue
    wantedItem(Item::FlueRoute, kBs6798),
    wantedItem(Item::FlueSeen, kBs6798),
    wantedItem(Item::TerminalSeen, kBs6798),
    wantedItem(Item::FlueHidden, kVoidsWork),
    wantedItem(Item::FlueNotSeen, kVoidsWork, When::WhenTyped),
    wantedItem(Item::InletO2, kInletBulletin, When::Condensing),
    wantedItem(Item::InletCo2, kInletBulletin, When::Condensing),
    // combustion
    wantedItem(Item::FlueCoHigh, kBs6798, When::Boiler),
    wantedItem(Item::FlueCo2High, kBs6798, When::CombustionRead),
    wantedItem(Item::FlueCoLow, kBs6798, When::Boiler),
    wantedItem(Item::FlueCo2Low, kBs6798, When::Boiler),
    wantedItem(Item::FlueO2High, kBs6798, When::WhenTyped),
    wantedItem(Item::FlueO2Low, kBs6798, When::WhenTyped),
    // condensate
    wantedItem(Item::CondensateRoute, kBs6798, When::Condensing),
    wantedItem(Item::CondensateEnd, kBs6798, When::Condensing),
    wantedItem(Item::TrapFilled, kBs6798, When::Condensing),
    // location, safety devices
    wantedItem(Item::VentilationSeen, kBs6798),
    wantedItem(Item::ClearancesSeen, kBs6798),
    wantedItem(Item::SafetyDevices, kLaw33),
    wantedItem(Item::PressureRelief, kBs6798, When::Boiler),
    wantedItem(Item::FlameSeen, kBs6798),
    wantedItem(Item::ByMaker, kLaw33),
    wantedItem(Item::ServiceInterval, kBs6798),
    wantedItem(Item::CheckCovered, kLaw26Work),
    wantedItem(Item::ExaminedFlue, kLaw26aWork),
    wantedItem(Item::ExaminedAir, kLaw26bWork),
    wantedItem(Item::ExaminedPressure, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedHeatInput, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedBoth, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedCombustion, kLaw26caWork, When::Unpressured),
    wantedItem(Item::WhyNeither, kReason26Work, When::Unpressured),
    wantedItem(Item::WhyNeitherTaken, kReason26Work, When::OtherReason),
    wantedItem(Item::ExaminedOperation, kLaw26dWork),
    wantedItem(Item::DefectsFound, kLaw26tailWork),
    wantedItem(Item::DefectsText, kLaw26tailWork, When::DefectFound),
    wantedItem(Item::ActionTaken, kLaw26tailWork, When::DefectFound),
    wantedItem(Item::SafeToUse, kDeclaredWork),
    // hand-over
    wantedItem(Item::HandoverShown, kBs6798),
    wantedItem(Item::HandoverInstructions, kLaw29),
    wantedItem(Item::HandoverReadings, kBs6798),
    wantedItem(Item::HandoverAdvice, kCommonWork, When::WhenTyped),
    wantedItem(Item::ControlsInformation, kBuilding40),
};
constexpr std::array kCommissioningSigned{
    wantedItem(Item::SignedByEngineer, kBs6798),
    wantedItem(Item::ReceivedBy, kBs6798, When::WhenTyped),
};
constexpr auto kCommissioning = joinedTables(kCommissioningFirst, kWorkAround, kCommissioningSigned);

constexpr std::array kServiceFirst{
    // who and where
    wantedField(Field::FirmName, kCommonWork),
    wantedField(Field::FirmAddress, kCommonWork),
    wantedField(Field::FirmRegistration, kLaw3Work),
    wantedField(Field::PremisesAddress, kCommonWork),
    wantedField(Field::PremisesPostcode, kCommonWork),
    wantedField(Field::CustomerName, kCommonWork),
    wantedField(Field::EngineerName, kCommonWork),
    wantedField(Field::EngineerCard, kCommonWork),
    wantedField(Field::VisitDate, kCommonWork),
    wantedItem(Item::VisitReference, kCommonWork, When::WhenTyped),
    wantedItem(Item::VisitPresent, kCommonWork, When::WhenTyped),
    // each appliance
    wantedField(Field::ApplianceKind, kBs6798),
    wantedField(Field::ApplianceMake, kBs6798),
    wantedField(Field::ApplianceModel, kBs6798),
    wantedField(Field::ApplianceSerial, kBs6798),
    wantedField(Field::AppliancePlace, kBs6798),
    wantedField(Field::ApplianceFlue, kBs6798),
    wantedItem(Item::ApplianceInspected, kLaw26Work),
    wantedItem(Item::ServiceKind, kCommonWork),
    wantedItem(Item::ServiceSymptoms, kCommonWork, When::Breakdown),
    wantedItem(Item::ServiceTasks, kBs6798),
    wantedItem(Item::ServiceParts, kCommonWork, When::WhenTyped),
    // readings
    wantedItem(Item::InletPressure, kBs6798, When::WhenTyped),
    wantedItem(Item::BurnerPressure, kBs6798, When::WhenTyped),
    wantedItem(Item::GasRateRead, kBs6798, When::WhenTyped),
    wantedItem(Item::HeatInputRead, kBs6798, When::WhenTyped),
    wantedItem(Item::HeatInputBasis, kBs6798, When::WhenTyped),
    wantedItem(Item::FlueCoHigh, kBs6798, When::Boiler),
    wantedItem(Item::FlueCo2High, kBs6798, When::CombustionRead),
    wantedItem(Item::FlueCoLow, kBs6798, When::WhenTyped),
    wantedItem(Item::FlueCo2Low, kBs6798, When::WhenTyped),
    wantedItem(Item::FlueO2High, kBs6798, When::WhenTyped),
    wantedItem(Item::FlueO2Low, kBs6798, When::WhenTyped),
    wantedItem(Item::ServiceAdjusted, kBs6798, When::Boiler),
    wantedItem(Item::BeforeCoHigh, kBs6798, When::Adjusted),
    wantedItem(Item::BeforeCo2High, kBs6798, When::Adjusted),
    wantedItem(Item::BeforeCoLow, kBs6798, When::WhenTyped),
    wantedItem(Item::BeforeCo2Low, kBs6798, When::WhenTyped),
    wantedItem(Item::InletO2, kInletBulletin, When::WhenTyped),
    wantedItem(Item::InletCo2, kInletBulletin, When::WhenTyped),
    // looked at
    wantedItem(Item::CondensateSeen, kBs6798, When::Condensing),
    wantedItem(Item::VesselSeen, kCommonWork, When::Boiler),
    wantedItem(Item::InhibitorSeen, kBs7593, When::Boiler),
    wantedItem(Item::VentilationSeen, kBs6798),
    wantedItem(Item::FlueSeen, kBs6798),
    wantedItem(Item::TerminalSeen, kBs6798),
    wantedItem(Item::SafetyDevices, kBs6798),
    wantedItem(Item::FlameSeen, kBs6798),
    wantedItem(Item::NextServiceDue, kCommonWork),
    wantedItem(Item::CheckCovered, kLaw26Work),
    wantedItem(Item::ExaminedFlue, kLaw26aWork),
    wantedItem(Item::ExaminedAir, kLaw26bWork),
    wantedItem(Item::ExaminedPressure, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedHeatInput, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedBoth, kLaw26cWork, When::WhenTyped),
    wantedItem(Item::ExaminedCombustion, kLaw26caWork, When::Unpressured),
    wantedItem(Item::WhyNeither, kReason26Work, When::Unpressured),
    wantedItem(Item::WhyNeitherTaken, kReason26Work, When::OtherReason),
    wantedItem(Item::ExaminedOperation, kLaw26dWork),
    wantedItem(Item::DefectsFound, kLaw26tailWork),
    wantedItem(Item::DefectsText, kLaw26tailWork, When::DefectFound),
    wantedItem(Item::ActionTaken, kLaw26tailWork, When::DefectFound),
    wantedItem(Item::SafeToUse, kDeclaredWork),
    // advice and what was used
    wantedItem(Item::HandoverAdvice, kCommonWork, When::WhenTyped),
};
constexpr std::array kServiceSigned{
    wantedItem(Item::SignedByEngineer, kCommonWork),
    wantedItem(Item::ReceivedBy, kCommonWork, When::WhenTyped),
};
constexpr auto kService = joinedTables(kServiceFirst, kWorkAround, kServiceSigned);

}  // namespace

std::span<const Requirement> commissioningRequirements() {
    return kCommissioning;
}
std::span<const Requirement> serviceRequirements() {
    return kService;
}

}  // namespace hearth::record
