// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/purge.h"

#include "core/pipework/demand.h"
#include "core/pipework/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace hearth::pipework {

using quantity::Duration;
using quantity::Flow;
using quantity::Volume;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

struct SizeOfDn {
    double dn;
    Rule rule;
};
constexpr std::array kPurgeSizes{
    SizeOfDn{20, Rule::PurgeFlow20},   SizeOfDn{25, Rule::PurgeFlow25},   SizeOfDn{32, Rule::PurgeFlow32},
    SizeOfDn{40, Rule::PurgeFlow40},   SizeOfDn{50, Rule::PurgeFlow50},   SizeOfDn{65, Rule::PurgeFlow65},
    SizeOfDn{80, Rule::PurgeFlow80},   SizeOfDn{100, Rule::PurgeFlow100}, SizeOfDn{125, Rule::PurgeFlow125},
    SizeOfDn{150, Rule::PurgeFlow150},
};

bool isSteel(TubeFamily family) {
    return family == TubeFamily::SteelMedium || family == TubeFamily::SteelHeavy;
}

/// The meter's part of the purge volume; nothing while it is not known.
std::optional<Volume> meterPurge(const LargePurgeInput& input, const RulesInForce& rules,
                                 LargePurgeNeed& need) {
    const bool without =
        !input.meterPurged || (input.meter != nullptr && input.meter->kind == MeterKind::None);
    if (without) {
        return Volume{};
    }
    const Entry* cycles = rules.find(Rule::PurgeMeterCycles);
    if (cycles != nullptr) {
        need.entries.push_back(*cycles);
    }
    std::optional<Volume> cyclic;
    if (input.plateCyclic && *input.plateCyclic > Volume{}) {
        cyclic = *input.plateCyclic;
    } else if (!input.plateCyclic.isEntered() && input.meter != nullptr) {
        const auto rule = cyclicVolumeRule(*input.meter);
        const Entry* entry = rule ? rules.known(*rule) : nullptr;
        if (entry != nullptr) {
            cyclic = rulebook::volumeOf(*entry);
            need.cyclicFromBook = cyclic;
            need.entries.push_back(*entry);
        }
    }
    need.cyclicMissing = !cyclic;
    const auto times = cycles == nullptr ? std::nullopt : rulebook::factorOf(*cycles);
    return cyclic && times ? std::optional(*cyclic * *times) : std::nullopt;
}

bool allKnown(const std::vector<Entry>& entries) {
    return !entries.empty() &&
           std::all_of(entries.begin(), entries.end(), [](const Entry& entry) { return entry.isKnown(); });
}

void concludePassed(Finding& finding, const LargePurgeNeed& need, const LargePurgeInput& input) {
    const auto passed = *input.passed;
    const std::vector<rulebook::Argument> arguments{figureOf(passed), figureOf(*need.volume)};
    const double measured = passed.in(quantity::kCubicMetre);
    const double least = need.volume->in(quantity::kCubicMetre);
    if (!rulebook::holds(measured, rulebook::Comparison::AtLeast, least)) {
        concludeBeyond(finding, Entry(finding.limits.front()), {Say::PurgeShort, arguments});
    } else {
        concludeWithin(finding, {Say::PurgeEnough, arguments});
    }
}

void concludeFlow(Finding& finding, Flow least, const LargePurgeInput& input) {
    constexpr auto kUnit = quantity::kCubicMetrePerHour;
    const std::vector<rulebook::Argument> arguments{*finding.measured, *finding.limit};
    switch (rulebook::standing({input.flow->in(kUnit), input.flowUncertainty.in(kUnit)},
                               rulebook::Comparison::AtLeast, least.in(kUnit))) {
        case rulebook::Standing::Within:
            concludeWithin(finding, {Say::PurgeFlowEnough, arguments});
            break;
        case rulebook::Standing::Near:
            concludeAtLimit(finding, {Say::PurgeFlowNear, arguments});
            break;
        case rulebook::Standing::Beyond:
            concludeBeyond(finding, Entry(finding.limits.front()), {Say::PurgeFlowLow, arguments});
            break;
    }
}

}  // namespace

std::optional<Duration> purgeTime(Volume volume, Flow flow) {
    if (!(volume >= Volume{}) || !(flow > Flow{})) {
        return std::nullopt;
    }
    return Duration(volume.in(quantity::kCubicMetre) / flow.in(quantity::kCubicMetrePerSecond),
                    quantity::kSecond);
}

std::optional<Duration> purgeTimeThroughBurner(Volume volume, quantity::GrossPower input,
                                               quantity::GrossHeatValue heatValue) {
    const auto flow = demandFlow(input, heatValue);
    return flow ? purgeTime(volume, *flow) : std::nullopt;
}

std::optional<Flow> flowAtSpeed(double metresPerSecond, quantity::Length bore) {
    const double metres = bore.in(quantity::kMetre);
    if (!(metresPerSecond > 0.0) || !(metres > 0.0)) {
        return std::nullopt;
    }
    return Flow(metresPerSecond * std::numbers::pi / 4.0 * metres * metres, quantity::kCubicMetrePerSecond);
}

std::optional<Rule> cyclicVolumeRule(const Meter& meter) {
    if (meter.kind != MeterKind::Diaphragm) {
        return std::nullopt;
    }
    struct Badge {
        double badge;
        Rule rule;
    };
    constexpr Badge kBadges[] = {
        {6, Rule::CyclicVolumeU6},     {16, Rule::CyclicVolumeU16}, {25, Rule::CyclicVolumeU25},
        {40, Rule::CyclicVolumeU40},   {65, Rule::CyclicVolumeU65}, {100, Rule::CyclicVolumeU100},
        {160, Rule::CyclicVolumeU160},
    };
    const auto* found = std::find_if(std::begin(kBadges), std::end(kBadges),
                                     [&](const Badge& row) { return row.badge == meter.badge; });
    return found == std::end(kBadges) ? std::nullopt : std::optional(found->rule);
}

void takeLargestPipe(LargePurgeInput& input, std::span<const SectionInput> sections) {
    input.family.reset();
    input.largestNominal = 0.0;
    input.largestBore = 0.0;
    for (const auto& section : sections) {
        if (!section.underTest) {
            continue;
        }
        if (section.tube == nullptr || !section.tube->hasDimensions()) {
            input.family.reset();
            return;
        }
        if (section.tube->bore() > input.largestBore) {
            input.family = section.tube->family;
            input.largestNominal = section.tube->nominal;
            input.largestBore = section.tube->bore();
        }
    }
}

LargePurgeNeed largePurgeNeed(const LargePurgeInput& input, const RulesInForce& rules) {
    LargePurgeNeed need;
    const Entry* factor = rules.find(Rule::PurgePipeFactor);
    if (factor != nullptr) {
        need.entries.push_back(*factor);
    }
    const auto meter = meterPurge(input, rules, need);
    const auto times = factor == nullptr ? std::nullopt : rulebook::factorOf(*factor);
    if (meter && times && input.volume.pipes && input.volume.fittings) {
        need.volume = (*input.volume.pipes + *input.volume.fittings) * *times + *meter;
    }
    return need;
}

LeastPurgeFlow leastPurgeFlow(const LargePurgeInput& input, const RulesInForce& rules) {
    LeastPurgeFlow least;
    if (!input.family || input.largestNominal <= 0.0 || input.largestBore <= 0.0) {
        return least;
    }
    const bool steel = isSteel(*input.family);
    const double size = steel ? input.largestNominal : input.largestBore;
    if (size > kPurgeSizes.back().dn) {
        return least;
    }
    least.sizeKnown = true;
    const SizeOfDn* row = nullptr;
    for (const auto& each : kPurgeSizes) {
        row = each.dn <= size ? &each : row;
    }
    const Entry* listed = row == nullptr ? nullptr : rules.find(row->rule);
    if (listed != nullptr) {
        least.flow = rulebook::flowOf(*listed);
        least.entries.push_back(*listed);
    }
    const bool exact = steel && row != nullptr && row->dn == size;
    const Entry* speed = exact && listed != nullptr ? nullptr : rules.find(Rule::PurgeSpeedLeast);
    if (speed == nullptr) {
        return least;
    }
    least.entries.push_back(*speed);
    const auto metresPerSecond = rulebook::factorOf(*speed);
    const quantity::Length bore(input.largestBore, quantity::kMillimetre);
    const auto flow = metresPerSecond ? flowAtSpeed(*metresPerSecond, bore) : std::nullopt;
    if (flow && (!least.flow || *flow > *least.flow)) {
        least.flow = flow;
        std::rotate(least.entries.begin(), least.entries.end() - 1, least.entries.end());
    }
    return least;
}

Finding judgeLargePurgeVolume(const LargePurgeInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::PurgeVolumeLarge};
    const auto need = largePurgeNeed(input, rules);
    for (const auto& entry : need.entries) {
        restOn(finding, entry);
    }
    finding.limit = need.volume ? std::optional(figureOf(*need.volume)) : std::nullopt;
    finding.comparison = rulebook::Comparison::AtLeast;
    if (input.passed) {
        finding.measured = figureOf(*input.passed);
    }
    const auto absent = rulebook::absence(input.passed);
    if (!allKnown(need.entries)) {
        concludeOpen(finding, {Say::LimitMissing});
    } else if (need.cyclicMissing) {
        concludeOpen(finding, {Say::PurgeCyclicUnknown});
    } else if (!need.volume) {
        concludeOpen(finding, {Say::VolumeUnknown});
    } else if (absent) {
        concludeOpen(finding, *absent);
    } else {
        concludePassed(finding, need, input);
    }
    if (need.volume) {
        finding.notes.push_back({Say::PurgeVolumeNeeded, {figureOf(*need.volume)}});
    }
    if (need.cyclicFromBook) {
        finding.notes.push_back({Say::PurgeCyclicFromBook, {figureOf(*need.cyclicFromBook)}});
    }
    return finding;
}

Finding judgePurgeFlow(const LargePurgeInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::PurgeFlow};
    const auto least = leastPurgeFlow(input, rules);
    for (const auto& entry : least.entries) {
        restOn(finding, entry);
    }
    finding.limit = least.flow ? std::optional(figureOf(*least.flow)) : std::nullopt;
    finding.comparison = rulebook::Comparison::AtLeast;
    const auto absent = rulebook::absence(input.flow);
    if (input.flow) {
        finding.measured = figureOf(*input.flow);
    }
    if (!least.sizeKnown) {
        concludeOpen(finding, {Say::PurgeSizeUnknown});
    } else if (!least.flow || !allKnown(least.entries)) {
        concludeOpen(finding, {Say::LimitMissing});
    } else if (absent) {
        concludeOpen(finding, *absent);
    } else {
        concludeFlow(finding, *least.flow, input);
    }
    const auto need = largePurgeNeed(input, rules).volume;
    if (const auto time = need && input.flow ? purgeTime(*need, *input.flow) : std::nullopt) {
        finding.notes.push_back({Say::PurgeTimeNeeded, {figureOf(*time), *finding.measured}});
    }
    return finding;
}

Finding judgePurgeEnd(const LargePurgeInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::PurgeEnd};
    const Entry* least = rules.find(Rule::PurgeEndShare);
    if (input.endGas) {
        finding.measured = figureOf(*input.endGas);
    }
    if (const auto absent = rulebook::absence(input.endGas)) {
        if (least != nullptr) {
            restOn(finding, *least);
        }
        concludeOpen(finding, *absent);
        return finding;
    }
    const auto figure = least == nullptr ? std::nullopt : rulebook::figureOf(*least);
    const auto unit = quantity::shareUnit(figure ? figure->unit : quantity::UnitCode::Percent);
    rulebook::judgeAgainst(finding, least, {input.endGas->in(unit), input.endUncertainty.in(unit)},
                           {Say::PurgeEndReached,
                            Say::PurgeEndNear,
                            Say::PurgeEndShort,
                            {*finding.measured, figure.value_or(quantity::Figure{})}});
    return finding;
}

}  // namespace hearth::pipework
