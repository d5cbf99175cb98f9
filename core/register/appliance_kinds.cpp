// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/appliance_kinds.h"

#include <algorithm>
#include <array>

namespace hearth::reg {

namespace {

/// Asked of whatever stands in the list.
constexpr std::array kOfAnything{Item::ApplianceInspected, Item::NotInspectedWhy, Item::CheckedOn,
                                 Item::DefectsFound,       Item::DefectsText,     Item::ActionTaken,
                                 Item::ActionOn,           Item::ActionBy};
/// Further of what has no flame of its own.
constexpr std::array kOfFlameless{Item::LocationSeen, Item::StabilitySeen,    Item::ConnectionSeen,
                                  Item::DistressSeen, Item::NewOrReplacement, Item::ByMaker,
                                  Item::ServiceKind,  Item::ServiceSymptoms,  Item::ServiceTasks,
                                  Item::ServiceParts, Item::ServiceInterval,  Item::NextServiceDue,
                                  Item::ServicedToday};
/// What is of the check as gas work.
constexpr std::array kOfGas{Item::LastCheckCounted, Item::SafeToUse};

template <class List>
bool holds(const List& list, Item item) {
    return std::find(list.begin(), list.end(), item) != list.end();
}

bool isBetween(Item item, Item first, Item last) {
    return item >= first && item <= last;
}
bool isLpg(Item item) {
    return isBetween(item, Item::LpgDataBadge, Item::LpgDrains);
}
bool isCatering(Item item) {
    return isBetween(item, Item::CateringInterlock, Item::CateringCo);
}
bool isUnvented(Item item) {
    return isBetween(item, Item::UnventedCapacity, Item::UnventedCompetence);
}
bool isOfCapped(Item item) {
    return isBetween(item, Item::CappedHow, Item::CappedLabel);
}

/// What can be asked of a flue only where there is one. Whether "any flue" was examined (regulation 26(9)(a))
/// stays the engineer's own answer.
constexpr std::array kOfFlue{Item::FlueRoute,   Item::FlueSeen,     Item::TerminalSeen, Item::FlueHidden,
                             Item::FlueNotSeen, Item::FlueFlowTest, Item::SpillageTest, Item::SpillageFans};

bool isOwn(Item item, std::string_view kind) {
    if (item == Item::LpgBubbleTester) {
        return kind == choice::kBoat;
    }
    return (isLpg(item) && isLpgSystem(kind)) || (isCatering(item) && kind == choice::kCatering) ||
           (isUnvented(item) && kind == choice::kUnventedCylinder);
}

}  // namespace

bool isGasAppliance(std::string_view kind) {
    return kind != choice::kUnventedCylinder;
}

bool isLpgSystem(std::string_view kind) {
    return kind == choice::kLeisureVehicle || kind == choice::kBoat;
}

bool burnsGas(std::string_view kind) {
    return isGasAppliance(kind) && !isLpgSystem(kind);
}

bool isCapped(const VisitFile& file, const SubjectRef& appliance) {
    return file.choiceOf(appliance, Item::ApplianceInspected) == choice::kDecommissioned;
}

bool isOfSomeKinds(Item item) {
    return isLpg(item) || isCatering(item) || isUnvented(item) || isOfCapped(item);
}

bool canBeAsked(Item item, std::string_view kind, bool capped) {
    if (infoOf(item).subject != SubjectKind::Appliance) {
        return true;
    }
    if (isOfCapped(item)) {
        return capped;
    }
    if (holds(kOfAnything, item)) {
        return true;
    }
    if (holds(kOfGas, item)) {
        return isGasAppliance(kind);
    }
    if (capped) {
        return false;
    }
    if (isOfSomeKinds(item)) {
        return isOwn(item, kind);
    }
    return burnsGas(kind) || holds(kOfFlameless, item);
}

bool canBeAsked(Item item, const SubjectRef& on, const VisitFile& file) {
    const auto found = std::find_if(file.appliances.begin(), file.appliances.end(),
                                    [&](const Appliance& one) { return subject(one.id) == on; });
    if (found == file.appliances.end()) {
        return true;
    }
    const bool hasNoFlue = found->flue == FlueType::Flueless;
    return canBeAsked(item, found->kind, isCapped(file, on)) && !(hasNoFlue && holds(kOfFlue, item));
}

}  // namespace hearth::reg
