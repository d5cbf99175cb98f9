// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/gas_rate.h"
#include "core/burner/heat_input.h"
#include "core/judging/asking.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/values.h"

namespace hearth::judging {

using burner::Measured;
using reg::Item;
namespace choice = reg::choice;

namespace {

rulebook::Given<burner::Passed> indexPassed(const Readings& once) {
    using Result = rulebook::Given<burner::Passed>;
    const auto start = once.volumeSeen(Item::RateIndexStart);
    const auto end = once.volumeSeen(Item::RateIndexEnd);
    if (!start || !end) {
        return start.unreadable || end.unreadable ? Result::unusable() : Result();
    }
    return burner::Passed(
        burner::IndexReadings{start->value, end->value, std::max(start->digit, end->digit)});
}

rulebook::Given<burner::Passed> dialPassed(const Readings& once) {
    using Result = rulebook::Given<burner::Passed>;
    const auto turns = once.number(Item::RateTurns);
    const auto cubicFeet = once.choice<double>(
        Item::RateDial,
        {{choice::kDial1, 1.0}, {choice::kDial2, 2.0}, {choice::kDial5, 5.0}, {choice::kDial10, 10.0}});
    if (!turns || !cubicFeet) {
        return turns.unreadable ? Result::unusable() : Result();
    }
    return burner::Passed(
        burner::DialTurns{quantity::Volume(*cubicFeet, quantity::kCubicFoot), turns->toDouble(), {}});
}

burner::RateInput rateInput(const Readings& once) {
    burner::RateInput input;
    const auto meter = once.code(Item::RateMeter);
    input.hasNoMeter = meter == choice::kNone;
    input.passed = meter == choice::kImperial ? dialPassed(once) : indexPassed(once);
    if (const auto took = once.duration(Item::RateTime)) {
        input.took = took->value;
    } else if (took.unreadable) {
        input.took = rulebook::Given<quantity::Duration>::unusable();
    }
    input.othersOff = once.yesNo(Item::RateOthersOff);
    input.atFullRate = once.yesNo(Item::RateFullRate);
    input.warm = once.yesNo(Item::RateWarm);
    if (const auto most = once.flow(Item::RateMeterMost)) {
        input.meterMost = most->value;
    }
    return input;
}

/// None until the statutory one is complete.
std::optional<burner::Correction> correctionAsked(Asking& asking) {
    const auto kind = asking.once.code(Item::RateCorrection);
    if (kind == choice::kFixed) {
        return burner::fixedCorrection(asking.inForce);
    }
    if (kind != choice::kStatutory) {
        return burner::Correction{};
    }
    const auto pressure = asking.once.pressure(Item::RateMeterPressure);
    const auto temperature = asking.once.temperature(Item::RateGasTemperature);
    const auto altitude = asking.once.length(Item::RateAltitude);
    if (!pressure || !temperature || !altitude) {
        asking.answer.notes.push_back({rulebook::Say::ReadingMissing});
        return std::nullopt;
    }
    return asking.got(
        burner::correctionAsMeasured({pressure->pressure, temperature->value, altitude->value}));
}

burner::Plate plateOf(const Readings& once) {
    burner::Plate plate;
    const auto basis = once.code(Item::ApplianceInputBasis);
    const auto net = once.power<quantity::NetPower>(Item::ApplianceInput);
    if (net.unreadable) {
        plate.heatInput = rulebook::Given<burner::PlatePower>::unusable();
    } else if (net && basis == choice::kNet) {
        plate.heatInput = burner::PlatePower(net->value);
    } else if (net && basis == choice::kGross) {
        plate.heatInput = burner::PlatePower(once.power<quantity::GrossPower>(Item::ApplianceInput)->value);
    } else if (net) {
        plate.kindNotSaid = true;
    }
    if (const auto tolerance = once.share(Item::ApplianceTolerance)) {
        plate.tolerance = burner::MakersTolerance{tolerance->value, tolerance->value, "typed in"};
    }
    return plate;
}

void showRate(Asking& asking, const burner::RateInput& input, const burner::JudgedRate& rate) {
    if (!rate.rate) {
        return;
    }
    asking.work(
        Derived::GasFlow,
        shown(rate.rate->value.in(quantity::kCubicMetrePerHour), 3, quantity::UnitCode::CubicMetrePerHour),
        "certification body's pocket guide Gas 3 (2019)",
        shown(quantity::kCoverage * rate.rate->u.in(quantity::kCubicMetrePerHour), 3,
              quantity::UnitCode::CubicMetrePerHour));
    const auto* byHand = asking.inForce.known(rulebook::Rule::TimingByHand);
    const auto slip = byHand == nullptr ? std::nullopt : rulebook::durationOf(*byHand);
    const auto* index = input.passed ? std::get_if<burner::IndexReadings>(&*input.passed) : nullptr;
    if (index == nullptr || !slip) {
        return;
    }
    constexpr quantity::Share kAim{2.0, quantity::kPercent};
    if (const auto time = asking.got(burner::timeNeeded(rate.rate->value, index->digit, *slip, kAim))) {
        asking.work(Derived::TimeForTwoPercent,
                    shown(time->in(quantity::kSecond), 0, quantity::UnitCode::Second),
                    "JCGM 100:2008, from memory");
    }
}

void showHeatInput(Asking& asking, const burner::HeatInputCase& input,
                   const burner::JudgedHeatInput& judged) {
    constexpr std::string_view kCards = "kW = m³/h × CV / 3.6, training cards";
    constexpr auto kUnit = quantity::UnitCode::Kilowatt;
    if (judged.gross) {
        asking.work(Derived::HeatInputGross, shown(judged.gross->value.in(quantity::kKilowatt), 2, kUnit),
                    kCards, shown(quantity::kCoverage * judged.gross->u.in(quantity::kKilowatt), 2, kUnit));
    }
    if (judged.net) {
        asking.work(Derived::HeatInputNet, shown(judged.net->value.in(quantity::kKilowatt), 2, kUnit), kCards,
                    shown(quantity::kCoverage * judged.net->u.in(quantity::kKilowatt), 2, kUnit));
    }
    if (input.correction.kind != burner::CorrectionKind::None) {
        asking.work(Derived::MeterCorrection, shown(input.correction.factor, 5),
                    "Gas (Calculation of Thermal Energy) Regulations 1996");
    }
    constexpr double kTwoMinutes = 120.0;
    const auto* index =
        input.timing.passed ? std::get_if<burner::IndexReadings>(&*input.timing.passed) : nullptr;
    if (index != nullptr && input.fuel && input.timing.took &&
        rulebook::holds(input.timing.took->in(quantity::kSecond), rulebook::Comparison::Equals,
                        kTwoMinutes)) {
        const auto cross = burner::twoMinuteShortcut(index->end - index->start, input.fuel->gross);
        asking.work(Derived::TwoMinuteShortcut, shown(cross.in(quantity::kKilowatt), 2, kUnit),
                    "technical note of a UK gas installer; the stopwatch at 120 s");
    }
}

}  // namespace

void answerGasRate(Asking& asking) {
    burner::HeatInputCase input;
    input.timing = rateInput(asking.once);
    input.rate = burner::judgeRate(input.timing, asking.inForce);
    asking.find(input.rate.finding,
                {Item::RateTime, Item::RateMeter, Item::RateIndexStart, Item::RateIndexEnd, Item::RateTurns,
                 Item::RateOthersOff, Item::RateFullRate, Item::RateWarm});
    gas::FuelInput known;
    if (const auto billed = asking.once.heatValue<quantity::GrossHeatValue>(Item::GasHeatValue)) {
        known.gross = billed->value;
        input.calorificU =
            quantity::GrossHeatValue::fromBase(quantity::rectangular(billed->digit.base() / 2.0));
    }
    input.fuel = asking.got(gas::fuelOf(asking.inForce, known));
    const auto correction = correctionAsked(asking);
    if (!correction) {
        showRate(asking, input.timing, input.rate);
        return;
    }
    input.correction = *correction;
    input.plate = plateOf(asking.once);
    const auto judged = burner::judgeHeatInput(input, asking.inForce);
    asking.find(judged.finding, {Item::ApplianceInput, Item::ApplianceInputBasis, Item::ApplianceTolerance,
                                 Item::GasHeatValue, Item::RateCorrection});
    showRate(asking, input.timing, input.rate);
    showHeatInput(asking, input, judged);
}

}  // namespace hearth::judging
