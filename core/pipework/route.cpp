// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/route.h"

#include "core/pipework/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <cmath>

namespace hearth::pipework {

using quantity::Flow;
using quantity::kMillibar;
using quantity::Length;
using quantity::PressureChange;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

std::optional<Flow> demandAt(const TreeSection& section, FlowBasis basis) {
    const auto& demand = *section.demand;
    const auto& flow = basis == FlowBasis::Design ? demand.design : demand.measured;
    return flow && *flow >= Flow{} ? flow : std::nullopt;
}

Flow demandUncertainty(const TreeSection& section, FlowBasis basis) {
    if (!section.demand) {
        return {};
    }
    return basis == FlowBasis::Design ? section.demand->designUncertainty
                                      : section.demand->measuredUncertainty;
}

PipeRun runOf(const TreeSection& section, Length length, const DropConditions& conditions) {
    return {Length(section.tube->bore(), quantity::kMillimetre), length, conditions.gas,
            conditions.efficiency};
}

/// What sections pass down to those that they feed, for the uncertainty of routes.
struct RouteSums {
    double drop = 0.0;            // Pa, from the meter
    double slope = 0.0;           // Pa per m3/s: how the drop so far rises with a flow through all of it
    double lengthVariance = 0.0;  // Pa2
    double branchVariance = 0.0;  // Pa2: by demands that left the route above
    std::optional<std::size_t> lacking;
    std::optional<std::size_t> unsaid;
};

/// How the drop of a section rises with its flow, Pa per m3/s, by a small step upward.
double slopeOf(const TreeSection& section, const SectionDrop& at, const DropConditions& conditions) {
    const Flow more = *at.flow * 1.0001 + Flow(1e-9, quantity::kCubicMetrePerSecond);
    const auto above = pressureDrop(more, runOf(section, *at.reckoned, conditions));
    return above ? (*above - *at.drop).base() / (more - *at.flow).base() : 0.0;
}

/// Sum of the squares of the demands' uncertainties at and below each section, (m3/s)2.
std::vector<double> demandVariances(const Tree& tree, FlowBasis basis) {
    std::vector<double> below(tree.sections().size(), 0.0);
    const auto order = tree.feedersFirst();
    for (auto it = order.rbegin(); it != order.rend(); ++it) {
        const auto& section = tree.sections()[*it];
        const double u = demandUncertainty(section, basis).base();
        below[*it] += u * u;
        if (section.after) {
            below[*section.after] += below[*it];
        }
    }
    return below;
}

/// The sums at a section's end, from those at the end of what feeds it.
RouteSums sumsAfter(const RouteSums& before, double branchedOff, std::size_t index,
                    const TreeSection& section, const SectionDrop& here, const DropConditions& conditions,
                    bool uncertainFlow) {
    RouteSums sums = before;
    if (!sums.unsaid && here.isLeast) {
        sums.unsaid = index;
    }
    if (sums.lacking || !here.drop) {
        sums.lacking = sums.lacking ? sums.lacking : index;
        return sums;
    }
    sums.branchVariance += branchedOff * before.slope * before.slope;
    sums.drop += here.drop->base();
    if (uncertainFlow) {
        sums.slope += slopeOf(section, here, conditions);
    }
    const double length = here.reckoned->base();
    if (length > 0.0) {
        const double u = here.drop->base() * section.lengthUncertainty.base() / length;
        sums.lengthVariance += u * u;
    }
    return sums;
}

void addRoutes(const Tree& tree, const std::vector<RouteSums>& sums, const std::vector<double>& variances,
               DropReport& report) {
    for (std::size_t i = 0; i < sums.size(); ++i) {
        if (!tree.sections()[i].demand && !tree.isEnd(i)) {
            continue;
        }
        RouteDrop route;
        route.end = i;
        route.lacking = sums[i].lacking;
        route.unsaid = sums[i].unsaid;
        if (!route.lacking) {
            route.drop = PressureChange::fromBase(sums[i].drop);
            const double through = variances[i] * sums[i].slope * sums[i].slope;
            route.uncertainty = PressureChange::fromBase(
                std::sqrt(sums[i].lengthVariance + sums[i].branchVariance + through));
            if (!report.worst || *report.routes[*report.worst].drop < *route.drop) {
                report.worst = report.routes.size();
            }
        }
        report.routes.push_back(route);
    }
    report.complete = !report.routes.empty() &&
                      std::all_of(report.routes.begin(), report.routes.end(),
                                  [](const RouteDrop& route) { return route.drop && !route.unsaid; });
}

FindingKind kindOf(FlowBasis basis) {
    return basis == FlowBasis::Design ? FindingKind::PressureDropDesign : FindingKind::PressureDropMeasured;
}

Say sayOf(DropLack lack) {
    switch (lack) {
        case DropLack::Size:
            return Say::PipeSizeUnknown;
        case DropLack::Length:
            return Say::PipeLengthUnknown;
        case DropLack::Fitting:
            return Say::PipeFittingUnknown;
        case DropLack::OutsideLaw:
            return Say::PipeOutsideLaw;
        default:
            return Say::PipeFlowUnknown;
    }
}

/// The entries that a route was worked out with, each once, and whether a typed length was among them.
struct RouteGrounds {
    std::vector<const Entry*> entries;
    bool typed = false;
};

RouteGrounds groundsOf(const Tree& tree, std::size_t end, const DropConditions& conditions) {
    RouteGrounds grounds;
    const auto add = [&](const Entry* entry) {
        const auto& known = grounds.entries;
        if (entry != nullptr && std::find(known.begin(), known.end(), entry) == known.end()) {
            grounds.entries.push_back(entry);
        }
    };
    for (const auto section : tree.route(end)) {
        const auto fittings = fittingsLength(tree.sections()[section], conditions.fittings);
        grounds.typed = grounds.typed || fittings.typed;
        std::for_each(fittings.used.begin(), fittings.used.end(), add);
    }
    add(conditions.efficiencyEntry);
    return grounds;
}

/// The finding's limit is the first entry's: judgeAgainst() comes last, since the others weigh too.
void putLimitFirst(Finding& finding) {
    if (finding.limits.size() > 1) {
        std::rotate(finding.limits.begin(), finding.limits.end() - 1, finding.limits.end());
    }
    finding.limit = rulebook::figureOf(finding.limits.front());
    finding.comparison = finding.limits.front().comparison;
}

void noteRoute(Finding& finding, const Tree& tree, const DropReport& report, const RouteGrounds& grounds,
               std::size_t end, const DropConditions& conditions) {
    const auto route = tree.route(end);
    const auto most = std::max_element(route.begin(), route.end(), [&](std::size_t a, std::size_t b) {
        return *report.sections[a].drop < *report.sections[b].drop;
    });
    finding.notes.push_back(
        {Say::PipeWorstSection, {tree.nameOf(*most), figureOf(*report.sections[*most].drop)}});
    const bool fromBook =
        std::any_of(grounds.entries.begin(), grounds.entries.end(),
                    [&](const Entry* entry) { return entry != conditions.efficiencyEntry; });
    if (fromBook) {
        finding.notes.push_back(
            {Say::PipeFittingsBy, {std::string(fittingsStandard(conditions.fittings.edition()))}});
    }
    if (grounds.typed) {
        finding.notes.push_back({Say::PipeFittingsTyped});
    }
    if (conditions.efficiencyEntry == nullptr) {
        finding.notes.push_back({Say::PipeMarginTaken, {bareFigure(conditions.efficiency)}});
    }
}

/// Fittings only add: beyond the limit stays beyond, and nothing else can be said.
void judgeLeast(Finding& finding, const Tree& tree, const RouteDrop& route, const quantity::Figure& limit) {
    if (finding.why.say == Say::PipeDropBeyond) {
        finding.notes.push_back({Say::PipeFittingsUnsaid, {tree.nameOf(*route.unsaid)}});
        return;
    }
    finding.notes.clear();
    concludeOpen(finding, {Say::PipeDropLeast,
                           {*finding.measured, limit, tree.nameOf(*route.unsaid), tree.nameOf(route.end)}});
}

Finding judgeRoute(const Tree& tree, const DropReport& report, const RouteDrop& route,
                   const DropConditions& conditions, const RulesInForce& rules) {
    Finding finding{kindOf(report.basis)};
    const Entry* limit = rules.find(Rule::PipeDropMost);
    if (!route.drop) {
        if (limit != nullptr) {
            restOn(finding, *limit);
        }
        concludeOpen(finding, {sayOf(report.sections[*route.lacking].lack), {tree.nameOf(*route.lacking)}});
        return finding;
    }
    finding.measured = figureOf(*route.drop);
    const auto figure = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    if (!figure) {
        rulebook::judgeAgainst(finding, limit, {}, {});  // says that the limit is missing
        return finding;
    }
    const auto grounds = groundsOf(tree, route.end, conditions);
    for (const Entry* entry : grounds.entries) {
        restOn(finding, *entry);
    }
    const auto unit = quantity::pressureUnit(figure->unit);
    const quantity::Uncertain drop{route.drop->in(unit), route.uncertainty.in(unit)};
    rulebook::judgeAgainst(finding, *limit, drop,
                           {Say::PipeDropWithin,
                            Say::PipeDropNear,
                            Say::PipeDropBeyond,
                            {*finding.measured, *figure, figureOf(route.uncertainty * quantity::kCoverage),
                             tree.nameOf(route.end)}});
    putLimitFirst(finding);
    if (route.unsaid) {
        judgeLeast(finding, tree, route, *figure);
    }
    noteRoute(finding, tree, report, grounds, route.end, conditions);
    return finding;
}

}  // namespace

std::optional<DropConditions> dropConditions(const RulesInForce& rules, FittingsEdition edition,
                                             std::optional<FlowingGas> gas) {
    const auto flowing = gas ? gas : flowingGas(rules.gas());
    if (!flowing) {
        return std::nullopt;
    }
    DropConditions conditions{*flowing, kCautiousEfficiency, nullptr, FittingTable(edition, rules)};
    if (const Entry* entry = rules.known(Rule::PipeEfficiency)) {
        conditions.efficiency = rulebook::factorOf(*entry).value_or(kCautiousEfficiency);
        conditions.efficiencyEntry = entry;
    }
    return conditions;
}

std::vector<std::optional<Flow>> flowsBySection(const Tree& tree, FlowBasis basis) {
    const auto sections = tree.sections();
    std::vector<std::optional<Flow>> flows(sections.size(), Flow{});
    const auto order = tree.feedersFirst();
    for (auto it = order.rbegin(); it != order.rend(); ++it) {
        const auto& section = sections[*it];
        auto& flow = flows[*it];
        if (section.demand) {
            const auto drawn = demandAt(section, basis);
            flow = flow && drawn ? std::optional(*flow + *drawn) : std::nullopt;
        } else if (tree.isEnd(*it)) {
            flow = std::nullopt;
        }
        if (section.after) {
            auto& feeder = flows[*section.after];
            feeder = feeder && flow ? std::optional(*feeder + *flow) : std::nullopt;
        }
    }
    return flows;
}

SectionDrop sectionDrop(const TreeSection& section, std::optional<Flow> flow,
                        const DropConditions& conditions) {
    SectionDrop result;
    result.flow = flow;
    const auto lacking = [&result](DropLack lack) {
        result.lack = lack;
        return result;
    };
    if (section.tube == nullptr || !section.tube->hasDimensions()) {
        return lacking(DropLack::Size);
    }
    if (!section.length || *section.length < Length{}) {
        return lacking(DropLack::Length);
    }
    const auto fittings = fittingsLength(section, conditions.fittings);
    if (!fittings.length) {
        return lacking(DropLack::Fitting);
    }
    result.isLeast = !fittings.said;
    result.reckoned = *section.length + *fittings.length;
    if (!flow) {
        return lacking(DropLack::Flow);
    }
    const auto drop = pressureDrop(*flow, runOf(section, *result.reckoned, conditions));
    if (!drop) {
        return lacking(DropLack::OutsideLaw);
    }
    result.drop = *drop;
    return result;
}

DropReport pressureDrops(const Tree& tree, FlowBasis basis, const DropConditions& conditions) {
    const auto sections = tree.sections();
    const auto flows = flowsBySection(tree, basis);
    const auto variances = demandVariances(tree, basis);
    DropReport report;
    report.basis = basis;
    report.sections.resize(sections.size());
    std::vector<RouteSums> sums(sections.size());
    for (const auto i : tree.feedersFirst()) {
        const auto& section = sections[i];
        report.sections[i] = sectionDrop(section, flows[i], conditions);
        const bool first = !section.after.has_value();
        const double branchedOff = first ? 0.0 : variances[*section.after] - variances[i];
        sums[i] = sumsAfter(first ? RouteSums{} : sums[*section.after], branchedOff, i, section,
                            report.sections[i], conditions, variances[i] > 0.0);
    }
    addRoutes(tree, sums, variances, report);
    return report;
}

bool hasMeasuredFlow(const Tree& tree) {
    const auto sections = tree.sections();
    return std::any_of(sections.begin(), sections.end(), [](const TreeSection& section) {
        return section.demand && section.demand->measured && *section.demand->measured > Flow{};
    });
}

std::vector<Finding> judgeRoutes(const Tree& tree, const DropReport& report, const DropConditions& conditions,
                                 const RulesInForce& rules) {
    std::vector<Finding> findings;
    findings.reserve(report.routes.size());
    for (const auto& route : report.routes) {
        findings.push_back(judgeRoute(tree, report, route, conditions, rules));
    }
    return findings;
}

Finding dropGasUnknown(FlowBasis basis) {
    return rulebook::noVerdict(kindOf(basis), {Say::PipeGasUnknown});
}

}  // namespace hearth::pipework
