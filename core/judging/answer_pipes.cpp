// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/fuel.h"
#include "core/judging/asking.h"
#include "core/judging/pipes.h"
#include "core/judging/worked_figures.h"
#include "core/pipework/demand.h"
#include "core/pipework/figures.h"
#include "core/pipework/route.h"
#include "core/pipework/sizing.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"

namespace hearth::judging {

using pipework::FlowBasis;
using reg::Item;
namespace choice = reg::choice;

namespace {

constexpr std::string_view kSmoothLaw = "smooth-pipe law of IGEM/TD/3 and IGEM/UP/2, from memory";

/// What hangs at the end of a section; the design demand from its gross input by the gas's calorific value.
std::optional<pipework::Demand> demandOf(const Readings& row, const std::optional<gas::Fuel>& fuel) {
    const auto input = row.power<quantity::GrossPower>(Item::SectionDemand);
    const auto measured = row.flow(Item::SectionMeasured);
    if (!input && !measured) {
        return std::nullopt;
    }
    pipework::Demand demand;
    if (input && fuel) {
        demand.design = pipework::demandFlow(input->value, fuel->gross);
    }
    if (measured) {
        demand.measured = measured->value;
        demand.measuredUncertainty = flowUncertainty(measured->digit);
    }
    return demand;
}

pipework::TreeSection sectionOf(const Readings& row, const std::optional<gas::Fuel>& fuel) {
    pipework::TreeSection section;
    section.name = std::string(row.text(Item::SectionName));
    section.tube = pipework::tubeByCode(row.code(Item::SectionTube));
    if (const auto length = row.length(Item::SectionLength)) {
        section.length = length->value;
        section.lengthUncertainty = lengthUncertainty(length->digit);
    }
    const auto after = row.count(Item::SectionAfter);
    if (after && *after > 0) {
        section.after = static_cast<std::size_t>(*after - 1);
    }
    // What can't be read is no number of fittings: a negative one makes the section's drop unknown.
    const auto count = [&](Item item) {
        const auto number = row.count(item);
        return number.unreadable ? -1 : number ? *number : 0;
    };
    section.fittings = {count(Item::SectionElbows), count(Item::SectionBends), count(Item::SectionBends45),
                        count(Item::SectionTees)};
    if (const auto typed = row.length(Item::SectionFittings)) {
        section.typedFittings = typed->value;
    }
    section.underTest = row.yesNo(Item::SectionUnderTest).value_or(true);
    section.demand = demandOf(row, fuel);
    return section;
}

std::optional<pipework::Tree> treeAsked(Asking& asking) {
    std::optional<gas::Fuel> fuel;
    gas::FuelInput known;
    if (const auto billed = asking.once.heatValue<quantity::GrossHeatValue>(Item::GasHeatValue)) {
        known.gross = billed->value;
    }
    fuel = asking.got(gas::fuelOf(asking.inForce, known));
    std::vector<pipework::TreeSection> sections;
    for (int row = 0; row < asking.sheet.rows(Group::Section); ++row) {
        sections.push_back(sectionOf(asking.sheet.readings(Group::Section, row), fuel));
    }
    return sections.empty() ? std::nullopt : asking.got(pipework::Tree::make(std::move(sections)));
}

void showVolumes(Asking& asking, const pipework::Tree& tree) {
    pipework::VolumeInput around;
    around.meter = pipework::meterByCode(asking.once.code(Item::PurgeMeter));
    if (const auto* share = asking.book.find({rulebook::Rule::FittingsShare})) {
        around.fittingsShare = rulebook::factorOf(*share).value_or(around.fittingsShare);
    }
    constexpr std::string_view kGuide = "certification body's pocket guide Gas 2 (IGEM/UP/1B)";
    if (const auto whole = pipework::volumeOfAll(tree, around); whole.total) {
        asking.work(Derived::VolumeWhole, pipework::figureOf(*whole.total), kGuide);
    }
    if (const auto tested = pipework::volumeUnderTest(tree, around); tested.total) {
        asking.work(Derived::VolumeTested, pipework::figureOf(*tested.total), kGuide);
    }
}

void showWorst(Asking& asking, const std::optional<pipework::DropReport>& report, Derived what) {
    if (report && report->worst) {
        const auto& worst = report->routes[*report->worst];
        asking.work(what, pipework::figureOf(*worst.drop), kSmoothLaw,
                    pipework::figureOf(quantity::kCoverage * worst.uncertainty));
    }
}

void judgeDrops(Asking& asking, const pipework::Tree& tree, const pipework::DropConditions& conditions) {
    auto worked = workPipes(tree, conditions, asking.inForce);
    for (auto& route : worked.routes) {
        asking.find(std::move(route.finding),
                    {route.basis == FlowBasis::Design ? Item::SectionDemand : Item::SectionMeasured,
                     Item::SectionTube, Item::SectionLength},
                    Group::Section, static_cast<int>(route.end));
    }
    showWorst(asking, worked.design, Derived::DropWorst);
    showWorst(asking, worked.measured, Derived::DropMeasured);
}

void adviseSizes(Asking& asking, const pipework::Tree& tree, const pipework::DropConditions& conditions) {
    const auto* entry = asking.inForce.known(rulebook::Rule::PipeDropMost);
    const auto limit = entry == nullptr ? std::nullopt : rulebook::pressureChangeOf(*entry);
    if (!limit) {
        return;
    }
    const auto sizing = pipework::enlarge(tree, FlowBasis::Design, conditions, *limit);
    for (auto& advice : pipework::sizingAdvice(tree, sizing)) {
        asking.answer.notes.push_back(std::move(advice));
    }
    if (sizing.outcome == pipework::SizingOutcome::Enlarged) {
        asking.work(
            Derived::CopperMore, shown(sizing.extraMass, 2),
            sizing.leastProved ? "least of all combinations" : "a good combination, not proved the least");
    }
}

}  // namespace

void answerPipes(Asking& asking) {
    const auto tree = treeAsked(asking);
    const auto edition = asking.once.code(Item::PipeEdition) == choice::kBefore2015
                             ? pipework::FittingsEdition::Before2015
                             : pipework::FittingsEdition::From2015;
    const auto conditions = pipework::dropConditions(asking.inForce, edition);
    if (!conditions) {
        asking.find(pipework::dropGasUnknown(FlowBasis::Design), {Item::GasFamily});
    }
    if (!tree) {
        asking.find(
            rulebook::noVerdict(rulebook::FindingKind::PressureDropDesign, {rulebook::Say::ReadingMissing}),
            {Item::SectionTube}, Group::Section);
        return;
    }
    showVolumes(asking, *tree);
    if (!conditions) {
        return;
    }
    judgeDrops(asking, *tree, *conditions);
    adviseSizes(asking, *tree, *conditions);
}

}  // namespace hearth::judging
