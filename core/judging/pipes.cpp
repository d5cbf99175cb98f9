// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/pipes.h"

#include "core/gas/fuel.h"
#include "core/judging/timed_rate.h"
#include "core/judging/typed_numbers.h"
#include "core/pipework/demand.h"
#include "core/pipework/fittings_text.h"
#include "core/quantity/uncertain.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <utility>

namespace hearth::judging {

using pipework::FlowBasis;
using quantity::UnitFamily;
using reg::Item;
using rulebook::FindingKind;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

std::optional<quantity::Flow> designFlow(const reg::Appliance& appliance,
                                         const std::optional<gas::Fuel>& fuel) {
    const bool net = !appliance.netInput.text.empty();
    const auto& typed = net ? appliance.netInput : appliance.grossInput;
    const auto number = numberOf(typed.text, typed.unit, UnitFamily::Power);
    if (!number || !fuel || (net && !fuel->net)) {
        return std::nullopt;
    }
    const double value = number->value.toDouble();
    const auto unit = quantity::powerUnit(number->unit);
    return net ? pipework::demandFlow(quantity::NetPower(value, unit), *fuel->net)
               : pipework::demandFlow(quantity::GrossPower(value, unit), fuel->gross);
}

/// From the register's list and a visit's readings to a tree.
class PipesOfVisit {
  public:
    PipesOfVisit(const reg::VisitFile& file, const RulesInForce& rules) : m_file(file), m_rules(rules) {
        if (const auto fuel = gas::fuelOf(rules)) {
            m_fuel = *fuel;
        }
    }

    [[nodiscard]] Result<pipework::Tree> tree() const {
        std::vector<pipework::TreeSection> sections;
        sections.reserve(m_file.pipes.size());
        for (const auto& pipe : m_file.pipes) {
            sections.push_back(section(pipe, sections.size()));
            if (!pipe.afterText.empty()) {
                return fail(ErrorCode::PipeFeederMissing, {std::to_string(sections.size())});
            }
        }
        return pipework::Tree::make(std::move(sections));
    }

  private:
    [[nodiscard]] pipework::TreeSection section(const reg::PipeSection& pipe, std::size_t index) const {
        pipework::TreeSection section;
        section.name = std::to_string(index + 1);
        if (!pipe.leadsTo.empty()) {
            section.name += " (" + pipe.leadsTo + ")";
        }
        section.after = pipe.after ? std::optional(placeOf(*pipe.after)) : std::nullopt;
        section.tube = pipework::tubeByCode(pipe.tubeCode);
        if (const auto length = numberOf(pipe.length.text, pipe.length.unit, UnitFamily::Length)) {
            const auto unit = quantity::lengthUnit(length->unit);
            section.length = quantity::Length(length->value.toDouble(), unit);
            section.lengthUncertainty = lengthUncertainty(quantity::Length(length->value.lastDigit(), unit));
        }
        section.typedVolume = volumeOf(pipe.volume).value;
        section.underTest = pipe.underTest;
        const auto fittings = pipework::readFittings(pipe.fittings);
        section.fittingsSaid = fittings.said;
        section.fittings = fittings.counts;
        section.typedFittings = fittings.typed;
        section.demand = demand(pipe);
        return section;
    }

    /// One past the end for a feeder that is not in the list, which is no tree then.
    [[nodiscard]] std::size_t placeOf(reg::PipeSectionId id) const {
        const auto found = std::find_if(m_file.pipes.begin(), m_file.pipes.end(),
                                        [&](const reg::PipeSection& pipe) { return pipe.id == id; });
        return static_cast<std::size_t>(found - m_file.pipes.begin());
    }

    [[nodiscard]] std::optional<pipework::Demand> demand(const reg::PipeSection& pipe) const {
        pipework::Demand demand;
        if (pipe.capped) {
            demand.design = quantity::Flow{};
            demand.measured = quantity::Flow{};
            return demand;
        }
        if (!pipe.appliance) {
            return std::nullopt;
        }
        const auto appliance =
            std::find_if(m_file.appliances.begin(), m_file.appliances.end(),
                         [&](const reg::Appliance& known) { return known.id == *pipe.appliance; });
        if (appliance == m_file.appliances.end()) {
            return demand;  // taken away since: its flow is not known
        }
        demand.design = designFlow(*appliance, m_fuel);
        const Readings readings(m_file, reg::subject(appliance->id));
        if (const auto timed = timedRate(readings, m_rules).judged.rate) {
            demand.measured = timed->value;
            demand.measuredUncertainty = timed->u;
        } else if (const auto typed = readings.flow(Item::GasRateRead)) {
            demand.measured = typed->value;
            demand.measuredUncertainty = flowUncertainty(typed->digit);
        }
        return demand;
    }

    const reg::VisitFile& m_file;
    const RulesInForce& m_rules;
    std::optional<gas::Fuel> m_fuel;
};

void judgeFlow(PipesWorked& worked, const pipework::Tree& tree, const pipework::DropReport& report,
               const pipework::DropConditions& conditions, const RulesInForce& rules) {
    auto findings = pipework::judgeRoutes(tree, report, conditions, rules);
    for (std::size_t i = 0; i < findings.size(); ++i) {
        worked.routes.push_back({report.basis, report.routes.at(i).end, std::move(findings[i])});
    }
}

std::vector<Item> aboutPipes(FlowBasis basis) {
    return {basis == FlowBasis::Design ? Item::SectionDemand : Item::SectionMeasured, Item::SectionTube,
            Item::SectionLength};
}

/// Nobody has to time every appliance: what was not is no finding. And what keeps several drops from being
/// worked out, or one at both flows, is said once.
bool isOfUse(const RouteJudged& route, const std::vector<Judged>& before) {
    if (route.finding.outcome != rulebook::Outcome::NoVerdict) {
        return true;
    }
    const bool untimed = route.basis == FlowBasis::Measured && route.finding.why.say == Say::PipeFlowUnknown;
    return !untimed && std::none_of(before.begin(), before.end(), [&](const Judged& other) {
        return other.finding.why == route.finding.why;
    });
}

}  // namespace

quantity::Length lengthUncertainty(quantity::Length digit) {
    return quantity::Length::fromBase(quantity::rectangular(digit.base() / 2.0));
}

quantity::Flow flowUncertainty(quantity::Flow digit) {
    return quantity::Flow::fromBase(quantity::rectangular(digit.base() / 2.0));
}

PipesWorked workPipes(const pipework::Tree& tree, const pipework::DropConditions& conditions,
                      const RulesInForce& rules) {
    PipesWorked worked;
    worked.design = pipework::pressureDrops(tree, FlowBasis::Design, conditions);
    judgeFlow(worked, tree, *worked.design, conditions, rules);
    if (pipework::hasMeasuredFlow(tree)) {
        worked.measured = pipework::pressureDrops(tree, FlowBasis::Measured, conditions);
        judgeFlow(worked, tree, *worked.measured, conditions, rules);
    }
    return worked;
}

Result<pipework::Tree> treeOf(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    const RulesInForce rules(book, rulebook::Edition::General, file.installation.gas, file.visit.date);
    return PipesOfVisit(file, rules).tree();
}

VisitPipes visitPipes(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    VisitPipes pipes;
    pipes.isAsked = std::any_of(file.pipes.begin(), file.pipes.end(),
                                [](const reg::PipeSection& pipe) { return pipe.appliance.has_value(); });
    if (file.pipes.empty()) {
        return pipes;
    }
    const RulesInForce rules(book, rulebook::Edition::General, file.installation.gas, file.visit.date);
    if (auto tree = PipesOfVisit(file, rules).tree()) {
        pipes.tree = *std::move(tree);
    }
    pipes.isOrdered = pipes.tree.has_value();
    const auto conditions = pipework::dropConditions(rules, pipework::FittingsEdition::From2015);
    pipes.isGasKnown = conditions.has_value();
    if (pipes.tree && conditions) {
        pipes.worked = workPipes(*pipes.tree, *conditions, rules);
    }
    return pipes;
}

std::vector<Judged> judgePipes(const reg::VisitFile& file, const rulebook::RuleBook& book) {
    auto pipes = visitPipes(file, book);
    if (!pipes.isAsked) {
        return {};
    }
    const auto on = reg::subject(file.installation.id);
    if (!pipes.isOrdered) {
        return {{rulebook::noVerdict(FindingKind::PressureDropDesign, {Say::PipeOrderUnclear}), on,
                 aboutPipes(FlowBasis::Design)}};
    }
    if (!pipes.isGasKnown) {
        return {{pipework::dropGasUnknown(FlowBasis::Design), on, aboutPipes(FlowBasis::Design)}};
    }
    std::vector<Judged> judged;
    for (auto& route : pipes.worked.routes) {
        if (isOfUse(route, judged)) {
            judged.push_back({std::move(route.finding), on, aboutPipes(route.basis)});
        }
    }
    return judged;
}

}  // namespace hearth::judging
