// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_need.h"

#include "core/air/figures.h"
#include "core/air/known_rules.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"

#include <algorithm>
#include <array>
#include <functional>
#include <numeric>
#include <string>

namespace hearth::air {

using quantity::Area;
using quantity::kKilowatt;
using quantity::kSquareCentimetre;
using quantity::NetPower;
using quantity::Volume;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

Result<NetPower> netFromGross(quantity::GrossPower gross, double ratio) {
    constexpr double kLeastRatio = 1.0;
    constexpr double kMostRatio = 1.2;
    if (!(ratio >= kLeastRatio && ratio <= kMostRatio)) {
        return fail(ErrorCode::OutOfRange, {std::to_string(ratio), "1", "1.2"});
    }
    return NetPower(gross.in(kKilowatt) / ratio, kKilowatt);
}

Area openFluedArea(NetPower total, NetPower deducted, double squareCentimetresPerKilowatt) {
    const double counted = std::max(0.0, (total - deducted).in(kKilowatt));
    return {counted * squareCentimetresPerKilowatt, kSquareCentimetre};
}

Area perKilowattArea(NetPower input, double squareCentimetresPerKilowatt) {
    return {input.in(kKilowatt)*squareCentimetresPerKilowatt, kSquareCentimetre};
}

Area fluelessHeaterArea(NetPower input, Area first, NetPower served, double squareCentimetresPerKilowatt) {
    return first + openFluedArea(input, served, squareCentimetresPerKilowatt);
}

Area cabinetHeaterArea(NetPower input, Area least, double squareCentimetresPerKilowatt) {
    return std::max(least, perKilowattArea(input, squareCentimetresPerKilowatt));
}

std::optional<NetPower> netInputOf(const HeatInput& input) {
    if (input.net) {
        return *input.net;
    }
    if (input.net.unreadable || !input.gross || !input.grossOverNet) {
        return std::nullopt;
    }
    const auto net = netFromGross(*input.gross, *input.grossOverNet);
    return net ? std::optional(*net) : std::nullopt;
}

namespace {

/// Collects what the appliances of one room ask for.
class RoomReckoning {
  public:
    RoomReckoning(const Room& room, const RulesInForce& rules)
        : m_room(room),
          m_known(rules),
          m_tightRuled(room.tightDwelling == true && rules.known(Rule::VentTightPerKilowatt) != nullptr) {}
    Need done();

  private:
    void take(const Appliance& appliance);
    void takeMakers(const Appliance& appliance);
    void takeOpenFlued(const Appliance& appliance);
    void takeDecorative();
    void takeFlueless(const Appliance& appliance);
    void takeCooker();
    void takeWaterHeater();
    void takeHeater(NetPower input);
    void takeCabinet(NetPower input);
    void takeDryer();
    void addOpenFluedHeaters();
    void addOther(Area area, bool flueless);
    std::optional<Area> openFluedNeed(NetPower input);
    void combine();
    void lack(Say say) { addOnce(m_need.missing, {say}); }
    void step(Say say, std::vector<rulebook::Argument> arguments) {
        m_need.steps.push_back({say, std::move(arguments)});
    }
    std::optional<NetPower> inputOf(const Appliance& appliance);
    /// The room's volume as far as it is certain: twice its uncertainty less, since a smaller room asks for
    /// more.
    std::optional<Volume> certainVolume();

    const Room& m_room;
    KnownRules m_known;
    bool m_tightRuled;  // the firm has entered what a tight dwelling needs
    Need m_need;
    NetPower m_openFlued;
    int m_openFluedCount = 0;
    bool m_allFires = true;
    Area m_openHeaters;
    Area m_fluelessHeaters;
    Area m_largestOther;
    Area m_largestFluelessOther;
    int m_contributors = 0;
};

std::optional<NetPower> RoomReckoning::inputOf(const Appliance& appliance) {
    const auto net = netInputOf(appliance.input);
    if (!net || *net < NetPower()) {
        lack(appliance.input.net.unreadable || appliance.input.gross.unreadable ? Say::ReadingUnusable
                                                                                : Say::VentInputMissing);
        return std::nullopt;
    }
    if (!appliance.input.net) {
        step(Say::VentStepGross, {figureOf(*appliance.input.gross),
                                  plainFigure(*appliance.input.grossOverNet, 4), figureOf(*net)});
    }
    return net;
}

std::optional<Volume> RoomReckoning::certainVolume() {
    if (!m_room.volume) {
        lack(m_room.volume.unreadable ? Say::ReadingUnusable : Say::VentVolumeMissing);
        return std::nullopt;
    }
    const Volume unsure = quantity::kCoverage * m_room.volumeUncertainty.value_or(Volume());
    const Volume certain = *m_room.volume - unsure;
    if (unsure > Volume()) {
        addOnce(m_need.steps,
                {Say::VentStepVolume, {figureOf(*m_room.volume), figureOf(unsure), figureOf(certain)}});
    }
    return certain;
}

void RoomReckoning::addOther(Area area, bool flueless) {
    m_largestOther = std::max(m_largestOther, area);
    if (flueless) {
        m_largestFluelessOther = std::max(m_largestFluelessOther, area);
    }
    ++m_contributors;
}

bool isOpenFluedHeater(ApplianceKind kind) {
    return kind == ApplianceKind::Boiler || kind == ApplianceKind::SpaceHeater ||
           kind == ApplianceKind::Fire || kind == ApplianceKind::DecorativeFire;
}

void RoomReckoning::takeMakers(const Appliance& appliance) {
    const Area area = *appliance.makersArea;
    m_known.keep(rulebook::makersEntry({Rule::VentMakersArea}, figureOf(area), rulebook::Comparison::AtLeast,
                                       "kept with the appliance"));
    step(Say::VentStepMaker, {figureOf(area)});
    const bool flueless = appliance.flue == Flue::Flueless;
    const bool heats = appliance.kind && isOpenFluedHeater(*appliance.kind);
    if (appliance.kind == ApplianceKind::CabinetHeater || (heats && flueless)) {
        m_fluelessHeaters = m_fluelessHeaters + area;
        ++m_contributors;
    } else if (heats) {
        m_openHeaters = m_openHeaters + area;
        ++m_contributors;
    } else {
        addOther(area, flueless);
    }
}

/// The leak that a tight dwelling lacks is not counted there, when the firm has entered the rule for it.
std::optional<Area> RoomReckoning::openFluedNeed(NetPower input) {
    if (m_tightRuled) {
        const double perKilowatt = m_known.factor(Rule::VentTightPerKilowatt).value_or(0.0);
        const Area area = perKilowattArea(input, perKilowatt);
        step(Say::VentStepPerKilowatt, {figureOf(input), plainFigure(perKilowatt, 2), figureOf(area)});
        return area;
    }
    m_need.countsLeaks = true;
    const auto leaks = m_known.power(Rule::VentAdventitiousInput);
    const auto perKilowatt = m_known.factor(Rule::VentOpenFluedPerKilowatt);
    if (!leaks || !perKilowatt) {
        return std::nullopt;
    }
    const Area area = openFluedArea(input, *leaks, *perKilowatt);
    step(Say::VentStepOpenFlued,
         {figureOf(input), figureOf(*leaks), plainFigure(*perKilowatt, 2), figureOf(area)});
    return area;
}

void RoomReckoning::takeOpenFlued(const Appliance& appliance) {
    const auto input = inputOf(appliance);
    if (!input) {
        return;
    }
    if (isOpenFluedHeater(*appliance.kind)) {
        m_allFires = m_allFires && appliance.kind == ApplianceKind::Fire;
        ++m_openFluedCount;
        m_openFlued = m_openFlued + *input;
        ++m_contributors;
        return;
    }
    if (const auto area = openFluedNeed(*input)) {
        addOther(*area, false);
    }
}

void RoomReckoning::takeDecorative() {
    m_need.countsLeaks = true;
    if (const auto area = m_known.area(Rule::VentDecorativeFire)) {
        step(Say::VentStepDecorative, {figureOf(*area)});
        m_openHeaters = m_openHeaters + *area;
        ++m_contributors;
    }
}

void RoomReckoning::takeCooker() {
    const auto volume = certainVolume();
    const auto small = m_known.volume(Rule::VentCookerVolumeSmall);
    const auto medium = m_known.volume(Rule::VentCookerVolumeMedium);
    const auto larger = m_known.area(Rule::VentCookerSmall);
    const auto smaller = m_known.area(Rule::VentCookerMedium);
    if (!volume || !small || !medium || !larger || !smaller) {
        return;
    }
    Area area;
    if (*volume < *small) {
        area = *larger;
    } else if (*volume <= *medium) {
        if (!m_room.doorToOutside) {
            lack(Say::VentDoorMissing);
        }
        area = m_room.doorToOutside == true ? Area() : *smaller;
    }
    step(Say::VentStepCooker, {figureOf(*volume), figureOf(area)});
    addOther(area, true);
}

void RoomReckoning::takeWaterHeater() {
    const auto volume = certainVolume();
    const auto medium = m_known.volume(Rule::VentWaterHeaterVolumeMedium);
    const auto large = m_known.volume(Rule::VentWaterHeaterVolumeLarge);
    const auto larger = m_known.area(Rule::VentWaterHeaterSmall);
    const auto smaller = m_known.area(Rule::VentWaterHeaterMedium);
    if (!volume || !medium || !large || !larger || !smaller) {
        return;
    }
    const Area area = *volume <= *medium ? *larger : *volume <= *large ? *smaller : Area();
    step(Say::VentStepWaterHeater, {figureOf(*volume), figureOf(area)});
    addOther(area, true);
}

void RoomReckoning::takeHeater(NetPower input) {
    const bool internal = m_room.internalSpace.value_or(false);
    const auto first = m_known.area(Rule::VentHeaterBase);
    const auto served = m_known.power(internal ? Rule::VentHeaterInputInternal : Rule::VentHeaterInputRoom);
    const auto perKilowatt =
        m_known.factor(internal ? Rule::VentHeaterPerKilowattInternal : Rule::VentHeaterPerKilowattRoom);
    if (!first || !served || !perKilowatt) {
        return;
    }
    const Area area = fluelessHeaterArea(input, *first, *served, *perKilowatt);
    step(Say::VentStepHeater, {figureOf(*first), figureOf(input), figureOf(*served),
                               plainFigure(*perKilowatt, 2), figureOf(area)});
    m_fluelessHeaters = m_fluelessHeaters + area;
    ++m_contributors;
}

void RoomReckoning::takeCabinet(NetPower input) {
    const auto least = m_known.area(Rule::VentCabinetLeast);
    const auto perKilowatt = m_known.factor(Rule::VentCabinetPerKilowatt);
    if (!least || !perKilowatt) {
        return;
    }
    const Area area = cabinetHeaterArea(input, *least, *perKilowatt);
    step(Say::VentStepCabinet,
         {figureOf(input), plainFigure(*perKilowatt, 2), figureOf(*least), figureOf(area)});
    m_need.high = m_need.high + area;
    m_need.low = m_need.low + area;
    m_fluelessHeaters = m_fluelessHeaters + 2.0 * area;
    ++m_contributors;
}

void RoomReckoning::takeDryer() {
    if (const auto area = m_known.area(Rule::VentDryer)) {
        step(Say::VentStepDryer, {figureOf(*area)});
        addOther(*area, true);
    }
}

void RoomReckoning::takeFlueless(const Appliance& appliance) {
    switch (*appliance.kind) {
        case ApplianceKind::Cooker:
            takeCooker();
            return;
        case ApplianceKind::WaterHeater:
            takeWaterHeater();
            return;
        case ApplianceKind::TumbleDryer:
            takeDryer();
            return;
        case ApplianceKind::SpaceHeater:
        case ApplianceKind::Fire:
        case ApplianceKind::CabinetHeater:
            break;
        default:
            lack(Say::VentKindMissing);
            return;
    }
    if (!m_room.internalSpace && appliance.kind != ApplianceKind::CabinetHeater) {
        lack(Say::VentInternalMissing);
    }
    if (const auto input = inputOf(appliance)) {
        if (appliance.kind == ApplianceKind::CabinetHeater) {
            takeCabinet(*input);
        } else {
            takeHeater(*input);
        }
    }
}

void RoomReckoning::take(const Appliance& appliance) {
    if (appliance.makersArea) {
        takeMakers(appliance);
        return;
    }
    // Cookers, cabinet heaters and decorative fires come with one kind of flue only.
    const bool fluelessByKind =
        appliance.kind == ApplianceKind::Cooker || appliance.kind == ApplianceKind::CabinetHeater;
    if (!appliance.kind ||
        (!appliance.flue && !fluelessByKind && appliance.kind != ApplianceKind::DecorativeFire)) {
        lack(Say::VentKindMissing);
    } else if (fluelessByKind || appliance.flue == Flue::Flueless) {
        takeFlueless(appliance);
    } else if (appliance.kind == ApplianceKind::DecorativeFire) {
        takeDecorative();
    } else if (appliance.flue == Flue::RoomSealed) {
        step(Say::VentStepSealed, {});
    } else if (appliance.kind == ApplianceKind::TumbleDryer || appliance.kind == ApplianceKind::Other) {
        lack(Say::VentKindMissing);
    } else {
        takeOpenFlued(appliance);
    }
}

void RoomReckoning::addOpenFluedHeaters() {
    if (m_openFluedCount == 0) {
        return;
    }
    if (m_openFluedCount == 1 && m_allFires && !m_tightRuled) {
        const auto without = m_known.power(Rule::VentFireInputWithout);
        if (without && m_openFlued <= *without) {
            m_need.countsLeaks = true;
            step(Say::VentStepFire, {figureOf(m_openFlued), figureOf(*without)});
            return;
        }
    }
    if (const auto area = openFluedNeed(m_openFlued)) {
        if (m_openHeaters > Area()) {
            step(Say::VentDecorativeAdded, {});
        }
        m_openHeaters = m_openHeaters + *area;
    }
}

void RoomReckoning::combine() {
    addOpenFluedHeaters();
    std::array<Area, 3> groups{m_fluelessHeaters, m_openHeaters, m_largestOther};
    std::sort(groups.begin(), groups.end(), std::greater<>());
    Area area = groups[0];
    if (m_contributors > 1) {
        const double counted = m_known.factor(Rule::VentSeveralGroups).value_or(0.0);
        for (std::size_t i = 1; i < groups.size() && static_cast<double>(i) < counted; ++i) {
            area = area + groups[i];
        }
        step(Say::VentStepSeveral, {figureOf(m_fluelessHeaters), figureOf(m_openHeaters),
                                    figureOf(m_largestOther), figureOf(area)});
    }
    m_need.flueless = std::max(m_fluelessHeaters, m_largestFluelessOther);
    m_need.area = area;
}

Need RoomReckoning::done() {
    if (m_room.appliances.empty()) {
        lack(Say::VentAppliancesMissing);
    }
    for (const auto& appliance : m_room.appliances) {
        take(appliance);
    }
    combine();
    if (m_known.oneIsEmpty()) {
        lack(Say::LimitMissing);
    }
    if (!m_need.missing.empty()) {
        m_need.area.reset();
    }
    m_need.entries = m_known.entries();
    return std::move(m_need);
}

}  // namespace

Need roomNeed(const Room& room, const RulesInForce& rules) {
    return RoomReckoning(room, rules).done();
}

}  // namespace hearth::air
