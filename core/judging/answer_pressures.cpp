// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/pressures.h"
#include "core/judging/asking.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/conclude.h"
#include "core/tightness/restore.h"

namespace hearth::judging {

using burner::PressureRead;
using reg::Item;

namespace {

rulebook::Given<PressureRead> pressureRead(const Readings& once, Item item) {
    const auto reading = once.pressure(item);
    if (!reading) {
        return reading.unreadable ? rulebook::Given<PressureRead>::unusable()
                                  : rulebook::Given<PressureRead>();
    }
    return PressureRead{reading->pressure, reading->digit};
}

std::optional<burner::MakersRange> makersRange(const Readings& once, Item least, Item most) {
    const auto low = once.pressure(least);
    const auto high = once.pressure(most);
    if (!low || !high) {
        return std::nullopt;
    }
    return burner::MakersRange{low->pressure, high->pressure,
                               std::string(once.text(Item::PressureMakerSource))};
}

void judgeAtMeter(Asking& asking) {
    if (const auto standing = asking.once.pressure(Item::MeterStandingPressure); standing.isEntered()) {
        asking.find(tightness::standingPressure(standing, asking.inForce), {Item::MeterStandingPressure});
    }
    if (const auto working = asking.once.pressure(Item::MeterWorkingPressure); working.isEntered()) {
        asking.find(tightness::workingPressure(working, asking.inForce), {Item::MeterWorkingPressure});
    }
    burner::MeterAverageInput average;
    average.average = pressureRead(asking.once, Item::MeterAverage);
    if (!average.average.isEntered()) {
        return;
    }
    if (const auto over = asking.once.duration(Item::MeterAverageTime)) {
        average.over = over->value;
    } else if (over.unreadable) {
        average.over = rulebook::Given<quantity::Duration>::unusable();
    }
    average.load = asking.once.choice<burner::Load>(
        Item::MeterLoad,
        {{reg::choice::kLoadHigh, burner::Load::High}, {reg::choice::kLoadLess, burner::Load::Less}});
    asking.find(burner::meterAverage(average, asking.inForce),
                {Item::MeterAverage, Item::MeterAverageTime, Item::MeterLoad});
}

void showDrop(Asking& asking, const rulebook::Given<PressureRead>& inlet) {
    const auto meter = pressureRead(asking.once, Item::MeterWorkingPressure);
    if (!meter || !inlet) {
        return;
    }
    const bool sameGauge = asking.once.yesNo(Item::PressureSameGauge).value_or(false);
    const auto drop = burner::pressureDrop(*meter, *inlet, sameGauge);
    asking.work(Derived::DropToAppliance, shown(drop.value, 2, quantity::UnitCode::Millibar),
                "meter less inlet", shown(quantity::expanded(drop), 2, quantity::UnitCode::Millibar));
    rulebook::Finding finding{rulebook::FindingKind::PressureDropMeasured};
    const auto figure = shown(drop.value, 2, quantity::UnitCode::Millibar);
    finding.measured = figure;
    const auto* limit = asking.inForce.find(rulebook::Rule::PipeDropMost);
    const auto most = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    const std::vector<rulebook::Argument> arguments{
        figure, most.value_or(quantity::Figure{}),
        shown(quantity::expanded(drop), 2, quantity::UnitCode::Millibar)};
    // The entry is in millibar, as drops are; a firm that typed another unit is not taken by its number.
    if (most && most->unit != quantity::UnitCode::Millibar) {
        limit = nullptr;
    }
    rulebook::judgeAgainst(finding, limit, drop,
                           {rulebook::Say::DropToApplianceGood, rulebook::Say::DropToApplianceNear,
                            rulebook::Say::DropToApplianceHigh, arguments});
    asking.find(std::move(finding),
                {Item::InletPressure, Item::MeterWorkingPressure, Item::PressureSameGauge});
}

}  // namespace

void answerPressures(Asking& asking) {
    const auto& once = asking.once;
    judgeAtMeter(asking);
    burner::InletInput inlet;
    inlet.standing = pressureRead(once, Item::InletStanding);
    inlet.working = pressureRead(once, Item::InletPressure);
    inlet.atFullRate = once.yesNo(Item::InletFullRate);
    inlet.maker = makersRange(once, Item::InletLeast, Item::InletMost);
    if (inlet.working.isEntered() || inlet.standing.isEntered()) {
        asking.find(burner::inletPressure(inlet, asking.inForce),
                    {Item::InletPressure, Item::InletStanding, Item::InletFullRate, Item::InletLeast,
                     Item::InletMost});
    }
    showDrop(asking, inlet.working);
    if (const auto pressure = pressureRead(once, Item::BurnerPressure); pressure.isEntered()) {
        asking.find(burner::burnerPressure(pressure, makersRange(once, Item::BurnerLeast, Item::BurnerMost)),
                    {Item::BurnerPressure, Item::BurnerLeast, Item::BurnerMost});
    }
    if (asking.answer.findings.empty()) {
        asking.find(
            rulebook::noVerdict(rulebook::FindingKind::WorkingPressure, {rulebook::Say::ReadingMissing}),
            {Item::MeterWorkingPressure});
    }
}

}  // namespace hearth::judging
