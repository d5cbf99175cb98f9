// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/kind_items.h"

#include <array>

namespace hearth::reg {

namespace {

using quantity::UnitFamily;

constexpr std::array kYesNoKind{Choice{choice::kYes}, Choice{choice::kNo}};
constexpr std::array kKindSeen{Choice{choice::kGood}, Choice{choice::kWrong}, Choice{choice::kNotApplicable},
                               Choice{choice::kNotChecked}};
constexpr std::array kUses{Choice{choice::kLet}, Choice{choice::kPrivateUse}, Choice{choice::kUnknown}};
constexpr std::array kBubbles{Choice{choice::kNoBubbles}, Choice{choice::kBubbles},
                              Choice{choice::kNotApplicable}, Choice{choice::kNotChecked}};
constexpr std::array kInterlocks{Choice{choice::kByFlow}, Choice{choice::kByPressure},
                                 Choice{choice::kByCarbonDioxide}, Choice{choice::kOther},
                                 Choice{choice::kNone}};
constexpr std::array kSeals{Choice{choice::kSealedFitting}, Choice{choice::kValveOnly},
                            Choice{choice::kNotSeen}};

constexpr ItemInfo chosen(Item item, std::string_view code, std::span<const Choice> choices) {
    return {item, code, ItemKind::Choice, SubjectKind::Appliance, UnitFamily::None, choices};
}
constexpr ItemInfo looked(Item item, std::string_view code) {
    return chosen(item, code, kKindSeen);
}
constexpr ItemInfo said(Item item, std::string_view code) {
    return {item, code, ItemKind::YesNo, SubjectKind::Appliance, UnitFamily::None, kYesNoKind};
}
constexpr ItemInfo written(Item item, std::string_view code) {
    return {item, code, ItemKind::Text, SubjectKind::Appliance, UnitFamily::None, {}};
}
constexpr ItemInfo number(Item item, std::string_view code, UnitFamily units) {
    return {item, code, ItemKind::Number, SubjectKind::Appliance, units, {}};
}

// In the order of the enumeration.
constexpr std::array kKindItems{
    // the LPG system of a leisure vehicle or a boat
    written(Item::LpgDataBadge, "lpg.data_badge"),
    written(Item::LpgUnitNumber, "lpg.unit_number"),
    chosen(Item::LpgUse, "lpg.use", kUses),
    written(Item::LpgCylinders, "lpg.cylinders"),
    written(Item::LpgCylinderPlace, "lpg.cylinder_place"),
    looked(Item::LpgCylindersSecured, "lpg.cylinders_secured"),
    written(Item::LpgRegulator, "lpg.regulator"),
    written(Item::LpgRegulatorDate, "lpg.regulator_date"),
    written(Item::LpgHoseDates, "lpg.hose_dates"),
    looked(Item::LpgShutOffs, "lpg.pressure_shut_offs"),
    number(Item::LpgLockUp, "lpg.lock_up", UnitFamily::Pressure),
    chosen(Item::LpgBubbleTester, "lpg.bubble_tester", kBubbles),
    looked(Item::LpgVentilation, "lpg.ventilation"),
    number(Item::LpgVentHigh, "lpg.vent_high", UnitFamily::Area),
    number(Item::LpgVentLow, "lpg.vent_low", UnitFamily::Area),
    looked(Item::LpgDrains, "lpg.drain_openings"),
    // catering
    chosen(Item::CateringInterlock, "catering.interlock", kInterlocks),
    looked(Item::CateringInterlockProved, "catering.interlock_proved"),
    looked(Item::CateringShutOff, "catering.emergency_shut_off"),
    looked(Item::CateringGasProving, "catering.gas_proving"),
    written(Item::CateringExtract, "catering.extract"),
    written(Item::CateringMakeUpAir, "catering.make_up_air"),
    written(Item::CateringCo2Place, "catering.co2_place"),
    number(Item::CateringCo2Start, "catering.co2_start", UnitFamily::Trace),
    number(Item::CateringCo2End, "catering.co2_end", UnitFamily::Trace),
    number(Item::CateringCo, "catering.co", UnitFamily::Trace),
    // an unvented cylinder: noted only
    number(Item::UnventedCapacity, "unvented.capacity", UnitFamily::Volume),
    looked(Item::UnventedExpansion, "unvented.expansion"),
    looked(Item::UnventedRelief, "unvented.relief_valve"),
    looked(Item::UnventedPressureValves, "unvented.pressure_valves"),
    written(Item::UnventedDischarge1, "unvented.discharge_d1"),
    written(Item::UnventedDischarge2, "unvented.discharge_d2"),
    written(Item::UnventedCompetence, "unvented.competence"),
    // decommissioned and capped, whatever it is
    chosen(Item::CappedHow, "capped.how", kSeals),
    written(Item::CappedWhere, "capped.where"),
    said(Item::CappedProved, "capped.seal_proved"),
    said(Item::CappedLabel, "capped.label"),
};

}  // namespace

std::span<const ItemInfo> kindItems() {
    return kKindItems;
}

}  // namespace hearth::reg
