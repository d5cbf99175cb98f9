// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/appliance_kinds.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <set>
#include <string>
#include <vector>

namespace hearth::reg {
namespace {

using Items = std::set<Item>;

/// What only some kinds are asked, of the one.
Items ownItemsOf(std::string_view kind, bool capped = false) {
    Items own;
    for (const auto& info : itemCatalogue()) {
        if (isOfSomeKinds(info.item) && canBeAsked(info.item, kind, capped)) {
            own.insert(info.item);
        }
    }
    return own;
}

const Items& lpgItems() {
    static const Items kItems{Item::LpgDataBadge, Item::LpgUnitNumber,    Item::LpgUse,
                              Item::LpgCylinders, Item::LpgCylinderPlace, Item::LpgCylindersSecured,
                              Item::LpgRegulator, Item::LpgRegulatorDate, Item::LpgHoseDates,
                              Item::LpgShutOffs,  Item::LpgLockUp,        Item::LpgVentilation,
                              Item::LpgVentHigh,  Item::LpgVentLow,       Item::LpgDrains};
    return kItems;
}
Items boatItems() {
    Items items = lpgItems();
    items.insert(Item::LpgBubbleTester);
    return items;
}

struct KindRow {
    std::string_view kind;
    Items own;
    bool isGas;
    bool burns;
};

// The field lists are the facts' (records 4.9, 4.10, 4.12); that only a boat is asked for its bubble tester
// is common practice, no source.
std::vector<KindRow> kindRows() {
    return {
        {choice::kCondensingBoiler, {}, true, true},
        {choice::kHotplate, {}, true, true},
        {choice::kOther, {}, true, true},
        {"", {}, true, true},
        {choice::kLeisureVehicle, lpgItems(), true, false},
        {choice::kBoat, boatItems(), true, false},
        {choice::kCatering,
         {Item::CateringInterlock, Item::CateringInterlockProved, Item::CateringShutOff,
          Item::CateringGasProving, Item::CateringExtract, Item::CateringMakeUpAir, Item::CateringCo2Place,
          Item::CateringCo2Start, Item::CateringCo2End, Item::CateringCo},
         true,
         true},
        {choice::kUnventedCylinder,
         {Item::UnventedCapacity, Item::UnventedExpansion, Item::UnventedRelief, Item::UnventedPressureValves,
          Item::UnventedDischarge1, Item::UnventedDischarge2, Item::UnventedCompetence},
         false,
         false},
    };
}

TEST(ApplianceKinds, EachIsAskedForItsOwnItemsAndForNoOther) {
    for (const auto& row : kindRows()) {
        EXPECT_EQ(ownItemsOf(row.kind), row.own) << row.kind;
        EXPECT_EQ(isGasAppliance(row.kind), row.isGas) << row.kind;
        EXPECT_EQ(burnsGas(row.kind), row.burns) << row.kind;
    }
}

TEST(ApplianceKinds, EveryKindThatCanBeChosenButTheFourHasNoItemsOfItsOwn) {
    const std::set<std::string_view> four{choice::kLeisureVehicle, choice::kBoat, choice::kCatering,
                                          choice::kUnventedCylinder};
    std::size_t found = 0;
    for (const auto& one : infoOf(Item::ApplianceKind).choices) {
        EXPECT_EQ(ownItemsOf(one.code).empty(), four.count(one.code) == 0) << one.code;
        found += four.count(one.code);
    }
    EXPECT_EQ(found, four.size());
}

TEST(ApplianceKinds, WhateverIsCappedIsAskedHowItIsSealedAndNothingIsMeasuredOfIt) {
    const Items sealed{Item::CappedHow, Item::CappedWhere, Item::CappedProved, Item::CappedLabel};
    for (const auto& one : infoOf(Item::ApplianceKind).choices) {
        EXPECT_EQ(ownItemsOf(one.code, true), sealed) << one.code;
        for (const auto& info : itemCatalogue()) {
            if (info.subject == SubjectKind::Appliance && info.kind == ItemKind::Number) {
                EXPECT_FALSE(canBeAsked(info.item, one.code, true)) << info.code << " of " << one.code;
            }
        }
    }
    EXPECT_TRUE(canBeAsked(Item::SafeToUse, choice::kGasFire, true));
    EXPECT_TRUE(canBeAsked(Item::DefectsFound, choice::kGasFire, true));
    EXPECT_FALSE(canBeAsked(Item::CheckCovered, choice::kGasFire, true));
}

TEST(ApplianceKinds, AFlameIsAskedForWhereThereIsOne) {
    for (const auto item : {Item::FlueCoHigh, Item::FlueSeen, Item::ExaminedFlue, Item::HeatInputRead,
                            Item::BurnerPressure, Item::CheckCovered}) {
        EXPECT_TRUE(canBeAsked(item, choice::kCatering, false));
        EXPECT_FALSE(canBeAsked(item, choice::kBoat, false));
        EXPECT_FALSE(canBeAsked(item, choice::kUnventedCylinder, false));
    }
    EXPECT_TRUE(canBeAsked(Item::SafeToUse, choice::kBoat, false));
    EXPECT_FALSE(canBeAsked(Item::SafeToUse, choice::kUnventedCylinder, false)) << "noted only";
}

TEST(ApplianceKinds, CappedIsWhatTheVisitSaysOfTheAppliance) {
    VisitFile file;
    Appliance fire;
    fire.id.bytes[15] = 7;
    fire.kind = std::string(choice::kGasFire);
    file.appliances = {fire};
    const auto on = subject(fire.id);
    EXPECT_FALSE(isCapped(file, on));
    EXPECT_TRUE(canBeAsked(Item::FlueCoHigh, on, file));
    Entry entry;
    entry.subject = on;
    entry.item = Item::ApplianceInspected;
    entry.text = entry.canonical = std::string(choice::kDecommissioned);
    file.entries = {entry};
    EXPECT_TRUE(isCapped(file, on));
    EXPECT_FALSE(canBeAsked(Item::FlueCoHigh, on, file));
    EXPECT_TRUE(canBeAsked(Item::CappedHow, on, file));
    EXPECT_TRUE(canBeAsked(Item::RoomCoAlarm, on, file)) << "not an appliance's item";
}

TEST(ApplianceKinds, WhatHasNoFlueIsNotAskedOfOne) {
    VisitFile file;
    Appliance hob;
    hob.id.bytes[15] = 7;
    hob.kind = std::string(choice::kHotplate);
    file.appliances = {hob};
    const auto on = subject(hob.id);
    constexpr std::array kOfItsFlue{Item::FlueRoute,    Item::FlueSeen,    Item::TerminalSeen,
                                    Item::FlueHidden,   Item::FlueNotSeen, Item::FlueFlowTest,
                                    Item::SpillageTest, Item::SpillageFans};
    for (const auto flue :
         {FlueType::NotSaid, FlueType::OpenFlued, FlueType::RoomSealed, FlueType::Flueless}) {
        file.appliances.front().flue = flue;
        for (const Item item : kOfItsFlue) {
            EXPECT_EQ(canBeAsked(item, on, file), flue != FlueType::Flueless) << infoOf(item).code;
        }
        for (const Item item : {Item::ExaminedFlue, Item::FlueCoHigh, Item::VentilationSeen}) {
            EXPECT_TRUE(canBeAsked(item, on, file)) << infoOf(item).code;
        }
    }
}

}  // namespace
}  // namespace hearth::reg
