// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/gas_rate.h"
#include "core/burner/heat_input.h"
#include "core/judging/asking.h"
#include "core/judging/doubts.h"
#include "core/judging/timed_rate.h"
#include "core/judging/worked_figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"

namespace hearth::judging {

using burner::Measured;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Say;
namespace choice = reg::choice;

namespace {

rulebook::Given<burner::Passed> indexPassed(const Readings& once) {
    using Result = rulebook::Given<burner::Passed>;
    const auto start = once.volumeSeen(Item::RateIndexStart);
    const auto end = once.volumeSeen(Item::RateIndexEnd);
    const auto whole = once.volumeSeen(Item::RateIndexWhole);
    if (start.unreadable || end.unreadable || whole.unreadable) {
        return Result::unusable();
    }
    if (!start || !end) {
        return {};
    }
    burner::IndexReadings index{start->value, end->value, std::max(start->digit, end->digit)};
    if (whole) {
        index.rolledOverAt = whole->value;
    }
    return burner::Passed(index);
}

rulebook::Given<burner::Passed> handPassed(const Readings& once) {
    using Result = rulebook::Given<burner::Passed>;
    const auto passed = once.volumeSeen(Item::RatePassed);
    if (!passed) {
        return passed.unreadable ? Result::unusable() : Result();
    }
    return burner::Passed(burner::VolumeRead{passed->value, passed->digit});
}

rulebook::Given<burner::Passed> dialPassed(const Readings& once) {
    using Result = rulebook::Given<burner::Passed>;
    const auto turns = once.number(Item::RateTurns);
    const auto division = once.volumeSeen(Item::RateDialDivision);
    const auto cubicFeet = once.choice<double>(
        Item::RateDial,
        {{choice::kDial1, 1.0}, {choice::kDial2, 2.0}, {choice::kDial5, 5.0}, {choice::kDial10, 10.0}});
    if (turns.unreadable || isUnclear(once, Item::RateDialDivision)) {
        return Result::unusable();
    }
    if (!turns || !cubicFeet) {
        return {};
    }
    burner::DialTurns dial{quantity::Volume(*cubicFeet, quantity::kCubicFoot), turns->toDouble(), {}};
    if (division) {
        dial.division = division->value;
    }
    return burner::Passed(dial);
}

rulebook::Given<burner::Passed> passedBy(const Readings& once, std::string_view meter) {
    if (meter.empty() && once.isEntered(Item::RateMeter)) {
        return rulebook::Given<burner::Passed>::unusable();
    }
    if (meter == choice::kImperial) {
        return dialPassed(once);
    }
    return meter == choice::kByHand ? handPassed(once) : indexPassed(once);
}

burner::RateInput rateInput(const Readings& once) {
    burner::RateInput input;
    const auto meter = once.code(Item::RateMeter);
    input.hasNoMeter = meter == choice::kNone;
    input.passed = passedBy(once, meter);
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

/// The correction that was asked for, or why there is none.
struct TypedCorrection {
    std::optional<burner::Correction> correction;
    Say why = Say::ReadingMissing;
};

TypedCorrection statutoryCorrection(Asking& asking) {
    const auto pressure = asking.once.pressure(Item::RateMeterPressure);
    const auto temperature = asking.once.temperature(Item::RateGasTemperature);
    const auto altitude = asking.once.length(Item::RateAltitude);
    if (pressure.unreadable || temperature.unreadable || altitude.unreadable) {
        return {std::nullopt, Say::ReadingUnusable};
    }
    if (!pressure || !temperature || !altitude) {
        return {};
    }
    return {
        asking.got(burner::correctionAsMeasured({pressure->pressure, temperature->value, altitude->value})),
        Say::ReadingUnusable};
}

TypedCorrection correctionTyped(Asking& asking) {
    const auto kind = asking.once.code(Item::RateCorrection);
    if (kind == choice::kFixed) {
        return {burner::fixedCorrection(asking.inForce), Say::LimitMissing};
    }
    if (kind == choice::kStatutory) {
        return statutoryCorrection(asking);
    }
    // Nothing chosen is the trade's habit, and the finding says so.
    if (kind.empty() && asking.once.isEntered(Item::RateCorrection)) {
        return {std::nullopt, Say::ReadingUnusable};
    }
    return {burner::Correction{}};
}

bool isToleranceUnclear(const Readings& once) {
    return isUnclear(once, Item::ApplianceTolerance) || isUnclear(once, Item::ApplianceToleranceUnder) ||
           (once.isEntered(Item::ApplianceToleranceUnder) && !once.isEntered(Item::ApplianceTolerance));
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
    const auto over = once.share(Item::ApplianceTolerance);
    const auto under = once.share(Item::ApplianceToleranceUnder);
    if (over && !isToleranceUnclear(once)) {
        plate.tolerance = burner::MakersTolerance{over->value, under ? under->value : over->value,
                                                  std::string(once.text(Item::ApplianceToleranceSource))};
    }
    return plate;
}

quantity::Volume digitOf(const burner::Passed& passed) {
    if (const auto* index = std::get_if<burner::IndexReadings>(&passed)) {
        return index->digit;
    }
    if (const auto* read = std::get_if<burner::VolumeRead>(&passed)) {
        return read->digit;
    }
    return std::get<burner::DialTurns>(passed).division;
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
    if (!slip) {
        return;
    }
    constexpr quantity::Share kAim{2.0, quantity::kPercent};
    if (const auto time =
            asking.got(burner::timeNeeded(rate.rate->value, digitOf(*input.passed), *slip, kAim))) {
        asking.work(Derived::TimeForTwoPercent,
                    shown(time->in(quantity::kSecond), 0, quantity::UnitCode::Second),
                    "JCGM 100:2008, from memory");
    }
}

void showShortcut(Asking& asking, const burner::HeatInputCase& input) {
    constexpr double kTwoMinutes = 120.0;
    if (!input.fuel || !input.timing.passed || !input.timing.took ||
        !rulebook::holds(input.timing.took->in(quantity::kSecond), rulebook::Comparison::Equals,
                         kTwoMinutes)) {
        return;
    }
    if (const auto passed = burner::volumePassed(*input.timing.passed)) {
        const auto cross = burner::twoMinuteShortcut(passed->value, input.fuel->gross);
        asking.work(Derived::TwoMinuteShortcut,
                    shown(cross.in(quantity::kKilowatt), 2, quantity::UnitCode::Kilowatt),
                    "technical note of a UK gas installer; the stopwatch at 120 s");
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
    showShortcut(asking, input);
}

/// By the calorific value of the gas, unless one was typed; net and the factor of the bills go by it anyway.
bool goesByTheGas(const burner::HeatInputCase& input) {
    return !input.fuel || input.fuel->workingHeatValue != nullptr ||
           input.correction.kind == burner::CorrectionKind::FixedFactor ||
           (input.plate.heatInput && std::holds_alternative<quantity::NetPower>(*input.plate.heatInput));
}

void judgeRateTyped(Asking& asking, const burner::HeatInputCase& input) {
    auto finding = input.rate.finding;
    // The meter's most would have been looked at.
    if (finding.outcome == rulebook::Outcome::Pass && isUnclear(asking.once, Item::RateMeterMost)) {
        rulebook::concludeOpen(finding, {Say::ReadingUnusable});
    }
    asking.find(
        std::move(finding),
        {Item::RateTime, Item::RateMeter, Item::RateIndexStart, Item::RateIndexEnd, Item::RateIndexWhole,
         Item::RatePassed, Item::RateDial, Item::RateTurns, Item::RateDialDivision, Item::RateOthersOff,
         Item::RateFullRate, Item::RateWarm, Item::RateMeterMost});
}

/// What keeps the heat input from being worked out although the rate is known.
std::optional<Say> takeFuelAndCorrection(Asking& asking, burner::HeatInputCase& input) {
    if (isUnclear(asking.once, Item::GasHeatValue)) {
        return Say::ReadingUnusable;
    }
    gas::FuelInput known;
    if (const auto billed = asking.once.heatValue<quantity::GrossHeatValue>(Item::GasHeatValue)) {
        known.gross = billed->value;
        input.calorificU =
            quantity::GrossHeatValue::fromBase(quantity::rectangular(billed->digit.base() / 2.0));
    }
    input.fuel = asking.got(gas::fuelOf(asking.inForce, known));
    const auto typed = correctionTyped(asking);
    if (!typed.correction) {
        return typed.why;
    }
    input.correction = *typed.correction;
    return std::nullopt;
}

rulebook::Finding heatFinding(Asking& asking, const burner::HeatInputCase& input,
                              const burner::JudgedHeatInput& judged) {
    if (isToleranceUnclear(asking.once)) {
        return withoutMakers(judged.finding);
    }
    return goesByTheGas(input) ? byTheGas(asking, judged.finding) : judged.finding;
}

}  // namespace

TimedRate timedRate(const Readings& readings, const rulebook::RulesInForce& rules) {
    TimedRate timed;
    timed.input = rateInput(readings);
    timed.judged = burner::judgeRate(timed.input, rules);
    return timed;
}

void answerGasRate(Asking& asking) {
    burner::HeatInputCase input;
    auto timed = timedRate(asking.once, asking.inForce);
    input.timing = std::move(timed.input);
    input.rate = std::move(timed.judged);
    input.plate = plateOf(asking.once);
    judgeRateTyped(asking, input);
    const auto hindrance = takeFuelAndCorrection(asking, input);
    const auto judged =
        hindrance ? burner::JudgedHeatInput{rulebook::noVerdict(FindingKind::HeatInput, {*hindrance})}
                  : burner::judgeHeatInput(input, asking.inForce);
    asking.find(heatFinding(asking, input, judged),
                {Item::ApplianceInput, Item::ApplianceInputBasis, Item::ApplianceTolerance,
                 Item::ApplianceToleranceUnder, Item::GasFamily, Item::GasHeatValue, Item::RateCorrection,
                 Item::RateMeterPressure, Item::RateGasTemperature, Item::RateAltitude});
    showRate(asking, input.timing, input.rate);
    if (!hindrance) {
        showHeatInput(asking, input, judged);
    }
}

}  // namespace hearth::judging
