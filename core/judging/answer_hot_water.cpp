// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/hot_water.h"
#include "core/judging/asking.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"

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
    const auto makersFlow = once.flow(Item::HotWaterMakerFlow);
    const auto makersRise = once.temperatureChange(Item::HotWaterMakerRise);
    if (makersFlow && makersRise) {
        input.maker = burner::FlowAtRise{makersFlow->value, *makersRise};
        input.makersSource = "typed in";
    }
    if (const auto heat = once.power<quantity::NetPower>(Item::HotWaterNetInput)) {
        input.heatInput = measuredOf(*heat);
    }
    return input;
}

void showHotWater(Asking& asking, const burner::HotWaterInput& input) {
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
    if (const auto* maker = input.maker ? std::get_if<burner::FlowAtRise>(&*input.maker) : nullptr) {
        if (const auto flow = asking.got(burner::waterFlow(output->value, maker->rise))) {
            asking.work(Derived::HotWaterExpectedFlow,
                        shown(flow->in(quantity::kLitrePerMinute), 2, quantity::UnitCode::LitrePerMinute),
                        kWaterHeat);
        }
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
    asking.find(burner::hotWater(input),
                {Item::HotWaterFlow, Item::HotWaterCold, Item::HotWaterHot, Item::HotWaterFullRate,
                 Item::HotWaterMakerFlow, Item::HotWaterMakerRise});
    if (input.heatInput) {
        asking.find(burner::heatBalanceFinding(input, asking.inForce), {Item::HotWaterNetInput});
    }
    showHotWater(asking, input);
}

}  // namespace hearth::judging
