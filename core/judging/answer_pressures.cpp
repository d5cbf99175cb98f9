// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/pressures.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/conclude.h"
#include "core/tightness/restore.h"

namespace hearth::judging {

using burner::Load;
using burner::PressureRead;
using reg::Item;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

namespace {

/// Nought where it was not said, or can't be used: then it is not counted.
quantity::PressureChange gaugeAccuracy(const Readings& once) {
    const auto accuracy = once.pressure(Item::GaugeAccuracy);
    if (!accuracy || isUnclear(once, Item::GaugeAccuracy)) {
        return {};
    }
    return {accuracy->pressure.in(quantity::kMillibar), quantity::kMillibar};
}

rulebook::Given<PressureRead> pressureRead(const Readings& once, Item item) {
    const auto reading = once.pressure(item);
    if (!reading) {
        return reading.unreadable ? rulebook::Given<PressureRead>::unusable()
                                  : rulebook::Given<PressureRead>();
    }
    return PressureRead{reading->pressure, reading->digit, gaugeAccuracy(once)};
}

struct MakersPressures {
    std::optional<burner::MakersRange> range;
    bool isUnclear = false;
};

MakersPressures makersPressures(const Readings& once, Item least, Item most) {
    if (!once.isEntered(least) && !once.isEntered(most)) {
        return {};
    }
    const auto low = once.pressure(least);
    const auto high = once.pressure(most);
    if (!low || !high || low->pressure > high->pressure) {
        return {std::nullopt, true};
    }
    return {
        burner::MakersRange{low->pressure, high->pressure, std::string(once.text(Item::PressureMakerSource))},
        false};
}

std::optional<Load> loadSaid(const Readings& once) {
    return once.choice<Load>(Item::MeterLoad,
                             {{reg::choice::kLoadHigh, Load::High}, {reg::choice::kLoadLess, Load::Less}});
}

void judgeAtMeter(Asking& asking) {
    const auto& once = asking.once;
    if (const auto standing = once.pressure(Item::MeterStandingPressure); standing.isEntered()) {
        asking.find(byTheGas(asking, tightness::standingPressure(standing, asking.inForce)),
                    {Item::MeterStandingPressure, Item::GasFamily});
    }
    if (const auto working = once.pressure(Item::MeterWorkingPressure); working.isEntered()) {
        asking.find(byTheGas(asking, tightness::workingPressure(working, asking.inForce)),
                    {Item::MeterWorkingPressure, Item::GasFamily});
    }
    burner::MeterAverageInput average;
    average.average = pressureRead(once, Item::MeterAverage);
    if (!average.average.isEntered()) {
        return;
    }
    if (const auto over = once.duration(Item::MeterAverageTime)) {
        average.over = over->value;
    } else if (over.unreadable) {
        average.over = rulebook::Given<quantity::Duration>::unusable();
    }
    average.load = loadSaid(once);
    asking.find(byTheGas(asking, burner::meterAverage(average, asking.inForce)),
                {Item::MeterAverage, Item::MeterAverageTime, Item::MeterLoad, Item::GasFamily});
}

void judgeAtInlet(Asking& asking) {
    const auto& once = asking.once;
    burner::InletInput inlet;
    inlet.standing = pressureRead(once, Item::InletStanding);
    inlet.working = pressureRead(once, Item::InletPressure);
    if (!inlet.working.isEntered() && !inlet.standing.isEntered()) {
        return;
    }
    inlet.atFullRate = once.yesNo(Item::InletFullRate);
    const auto maker = makersPressures(once, Item::InletLeast, Item::InletMost);
    inlet.maker = maker.range;
    auto finding = burner::inletPressure(inlet, asking.inForce);
    if (maker.isUnclear) {
        finding = withoutMakers(std::move(finding));
    } else if (!maker.range) {
        finding = byTheGas(asking, std::move(finding));
    }
    asking.find(std::move(finding), {Item::InletPressure, Item::InletStanding, Item::InletFullRate,
                                     Item::InletLeast, Item::InletMost, Item::GasFamily});
}

void judgeAtBurner(Asking& asking) {
    const auto pressure = pressureRead(asking.once, Item::BurnerPressure);
    if (!pressure.isEntered()) {
        return;
    }
    const auto maker = makersPressures(asking.once, Item::BurnerLeast, Item::BurnerMost);
    auto finding = burner::burnerPressure(pressure, maker.range);
    asking.find(maker.isUnclear ? withoutMakers(std::move(finding)) : std::move(finding),
                {Item::BurnerPressure, Item::BurnerLeast, Item::BurnerMost});
}

/// The limit is for the largest flow: a fall within it at any less proves nothing, one beyond it does.
void weighLoad(Finding& finding, const Readings& once, const std::vector<rulebook::Argument>& arguments) {
    if (finding.outcome == Outcome::Fail || finding.outcome == Outcome::NoVerdict) {
        return;
    }
    const auto load = loadSaid(once);
    if (!load) {
        rulebook::concludeOpen(finding, {Say::InletLoadNotSaid});
    } else if (once.yesNo(Item::InletFullRate) != true) {
        rulebook::concludeOpen(finding, {Say::InletNotFull});
    } else if (load == Load::Less && finding.outcome == Outcome::Pass) {
        rulebook::concludeAtLimit(finding, {Say::InletDropAtLess, arguments});
    }
}

/// Two gauges may differ by their accuracies: what that is must be known.
void weighGauges(Finding& finding, const Readings& once) {
    const bool known =
        once.yesNo(Item::PressureSameGauge) == true || gaugeAccuracy(once) > quantity::PressureChange{};
    if (known || finding.outcome == Outcome::NoVerdict) {
        return;
    }
    finding.notes.insert(finding.notes.begin(), finding.why);
    rulebook::concludeAtLimit(finding, {Say::DropGaugesUnknown});
}

void judgeDrop(Asking& asking) {
    const auto& once = asking.once;
    const auto meter = pressureRead(once, Item::MeterWorkingPressure);
    const auto inlet = pressureRead(once, Item::InletPressure);
    if (!meter || !inlet) {
        return;
    }
    constexpr auto kUnit = quantity::UnitCode::Millibar;
    const auto drop = burner::pressureDrop(*meter, *inlet, once.yesNo(Item::PressureSameGauge) == true);
    const auto figure = shown(drop.value, 2, kUnit);
    const auto known = shown(quantity::expanded(drop), 2, kUnit);
    asking.work(Derived::DropToAppliance, figure, "meter less inlet", known);
    const auto* limit = asking.inForce.find(rulebook::Rule::PipeDropMost);
    const auto most = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    // The entry is in millibar, as drops are; a firm that typed another unit is not taken by its number.
    if (most && most->unit != kUnit) {
        limit = nullptr;
    }
    const std::vector<rulebook::Argument> arguments{figure, most.value_or(quantity::Figure{}), known};
    Finding finding{FindingKind::PressureDropMeasured};
    finding.measured = figure;
    rulebook::judgeAgainst(
        finding, limit, drop,
        {Say::DropToApplianceGood, Say::DropToApplianceNear, Say::DropToApplianceHigh, arguments});
    weighLoad(finding, once, arguments);
    weighGauges(finding, once);
    asking.find(byTheGas(asking, std::move(finding)),
                {Item::InletPressure, Item::MeterWorkingPressure, Item::PressureSameGauge, Item::MeterLoad,
                 Item::InletFullRate, Item::GasFamily});
}

}  // namespace

void answerPressures(Asking& asking) {
    judgeAtMeter(asking);
    judgeAtInlet(asking);
    judgeDrop(asking);
    judgeAtBurner(asking);
    sayUnclear(asking, FindingKind::WorkingPressure, {Item::GaugeAccuracy});
    if (asking.answer.findings.empty()) {
        asking.find(rulebook::noVerdict(FindingKind::WorkingPressure, {Say::ReadingMissing}),
                    {Item::MeterWorkingPressure});
    }
}

}  // namespace hearth::judging
