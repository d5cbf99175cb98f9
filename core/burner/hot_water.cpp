// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/hot_water.h"

#include "core/burner/figures.h"
#include "core/burner/validity.h"
#include "core/rulebook/against.h"

namespace hearth::burner {

using quantity::Decimal;
using quantity::Flow;
using quantity::HeatOutput;
using quantity::TemperatureChange;
using quantity::Uncertain;
using quantity::UnitCode;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

constexpr double kWaterHeat = 4180.0 * 1000.0;  // J/(m3 K): 4.18 kJ/(kg K), 1000 kg/m3
constexpr double kWaterMostRise = 100.0;        // K
constexpr double kWaterMostFlow = 1000.0;       // l/min: a slip of the decimal point beyond
constexpr double kWaterMostOutput = 70000.0;    // kW, likewise
constexpr double kWaterLeast = 1.0e-6;

}  // namespace

Result<Measured<HeatOutput>> waterOutput(const Measured<Flow>& flow,
                                         const Measured<TemperatureChange>& rise) {
    const double litres = flow.value.in(quantity::kLitrePerMinute);
    if (!(litres >= 0.0 && litres <= kWaterMostFlow)) {
        return outside(litres, 0.0, kWaterMostFlow, 2);
    }
    const double kelvin = rise.value.in(quantity::kKelvin);
    if (!(kelvin >= 0.0 && kelvin <= kWaterMostRise)) {
        return outside(kelvin, 0.0, kWaterMostRise, 2);
    }
    const auto watt = flow.in(quantity::kCubicMetrePerSecond)*rise.in(quantity::kKelvin)*kWaterHeat;
    return measuredIn<HeatOutput>(watt, quantity::kWatt);
}

Result<Flow> waterFlow(HeatOutput output, TemperatureChange rise) {
    const double kilowatt = output.in(quantity::kKilowatt);
    if (!(kilowatt >= 0.0 && kilowatt <= kWaterMostOutput)) {
        return outside(kilowatt, 0.0, kWaterMostOutput, 2);
    }
    const double kelvin = rise.in(quantity::kKelvin);
    if (!(kelvin > 0.0 && kelvin <= kWaterMostRise)) {
        return outside(kelvin, kWaterLeast, kWaterMostRise, 6);
    }
    return Flow(output.in(quantity::kWatt) / (kWaterHeat * kelvin), quantity::kCubicMetrePerSecond);
}

Result<Uncertain> heatBalance(const Measured<HeatOutput>& output, const Measured<quantity::NetPower>& input) {
    const double kilowatt = input.value.in(quantity::kKilowatt);
    if (!(kilowatt > 0.0 && kilowatt <= kWaterMostOutput)) {
        return outside(kilowatt, kWaterLeast, kWaterMostOutput, 6);
    }
    return output.in(quantity::kKilowatt) / input.in(quantity::kKilowatt);
}

namespace {

/// Output from what was read; nothing, with the finding closed, when something is missing or can't be.
std::optional<Measured<HeatOutput>> waterOutputFor(Finding& finding, const HotWaterInput& input) {
    if (auto absent = rulebook::absence(input.flow, input.rise)) {
        concludeOpen(finding, *absent);
        return std::nullopt;
    }
    const auto output = waterOutput(*input.flow, *input.rise);
    if (!output) {
        concludeOpen(finding, {Say::ReadingUnusable});
        return std::nullopt;
    }
    return *output;
}

void judgeWaterOutput(Finding& finding, const Measured<HeatOutput>& output, HeatOutput maker,
                      const std::string& source) {
    const auto entry = rulebook::makersEntry({Rule::HotWaterOutput}, heatFigure(maker),
                                             rulebook::Comparison::AtLeast, source);
    finding.measured = heatFigure(output.value);
    rulebook::judgeAgainst(
        finding, entry, output.in(quantity::kKilowatt),
        {Say::HotWaterGood,
         Say::AtLimit,
         Say::HotWaterLow,
         {heatFigure(output.value), heatFigure(maker), heatFigure(output.u * quantity::kCoverage)}});
}

/// The measured output as a flow at the maker's rise, beside the maker's flow.
void judgeWaterFlow(Finding& finding, const Measured<HeatOutput>& output, const FlowAtRise& maker,
                    const std::string& source) {
    const auto value = waterFlow(output.value, maker.rise);
    const auto u = waterFlow(output.u, maker.rise);
    if (!value || !u) {
        concludeOpen(finding, {Say::ReadingUnusable});
        return;
    }
    const auto entry = rulebook::makersEntry({Rule::HotWaterFlow}, waterFlowFigure(maker.flow),
                                             rulebook::Comparison::AtLeast, source);
    finding.measured = waterFlowFigure(*value);
    rulebook::judgeAgainst(
        finding, entry, Measured<Flow>{*value, *u}.in(quantity::kLitrePerMinute),
        {Say::HotWaterGood,
         Say::AtLimit,
         Say::HotWaterLow,
         {waterFlowFigure(*value), waterFlowFigure(maker.flow), waterFlowFigure(*u * quantity::kCoverage)}});
}

}  // namespace

Finding hotWater(const HotWaterInput& input) {
    Finding finding{FindingKind::HotWater};
    const auto output = waterOutputFor(finding, input);
    if (!output) {
        return finding;
    }
    finding.measured = heatFigure(output->value);
    if (!input.maker) {
        concludeOpen(finding, {Say::HotWaterNoMaker, {heatFigure(output->value)}});
        return finding;
    }
    finding.notes.push_back({Say::HotWaterGives, {heatFigure(output->value)}});
    if (input.atFullRate != true) {
        concludeOpen(finding, {Say::HotWaterNotFull});
        return finding;
    }
    if (const auto* power = std::get_if<HeatOutput>(&*input.maker)) {
        judgeWaterOutput(finding, *output, *power, input.makersSource);
    } else {
        judgeWaterFlow(finding, *output, std::get<FlowAtRise>(*input.maker), input.makersSource);
    }
    return finding;
}

Finding heatBalanceFinding(const HotWaterInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::HeatBalance};
    const auto output = waterOutputFor(finding, input);
    if (!output) {
        return finding;
    }
    const auto ratio =
        input.heatInput ? heatBalance(*output, *input.heatInput) : fail(ErrorCode::NumberMissing);
    if (!ratio) {
        concludeOpen(finding, {input.heatInput ? Say::ReadingUnusable : Say::ReadingMissing});
        return finding;
    }
    const auto shown = plainFigure(ratio->value, 2);
    finding.measured = shown;
    if (input.atFullRate != true) {
        concludeOpen(finding, {Say::HotWaterNotFull});
        return finding;
    }
    const Entry* usual = rules.known(Rule::HeatBalance);
    const auto range = usual == nullptr ? std::nullopt : rulebook::rangeOf(*usual);
    if (!range) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    rulebook::judgeAgainst(
        finding, *usual, *ratio,
        {Say::BalanceGood,
         Say::NearEndOfRange,
         Say::BalanceOutside,
         {shown, quantity::Figure{range->least, range->unit}, quantity::Figure{range->most, range->unit}}});
    return finding;
}

}  // namespace hearth::burner
