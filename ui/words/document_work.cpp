// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"

#include <array>

namespace hearth::ui::words {

namespace {

using reg::Item;

// Commissioning, in the order of the work.
constexpr std::array kWhatWork{Item::NewOrReplacement, Item::ByMaker, Item::ServiceInterval};
constexpr std::array kControls{Item::ControlTime, Item::ControlRoom,     Item::ControlInterlock,
                               Item::ControlTrvs, Item::ControlCylinder, Item::ControlBypass,
                               Item::CombiMeasure};
constexpr std::array kWaterTreatment{Item::WaterCleaned,  Item::WaterCleaner,  Item::WaterInhibitor,
                                     Item::WaterFilter,   Item::WaterHardness, Item::ScaleReducer,
                                     Item::WaterPressure, Item::DesignFlow};
constexpr std::array kSupply{Item::MeterStandingPressure, Item::MeterWorkingPressure, Item::InletPressure,
                             Item::GasRateRead,           Item::HeatInputRead,        Item::PipeSizing};
constexpr std::array kSupplyFurther{Item::InletStanding, Item::BurnerPressure};
constexpr std::array kHeating{Item::HeatingFlow, Item::HeatingReturn};
constexpr std::array kHotWaterGiven{Item::HotWaterGasRate, Item::HotWaterPressure, Item::HotWaterCold,
                                    Item::HotWaterHot, Item::HotWaterFlow};
constexpr std::array kFlueAndAir{Item::FlueRoute,  Item::FlueSeen,        Item::TerminalSeen,
                                 Item::FlueHidden, Item::VentilationSeen, Item::ClearancesSeen};
constexpr std::array kCondensateOf{Item::InletO2, Item::InletCo2, Item::CondensateRoute, Item::CondensateEnd,
                                   Item::TrapFilled};
constexpr std::array kSafety{Item::SafetyDevices, Item::PressureRelief, Item::FlameSeen};
constexpr std::array kHandOver{Item::HandoverShown, Item::HandoverInstructions, Item::HandoverReadings,
                               Item::ControlsInformation};
constexpr std::array kCompleted{Item::WorkCompleted, Item::BuildingNotification};
constexpr std::array kAdvice{Item::HandoverAdvice, Item::StillToDo};

// Service.
constexpr std::array kServiceWhat{Item::ServiceKind, Item::NextServiceDue};
constexpr std::array kServiceTold{Item::ServiceSymptoms, Item::ServiceParts};
constexpr std::array kServiceRead{Item::InletPressure, Item::BurnerPressure,  Item::GasRateRead,
                                  Item::HeatInputRead, Item::ServiceAdjusted, Item::InletO2,
                                  Item::InletCo2};
constexpr std::array kServiceSeen{Item::FlueSeen, Item::TerminalSeen, Item::VentilationSeen,
                                  Item::SafetyDevices, Item::FlameSeen};
constexpr std::array kServiceSeenFurther{Item::CondensateSeen, Item::VesselSeen, Item::InhibitorSeen};

bool isBoiler(const reg::Appliance& appliance) {
    return appliance.kind == reg::choice::kCondensingBoiler ||
           appliance.kind == reg::choice::kNonCondensingBoiler || appliance.kind == reg::choice::kBackBoiler;
}

/// A part of an appliance's block: what is wanted with its absences, then what else was given.
template <class Wanted, class Further>
void addPart(const DocumentPage& page, const reg::SubjectRef& on, const char* title, const Wanted& wanted,
             const Further& further, Blocks& blocks) {
    auto grid = gridOf(page, on, page.text(title), wanted);
    for (const Item item : further) {
        page.addIfGiven(grid, on, item);
    }
    blocks.emplace_back(std::move(grid));
}

constexpr std::array<Item, 0> kNothingFurther{};

/// What has no flame, or is capped: what was done and seen of it, without flue, rate and combustion.
void addFlameless(const DocumentPage& page, const reg::Appliance& appliance, std::span<const Item> told,
                  Blocks& blocks) {
    const auto on = reg::subject(appliance.id);
    blocks.emplace_back(applianceGrid(page, appliance, Telling::InFull));
    blocks.emplace_back(declarations(page, appliance));
    addGiven(page, on, {}, told, blocks);
    addOfItsKind(page, appliance, blocks);
    addReadings(page, appliance, blocks);
}

void addCommissioned(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    const auto on = reg::subject(appliance.id);
    if (!isBurning(page, appliance)) {
        addFlameless(page, appliance, kWhatWork, blocks);
        return;
    }
    blocks.emplace_back(applianceGrid(page, appliance, Telling::InFull));
    blocks.emplace_back(declarations(page, appliance));
    blocks.emplace_back(gridOf(page, on, {}, kWhatWork));
    if (isBoiler(appliance)) {
        addPart(page, on, QT_TRANSLATE_NOOP("Words", "Controls"), kControls, std::array{Item::ControlZones},
                blocks);
        addPart(page, on, QT_TRANSLATE_NOOP("Words", "Water of the system"), kWaterTreatment, kNothingFurther,
                blocks);
    }
    addPart(page, on, QT_TRANSLATE_NOOP("Words", "Gas supply and rate"), kSupply, kSupplyFurther, blocks);
    if (isBoiler(appliance)) {
        addPart(page, on, QT_TRANSLATE_NOOP("Words", "Heating and hot water"), kHeating, kHotWaterGiven,
                blocks);
    }
    addPart(page, on, QT_TRANSLATE_NOOP("Words", "Flue and air"), kFlueAndAir, std::array{Item::FlueNotSeen},
            blocks);
    addReadings(page, appliance, blocks);
    addGiven(page, on, page.text(QT_TRANSLATE_NOOP("Words", "Air inlet and condensate")), kCondensateOf,
             blocks);
    addPart(page, on, QT_TRANSLATE_NOOP("Words", "Safety devices and flame"), kSafety, kNothingFurther,
            blocks);
    addOfItsKind(page, appliance, blocks);
    blocks.emplace_back(matterTable(page, appliance));
}

/// Work done in full, whatever its length.
record::Paragraph tasks(const DocumentPage& page, const reg::SubjectRef& on) {
    return {page.text(QT_TRANSLATE_NOOP("Words", "Work done by the maker’s schedule")),
            page.has(on, Item::ServiceTasks) ? utf8(page.value(on, Item::ServiceTasks))
                                             : page.text(QT_TRANSLATE_NOOP("Words", "— not entered")),
            false};
}

void addServiced(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    const auto on = reg::subject(appliance.id);
    if (!isBurning(page, appliance)) {
        std::vector<Item> told(kServiceWhat.begin(), kServiceWhat.end());
        told.insert(told.end(), kServiceTold.begin(), kServiceTold.end());
        addFlameless(page, appliance, told, blocks);
        blocks.emplace_back(tasks(page, on));
        return;
    }
    blocks.emplace_back(applianceGrid(page, appliance, Telling::InFull));
    blocks.emplace_back(declarations(page, appliance));
    auto what = gridOf(page, on, {}, kServiceWhat);
    for (const Item item : kServiceTold) {
        page.addIfGiven(what, on, item);
    }
    blocks.emplace_back(std::move(what));
    blocks.emplace_back(tasks(page, on));
    addGiven(page, on, page.text(QT_TRANSLATE_NOOP("Words", "Gas and rate")), kServiceRead, blocks);
    addReadings(page, appliance, blocks);
    addPart(page, on, QT_TRANSLATE_NOOP("Words", "Looked at"), kServiceSeen, kServiceSeenFurther, blocks);
    addOfItsKind(page, appliance, blocks);
    blocks.emplace_back(matterTable(page, appliance));
}

void addFrameBefore(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(applianceHeadline(page));
    addWhatToDo(page, blocks);
    blocks.emplace_back(whoAndWhere(page));
}

void addFrameAfter(const DocumentPage& page, Blocks& blocks) {
    addSituations(page, blocks);
    addRooms(page, blocks);
    blocks.emplace_back(instrumentTable(page));
    for (const auto& test : page.tests()) {
        blocks.emplace_back(readingTable(page, test));
    }
    addFindings(page, blocks);
}

}  // namespace

void addCommissioningRecord(const DocumentPage& page, Blocks& blocks) {
    addFrameBefore(page, blocks);
    blocks.emplace_back(
        gridOf(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "Completion")), kCompleted));
    blocks.emplace_back(buildingClockGrid(page));
    for (const auto& appliance : appliancesOf(page)) {
        addCommissioned(page, appliance, blocks);
    }
    addPipeSketch(page, page.text(QT_TRANSLATE_NOOP("Words", "Pipework")), blocks);
    blocks.emplace_back(
        gridOf(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "Hand-over")), kHandOver));
    addGiven(page, page.visit(), {}, kAdvice, blocks);
    addFrameAfter(page, blocks);
}

void addServiceRecord(const DocumentPage& page, Blocks& blocks) {
    addFrameBefore(page, blocks);
    for (const auto& appliance : appliancesOf(page)) {
        addServiced(page, appliance, blocks);
    }
    addGiven(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "Advice")), kAdvice, blocks);
    addFrameAfter(page, blocks);
}

}  // namespace hearth::ui::words
