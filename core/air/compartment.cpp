// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/compartment.h"

#include "core/air/figures.h"
#include "core/air/known_rules.h"
#include "core/air/vent_finding.h"
#include "core/air/vent_judge.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace hearth::air {

using quantity::Area;
using quantity::NetPower;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

bool openFluedAmong(const Compartment& compartment) {
    return std::any_of(compartment.appliances.begin(), compartment.appliances.end(),
                       [](const Appliance& appliance) { return appliance.flue == Flue::Open; });
}

/// The rows are for flued appliances: what takes its air from the space and leaves its products there, or
/// whose flue is not known, has none.
bool hasCompartmentRow(const Appliance& appliance) {
    return appliance.kind && appliance.flue && appliance.flue != Flue::Flueless &&
           appliance.kind != ApplianceKind::Cooker && appliance.kind != ApplianceKind::CabinetHeater;
}

/// What a compartment's appliances come to: the input that goes by the rule, and what makers ask for.
struct CompartmentLoad {
    NetPower input;
    Area makers;
};

CompartmentLoad loadOf(const Compartment& compartment, LevelNeed& need, KnownRules& known) {
    CompartmentLoad load;
    if (compartment.appliances.empty()) {
        addOnce(need.missing, {Say::VentAppliancesMissing});
    }
    for (const auto& appliance : compartment.appliances) {
        if (appliance.makersArea) {
            known.keep(rulebook::makersEntry({Rule::VentMakersArea}, figureOf(*appliance.makersArea),
                                             rulebook::Comparison::AtLeast, "kept with the appliance"));
            need.steps.push_back({Say::VentStepMaker, {figureOf(*appliance.makersArea)}});
            load.makers = load.makers + *appliance.makersArea;
            continue;
        }
        if (!hasCompartmentRow(appliance)) {
            addOnce(need.missing, {Say::VentKindMissing});
            continue;
        }
        const auto input = netInputOf(appliance.input);
        if (!input || *input < NetPower()) {
            const bool unreadable = appliance.input.net.unreadable || appliance.input.gross.unreadable;
            addOnce(need.missing, {unreadable ? Say::ReadingUnusable : Say::VentInputMissing});
            continue;
        }
        if (!appliance.input.net) {
            need.steps.push_back({Say::VentStepGross,
                                  {figureOf(*appliance.input.gross),
                                   plainFigure(*appliance.input.grossOverNet, 4), figureOf(*input)}});
        }
        load.input = load.input + *input;
    }
    return load;
}

/// One level's area by its factor, with its equation.
std::optional<Area> levelArea(NetPower input, std::optional<double> perKilowatt, LevelNeed& need,
                              std::vector<Sentence>& steps) {
    if (!perKilowatt) {
        addOnce(need.missing, {Say::LimitMissing});
        return std::nullopt;
    }
    const Area area = perKilowattArea(input, *perKilowatt);
    steps.push_back(
        {Say::VentStepPerKilowatt, {figureOf(input), plainFigure(*perKilowatt, 2), figureOf(area)}});
    return area;
}

LevelNeed doneNeed(LevelNeed need, const KnownRules& known) {
    if (!need.missing.empty()) {
        need.high.reset();
        need.low.reset();
    }
    need.entries = known.entries();
    return need;
}

/// A level's vents against its need; `vents` count as they are.
Finding compartmentLevel(FindingKind kind, VentLevel level, const std::vector<Vent>& vents,
                         const LevelNeed& need, const RulesInForce& rules) {
    Finding finding{kind};
    KnownRules known(rules);
    for (const auto& entry : need.entries) {
        known.keep(entry);
    }
    const auto& needed = level == VentLevel::High ? need.high : need.low;
    finding.notes = need.steps;
    const auto& own = level == VentLevel::High ? need.highSteps : need.lowSteps;
    finding.notes.insert(finding.notes.end(), own.begin(), own.end());
    auto missing = need.missing;
    if (std::any_of(vents.begin(), vents.end(), [](const Vent& vent) { return !vent.level; })) {
        addOnce(missing, {Say::VentLevelMissing});
    }
    const auto counted = countVents(ventsAt(vents, level), known, finding.notes);
    for (const auto& sentence : counted.missing) {
        addOnce(missing, sentence);
    }
    if (!missing.empty() || !needed || !counted.there) {
        concludeLacking(finding, missing);
        return finding;
    }
    judgeArea(finding, known.entries(), *needed, *counted.there);
    return finding;
}

void addBothLevels(std::vector<Finding>& findings, const std::optional<std::vector<Vent>>& vents,
                   const LevelNeed& need, const RulesInForce& rules) {
    auto known = need;
    if (!vents) {
        addOnce(known.missing, {Say::VentVentsMissing});
    }
    const auto there = vents.value_or(std::vector<Vent>{});
    findings.push_back(compartmentLevel(FindingKind::VentHighLevel, VentLevel::High, there, known, rules));
    findings.push_back(compartmentLevel(FindingKind::VentLowLevel, VentLevel::Low, there, known, rules));
}

bool leadsOutside(const Vent& vent) {
    return vent.leadsTo == VentLeadsTo::Outside;
}

/// The room's row counts with one wall: that one is not counted again.
std::vector<Vent> seenFromCompartment(std::vector<Vent> vents) {
    for (auto& vent : vents) {
        if (vent.leadsTo == VentLeadsTo::ThroughOneWall) {
            vent.leadsTo = VentLeadsTo::Outside;
        }
    }
    return vents;
}

}  // namespace

LevelNeed compartmentNeed(const Compartment& compartment, bool toOutside, const RulesInForce& rules) {
    LevelNeed need;
    KnownRules known(rules);
    const auto load = loadOf(compartment, need, known);
    const bool open = openFluedAmong(compartment);
    const bool mixed =
        open && std::any_of(compartment.appliances.begin(), compartment.appliances.end(),
                            [](const Appliance& appliance) { return appliance.flue == Flue::RoomSealed; });
    if (mixed) {
        need.steps.push_back({Say::VentCompartmentMixed});
    }
    if (load.input > NetPower()) {
        const auto high = toOutside ? (open ? Rule::VentOpenOutsideHigh : Rule::VentSealedOutsideHigh)
                                    : (open ? Rule::VentOpenToRoomHigh : Rule::VentSealedToRoomHigh);
        const auto low = toOutside ? (open ? Rule::VentOpenOutsideLow : Rule::VentSealedOutsideLow)
                                   : (open ? Rule::VentOpenToRoomLow : Rule::VentSealedToRoomLow);
        need.high = levelArea(load.input, known.factor(high), need, need.highSteps);
        need.low = levelArea(load.input, known.factor(low), need, need.lowSteps);
    } else {
        need.high = Area();
        need.low = Area();
    }
    if (need.high && need.low) {
        need.high = *need.high + load.makers;
        need.low = *need.low + load.makers;
    }
    return doneNeed(std::move(need), known);
}

bool takesAirFromOutside(const Compartment& compartment) {
    const auto vents = compartment.vents.value_or(std::vector<Vent>{});
    if (std::any_of(vents.begin(), vents.end(), leadsOutside)) {
        return true;
    }
    const bool inside =
        std::any_of(vents.begin(), vents.end(), [](const Vent& vent) { return vent.leadsTo; });
    return !inside && compartment.toOutside.value_or(false);
}

std::vector<Finding> compartmentVentilation(const Compartment& compartment, const RulesInForce& rules) {
    std::vector<Finding> findings;
    if (const auto scope = scopeFinding(compartment.appliances, rules)) {
        findings.push_back(*scope);
        if (rulebook::says(*scope, Say::VentBeyondScope)) {
            return findings;
        }
    }
    const auto vents = compartment.vents.value_or(std::vector<Vent>{});
    const bool someOutside = std::any_of(vents.begin(), vents.end(), leadsOutside);
    const bool someInside = std::any_of(vents.begin(), vents.end(),
                                        [](const Vent& vent) { return vent.leadsTo && !leadsOutside(vent); });
    if (someOutside && someInside) {
        for (const auto kind : {FindingKind::VentHighLevel, FindingKind::VentLowLevel}) {
            findings.push_back(rulebook::plainFinding(kind, Outcome::Fail, Say::VentMixedDestinations));
        }
    } else {
        const auto need = compartmentNeed(compartment, takesAirFromOutside(compartment), rules);
        const auto seen = compartment.vents ? std::optional(seenFromCompartment(vents))
                                            : std::optional<std::vector<Vent>>();
        addBothLevels(findings, seen, need, rules);
    }
    const bool fromRoom = someInside || (!someOutside && compartment.toOutside == false);
    if (fromRoom && openFluedAmong(compartment)) {
        findings.push_back(
            rulebook::plainFinding(FindingKind::VentFreeArea, Outcome::LookAgain, Say::VentCompartmentRoom));
    }
    if (!vents.empty()) {
        findings.push_back(ventState(vents));
    }
    return findings;
}

namespace {

/// Factors of an enclosure's rows by summer use: low, high.
constexpr std::array kEnclosureRules{
    std::pair{Rule::PlantEnclosureLowHalf, Rule::PlantEnclosureHighHalf},
    std::pair{Rule::PlantEnclosureLowMost, Rule::PlantEnclosureHighMost},
    std::pair{Rule::PlantEnclosureLowAll, Rule::PlantEnclosureHighAll},
};

/// What the summer adds in a boiler room, cm2/kW; nothing when the book has no value.
std::optional<double> summerUplift(SummerUse use, KnownRules& known) {
    switch (use) {
        case SummerUse::UpToHalf:
            return 0.0;
        case SummerUse::HalfToThreeQuarters:
            return known.factor(Rule::PlantSummerMost);
        case SummerUse::More:
            break;
    }
    return known.factor(Rule::PlantSummerAll);
}

std::optional<double> bothOf(std::optional<double> a, std::optional<double> b) {
    return a && b ? std::optional(*a + *b) : std::nullopt;
}

/// The standard for boiler rooms begins where the domestic one ends, and has an end of its own.
Finding plantScope(const Plant& plant, const RulesInForce& rules) {
    Finding finding{FindingKind::VentScope};
    if (const auto absent = rulebook::absence(plant.input)) {
        rulebook::concludeOpen(finding, {plant.input.unreadable ? absent->say : Say::VentInputMissing});
        return finding;
    }
    finding.measured = figureOf(*plant.input);
    KnownRules known(rules);
    const auto domestic = known.power(Rule::VentScopeInput);
    if (domestic && *plant.input < *domestic) {
        rulebook::restOn(finding, known.entries().front());
        rulebook::concludeOpen(finding,
                               {Say::VentWithinScope, {figureOf(*plant.input), figureOf(*domestic)}});
        return finding;
    }
    const auto* entry = rules.known(Rule::PlantInputMost);
    if (entry == nullptr) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    const auto limit = limitFigure(*entry);
    rulebook::judgeAgainst(
        finding, entry, {plant.input->in(quantity::powerUnit(limit.unit)), 0.0},
        {Say::VentPlantWithin, Say::VentInputNear, Say::VentPlantBeyond, {figureOf(*plant.input), limit}});
    if (finding.outcome == Outcome::Fail) {
        finding.outcome = Outcome::NoVerdict;  // no rule judges, not: it is wrong
    }
    return finding;
}

void addTemperature(std::vector<Finding>& findings, const Given<quantity::Temperature>& read, Rule rule,
                    const RulesInForce& rules) {
    if (!read.isEntered()) {
        return;
    }
    const auto* entry = rules.known(rule);
    if (!read || entry == nullptr) {
        findings.push_back(rulebook::noVerdict(FindingKind::PlantTemperature,
                                               {read ? Say::LimitMissing : Say::ReadingUnusable}));
        return;
    }
    Finding finding{FindingKind::PlantTemperature};
    finding.measured = figureOf(*read);
    const auto limit = limitFigure(*entry);
    rulebook::judgeAgainst(finding, entry, {read->in(quantity::temperatureUnit(limit.unit)), 0.0},
                           {Say::PlantTemperatureGood,
                            Say::PlantTemperatureNear,
                            Say::PlantTemperatureHigh,
                            {figureOf(*read), limit}});
    findings.push_back(std::move(finding));
}

}  // namespace

LevelNeed plantNeed(const Plant& plant, const RulesInForce& rules) {
    LevelNeed need;
    KnownRules known(rules);
    if (const auto absent = rulebook::absence(plant.input)) {
        addOnce(need.missing, {plant.input.unreadable ? absent->say : Say::VentInputMissing});
    }
    if (!plant.space || !plant.summer) {
        addOnce(need.missing, {Say::PlantSpaceMissing});
    }
    if (plant.openFlued != true) {
        addOnce(need.missing, {Say::PlantFlueOther});
    }
    if (!need.missing.empty()) {
        return doneNeed(std::move(need), known);
    }
    std::optional<double> low;
    std::optional<double> high;
    if (*plant.space == PlantSpace::Enclosure) {
        const auto row = kEnclosureRules.at(static_cast<std::size_t>(*plant.summer));
        low = known.factor(row.first);
        high = known.factor(row.second);
    } else {
        const auto uplift = summerUplift(*plant.summer, known);
        low = bothOf(known.factor(Rule::PlantRoomLow), uplift);
        high = bothOf(known.factor(Rule::PlantRoomHigh), uplift);
    }
    need.high = levelArea(*plant.input, high, need, need.highSteps);
    need.low = levelArea(*plant.input, low, need, need.lowSteps);
    return doneNeed(std::move(need), known);
}

std::vector<Finding> plantVentilation(const Plant& plant, const RulesInForce& rules) {
    std::vector<Finding> findings{plantScope(plant, rules)};
    const auto vents = plant.vents.value_or(std::vector<Vent>{});
    if (!rulebook::says(findings.front(), Say::VentPlantBeyond) &&
        !rulebook::says(findings.front(), Say::VentWithinScope)) {
        auto need = plantNeed(plant, rules);
        if (std::any_of(vents.begin(), vents.end(),
                        [](const Vent& vent) { return vent.leadsTo && !leadsOutside(vent); })) {
            addOnce(need.missing, {Say::VentOutsideOnly});
        }
        addBothLevels(findings, plant.vents, need, rules);
    }
    if (!vents.empty()) {
        findings.push_back(ventState(vents));
    }
    addTemperature(findings, plant.atFloor, Rule::PlantTemperatureFloor, rules);
    addTemperature(findings, plant.atMiddle, Rule::PlantTemperatureMiddle, rules);
    addTemperature(findings, plant.atCeiling, Rule::PlantTemperatureCeiling, rules);
    return findings;
}

}  // namespace hearth::air
