// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/compartment.h"
#include "core/air/figures.h"
#include "core/air/vent_finding.h"
#include "core/air/vent_judge.h"
#include "core/gas/fuel.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hearth::judging {

using air::ApplianceKind;
using air::Flue;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Say;
namespace choice = reg::choice;

namespace {

constexpr std::string_view kDomesticVents = "BS 5440-2, by the equations and entries of the finding";
constexpr std::string_view kPlantVents = "BS 6644, by the equations and entries of the finding";

/// What a kind of the catalogue is to the ventilation standards, and the flue that it comes with where there
/// is only one.
struct VentKind {
    std::string_view code;
    ApplianceKind kind;
    std::optional<Flue> flue;
};
// A fire that is not decorative, and an open-flued space heater, are one kind in the catalogue: a fire's rule
// gives the same area, and rests on more that has to be confirmed. A range with a flue has no row of its own.
constexpr auto kVentKinds = std::to_array<VentKind>({
    {choice::kCondensingBoiler, ApplianceKind::Boiler, std::nullopt},
    {choice::kNonCondensingBoiler, ApplianceKind::Boiler, std::nullopt},
    {choice::kWarmAirHeater, ApplianceKind::SpaceHeater, std::nullopt},
    {choice::kBackBoiler, ApplianceKind::Boiler, Flue::Open},
    {choice::kBackBoilerFire, ApplianceKind::Fire, Flue::Open},
    {choice::kGasFire, ApplianceKind::Fire, std::nullopt},
    {choice::kOpenFluedWaterHeater, ApplianceKind::WaterHeater, Flue::Open},
    {choice::kRoomSealedWaterHeater, ApplianceKind::WaterHeater, Flue::RoomSealed},
    {choice::kFluelessSpaceHeater, ApplianceKind::SpaceHeater, Flue::Flueless},
    {choice::kFluelessWaterHeater, ApplianceKind::WaterHeater, Flue::Flueless},
    {choice::kOven, ApplianceKind::Cooker, Flue::Flueless},
    {choice::kGrill, ApplianceKind::Cooker, Flue::Flueless},
    {choice::kHotplate, ApplianceKind::Cooker, Flue::Flueless},
    {choice::kRangeCooker, ApplianceKind::Other, std::nullopt},
    {choice::kDecorativeFire, ApplianceKind::DecorativeFire, Flue::Open},
    {choice::kCabinetHeater, ApplianceKind::CabinetHeater, Flue::Flueless},
    {choice::kTumbleDryer, ApplianceKind::TumbleDryer, std::nullopt},
    // The air of a kitchen comes with its extract: the rooms' rules do not reach it.
    {choice::kCatering, ApplianceKind::Other, std::nullopt},
    // What has no flame of its own has no rule here either.
    {choice::kLeisureVehicle, ApplianceKind::Other, std::nullopt},
    {choice::kBoat, ApplianceKind::Other, std::nullopt},
    {choice::kUnventedCylinder, ApplianceKind::Other, std::nullopt},
    {choice::kOther, ApplianceKind::Other, std::nullopt},
});

/// Kind and flue; a flue typed against the kind leaves no kind.
void takeVentKind(air::Appliance& appliance, const Readings& row) {
    appliance.flue = row.choice<Flue>(Item::ApplianceFlue, {{choice::kOpenFlued, Flue::Open},
                                                            {choice::kRoomSealed, Flue::RoomSealed},
                                                            {choice::kFlueless, Flue::Flueless}});
    const auto code = row.code(Item::ApplianceKind);
    const auto found = std::find_if(kVentKinds.begin(), kVentKinds.end(),
                                    [&](const VentKind& kind) { return kind.code == code; });
    if (found == kVentKinds.end() || (found->flue && appliance.flue && found->flue != appliance.flue)) {
        return;
    }
    appliance.kind = found->kind;
    appliance.flue = found->flue ? found->flue : appliance.flue;
}

/// Gross over net of the gas that was said.
std::optional<double> grossOverNet(Asking& asking) {
    if (!isGasSaid(asking)) {
        air::addOnce(asking.answer.notes, {Say::VentGasMissing});
        return std::nullopt;
    }
    const auto fuel = asking.got(gas::fuelOf(asking.inForce));
    return fuel && fuel->net ? std::optional(fuel->gross.base() / fuel->net->base()) : std::nullopt;
}

air::HeatInput ventInput(Asking& asking, const Readings& row) {
    air::HeatInput input;
    const auto net = row.power<quantity::NetPower>(Item::ApplianceInput);
    const auto basis = row.code(Item::ApplianceInputBasis);
    if (net.unreadable) {
        input.net = air::Given<quantity::NetPower>::unusable();
    } else if (net && basis == choice::kNet) {
        input.net = net->value;
    } else if (net && basis == choice::kGross) {
        input.gross = row.power<quantity::GrossPower>(Item::ApplianceInput)->value;
        input.grossOverNet = grossOverNet(asking);
    } else if (net) {
        air::addOnce(asking.answer.notes, {Say::HeatInputPlateKindNotSaid});
    }
    return input;
}

struct VentAppliances {
    std::vector<air::Appliance> all;
    bool makersUnclear = false;
};

VentAppliances ventAppliances(Asking& asking) {
    VentAppliances found;
    for (int at = 0; at < asking.sheet.rows(Group::Appliance); ++at) {
        if (!asking.sheet.holdsAny(Group::Appliance, at)) {
            continue;
        }
        const auto row = asking.sheet.readings(Group::Appliance, at);
        air::Appliance appliance;
        takeVentKind(appliance, row);
        appliance.input = ventInput(asking, row);
        if (isUnclear(row, Item::ApplianceVentArea)) {
            found.makersUnclear = true;
        } else if (const auto makers = row.area(Item::ApplianceVentArea)) {
            appliance.makersArea = makers->value;
        }
        found.all.push_back(std::move(appliance));
    }
    return found;
}

air::Vent ventOf(const Readings& row, std::optional<air::VentLeadsTo> leadsTo) {
    air::Vent vent;
    if (const auto area = row.area(Item::VentArea); area && !isUnclear(row, Item::VentArea)) {
        vent.freeArea = area->value;
        vent.uncertainty = quantity::Area::fromBase(quantity::rectangular(area->digit.base() / 2.0));
    } else if (area.isEntered()) {
        vent.freeArea = air::Given<quantity::Area>::unusable();
    }
    vent.leadsTo = row.choice<air::VentLeadsTo>(Item::VentTo,
                                                {{choice::kOutside, air::VentLeadsTo::Outside},
                                                 {choice::kOneWall, air::VentLeadsTo::ThroughOneWall},
                                                 {choice::kMoreWalls, air::VentLeadsTo::ThroughMoreWalls}});
    if (!vent.leadsTo && !row.isEntered(Item::VentTo)) {
        vent.leadsTo = leadsTo;
    }
    vent.level = row.choice<air::VentLevel>(
        Item::VentLevel, {{choice::kHigh, air::VentLevel::High}, {choice::kLow, air::VentLevel::Low}});
    if (const auto sound = row.yesNo(Item::VentSound)) {
        vent.unsound = !*sound;
        if (*sound) {
            vent.blocked = vent.closable = vent.flyScreen = false;
        }
    }
    vent.sleeved = row.yesNo(Item::VentSleeved);
    return vent;
}

/// Nothing where nobody has looked; `leadsTo` is what the space says of vents that say nothing themselves.
std::optional<std::vector<air::Vent>> ventsThere(const Worksheet& sheet, const Readings& once,
                                                 std::optional<air::VentLeadsTo> leadsTo) {
    std::vector<air::Vent> vents;
    for (int at = 0; at < sheet.rows(Group::Vent); ++at) {
        if (sheet.holdsAny(Group::Vent, at)) {
            vents.push_back(ventOf(sheet.readings(Group::Vent, at), leadsTo));
        }
    }
    if (vents.empty() && once.yesNo(Item::RoomVents) != false) {
        return std::nullopt;
    }
    return vents;
}

bool isOfInput(const rulebook::Finding& finding) {
    using rulebook::says;
    return says(finding, Say::VentInputAllowed) || says(finding, Say::VentInputNear) ||
           says(finding, Say::VentInputTooLarge) || says(finding, Say::VentInputMissing);
}

/// Each beside the field that it is about first.
void placeVents(Asking& asking, rulebook::Finding finding) {
    switch (finding.kind) {
        case FindingKind::VentScope:
            asking.find(std::move(finding), {Item::ApplianceInput}, Group::Appliance);
            return;
        case FindingKind::VentSound:
            asking.find(std::move(finding), {Item::VentSound, Item::VentSleeved}, Group::Vent);
            return;
        case FindingKind::VentOpening:
            asking.find(std::move(finding), {Item::RoomOpening});
            return;
        case FindingKind::VentBasement:
            asking.find(std::move(finding), {Item::RoomBasement});
            return;
        case FindingKind::VentAllowed:
            if (isOfInput(finding)) {
                asking.find(std::move(finding), {Item::ApplianceInput}, Group::Appliance);
            } else if (says(finding, Say::VentBedSitUnknown)) {
                asking.find(std::move(finding), {Item::RoomBedSitting});
            } else {
                asking.find(std::move(finding), {Item::RoomVolume, Item::RoomBedSitting});
            }
            return;
        default:
            asking.find(std::move(finding), {Item::RoomVents, Item::RoomSpace, Item::RoomVolume});
    }
}

bool isOfVentArea(FindingKind kind) {
    return kind == FindingKind::VentFreeArea || kind == FindingKind::VentHighLevel ||
           kind == FindingKind::VentLowLevel;
}

/// A maker's area that was typed and can't be read: no rule stands in for it.
void findVents(Asking& asking, std::vector<rulebook::Finding> findings, bool makersUnclear) {
    constexpr std::array kReadAt{Item::PlantFloor, Item::PlantMiddle, Item::PlantCeiling};
    std::vector<Item> read;
    std::copy_if(kReadAt.begin(), kReadAt.end(), std::back_inserter(read),
                 [&](Item item) { return asking.once.isEntered(item); });
    std::size_t at = 0;
    for (auto& finding : findings) {
        if (finding.kind == FindingKind::PlantTemperature && at < read.size()) {
            asking.find(std::move(finding), {read[at++]});
        } else if (makersUnclear && isOfVentArea(finding.kind)) {
            placeVents(asking, withoutMakers(std::move(finding)));
        } else {
            placeVents(asking, std::move(finding));
        }
    }
}

/// Nothing while one of them is missing.
std::optional<quantity::NetPower> ventInputOfAll(const std::vector<air::Appliance>& appliances) {
    quantity::NetPower total;
    for (const auto& appliance : appliances) {
        const auto input = air::netInputOf(appliance.input);
        if (!input || *input < quantity::NetPower()) {
            return std::nullopt;
        }
        total = total + *input;
    }
    return appliances.empty() ? std::nullopt : std::optional(total);
}

void showVentInput(Asking& asking, const std::vector<air::Appliance>& appliances) {
    if (const auto total = ventInputOfAll(appliances)) {
        asking.work(Derived::VentInput, air::figureOf(*total), "sum; net from gross by the gas's ratio");
    }
}

void showLevels(Asking& asking, const std::optional<quantity::Area>& high,
                const std::optional<quantity::Area>& low, std::string_view source) {
    if (high && low) {
        asking.work(Derived::VentNeedHigh, air::figureOf(*high), source);
        asking.work(Derived::VentNeedLow, air::figureOf(*low), source);
    }
}

void showVentsThere(Asking& asking, const std::optional<std::vector<air::Vent>>& vents) {
    if (!vents || vents->empty()) {
        return;
    }
    air::KnownRules known(asking.inForce);
    std::vector<rulebook::Sentence> steps;
    if (const auto there = air::countVents(*vents, known, steps).there) {
        const quantity::Area margin(quantity::expanded(*there), quantity::kSquareCentimetre);
        asking.work(Derived::VentThere,
                    air::figureOf(quantity::Area(there->value, quantity::kSquareCentimetre)),
                    "sum of free areas, less those through inside walls", air::figureOf(margin));
    }
}

air::Room ventRoom(Asking& asking, std::vector<air::Appliance> appliances) {
    const auto& once = asking.once;
    air::Room room;
    const auto volume = once.volumeSeen(Item::RoomVolume);
    if (volume && volume->value > quantity::Volume()) {
        room.volume = volume->value;
        room.volumeUncertainty =
            quantity::Volume::fromBase(quantity::rectangular(volume->digit.base() / 2.0));
    } else if (volume.isEntered()) {
        room.volume = air::Given<quantity::Volume>::unusable();
    }
    room.internalSpace = once.code(Item::RoomSpace) == choice::kInternalSpace;
    room.bedSitting = once.yesNo(Item::RoomBedSitting);
    room.basement = once.yesNo(Item::RoomBasement);
    room.opensToOutside = once.choice<bool>(
        Item::RoomOpening, {{choice::kYes, true}, {choice::kDoor, true}, {choice::kNo, false}});
    room.doorToOutside = once.choice<bool>(
        Item::RoomOpening, {{choice::kYes, false}, {choice::kDoor, true}, {choice::kNo, false}});
    room.tightDwelling = once.yesNo(Item::RoomTight);
    room.vents = ventsThere(asking.sheet, once, std::nullopt);
    room.appliances = std::move(appliances);
    return room;
}

void answerRoom(Asking& asking, VentAppliances appliances) {
    const auto room = ventRoom(asking, std::move(appliances.all));
    findVents(asking, air::ventilation(room, asking.inForce), appliances.makersUnclear);
    showVentInput(asking, room.appliances);
    const auto need = air::roomNeed(room, asking.inForce);
    if (need.area && !appliances.makersUnclear) {
        asking.work(Derived::VentNeed, air::figureOf(*need.area), kDomesticVents);
        if (need.high > quantity::Area()) {
            showLevels(asking, need.high, need.low, kDomesticVents);
        }
    }
    showVentsThere(asking, room.vents);
}

void answerCompartment(Asking& asking, VentAppliances appliances) {
    const bool toOutside = asking.once.code(Item::RoomSpace) == choice::kCompartmentToOutside;
    air::Compartment compartment;
    compartment.toOutside = toOutside;
    compartment.vents = ventsThere(asking.sheet, asking.once,
                                   toOutside ? air::VentLeadsTo::Outside : air::VentLeadsTo::ThroughOneWall);
    compartment.appliances = std::move(appliances.all);
    findVents(asking, air::compartmentVentilation(compartment, asking.inForce), appliances.makersUnclear);
    showVentInput(asking, compartment.appliances);
    if (!appliances.makersUnclear) {
        const auto need =
            air::compartmentNeed(compartment, air::takesAirFromOutside(compartment), asking.inForce);
        showLevels(asking, need.high, need.low, kDomesticVents);
    }
}

void answerPlant(Asking& asking, VentAppliances appliances) {
    const auto& once = asking.once;
    air::Plant plant;
    const bool unreadable = std::any_of(appliances.all.begin(), appliances.all.end(),
                                        [](const auto& appliance) { return appliance.input.net.unreadable; });
    if (const auto total = ventInputOfAll(appliances.all)) {
        plant.input = *total;
    } else if (unreadable) {
        plant.input = air::Given<quantity::NetPower>::unusable();
    }
    plant.openFlued = !appliances.all.empty() &&
                      std::all_of(appliances.all.begin(), appliances.all.end(),
                                  [](const auto& appliance) { return appliance.flue == Flue::Open; });
    plant.space = once.code(Item::RoomSpace) == choice::kBoilerRoom ? air::PlantSpace::BoilerRoom
                                                                    : air::PlantSpace::Enclosure;
    plant.summer = once.choice<air::SummerUse>(Item::PlantSummer,
                                               {{choice::kSummerHalf, air::SummerUse::UpToHalf},
                                                {choice::kSummerMost, air::SummerUse::HalfToThreeQuarters},
                                                {choice::kSummerAll, air::SummerUse::More}});
    plant.vents = ventsThere(asking.sheet, once, std::nullopt);
    const auto degrees = [&](Item item) {
        const auto read = once.temperature(item);
        return read              ? air::Given<quantity::Temperature>(read->value)
               : read.unreadable ? air::Given<quantity::Temperature>::unusable()
                                 : air::Given<quantity::Temperature>();
    };
    plant.atFloor = degrees(Item::PlantFloor);
    plant.atMiddle = degrees(Item::PlantMiddle);
    plant.atCeiling = degrees(Item::PlantCeiling);
    // The rows are for no maker's figure: where one was typed, nothing stands in for it.
    const bool makers = appliances.makersUnclear ||
                        std::any_of(appliances.all.begin(), appliances.all.end(),
                                    [](const auto& appliance) { return appliance.makersArea.has_value(); });
    findVents(asking, air::plantVentilation(plant, asking.inForce), makers);
    showVentInput(asking, appliances.all);
    if (const auto need = air::plantNeed(plant, asking.inForce); !makers) {
        showLevels(asking, need.high, need.low, kPlantVents);
    }
    showVentsThere(asking, plant.vents);
}

}  // namespace

void answerVentilation(Asking& asking) {
    const auto space = asking.once.code(Item::RoomSpace);
    auto appliances = ventAppliances(asking);
    if (space == choice::kRoom || space == choice::kInternalSpace) {
        answerRoom(asking, std::move(appliances));
    } else if (space == choice::kCompartmentToRoom || space == choice::kCompartmentToOutside) {
        answerCompartment(asking, std::move(appliances));
    } else if (space == choice::kBoilerRoom || space == choice::kBoilerEnclosure) {
        answerPlant(asking, std::move(appliances));
    } else {
        asking.find(rulebook::noVerdict(FindingKind::VentFreeArea, {Say::VentSpaceMissing}),
                    {Item::RoomSpace});
    }
}

}  // namespace hearth::judging
