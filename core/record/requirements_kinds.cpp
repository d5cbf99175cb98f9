// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/requirements.h"

#include <array>

namespace hearth::record {

namespace {

using reg::Item;

constexpr std::string_view kBadge = "guide to gas safety in leisure accommodation vehicles (BS EN 1949)";
constexpr std::string_view kCp32 = "Code of Practice 32 (2020), from memory";
constexpr std::string_view kUp19 = "IGEM/UP/19 Edition 2";
constexpr std::string_view kUp19Memory = "IGEM/UP/19 Edition 2, from memory";
constexpr std::string_view kG3 = "Building Regulations 2010, requirement G3, from memory";
constexpr std::string_view kSealLaw = "Gas Safety (Installation and Use) Regulations 1998, regulation 26(5)";
constexpr std::string_view kSealTest =
    "Gas Safety (Installation and Use) Regulations 1998, regulation 22, from memory";
constexpr std::string_view kCommonKinds = "common practice";

// What is answered with a choice can be answered "not checked", so it is asked of what was seen; what has to
// be read off a plate that may be gone, or measured, may be left out.
constexpr std::array kOfKinds{
    // the LPG system of a leisure vehicle or a boat
    wantedItem(Item::LpgDataBadge, kBadge, When::WhenTyped),
    wantedItem(Item::LpgUnitNumber, kCp32, When::WhenTyped),
    wantedItem(Item::LpgUse, kCp32, When::Seen),
    wantedItem(Item::LpgCylinders, kCp32, When::Seen),
    wantedItem(Item::LpgCylinderPlace, kCp32, When::Seen),
    wantedItem(Item::LpgCylindersSecured, kCp32, When::Seen),
    wantedItem(Item::LpgRegulator, kCp32, When::Seen),
    wantedItem(Item::LpgRegulatorDate, kCp32, When::WhenTyped),
    wantedItem(Item::LpgHoseDates, kCp32, When::WhenTyped),
    wantedItem(Item::LpgShutOffs, kCp32, When::Seen),
    wantedItem(Item::LpgLockUp, kCp32, When::WhenTyped),
    wantedItem(Item::LpgBubbleTester, kCp32, When::Seen),
    wantedItem(Item::LpgVentilation, kCp32, When::Seen),
    wantedItem(Item::LpgVentHigh, kCp32, When::WhenTyped),
    wantedItem(Item::LpgVentLow, kCp32, When::WhenTyped),
    wantedItem(Item::LpgDrains, kCp32, When::Seen),
    // catering
    wantedItem(Item::CateringInterlock, kUp19, When::Inspected),
    wantedItem(Item::CateringInterlockProved, kUp19Memory, When::Inspected),
    wantedItem(Item::CateringShutOff, kUp19Memory, When::Inspected),
    wantedItem(Item::CateringGasProving, kUp19Memory, When::Inspected),
    wantedItem(Item::CateringExtract, kUp19Memory, When::WhenTyped),
    wantedItem(Item::CateringMakeUpAir, kUp19Memory, When::WhenTyped),
    wantedItem(Item::CateringCo2Place, kUp19Memory, When::WhenTyped),
    wantedItem(Item::CateringCo2Start, kUp19Memory, When::WhenTyped),
    wantedItem(Item::CateringCo2End, kUp19Memory, When::WhenTyped),
    wantedItem(Item::CateringCo, kUp19Memory, When::WhenTyped),
    // an unvented cylinder
    wantedItem(Item::UnventedCapacity, kG3, When::WhenTyped),
    wantedItem(Item::UnventedExpansion, kG3, When::Seen),
    wantedItem(Item::UnventedRelief, kG3, When::Seen),
    wantedItem(Item::UnventedPressureValves, kG3, When::Seen),
    wantedItem(Item::UnventedDischarge1, kG3, When::WhenTyped),
    wantedItem(Item::UnventedDischarge2, kG3, When::WhenTyped),
    wantedItem(Item::UnventedCompetence, kG3, When::WhenTyped),
    // decommissioned and capped
    wantedItem(Item::CappedHow, kSealLaw, When::Seen),
    wantedItem(Item::CappedWhere, kCommonKinds, When::Seen),
    wantedItem(Item::CappedProved, kSealTest, When::Seen),
    wantedItem(Item::CappedLabel, kCommonKinds, When::Seen),
};

}  // namespace

std::span<const Requirement> requirementsOfSomeKinds(RecordKind kind) {
    switch (kind) {
        case RecordKind::LandlordSafety:
        case RecordKind::OwnerSafety:
        case RecordKind::Commissioning:
        case RecordKind::Service:
            return kOfKinds;
        default:
            return {};
    }
}

}  // namespace hearth::record
