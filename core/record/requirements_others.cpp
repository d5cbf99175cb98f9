// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/requirements.h"

#include <array>

/// Notices, investigations, entries of the firm's books and letters.
namespace hearth::record {

namespace {

using reg::Item;

constexpr std::string_view kCommonOther = "common practice";
constexpr std::string_view kLaw3Other = "Gas Safety (Installation and Use) Regulations 1998, regulation 3";
constexpr std::string_view kUp1 = "IGE/UP/1 and UP/1A, from memory";
constexpr std::string_view kG11 = "IGEM/G/11, from memory";
constexpr std::string_view kLabel = "GB gas register, Gas Appliance Warning Labels";
constexpr std::string_view kRefusal = "GB gas register, Flues in Voids FAQs";
constexpr std::string_view kLaw34 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 34, from memory";
constexpr std::string_view kReceipt =
    "gas engineers' institution, magazine of December 2020, The situation room";
constexpr std::string_view kRiddor = "RIDDOR 2013, regulation 11(2)";
constexpr std::string_view kRiddorGuide = "The gas engineer's guide to RIDDOR";
constexpr std::string_view kBs7967 = "BS 7967:2015, from memory";
constexpr std::string_view kSupplement = "IGEM/G/11 Supplement 1";
constexpr std::string_view kReg20 = "Building Regulations 2010, regulation 20";
constexpr std::string_view kReg40 = "Building Regulations 2010, regulation 40";

constexpr std::array kLarger{
    // who and where
    wantedField(Field::FirmName, kCommonOther),
    wantedField(Field::FirmAddress, kCommonOther),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::PremisesAddress, kCommonOther),
    wantedField(Field::PremisesPostcode, kCommonOther),
    wantedField(Field::CustomerName, kCommonOther),
    wantedField(Field::EngineerName, kCommonOther),
    wantedField(Field::EngineerCard, kCommonOther),
    wantedField(Field::VisitDate, kCommonOther),
    // what it is
    wantedField(Field::InstallationGas, kCommonOther),
    wantedItem(Item::LargerOperatingPressure, kUp1),
    wantedItem(Item::LargerIncidentalPressure, kUp1),
    wantedItem(Item::LargerArea, kUp1),
    wantedItem(Item::LargerRoomVolume, kUp1, When::WhenTyped),
    wantedItem(Item::PurgeVolumeKnown, kUp1),
    wantedItem(Item::LargerWork, kUp1),
    // strength
    wantedItem(Item::StrengthMostOperating, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthMedium, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthGauge, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthStart, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthEnd, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthSettled, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthTook, kUp1, When::WhenTyped),
    wantedItem(Item::StrengthPartsOff, kUp1, When::WhenTyped),
    // tightness
    wantedItem(Item::LargerGauge, kUp1),
    wantedItem(Item::LargerMedium, kUp1),
    wantedItem(Item::LargerLetByStart, kUp1, When::WhenTyped),
    wantedItem(Item::LargerLetByEnd, kUp1, When::WhenTyped),
    wantedItem(Item::LargerLetByTook, kUp1, When::WhenTyped),
    wantedItem(Item::LargerSettleStart, kUp1, When::WhenTyped),
    wantedItem(Item::LargerSettleEnd, kUp1, When::WhenTyped),
    wantedItem(Item::LargerSettleTook, kUp1, When::WhenTyped),
    wantedItem(Item::LargerStart, kUp1),
    wantedItem(Item::LargerEnd, kUp1),
    wantedItem(Item::LargerTook, kUp1),
    wantedItem(Item::LargerSmell, kUp1),
    // purge
    wantedItem(Item::PurgeFlow, kUp1, When::WhenTyped),
    wantedItem(Item::PurgePassed, kUp1, When::WhenTyped),
    wantedItem(Item::PurgeEndGas, kUp1, When::WhenTyped),
    // signatures
    wantedItem(Item::VisitRemarks, kCommonOther, When::WhenTyped),
    wantedItem(Item::SignedByEngineer, kCommonOther),
    wantedItem(Item::ReceivedBy, kCommonOther, When::WhenTyped),
};

constexpr std::array kNotice{
    // who and where
    wantedField(Field::FirmName, kG11),
    wantedField(Field::FirmAddress, kG11),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::PremisesAddress, kG11),
    wantedField(Field::PremisesPostcode, kG11),
    wantedField(Field::CustomerName, kG11),
    wantedField(Field::EngineerName, kG11),
    wantedField(Field::EngineerCard, kG11),
    wantedField(Field::VisitDate, kG11),
    // each situation
    wantedField(Field::SituationDanger, kG11),
    wantedField(Field::SituationWhat, kG11),
    wantedField(Field::SituationWhere, kG11),
    wantedItem(Item::SituationGasEscape, kG11),
    wantedItem(Item::SituationPerson, kG11),
    wantedItem(Item::SituationPermission, kG11),
    wantedItem(Item::SituationMadeSafe, kG11),
    wantedItem(Item::SituationMadeSafeHow, kG11, When::MadeSafe),
    wantedItem(Item::SituationLabel, kLabel),
    wantedItem(Item::SituationLabelNumber, kCommonOther, When::WhenTyped),
    wantedItem(Item::SituationRefusedBy, kRefusal, When::PermissionRefused),
    wantedItem(Item::SituationRefusalWords, kRefusal, When::PermissionRefused),
    wantedItem(Item::SituationSupplyLeft, kRefusal, When::PermissionRefused),
    wantedItem(Item::SituationTold, kLaw34),
    wantedItem(Item::SituationToldAt, kCommonOther, When::WhenTyped),
    wantedItem(Item::SituationToldReference, kCommonOther, When::WhenTyped),
    wantedItem(Item::SituationWorkNeeded, kG11),
    wantedItem(Item::SituationReceipt, kReceipt),
    wantedItem(Item::SituationReceivedBy, kReceipt, When::SignedFor),
    wantedItem(Item::SituationCopyLeft, kReceipt, When::CopyLeft),
    wantedItem(Item::SituationReportable, kRiddor),
    // signatures
    wantedItem(Item::SignedByEngineer, kG11),
};

constexpr std::array kInvestigation{
    // who and where
    wantedField(Field::FirmName, kCommonOther),
    wantedField(Field::FirmAddress, kCommonOther),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::PremisesAddress, kCommonOther),
    wantedField(Field::PremisesPostcode, kCommonOther),
    wantedField(Field::CustomerName, kCommonOther),
    wantedField(Field::EngineerName, kCommonOther),
    wantedField(Field::EngineerCard, kCommonOther),
    wantedField(Field::VisitDate, kCommonOther),
    // the call
    wantedItem(Item::CallFrom, kBs7967),
    wantedItem(Item::EmergencyReference, kSupplement),
    wantedItem(Item::AlarmMake, kBs7967, When::WhenTyped),
    wantedItem(Item::AlarmExpiry, kBs7967, When::WhenTyped),
    wantedItem(Item::AlarmPeak, kBs7967, When::WhenTyped),
    wantedItem(Item::Symptoms, kBs7967),
    wantedItem(Item::MedicalAdvice, kBs7967),
    wantedItem(Item::OccupantsThere, kBs7967),
    wantedItem(Item::WeatherThere, kBs7967),
    wantedItem(Item::AdjoiningPremises, kBs7967),
    wantedItem(Item::OtherFuels, kBs7967),
    wantedField(Field::RoomNamed, kBs7967),
    // each room, each reading
    wantedItem(Item::RoomName, kBs7967),
    wantedItem(Item::RoomCoAlarm, kCommonOther, When::WhenTyped),
    wantedItem(Item::RoomFinding, kBs7967, When::WhenTyped),
    wantedItem(Item::RoomCoPlace, kBs7967),
    wantedItem(Item::RoomCoAt, kBs7967, When::WhenTyped),
    wantedItem(Item::RoomCo, kBs7967),
    // each appliance
    wantedField(Field::ApplianceKind, kBs7967),
    wantedField(Field::AppliancePlace, kBs7967),
    wantedField(Field::ApplianceFlue, kBs7967),
    wantedItem(Item::ApplianceInspected, kBs7967),
    wantedItem(Item::NotInspectedWhy, kBs7967, When::NotInspected),
    wantedItem(Item::FlueSeen, kBs7967, When::Inspected),
    wantedItem(Item::VentilationSeen, kBs7967, When::Inspected),
    wantedItem(Item::SpillageTest, kBs7967, When::Inspected),
    wantedItem(Item::SpillageFans, kBs7967, When::WhenTyped),
    wantedItem(Item::FlueCoHigh, kBs7967, When::WhenTyped),
    wantedItem(Item::FlueCo2High, kBs7967, When::CombustionRead),
    wantedItem(Item::DefectsFound, kBs7967, When::Seen),
    wantedItem(Item::DefectsText, kBs7967, When::DefectFound),
    // what came of it
    wantedItem(Item::CauseFound, kBs7967),
    wantedItem(Item::InvestigationActions, kBs7967),
    wantedItem(Item::LeftAs, kBs7967),
    wantedItem(Item::VisitAnalyser, kBs7967),
    wantedField(Field::AnalyserSerial, kBs7967),
    wantedField(Field::AnalyserCalibration, kBs7967),
    wantedField(Field::SituationDanger, kG11),
    wantedField(Field::SituationWhat, kG11),
    wantedItem(Item::VisitRemarks, kCommonOther, When::WhenTyped),
    wantedItem(Item::SignedByEngineer, kCommonOther),
};

constexpr std::array kReportableWants{
    // who and where
    wantedField(Field::FirmName, kRiddor),
    wantedField(Field::FirmAddress, kRiddor),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::PremisesAddress, kRiddor),
    wantedField(Field::PremisesPostcode, kRiddor),
    wantedField(Field::CustomerName, kRiddor),
    wantedField(Field::EngineerName, kRiddor),
    wantedField(Field::EngineerCard, kRiddor),
    wantedField(Field::VisitDate, kRiddor),
    // each
    wantedField(Field::SituationWhat, kRiddor),
    wantedField(Field::SituationWhere, kRiddor),
    wantedItem(Item::SituationReportable, kRiddor),
    wantedItem(Item::SituationReportWhy, kRiddor, When::Reportable),
    wantedItem(Item::SituationKnownOn, kRiddor, When::Reportable),
    wantedItem(Item::SituationReportedOn, kRiddorGuide, When::WhenTyped),
    wantedItem(Item::SituationReportReference, kRiddorGuide, When::WhenTyped),
    wantedItem(Item::SituationWorkBy, kCommonOther, When::Reportable),
    wantedItem(Item::SituationPersons, kRiddorGuide, When::Reportable),
    // signature
    wantedItem(Item::SignedByEngineer, kCommonOther),
};

constexpr std::array kBuilding{
    // who and where
    wantedField(Field::FirmName, kCommonOther),
    wantedField(Field::FirmAddress, kCommonOther),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::PremisesAddress, kReg20),
    wantedField(Field::PremisesPostcode, kReg20),
    wantedField(Field::CustomerName, kCommonOther),
    wantedField(Field::EngineerName, kCommonOther),
    wantedItem(Item::WorkCompleted, kReg20),
    wantedItem(Item::BuildingNotification, kReg20),
    wantedItem(Item::ControlsInformation, kReg40),
    // each appliance
    wantedField(Field::ApplianceKind, kReg20),
    wantedField(Field::ApplianceMake, kCommonOther),
    wantedField(Field::ApplianceModel, kCommonOther),
    wantedField(Field::ApplianceSerial, kCommonOther),
    wantedItem(Item::NewOrReplacement, kReg20),
};

constexpr std::array kCalibration{
    wantedField(Field::FirmName, kCommonOther),
    wantedField(Field::FirmRegistration, kLaw3Other),
    wantedField(Field::InstrumentSerials, kCommonOther),
    wantedField(Field::InstrumentDates, kCommonOther),
};

// What a letter says is the firm's own: these are what it is addressed by.
constexpr std::array kLetter{
    wantedField(Field::FirmName, kCommonOther),        wantedField(Field::FirmAddress, kCommonOther),
    wantedField(Field::PremisesAddress, kCommonOther), wantedField(Field::PremisesPostcode, kCommonOther),
    wantedField(Field::CustomerName, kCommonOther),    wantedField(Field::RecipientAddress, kCommonOther),
};

}  // namespace

std::span<const Requirement> largerRequirements() {
    return kLarger;
}
std::span<const Requirement> noticeRequirements() {
    return kNotice;
}
std::span<const Requirement> investigationRequirements() {
    return kInvestigation;
}
std::span<const Requirement> reportableRequirements() {
    return kReportableWants;
}
std::span<const Requirement> buildingRequirements() {
    return kBuilding;
}
std::span<const Requirement> calibrationRequirements() {
    return kCalibration;
}
std::span<const Requirement> letterRequirements() {
    return kLetter;
}

}  // namespace hearth::record
