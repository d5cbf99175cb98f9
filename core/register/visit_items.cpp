// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/visit_items.h"

#include <array>

namespace hearth::reg {

namespace {

using quantity::UnitFamily;

constexpr std::array kYesNoSheet{Choice{choice::kYes}, Choice{choice::kNo}};
constexpr std::array kSeen{Choice{choice::kGood}, Choice{choice::kWrong}, Choice{choice::kNotApplicable},
                           Choice{choice::kNotChecked}};
constexpr std::array kGasOnArrival{Choice{choice::kGasOn},        Choice{choice::kGasOff},
                                   Choice{choice::kCapped},       Choice{choice::kNoCredit},
                                   Choice{choice::kMeterRemoved}, Choice{choice::kPremisesEmpty}};
constexpr std::array kInspected{Choice{choice::kInspected}, Choice{choice::kVisualOnly},
                                Choice{choice::kNotInspected}, Choice{choice::kDecommissioned}};
constexpr std::array kFlueHidden{Choice{choice::kNotHidden}, Choice{choice::kHatchesAll},
                                 Choice{choice::kHatchesSome}, Choice{choice::kNoHatches},
                                 Choice{choice::kNotApplicable}};
constexpr std::array kHeatBases{Choice{choice::kNet}, Choice{choice::kGross}};
constexpr std::array kDefectsFound{Choice{choice::kNoneFound}, Choice{choice::kFound}};
constexpr std::array kNewOrReplacement{Choice{choice::kNew}, Choice{choice::kReplacement},
                                       Choice{choice::kMoved}};
constexpr std::array kFittedOr{Choice{choice::kYes}, Choice{choice::kNo}, Choice{choice::kNotApplicable}};
constexpr std::array kCombiMeasures{Choice{choice::kHeatRecovery}, Choice{choice::kWeather},
                                    Choice{choice::kLoad},         Choice{choice::kSmartThermostat},
                                    Choice{choice::kNone},         Choice{choice::kNotApplicable}};
constexpr std::array kCondensateEnds{Choice{choice::kInsideDrain}, Choice{choice::kOutsideDrain},
                                     Choice{choice::kSoakaway},    Choice{choice::kPumped},
                                     Choice{choice::kOther},       Choice{choice::kNotApplicable}};
constexpr std::array kServiceKinds{Choice{choice::kAnnual}, Choice{choice::kBreakdown},
                                   Choice{choice::kAfterRepair}};
constexpr std::array kAlarms{Choice{choice::kAlarmWorks}, Choice{choice::kAlarmFailed},
                             Choice{choice::kAlarmUntested}, Choice{choice::kNone},
                             Choice{choice::kNotNeeded}};
constexpr std::array kPermissions{Choice{choice::kGiven}, Choice{choice::kRefused},
                                  Choice{choice::kNobodyThere}};
constexpr std::array kMadeSafe{Choice{choice::kDisconnected}, Choice{choice::kTurnedOff},
                               Choice{choice::kValveOff}, Choice{choice::kPutRight},
                               Choice{choice::kNotMadeSafe}};
constexpr std::array kLeftAs{Choice{choice::kGasOn}, Choice{choice::kGasOff}, Choice{choice::kApplianceOff}};
constexpr std::array kReceipts{Choice{choice::kSigned}, Choice{choice::kCopyLeft}};
constexpr std::array kReportable{Choice{choice::kYes}, Choice{choice::kNo}, Choice{choice::kUnknown}};
constexpr std::array kReportWhys{Choice{choice::kDesign}, Choice{choice::kConstruction},
                                 Choice{choice::kManner}, Choice{choice::kModification},
                                 Choice{choice::kServicing}};

constexpr ItemInfo ofVisit(Item item, std::string_view code, ItemKind kind,
                           UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Visit, units, choices};
}
constexpr ItemInfo onAppliance(Item item, std::string_view code, ItemKind kind,
                               UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Appliance, units, choices};
}
constexpr ItemInfo onRoom(Item item, std::string_view code, ItemKind kind,
                          UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Room, units, choices};
}
constexpr ItemInfo onSituation(Item item, std::string_view code, ItemKind kind,
                               UnitFamily units = UnitFamily::None, std::span<const Choice> choices = {}) {
    return {item, code, kind, SubjectKind::Situation, units, choices};
}

// In the order of the enumeration.
constexpr std::array kVisitItems{
    // visit: what kind it is
    ofVisit(Item::VisitLandlordCheck, "visit.kind_landlord", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitOwnerCheck, "visit.kind_owner", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitInstallation, "visit.kind_installation", ItemKind::YesNo, UnitFamily::None,
            kYesNoSheet),
    ofVisit(Item::VisitService, "visit.kind_service", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitPipework, "visit.kind_pipework", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitLarger, "visit.kind_larger", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitRoomCo, "visit.kind_room_co", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::VisitUnsafe, "visit.kind_unsafe", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    // visit: before you start
    ofVisit(Item::GasOnArrival, "visit.gas_on_arrival", ItemKind::Choice, UnitFamily::None, kGasOnArrival),
    ofVisit(Item::StillToDo, "visit.still_to_do", ItemKind::LongText),
    ofVisit(Item::ResponsibleTold, "visit.responsible_told", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::MeterNotice, "visit.meter_notice", ItemKind::Choice, UnitFamily::None, kSeen),
    ofVisit(Item::MainBonding, "visit.main_bonding", ItemKind::Choice, UnitFamily::None, kSeen),
    ofVisit(Item::VisitAnalyser, "visit.analyser", ItemKind::Instrument),
    ofVisit(Item::VisitGauge, "visit.pressure_gauge", ItemKind::Instrument),
    // visit: hand-over and what follows
    ofVisit(Item::HandoverShown, "visit.handover_shown", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::HandoverInstructions, "visit.handover_instructions", ItemKind::YesNo, UnitFamily::None,
            kYesNoSheet),
    ofVisit(Item::HandoverReadings, "visit.handover_readings", ItemKind::YesNo, UnitFamily::None,
            kYesNoSheet),
    ofVisit(Item::HandoverAdvice, "visit.handover_advice", ItemKind::LongText),
    ofVisit(Item::WorkCompleted, "visit.work_completed", ItemKind::Date),
    ofVisit(Item::BuildingNotification, "visit.building_notification", ItemKind::Text),
    ofVisit(Item::ControlsInformation, "visit.controls_information", ItemKind::YesNo, UnitFamily::None,
            kYesNoSheet),
    // visit: an investigation of CO or fumes
    ofVisit(Item::CallFrom, "visit.call_from", ItemKind::Text),
    ofVisit(Item::EmergencyReference, "visit.emergency_reference", ItemKind::Text),
    ofVisit(Item::AlarmMake, "visit.alarm_make", ItemKind::Text),
    ofVisit(Item::AlarmExpiry, "visit.alarm_expiry", ItemKind::Date),
    ofVisit(Item::AlarmPeak, "visit.alarm_peak", ItemKind::Number, UnitFamily::Trace),
    ofVisit(Item::Symptoms, "visit.symptoms", ItemKind::LongText),
    ofVisit(Item::MedicalAdvice, "visit.medical_advice", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    ofVisit(Item::OccupantsThere, "visit.occupants", ItemKind::Text),
    ofVisit(Item::WeatherThere, "visit.weather", ItemKind::Text),
    ofVisit(Item::AdjoiningPremises, "visit.adjoining", ItemKind::Text),
    ofVisit(Item::OtherFuels, "visit.other_fuels", ItemKind::Text),
    ofVisit(Item::CauseFound, "visit.cause", ItemKind::LongText),
    ofVisit(Item::InvestigationActions, "visit.investigation_actions", ItemKind::LongText),
    ofVisit(Item::LeftAs, "visit.left_as", ItemKind::Choice, UnitFamily::None, kLeftAs),
    // appliance: whether and how it was seen
    onAppliance(Item::ApplianceInspected, "appliance.inspected", ItemKind::Choice, UnitFamily::None,
                kInspected),
    onAppliance(Item::NotInspectedWhy, "appliance.not_inspected_why", ItemKind::Text),
    onAppliance(Item::CheckedOn, "appliance.checked_on", ItemKind::Date),
    onAppliance(Item::LastCheckCounted, "appliance.last_check", ItemKind::Date),
    onAppliance(Item::LocationSeen, "appliance.location_seen", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::StabilitySeen, "appliance.stability", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::ConnectionSeen, "appliance.connection", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::DistressSeen, "appliance.distress", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::ClearancesSeen, "appliance.clearances", ItemKind::Choice, UnitFamily::None, kSeen),
    // appliance: flue and air
    onAppliance(Item::FlueRoute, "appliance.flue_route", ItemKind::Text),
    onAppliance(Item::FlueSeen, "appliance.flue_seen", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::TerminalSeen, "appliance.terminal", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::FlueHidden, "appliance.flue_hidden", ItemKind::Choice, UnitFamily::None, kFlueHidden),
    onAppliance(Item::FlueNotSeen, "appliance.flue_not_seen", ItemKind::Text),
    onAppliance(Item::VentilationSeen, "appliance.ventilation", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::FlueFlowTest, "appliance.flue_flow", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::SpillageTest, "appliance.spillage", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::SpillageFans, "appliance.spillage_fans", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::CaseSealSeen, "appliance.case_seal", ItemKind::Choice, UnitFamily::None, kSeen),
    // appliance: gas and safety
    onAppliance(Item::GasRateRead, "appliance.gas_rate", ItemKind::Number, UnitFamily::Flow),
    onAppliance(Item::HeatInputRead, "appliance.heat_input", ItemKind::Number, UnitFamily::Power),
    onAppliance(Item::HeatInputBasis, "appliance.heat_input_basis", ItemKind::Choice, UnitFamily::None,
                kHeatBases),
    onAppliance(Item::SafetyDevices, "appliance.safety_devices", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::FlameSeen, "appliance.flame", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::CondensateSeen, "appliance.condensate", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::PressureRelief, "appliance.pressure_relief", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::ServicedToday, "appliance.serviced", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    // appliance: what comes of it
    onAppliance(Item::CheckCovered, "appliance.check_covered", ItemKind::YesNo, UnitFamily::None,
                kYesNoSheet),
    onAppliance(Item::DefectsFound, "appliance.defects_found", ItemKind::Choice, UnitFamily::None,
                kDefectsFound),
    onAppliance(Item::DefectsText, "appliance.defects", ItemKind::LongText),
    onAppliance(Item::ActionTaken, "appliance.action", ItemKind::LongText),
    onAppliance(Item::ActionOn, "appliance.action_on", ItemKind::Date),
    onAppliance(Item::ActionBy, "appliance.action_by", ItemKind::Text),
    onAppliance(Item::SafeToUse, "appliance.safe_to_use", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    // appliance: commissioning
    onAppliance(Item::NewOrReplacement, "commissioning.new_or_replacement", ItemKind::Choice,
                UnitFamily::None, kNewOrReplacement),
    onAppliance(Item::ControlTime, "commissioning.time_control", ItemKind::Choice, UnitFamily::None,
                kFittedOr),
    onAppliance(Item::ControlRoom, "commissioning.room_temperature", ItemKind::Choice, UnitFamily::None,
                kFittedOr),
    onAppliance(Item::ControlInterlock, "commissioning.interlock", ItemKind::Choice, UnitFamily::None,
                kFittedOr),
    onAppliance(Item::ControlZones, "commissioning.zones", ItemKind::Text),
    onAppliance(Item::ControlTrvs, "commissioning.trvs", ItemKind::Choice, UnitFamily::None, kFittedOr),
    onAppliance(Item::ControlCylinder, "commissioning.cylinder_control", ItemKind::Choice, UnitFamily::None,
                kFittedOr),
    onAppliance(Item::ControlBypass, "commissioning.bypass", ItemKind::Choice, UnitFamily::None, kFittedOr),
    onAppliance(Item::CombiMeasure, "commissioning.combi_measure", ItemKind::Choice, UnitFamily::None,
                kCombiMeasures),
    onAppliance(Item::WaterCleaned, "commissioning.water_cleaned", ItemKind::YesNo, UnitFamily::None,
                kYesNoSheet),
    onAppliance(Item::WaterCleaner, "commissioning.cleaner", ItemKind::Text),
    onAppliance(Item::WaterInhibitor, "commissioning.inhibitor", ItemKind::Text),
    onAppliance(Item::WaterFilter, "commissioning.filter", ItemKind::Choice, UnitFamily::None, kFittedOr),
    onAppliance(Item::WaterHardness, "commissioning.hardness", ItemKind::Number),
    onAppliance(Item::ScaleReducer, "commissioning.scale_reducer", ItemKind::Choice, UnitFamily::None,
                kFittedOr),
    onAppliance(Item::WaterPressure, "commissioning.water_pressure", ItemKind::Number, UnitFamily::Pressure),
    onAppliance(Item::DesignFlow, "commissioning.design_flow", ItemKind::Number, UnitFamily::Temperature),
    onAppliance(Item::HeatingFlow, "commissioning.heating_flow", ItemKind::Number, UnitFamily::Temperature),
    onAppliance(Item::HeatingReturn, "commissioning.heating_return", ItemKind::Number,
                UnitFamily::Temperature),
    onAppliance(Item::HotWaterGasRate, "commissioning.hot_water_gas_rate", ItemKind::Number,
                UnitFamily::Flow),
    onAppliance(Item::HotWaterPressure, "commissioning.hot_water_pressure", ItemKind::Number,
                UnitFamily::Pressure),
    onAppliance(Item::PipeSizing, "commissioning.pipe_sizing", ItemKind::YesNo, UnitFamily::None,
                kYesNoSheet),
    onAppliance(Item::CondensateRoute, "commissioning.condensate_route", ItemKind::Text),
    onAppliance(Item::CondensateEnd, "commissioning.condensate_end", ItemKind::Choice, UnitFamily::None,
                kCondensateEnds),
    onAppliance(Item::TrapFilled, "commissioning.trap_filled", ItemKind::YesNo, UnitFamily::None,
                kYesNoSheet),
    onAppliance(Item::ByMaker, "commissioning.by_maker", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    onAppliance(Item::ServiceInterval, "commissioning.service_interval", ItemKind::Text),
    // appliance: service
    onAppliance(Item::ServiceKind, "service.kind", ItemKind::Choice, UnitFamily::None, kServiceKinds),
    onAppliance(Item::ServiceSymptoms, "service.symptoms", ItemKind::LongText),
    onAppliance(Item::ServiceTasks, "service.tasks", ItemKind::LongText),
    onAppliance(Item::ServiceParts, "service.parts", ItemKind::LongText),
    onAppliance(Item::ServiceAdjusted, "service.adjusted", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    onAppliance(Item::BeforeCoHigh, "service.before_co_high", ItemKind::Number, UnitFamily::Trace),
    onAppliance(Item::BeforeCo2High, "service.before_co2_high", ItemKind::Number, UnitFamily::Share),
    onAppliance(Item::BeforeCoLow, "service.before_co_low", ItemKind::Number, UnitFamily::Trace),
    onAppliance(Item::BeforeCo2Low, "service.before_co2_low", ItemKind::Number, UnitFamily::Share),
    onAppliance(Item::VesselSeen, "service.expansion_vessel", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::InhibitorSeen, "service.inhibitor", ItemKind::Choice, UnitFamily::None, kSeen),
    onAppliance(Item::NextServiceDue, "service.next_due", ItemKind::Date),
    // room
    onRoom(Item::RoomName, "room.name", ItemKind::Text),
    onRoom(Item::RoomCoAlarm, "room.co_alarm", ItemKind::Choice, UnitFamily::None, kAlarms),
    onRoom(Item::RoomCoAlarmExpiry, "room.co_alarm_expiry", ItemKind::Date),
    onRoom(Item::RoomSmokeAlarm, "room.smoke_alarm", ItemKind::Choice, UnitFamily::None, kAlarms),
    onRoom(Item::RoomSmokeAlarmExpiry, "room.smoke_alarm_expiry", ItemKind::Date),
    onRoom(Item::RoomAlarmNotes, "room.alarm_notes", ItemKind::Text),
    onRoom(Item::RoomFinding, "room.finding", ItemKind::LongText),
    // situation
    onSituation(Item::SituationGasEscape, "situation.gas_escape", ItemKind::YesNo, UnitFamily::None,
                kYesNoSheet),
    onSituation(Item::SituationPerson, "situation.responsible_person", ItemKind::Text),
    onSituation(Item::SituationPermission, "situation.permission", ItemKind::Choice, UnitFamily::None,
                kPermissions),
    onSituation(Item::SituationMadeSafe, "situation.made_safe", ItemKind::Choice, UnitFamily::None,
                kMadeSafe),
    onSituation(Item::SituationMadeSafeHow, "situation.made_safe_how", ItemKind::Text),
    onSituation(Item::SituationLabel, "situation.label", ItemKind::YesNo, UnitFamily::None, kYesNoSheet),
    onSituation(Item::SituationLabelNumber, "situation.label_number", ItemKind::Text),
    onSituation(Item::SituationRefusedBy, "situation.refused_by", ItemKind::Text),
    onSituation(Item::SituationRefusalWords, "situation.refusal_words", ItemKind::LongText),
    onSituation(Item::SituationSupplyLeft, "situation.supply_left", ItemKind::Choice, UnitFamily::None,
                kLeftAs),
    onSituation(Item::SituationTold, "situation.told", ItemKind::Text),
    onSituation(Item::SituationToldAt, "situation.told_at", ItemKind::Time),
    onSituation(Item::SituationToldReference, "situation.told_reference", ItemKind::Text),
    onSituation(Item::SituationWorkNeeded, "situation.work_needed", ItemKind::LongText),
    onSituation(Item::SituationReceipt, "situation.receipt", ItemKind::Choice, UnitFamily::None, kReceipts),
    onSituation(Item::SituationReceivedBy, "situation.received_by", ItemKind::Text),
    onSituation(Item::SituationCopyLeft, "situation.copy_left", ItemKind::Text),
    onSituation(Item::SituationReportable, "situation.reportable", ItemKind::Choice, UnitFamily::None,
                kReportable),
    onSituation(Item::SituationReportWhy, "situation.report_why", ItemKind::Choice, UnitFamily::None,
                kReportWhys),
    onSituation(Item::SituationKnownOn, "situation.known_on", ItemKind::Date),
    onSituation(Item::SituationReportedOn, "situation.reported_on", ItemKind::Date),
    onSituation(Item::SituationReportReference, "situation.report_reference", ItemKind::Text),
    onSituation(Item::SituationWorkBy, "situation.work_by", ItemKind::Text),
    onSituation(Item::SituationPersons, "situation.persons", ItemKind::Text),
};

}  // namespace

std::span<const ItemInfo> visitItems() {
    return kVisitItems;
}

}  // namespace hearth::reg
