// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/requirements.h"

#include <array>

/// Records of a safety check.
namespace hearth::record {

namespace {

using reg::Item;

constexpr std::string_view kCommonSafety = "common practice";
constexpr std::string_view kItem1 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(i)";
constexpr std::string_view kItem2 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(ii)";
constexpr std::string_view kItem3 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(iii)";
constexpr std::string_view kItem4 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(iv)";
constexpr std::string_view kItem5 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(v)";
constexpr std::string_view kItem6 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(vi)";
constexpr std::string_view kItem7 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(vii)";
constexpr std::string_view kItem8 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(viii)";
constexpr std::string_view kItem9 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)(ix)";
constexpr std::string_view kLaw3 = "Gas Safety (Installation and Use) Regulations 1998, regulation 3";
constexpr std::string_view kLaw15 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 15, from memory";
constexpr std::string_view kLaw18 =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 18(2), from memory";
constexpr std::string_view kLaw26 = "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)";
constexpr std::string_view kLaw26a =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(a)";
constexpr std::string_view kLaw26b =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(b)";
constexpr std::string_view kLaw26c =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(c)";
constexpr std::string_view kLaw26ca =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(ca)";
constexpr std::string_view kLaw26d =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)(d), from memory";
constexpr std::string_view kLaw26tail =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9), from memory";
constexpr std::string_view kReason26 = "report on the Gas Safety (Amendment) Regulations 2018, quoting HSE";
constexpr std::string_view kDeclared = "Gas Safety (Installation and Use) Regulations 1998, regulation 26(5)";
constexpr std::string_view kVisualBulletin =
    "GB gas register, Industry Standard Update 092 (2019), in a training centre's summary";
constexpr std::string_view kRegisterList = "GB gas register, Landlords' gas safety record checks (2026)";
constexpr std::string_view kCheckList = "training centre's summary of L56 on regulation 26(9)";
constexpr std::string_view kVoids = "GB gas register, Technical Bulletin 008 Edition 3";
constexpr std::string_view kPipework36 = "guide to landlords' gas safety checks and records";
constexpr std::string_view kHseRecord = "HSE, Gas safety check records and what to keep";
constexpr std::string_view kAlarmLaw = "Smoke and Carbon Monoxide Alarm (Amendment) Regulations 2022";
constexpr std::string_view kG11Safety = "IGEM/G/11 Edition 2";

// What a check asks of each appliance, whoever it is for.
constexpr std::array kCheckOfAppliance{
    wantedItem(Item::ExaminedFlue, kLaw26a, When::Inspected),
    wantedItem(Item::ExaminedAir, kLaw26b, When::Inspected),
    wantedItem(Item::ExaminedPressure, kLaw26c, When::WhenTyped),
    wantedItem(Item::ExaminedHeatInput, kLaw26c, When::WhenTyped),
    wantedItem(Item::ExaminedBoth, kLaw26c, When::WhenTyped),
    wantedItem(Item::ExaminedCombustion, kLaw26ca, When::Unpressured),
    wantedItem(Item::WhyNeither, kReason26, When::Unpressured),
    wantedItem(Item::WhyNeitherTaken, kReason26, When::OtherReason),
    wantedItem(Item::ExaminedOperation, kLaw26d, When::Inspected),
    // the engineer's own declaration
    wantedItem(Item::SafeToUse, kDeclared, When::Seen),
    // good practice: what was looked at
    wantedItem(Item::LocationSeen, kCheckList, When::Seen),
    wantedItem(Item::StabilitySeen, kCheckList, When::Seen),
    wantedItem(Item::DistressSeen, kCheckList, When::Seen),
    wantedItem(Item::FlueSeen, kRegisterList, When::Inspected),
    wantedItem(Item::TerminalSeen, kRegisterList, When::Inspected),
    wantedItem(Item::FlueHidden, kVoids, When::Inspected),
    wantedItem(Item::VentilationSeen, kRegisterList, When::Inspected),
    wantedItem(Item::FlueFlowTest, kRegisterList, When::Inspected),
    wantedItem(Item::SpillageTest, kRegisterList, When::Inspected),
    wantedItem(Item::SafetyDevices, kRegisterList, When::Inspected),
    wantedItem(Item::FlameSeen, kCheckList, When::Inspected),
    wantedItem(Item::ServicedToday, kCommonSafety, When::Inspected),
    // what may be left out must still be readable
    wantedItem(Item::LastCheckCounted, kCommonSafety, When::WhenTyped),
    wantedItem(Item::SpillageFans, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueNotSeen, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueRoute, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ConnectionSeen, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ClearancesSeen, kCommonSafety, When::WhenTyped),
    wantedItem(Item::CaseSealSeen, kCommonSafety, When::WhenTyped),
    wantedItem(Item::CondensateSeen, kCommonSafety, When::WhenTyped),
    wantedItem(Item::PressureRelief, kCommonSafety, When::WhenTyped),
    wantedItem(Item::GasRateRead, kCommonSafety, When::WhenTyped),
    wantedItem(Item::HeatInputRead, kCommonSafety, When::WhenTyped),
    wantedItem(Item::HeatInputBasis, kCommonSafety, When::WhenTyped),
    wantedItem(Item::InletPressure, kCommonSafety, When::WhenTyped),
    wantedItem(Item::BurnerPressure, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueCoLow, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueCo2Low, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueO2Low, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueO2High, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueCo2High, kCommonSafety, When::CombustionRead),
    wantedItem(Item::FlueCoHigh, kCommonSafety, When::WhenTyped),
    wantedItem(Item::FlueRatioPrinted, kCommonSafety, When::WhenTyped),
};

// What stands at the end of either.
constexpr std::array kCheckOfSite{
    // good practice: the firm, the site, the alarms
    wantedField(Field::FirmName, kCommonSafety),
    wantedField(Field::FirmAddress, kCommonSafety),
    wantedField(Field::EngineerCard, kHseRecord),
    wantedItem(Item::VisitReference, kCommonSafety, When::WhenTyped),
    wantedItem(Item::VisitPresent, kCommonSafety, When::WhenTyped),
    wantedItem(Item::GasOnArrival, kCommonSafety),
    wantedItem(Item::VisualInspection, kPipework36),
    wantedItem(Item::VisualNotes, kCommonSafety, When::WhenTyped),
    wantedItem(Item::MeterNotice, kLaw15, When::WhenTyped),
    wantedItem(Item::MainBonding, kLaw18, When::WhenTyped),
    wantedItem(Item::SmellOnArrival, kCommonSafety),
    wantedItem(Item::StillToDo, kCommonSafety, When::WhenTyped),
    wantedItem(Item::VisitAnalyser, kCommonSafety, When::AnalyserUsed),
    wantedField(Field::AnalyserSerial, kCommonSafety, When::AnalyserUsed),
    wantedField(Field::AnalyserCalibration, kCommonSafety, When::AnalyserUsed),
    wantedItem(Item::VisitGauge, kCommonSafety, When::WhenTyped),
    wantedItem(Item::RoomName, kCommonSafety),
    wantedItem(Item::RoomCoAlarm, kAlarmLaw),
    wantedItem(Item::RoomCoAlarmExpiry, kCommonSafety, When::WhenTyped),
    wantedItem(Item::RoomSmokeAlarm, kCommonSafety, When::WhenTyped),
    wantedItem(Item::RoomSmokeAlarmExpiry, kCommonSafety, When::WhenTyped),
    wantedItem(Item::RoomAlarmNotes, kCommonSafety, When::WhenTyped),
    wantedField(Field::SituationDanger, kG11Safety),
    wantedField(Field::SituationWhat, kG11Safety),
    wantedItem(Item::VisitRemarks, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ReceivedBy, kCommonSafety, When::WhenTyped),
};

// In the order of regulation 36(3)(c); what good practice adds stands after it. Lines about an appliance, a
// room or a situation that stand together are asked of each.
constexpr std::array kLandlordFirst{
    // (i) the date on which each was checked
    wantedField(Field::VisitDate, kItem1),
    // (ii) the address of the premises
    wantedField(Field::PremisesAddress, kItem2),
    wantedField(Field::PremisesPostcode, kItem2),
    // (iii) the landlord, or the agent
    wantedField(Field::LandlordName, kItem3),
    wantedField(Field::LandlordAddress, kItem3),
    // (iv) description and location of each appliance or flue checked
    wantedField(Field::ApplianceChecked, kItem4),
    wantedField(Field::ApplianceKind, kItem4),
    wantedField(Field::ApplianceMake, kItem4),
    wantedField(Field::ApplianceModel, kItem4),
    wantedField(Field::AppliancePlace, kItem4),
    wantedField(Field::ApplianceFlue, kItem4),
    wantedItem(Item::CheckedOn, kItem1, When::WhenTyped),
    wantedItem(Item::ApplianceInspected, kVisualBulletin),
    wantedItem(Item::NotInspectedWhy, kVisualBulletin, When::NotInspected),
    // (v) any safety defect
    wantedItem(Item::DefectsFound, kItem5, When::Seen),
    wantedItem(Item::DefectsText, kItem5, When::DefectFound),
    // (vi) any remedial action
    wantedItem(Item::ActionTaken, kItem6, When::DefectFound),
    wantedItem(Item::ActionOn, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ActionBy, kCommonSafety, When::WhenTyped),
    // (vii) that the check included the matters of regulation 26(9)(a) to (d)
    wantedItem(Item::CheckCovered, kItem7, When::Inspected),
};
constexpr std::array kLandlordWho{
    // (viii) who checked
    wantedField(Field::EngineerName, kItem8),
    wantedItem(Item::SignedByEngineer, kItem8),
    // (ix) the registration number
    wantedField(Field::FirmRegistration, kItem9),
};
constexpr auto kLandlordSafety = joinedTables(kLandlordFirst, kCheckOfAppliance, kLandlordWho, kCheckOfSite);

// No statute asks for it: the law asks that the work be examined, and defects told.
constexpr std::array kOwnerFirst{
    // who and where
    wantedField(Field::VisitDate, kCommonSafety),
    wantedField(Field::PremisesAddress, kCommonSafety),
    wantedField(Field::PremisesPostcode, kCommonSafety),
    wantedField(Field::OwnerName, kCommonSafety),
    wantedField(Field::ApplianceChecked, kCommonSafety),
    // each appliance
    wantedField(Field::ApplianceKind, kCommonSafety),
    wantedField(Field::ApplianceMake, kCommonSafety),
    wantedField(Field::ApplianceModel, kCommonSafety),
    wantedField(Field::AppliancePlace, kCommonSafety),
    wantedField(Field::ApplianceFlue, kCommonSafety),
    wantedItem(Item::CheckedOn, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ApplianceInspected, kCommonSafety),
    wantedItem(Item::NotInspectedWhy, kCommonSafety, When::NotInspected),
    wantedItem(Item::DefectsFound, kLaw26tail, When::Seen),
    wantedItem(Item::DefectsText, kLaw26tail, When::DefectFound),
    wantedItem(Item::ActionTaken, kLaw26tail, When::DefectFound),
    wantedItem(Item::ActionOn, kCommonSafety, When::WhenTyped),
    wantedItem(Item::ActionBy, kCommonSafety, When::WhenTyped),
    wantedItem(Item::CheckCovered, kLaw26, When::Inspected),
};
constexpr std::array kOwnerWho{
    // who checked
    wantedField(Field::EngineerName, kCommonSafety),
    wantedItem(Item::SignedByEngineer, kCommonSafety),
    wantedField(Field::FirmRegistration, kLaw3),
};
constexpr auto kOwnerSafety = joinedTables(kOwnerFirst, kCheckOfAppliance, kOwnerWho, kCheckOfSite);

}  // namespace

std::span<const Requirement> landlordRequirements() {
    return kLandlordSafety;
}
std::span<const Requirement> ownerRequirements() {
    return kOwnerSafety;
}

}  // namespace hearth::record
