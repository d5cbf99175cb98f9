// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/hot_water.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"

#include <utility>

namespace hearth::judging {

using burner::Measured;
using reg::Item;

namespace {

constexpr std::string_view kWaterHeat = "4.18 kJ/(kg K), textbook";

template <class Amount>
Measured<Amount> measuredOf(const Seen<Amount>& seen) {
    return {seen.value, Amount::fromBase(quantity::rectangular(seen.digit.base() / 2.0))};
}

rulebook::Given<Measured<quantity::TemperatureChange>> riseOf(const Readings& once) {
    using Result = rulebook::Given<Measured<quantity::TemperatureChange>>;
    const auto cold = once.temperature(Item::HotWaterCold);
    const auto hot = once.temperature(Item::HotWaterHot);
    if (!cold || !hot) {
        return cold.unreadable || hot.unreadable ? Result::unusable() : Result();
    }
    const double u = quantity::together(quantity::rectangular(cold->digit.in(quantity::kKelvin) / 2.0),
                                        quantity::rectangular(hot->digit.in(quantity::kKelvin) / 2.0));
    return Measured<quantity::TemperatureChange>{hot->value - cold->value, {u, quantity::kKelvin}};
}

burner::HotWaterInput hotWaterInput(const Readings& once) {
    burner::HotWaterInput input;
    if (const auto flow = once.flow(Item::HotWaterFlow)) {
        input.flow = measuredOf(*flow);
    } else if (flow.unreadable) {
        input.flow = rulebook::Given<Measured<quantity::Flow>>::unusable();
    }
    input.rise = riseOf(once);
    input.atFullRate = once.yesNo(Item::HotWaterFullRate);
    input.makersSource = once.text(Item::HotWaterMakerSource);
    if (const auto heat = once.power<quantity::NetPower>(Item::HotWaterNetInput)) {
        input.heatInput = measuredOf(*heat);
    }
    return input;
}

/// The maker's figures, one or both; `isUnclear`: something is there that is none.
struct MakersWater {
    std::optional<quantity::HeatOutput> output;
    std::optional<burner::FlowAtRise> flow;
    bool isUnclear = false;
};

MakersWater makersWater(const Readings& once) {
    MakersWater maker;
    const auto output = once.power<quantity::HeatOutput>(Item::HotWaterMakerOutput);
    const auto flow = once.flow(Item::HotWaterMakerFlow);
    const auto rise = once.temperatureChange(Item::HotWaterMakerRise);
    if (output && output->value > quantity::HeatOutput{}) {
        maker.output = output->value;
    }
    if (flow && rise && flow->value > quantity::Flow{} && *rise > quantity::TemperatureChange{}) {
        maker.flow = burner::FlowAtRise{flow->value, *rise};
    }
    maker.isUnclear =
        (output.isEntered() && !maker.output) || ((flow.isEntered() || rise.isEntered()) && !maker.flow);
    return maker;
}

void judgeHotWater(Asking& asking, const burner::HotWaterInput& read, const MakersWater& maker) {
    const auto find = [&](rulebook::Finding finding) {
        asking.find(std::move(finding),
                    {Item::HotWaterFlow, Item::HotWaterCold, Item::HotWaterHot, Item::HotWaterFullRate,
                     Item::HotWaterMakerFlow, Item::HotWaterMakerRise, Item::HotWaterMakerOutput});
    };
    if (maker.isUnclear) {
        find(withoutMakers(burner::hotWater(read)));
        return;
    }
    if (!maker.output && !maker.flow) {
        find(burner::hotWater(read));
        return;
    }
    auto input = read;
    if (maker.output) {
        input.maker = *maker.output;
        find(burner::hotWater(input));
    }
    if (maker.flow) {
        input.maker = *maker.flow;
        find(burner::hotWater(input));
    }
}

void showFlow(Asking& asking, Derived what, quantity::HeatOutput output, quantity::TemperatureChange rise) {
    if (const auto flow = asking.got(burner::waterFlow(output, rise))) {
        asking.work(what, shown(flow->in(quantity::kLitrePerMinute), 2, quantity::UnitCode::LitrePerMinute),
                    kWaterHeat);
    }
}

void showHotWater(Asking& asking, const burner::HotWaterInput& input, const MakersWater& maker) {
    if (!input.flow || !input.rise) {
        return;
    }
    const auto output = asking.got(burner::waterOutput(*input.flow, *input.rise));
    if (!output) {
        return;
    }
    constexpr auto kUnit = quantity::UnitCode::Kilowatt;
    asking.work(Derived::HotWaterOutput, shown(output->value.in(quantity::kKilowatt), 2, kUnit), kWaterHeat,
                shown(quantity::kCoverage * output->u.in(quantity::kKilowatt), 2, kUnit));
    if (maker.flow) {
        showFlow(asking, Derived::HotWaterExpectedFlow, output->value, maker.flow->rise);
    }
    if (maker.output) {
        showFlow(asking, Derived::HotWaterMakersFlowHere, *maker.output, input.rise->value);
    }
    if (input.heatInput) {
        if (const auto balance = asking.got(burner::heatBalance(*output, *input.heatInput))) {
            asking.work(Derived::HeatBalance, shown(balance->value, 3), "definition of efficiency, textbook",
                        shown(quantity::expanded(*balance), 3));
        }
    }
}

}  // namespace

void answerHotWater(Asking& asking) {
    const auto input = hotWaterInput(asking.once);
    const auto maker = makersWater(asking.once);
    judgeHotWater(asking, input, maker);
    const auto heat = asking.once.power<quantity::NetPower>(Item::HotWaterNetInput);
    if (heat.isEntered()) {
        asking.find(
            heat ? burner::heatBalanceFinding(input, asking.inForce)
                 : rulebook::noVerdict(rulebook::FindingKind::HeatBalance, {rulebook::Say::ReadingUnusable}),
            {Item::HotWaterNetInput, Item::HotWaterFlow, Item::HotWaterCold, Item::HotWaterHot,
             Item::HotWaterFullRate});
    }
    showHotWater(asking, input, maker);
}

}  // namespace hearth::judging
