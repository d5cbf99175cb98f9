// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"
#include "core/rulebook/given.h"

#include <optional>
#include <vector>

/// What is asked of a space that gas appliances stand in. Plain values; what has not been said is absent.
/// Heat inputs are net throughout, as the ventilation standards have them.
namespace hearth::air {

using rulebook::Given;

enum class VentLeadsTo { Outside, ThroughOneWall, ThroughMoreWalls };
enum class VentLevel { High, Low };

struct Vent {
    Given<quantity::Area> freeArea;
    /// One standard uncertainty of the free area, where it was measured.
    std::optional<quantity::Area> uncertainty;
    std::optional<VentLeadsTo> leadsTo;
    std::optional<VentLevel> level;
    std::optional<bool> blocked;
    std::optional<bool> closable;
    std::optional<bool> flyScreen;
    /// One of these three is wrong, not said which.
    std::optional<bool> unsound;
    /// Of a vent through a cavity wall; not said is taken as no cavity.
    std::optional<bool> sleeved;
};

/// As the rules of ventilation tell appliances apart. Fire: radiant or inset live fuel effect.
enum class ApplianceKind {
    Boiler,
    SpaceHeater,
    Fire,
    DecorativeFire,
    WaterHeater,
    Cooker,
    CabinetHeater,
    TumbleDryer,
    Other,
};
enum class Flue { Open, RoomSealed, Flueless };

/// Net heat input, or gross with the ratio of gross to net by which it is to be divided: nothing else turns
/// one into the other.
struct HeatInput {
    Given<quantity::NetPower> net;
    Given<quantity::GrossPower> gross;
    std::optional<double> grossOverNet;
};

struct Appliance {
    std::optional<ApplianceKind> kind;
    std::optional<Flue> flue;
    HeatInput input;
    /// What the maker asks for: decides before every rule. Nought says that none is needed.
    std::optional<quantity::Area> makersArea;
};

/// A room or internal space (hall, landing) with the appliances that stand in it.
struct Room {
    Given<quantity::Volume> volume;
    /// One standard uncertainty of the volume, where it was measured.
    std::optional<quantity::Volume> volumeUncertainty;
    std::optional<bool> internalSpace;
    std::optional<bool> bedSitting;
    std::optional<bool> basement;
    /// A window, door or the like that can be opened and leads to outside.
    std::optional<bool> opensToOutside;
    /// A door straight to outside.
    std::optional<bool> doorToOutside;
    /// Air permeability of 5 m3/(h m2) or less.
    std::optional<bool> tightDwelling;
    /// Absent: not looked; empty: there are none.
    std::optional<std::vector<Vent>> vents;
    std::vector<Appliance> appliances;
};

/// A compartment or cupboard; its vents say whether they lead to outside or to the room.
struct Compartment {
    /// Where its vents are to lead, for the time while none is there that says so.
    std::optional<bool> toOutside;
    std::optional<std::vector<Vent>> vents;
    std::vector<Appliance> appliances;
};

}  // namespace hearth::air
