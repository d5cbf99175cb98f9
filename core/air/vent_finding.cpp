// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_finding.h"

#include "core/air/figures.h"
#include "core/air/known_rules.h"
#include "core/air/vent_judge.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace hearth::air {

using quantity::kCubicMetre;
using quantity::kSquareCentimetre;
using quantity::kWatt;
using quantity::NetPower;
using quantity::Uncertain;
using quantity::Volume;
using rulebook::Argument;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

bool isFlueless(const Appliance& appliance) {
    return appliance.kind == ApplianceKind::Cooker || appliance.kind == ApplianceKind::CabinetHeater ||
           appliance.flue == Flue::Flueless;
}

bool isFluelessHeater(const Appliance& appliance) {
    return isFlueless(appliance) &&
           (appliance.kind == ApplianceKind::SpaceHeater || appliance.kind == ApplianceKind::Fire);
}

bool anyOf(const Room& room, ApplianceKind kind) {
    return std::any_of(room.appliances.begin(), room.appliances.end(), [&](const Appliance& appliance) {
        return appliance.kind == kind && appliance.flue != Flue::RoomSealed &&
               (kind != ApplianceKind::WaterHeater || isFlueless(appliance));
    });
}

/// A verdict that must not stand as it is: it becomes a note, and a weaker one takes its place.
void overrule(Finding& finding, Outcome outcome, Sentence why) {
    finding.notes.insert(finding.notes.begin(), std::move(finding.why));
    finding.why = std::move(why);
    finding.outcome = outcome;
}

/// In a tight dwelling the leak that the usual rule counts on is not there.
void mindTightness(Finding& finding, const Room& room, const Need& need, const RulesInForce& rules) {
    const bool open = finding.outcome == Outcome::Pass || finding.outcome == Outcome::LookAgain;
    if (!need.countsLeaks || !open || room.tightDwelling == false) {
        return;
    }
    if (const auto* entry = rules.find(Rule::VentTightPerKilowatt)) {
        rulebook::restOn(finding, *entry);
    }
    overrule(finding, Outcome::NoVerdict, {room.tightDwelling ? Say::VentTightMore : Say::VentTightMissing});
}

/// Whether the air of an appliance without a flue may come through an inside wall has not been read.
void mindInsideWalls(Finding& finding, const std::vector<Vent>& vents, const Need& need) {
    if (finding.outcome != Outcome::Pass && finding.outcome != Outcome::LookAgain) {
        return;
    }
    std::vector<Vent> straight;
    std::copy_if(vents.begin(), vents.end(), std::back_inserter(straight),
                 [](const Vent& vent) { return vent.leadsTo == VentLeadsTo::Outside; });
    const auto there = areaThere(straight, 1.0);
    const double needed = need.flueless.in(kSquareCentimetre);
    if (there && !rulebook::holds(there->value, rulebook::Comparison::AtLeast, needed)) {
        overrule(finding, Outcome::LookAgain,
                 {Say::VentFluelessThroughWall,
                  {figureOf(quantity::Area(there->value, kSquareCentimetre)), figureOf(need.flueless)}});
    }
}

Finding levelFinding(FindingKind kind, VentLevel level, const Room& room, const Need& need,
                     const RulesInForce& rules) {
    Finding finding{kind};
    KnownRules known(rules);
    std::vector<Sentence> missing = need.missing;
    if (!room.vents) {
        addOnce(missing, {Say::VentVentsMissing});
        concludeLacking(finding, missing);
        return finding;
    }
    if (std::any_of(room.vents->begin(), room.vents->end(), [](const Vent& vent) { return !vent.level; })) {
        addOnce(missing, {Say::VentLevelMissing});
    }
    const auto vents = ventsAt(*room.vents, level);
    const auto counted = countVents(vents, known, finding.notes);
    for (const auto& sentence : counted.missing) {
        addOnce(missing, sentence);
    }
    if (!missing.empty() || !counted.there) {
        concludeLacking(finding, missing);
        return finding;
    }
    (void)known.area(Rule::VentCabinetLeast);
    (void)known.factor(Rule::VentCabinetPerKilowatt);
    const auto needed = level == VentLevel::High ? need.high : need.low;
    judgeArea(finding, known.entries(), needed, *counted.there);
    Need own = need;
    own.flueless = needed;
    mindInsideWalls(finding, vents, own);
    return finding;
}

}  // namespace

Finding freeAreaFinding(const Room& room, const RulesInForce& rules) {
    const auto need = roomNeed(room, rules);
    Finding finding{FindingKind::VentFreeArea};
    finding.notes = need.steps;
    if (need.area) {
        finding.notes.push_back({Say::VentNeedIs, {figureOf(*need.area)}});
    }
    KnownRules known(rules);
    for (const auto& entry : need.entries) {
        known.keep(entry);
    }
    std::vector<Sentence> missing = need.missing;
    if (need.area && *need.area == quantity::Area()) {
        if (need.entries.empty()) {
            finding.outcome = Outcome::Pass;  // nothing but room-sealed appliances: no limit to hold
            finding.why = {Say::VentNotNeeded};
            return finding;
        }
        judgeArea(finding, known.entries(), *need.area, {});
        finding.measured.reset();  // nothing was measured against nought
        mindTightness(finding, room, need, rules);
        return finding;
    }
    Counted counted;
    if (room.vents) {
        counted = countVents(*room.vents, known, finding.notes);
        for (const auto& sentence : counted.missing) {
            addOnce(missing, sentence);
        }
    } else {
        addOnce(missing, {Say::VentVentsMissing});
    }
    if (!missing.empty() || !need.area || !counted.there) {
        for (const auto& entry : known.entries()) {
            rulebook::restOn(finding, entry);
        }
        finding.limit = need.area ? std::optional(figureOf(*need.area)) : std::nullopt;
        finding.comparison = rulebook::Comparison::AtLeast;
        concludeLacking(finding, missing);
        return finding;
    }
    judgeArea(finding, known.entries(), *need.area, *counted.there);
    mindInsideWalls(finding, *room.vents, need);
    mindTightness(finding, room, need, rules);
    return finding;
}

std::optional<Finding> openingFinding(const Room& room, const RulesInForce& rules) {
    Finding finding{FindingKind::VentOpening};
    bool asked = false;
    for (const auto& appliance : room.appliances) {
        if (!isFlueless(appliance) || !appliance.kind) {
            continue;
        }
        asked = true;
        const auto rule = *appliance.kind == ApplianceKind::Cooker          ? Rule::VentCookerSmall
                          : *appliance.kind == ApplianceKind::WaterHeater   ? Rule::VentWaterHeaterSmall
                          : *appliance.kind == ApplianceKind::CabinetHeater ? Rule::VentCabinetLeast
                          : isFluelessHeater(appliance)                     ? Rule::VentHeaterBase
                                                                            : Rule::VentDryer;
        const auto* entry = rules.find(rule);
        if (entry != nullptr) {
            rulebook::restOn(finding, *entry);
        }
    }
    if (!asked) {
        return std::nullopt;
    }
    finding.limit.reset();  // the row asks for an opening; its area is another finding's
    const bool known =
        !finding.limits.empty() && std::all_of(finding.limits.begin(), finding.limits.end(),
                                               [](const Entry& entry) { return entry.isKnown(); });
    if (!room.opensToOutside) {
        rulebook::concludeOpen(finding, {Say::VentOpeningUnknown});
    } else if (!known) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
    } else if (*room.opensToOutside) {
        rulebook::concludeWithin(finding, {Say::VentOpeningThere});
    } else {
        rulebook::concludeBeyond(finding, leastKnown(finding.limits), {Say::VentOpeningMissing});
    }
    return finding;
}

std::optional<Finding> scopeFinding(const std::vector<Appliance>& appliances, const RulesInForce& rules) {
    NetPower total;
    bool allSaid = !appliances.empty();
    for (const auto& appliance : appliances) {
        const auto input = netInputOf(appliance.input);
        allSaid = allSaid && input.has_value();
        total = total + input.value_or(NetPower());
    }
    Finding finding{FindingKind::VentScope};
    finding.measured = figureOf(total);
    const auto* entry = rules.find(Rule::VentScopeInput);
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    if (!figure) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    const double measured = total.in(quantity::powerUnit(figure->unit));
    rulebook::judgeAgainst(finding, entry, {measured, 0.0},
                           {Say::VentWithinScope,
                            Say::VentNearScope,
                            Say::VentBeyondScope,
                            {figureOf(total), limitFigure(*entry)}});
    if (finding.outcome == Outcome::Fail) {
        finding.outcome = Outcome::NoVerdict;  // another standard judges, not: it is wrong
    }
    if (!allSaid && !rulebook::says(finding, Say::VentBeyondScope)) {
        return std::nullopt;
    }
    return finding;
}

namespace {

/// Volume or heat input of one kind of appliance against one rule of where it is allowed.
class Allowance {
  public:
    Allowance(const Room& room, const RulesInForce& rules) : m_room(room), m_rules(rules) {}
    std::vector<Finding> take();

  private:
    void volumeAtLeast(Rule rule);
    void inputAtMost(Rule rule, const Appliance& appliance);
    void heatDensity(Rule inRoom, Rule inInternal);
    std::optional<NetPower> fluelessHeat() const;
    void open(Say say) { m_findings.push_back(rulebook::noVerdict(FindingKind::VentAllowed, {say})); }

    const Room& m_room;
    const RulesInForce& m_rules;
    std::vector<Finding> m_findings;
};

void Allowance::volumeAtLeast(Rule rule) {
    const auto* entry = m_rules.find(rule);
    const auto least = entry == nullptr ? std::nullopt : rulebook::volumeOf(*entry);
    if (!m_room.volume || !least) {
        open(m_room.volume.unreadable ? Say::ReadingUnusable
             : !m_room.volume         ? Say::VentVolumeMissing
                                      : Say::LimitMissing);
        return;
    }
    Finding finding{FindingKind::VentAllowed};
    finding.measured = figureOf(*m_room.volume);
    const auto unit = quantity::volumeUnit(limitFigure(*entry).unit);
    const quantity::Uncertain measured{m_room.volume->in(unit),
                                       m_room.volumeUncertainty.value_or(Volume()).in(unit)};
    rulebook::judgeAgainst(finding, entry, measured,
                           {Say::VentRoomLargeEnough,
                            Say::VentRoomNear,
                            Say::VentRoomTooSmall,
                            {figureOf(*m_room.volume), limitFigure(*entry)}});
    m_findings.push_back(std::move(finding));
}

void Allowance::inputAtMost(Rule rule, const Appliance& appliance) {
    const auto input = netInputOf(appliance.input);
    const auto* entry = m_rules.known(rule);
    if (!input || entry == nullptr) {
        open(entry == nullptr ? Say::LimitMissing : Say::VentInputMissing);
        return;
    }
    Finding finding{FindingKind::VentAllowed};
    finding.measured = figureOf(*input);
    const auto limit = limitFigure(*entry);
    rulebook::judgeAgainst(
        finding, entry, {input->in(quantity::powerUnit(limit.unit)), 0.0},
        {Say::VentInputAllowed, Say::VentInputNear, Say::VentInputTooLarge, {figureOf(*input), limit}});
    m_findings.push_back(std::move(finding));
}

/// All heaters without a flue together: each of them heats and uses the same air.
std::optional<NetPower> Allowance::fluelessHeat() const {
    NetPower total;
    for (const auto& appliance : m_room.appliances) {
        if (isFluelessHeater(appliance) || appliance.kind == ApplianceKind::CabinetHeater) {
            const auto input = netInputOf(appliance.input);
            if (!input) {
                return std::nullopt;
            }
            total = total + *input;
        }
    }
    return total;
}

void Allowance::heatDensity(Rule inRoom, Rule inInternal) {
    const auto input = fluelessHeat();
    const auto* entry = m_rules.known(m_room.internalSpace == true ? inInternal : inRoom);
    const auto most = entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
    if (!input || !m_room.volume || *m_room.volume <= Volume() || !m_room.internalSpace || !most) {
        open(!input                  ? Say::VentInputMissing
             : !m_room.volume        ? Say::VentVolumeMissing
             : !m_room.internalSpace ? Say::VentInternalMissing
             : !most                 ? Say::LimitMissing
                                     : Say::ReadingUnusable);
        return;
    }
    Finding finding{FindingKind::VentAllowed};
    const quantity::Uncertain watts{input->in(kWatt), 0.0};
    const quantity::Uncertain volume{m_room.volume->in(kCubicMetre),
                                     m_room.volumeUncertainty.value_or(Volume()).in(kCubicMetre)};
    const NetPower allowed(*most * volume.value, kWatt);
    finding.measured = figureOf(*input);
    rulebook::judgeAgainst(finding, entry, watts / volume,
                           {Say::VentInputAllowed,
                            Say::VentInputNear,
                            Say::VentInputTooLarge,
                            {figureOf(*input), figureOf(allowed)}});
    finding.limit = figureOf(allowed);
    m_findings.push_back(std::move(finding));
}

std::vector<Finding> Allowance::take() {
    if (anyOf(m_room, ApplianceKind::Cooker)) {
        if (!m_room.bedSitting) {
            open(Say::VentBedSitUnknown);
        } else if (*m_room.bedSitting) {
            volumeAtLeast(Rule::VentCookerBedSit);
        }
    }
    if (anyOf(m_room, ApplianceKind::WaterHeater)) {
        volumeAtLeast(Rule::VentWaterHeaterVolumeLeast);
    }
    for (const auto& appliance : m_room.appliances) {
        if (appliance.kind == ApplianceKind::WaterHeater && isFlueless(appliance)) {
            inputAtMost(Rule::VentWaterHeaterInputMost, appliance);
        }
        if (appliance.kind == ApplianceKind::DecorativeFire) {
            inputAtMost(Rule::VentDecorativeInputMost, appliance);
        }
    }
    if (std::any_of(m_room.appliances.begin(), m_room.appliances.end(), isFluelessHeater)) {
        heatDensity(Rule::VentHeaterWattsRoom, Rule::VentHeaterWattsInternal);
    }
    if (anyOf(m_room, ApplianceKind::CabinetHeater)) {
        heatDensity(Rule::VentCabinetWattsRoom, Rule::VentCabinetWattsInternal);
        volumeAtLeast(Rule::VentCabinetVolumeLeast);
    }
    return std::move(m_findings);
}

/// Advice of cooker makers: it never fails anything, but less than advised is looked at again.
std::optional<Finding> basementFinding(const Room& room, const RulesInForce& rules) {
    if (room.basement != true || !anyOf(room, ApplianceKind::Cooker)) {
        return std::nullopt;
    }
    KnownRules known(rules);
    const auto advised = known.area(Rule::VentCookerBasement);
    Finding finding{FindingKind::VentBasement};
    const auto counted = room.vents ? countVents(*room.vents, known, finding.notes)
                                    : Counted{std::nullopt, {{Say::VentVentsMissing}}};
    if (!advised || !counted.there) {
        concludeLacking(finding, advised ? counted.missing : std::vector<Sentence>{{Say::LimitMissing}});
        return finding;
    }
    judgeArea(finding, known.entries(), *advised, *counted.there);
    const std::vector<Argument> arguments{*finding.measured, figureOf(*advised)};
    if (finding.outcome == Outcome::Fail) {
        finding.outcome = Outcome::LookAgain;
        finding.why = {Say::VentBasementAdvised, arguments};
    } else if (finding.why.say == Say::VentEnough) {
        finding.why = {Say::VentBasementEnough, arguments};
    }
    return finding;
}

}  // namespace

std::vector<Finding> allowedFindings(const Room& room, const RulesInForce& rules) {
    return Allowance(room, rules).take();
}

std::vector<Finding> ventilation(const Room& room, const RulesInForce& rules) {
    std::vector<Finding> findings;
    const auto scope = scopeFinding(room.appliances, rules);
    if (scope) {
        findings.push_back(*scope);
    }
    // Beyond its scope the domestic standard says nothing of areas.
    const bool within = !scope || !rulebook::says(*scope, Say::VentBeyondScope);
    if (within) {
        findings.push_back(freeAreaFinding(room, rules));
    }
    if (within && anyOf(room, ApplianceKind::CabinetHeater)) {
        const auto need = roomNeed(room, rules);
        // The maker's own figure of a cabinet heater says nothing of levels.
        if (!need.missing.empty() || need.high > quantity::Area()) {
            findings.push_back(levelFinding(FindingKind::VentHighLevel, VentLevel::High, room, need, rules));
            findings.push_back(levelFinding(FindingKind::VentLowLevel, VentLevel::Low, room, need, rules));
        }
    }
    if (auto opening = openingFinding(room, rules)) {
        findings.push_back(std::move(*opening));
    }
    auto allowed = allowedFindings(room, rules);
    std::move(allowed.begin(), allowed.end(), std::back_inserter(findings));
    if (room.vents && !room.vents->empty()) {
        findings.push_back(ventState(*room.vents));
    }
    if (auto basement = basementFinding(room, rules)) {
        findings.push_back(std::move(*basement));
    }
    return findings;
}

}  // namespace hearth::air
