// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/heat_input.h"

#include "core/burner/entry_units.h"
#include "core/burner/figures.h"
#include "core/burner/flue_figures.h"
#include "core/burner/validity.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <cmath>

namespace hearth::burner {

using quantity::GrossHeatValue;
using quantity::GrossPower;
using quantity::NetPower;
using quantity::Share;
using quantity::Uncertain;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

constexpr double kHeatLeastRatio = 1.0;
constexpr double kHeatMostRatio = 1.2;
/// The shortcut is shown beside a timing of about two minutes only.
constexpr double kHeatShortcutTime = 120.0;  // s
constexpr double kHeatShortcutSlack = 6.0;

}  // namespace

Measured<GrossPower> grossHeatInput(const Measured<quantity::Flow>& rate,
                                    const Measured<GrossHeatValue>& calorific, const Correction& correction) {
    // m3/s times J/m3 is watt.
    const auto watt = rate.in(quantity::kCubicMetrePerSecond)*calorific.in(
                          quantity::Unit<quantity::HeatValueDimension>{1.0}) *
                      correction.factor;
    return measuredIn<GrossPower>(watt, quantity::kWatt);
}

Result<Measured<NetPower>> netHeatInput(const Measured<GrossPower>& gross, double grossToNet) {
    if (!(grossToNet >= kHeatLeastRatio && grossToNet <= kHeatMostRatio)) {
        return outside(grossToNet, kHeatLeastRatio, kHeatMostRatio, 3);
    }
    return measuredIn<NetPower>(gross.in(quantity::kWatt) / grossToNet, quantity::kWatt);
}

std::optional<double> grossToNet(const gas::Fuel& fuel) {
    if (!fuel.net || !(fuel.net->base() > 0.0)) {
        return std::nullopt;
    }
    return fuel.gross.base() / fuel.net->base();
}

GrossPower twoMinuteShortcut(quantity::Volume passed, GrossHeatValue calorific) {
    return {passed.in(quantity::kCubicMetre)*30.0 * calorific.in(quantity::kKilowattHourPerCubicMetre),
            quantity::kKilowatt};
}

namespace {

/// Deviation from the plate in per cent, of one kind of power only.
template <class Power>
std::optional<Uncertain> heatDeviation(const std::optional<Measured<Power>>& heat, Power plate) {
    if (!heat || !(plate > Power{})) {
        return std::nullopt;
    }
    return Uncertain{100.0 * (heat->value / plate - 1.0), 100.0 * (heat->u / plate)};
}

std::optional<Uncertain> heatDeviationOf(const JudgedHeatInput& judged, const PlatePower& plate) {
    if (const auto* net = std::get_if<NetPower>(&plate)) {
        return heatDeviation(judged.net, *net);
    }
    return heatDeviation(judged.gross, std::get<GrossPower>(plate));
}

rulebook::Sentence heatAgainst(const JudgedHeatInput& judged, const PlatePower& plate) {
    if (const auto* net = std::get_if<NetPower>(&plate)) {
        return {Say::HeatInputNet, {heatFigure(judged.net->value), heatFigure(*net)}};
    }
    return {Say::HeatInputGross, {heatFigure(judged.gross->value), heatFigure(std::get<GrossPower>(plate))}};
}

rulebook::Sentence heatCorrectionSaid(const Correction& correction) {
    switch (correction.kind) {
        case CorrectionKind::None:
            break;
        case CorrectionKind::FixedFactor:
            return {Say::CorrectionFixed, {plainFigure(correction.factor, 5)}};
        case CorrectionKind::AsMeasured:
            return {Say::CorrectionMeasured, {plainFigure(correction.factor, 5)}};
    }
    return {Say::CorrectionNone};
}

/// The limit on the side on which the heat input lies: the maker's before the rule book's.
std::optional<Entry> heatLimit(bool over, const std::optional<MakersTolerance>& maker,
                               const RulesInForce& rules) {
    const auto rule = over ? Rule::HeatInputOver : Rule::HeatInputUnder;
    if (maker) {
        return rulebook::makersEntry({rule}, percentFigure(over ? maker->over : maker->under),
                                     rulebook::Comparison::AtMost, maker->source);
    }
    const Entry* entry = rules.known(rule);
    return entry == nullptr ? std::nullopt : std::optional(*entry);
}

/// What went into the heat input before the limit is looked at: the calorific value and the factor.
void restOnHeatInputs(Finding& finding, const HeatInputCase& input) {
    for (const auto* entry : {input.fuel->workingHeatValue, input.correction.entry}) {
        if (entry != nullptr) {
            restOn(finding, *entry);
        }
    }
}

/// The limit is the finding's first entry, whatever else it rests on.
void leadWithHeatLimit(Finding& finding) {
    std::rotate(finding.limits.begin(), finding.limits.end() - 1, finding.limits.end());
    finding.limit = rulebook::figureOf(finding.limits.front());
    finding.comparison = finding.limits.front().comparison;
}

void judgeHeatDeviation(Finding& finding, const Uncertain& deviation, const HeatInputCase& input,
                        const RulesInForce& rules) {
    const auto& plate = input.plate;
    const bool over = deviation.value >= 0.0;
    const auto limit = heatLimit(over, plate.tolerance, rules);
    const auto signedShare = Share(deviation.value, quantity::kPercent);
    finding.measured = percentFigure(signedShare);
    if (!limit) {
        concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    const auto size = Share(std::abs(deviation.value), quantity::kPercent);
    const auto known = Share(quantity::expanded(deviation), quantity::kPercent);
    restOnHeatInputs(finding, input);
    const auto percent = Uncertain{std::abs(deviation.value), deviation.u};
    rulebook::judgeAgainst(finding, *limit, inUnitOf(*limit, measuredIn<Share>(percent, quantity::kPercent)),
                           {Say::HeatInputWithin,
                            Say::HeatInputNear,
                            over ? Say::HeatInputOverRated : Say::HeatInputUnderRated,
                            {percentFigure(size), rulebook::figureOf(*limit).value_or(quantity::Figure{}),
                             percentFigure(known)}});
    leadWithHeatLimit(finding);
}

void addHeatNotes(JudgedHeatInput& judged, const HeatInputCase& input) {
    auto& notes = judged.finding.notes;
    if (judged.net) {
        notes.push_back(
            {Say::HeatInputWorkedOut, {heatFigure(judged.gross->value), heatFigure(judged.net->value)}});
    } else {
        notes.push_back({Say::HeatInputGrossOnly, {heatFigure(judged.gross->value)}});
    }
    notes.push_back(heatCorrectionSaid(input.correction));
    const auto& timing = input.timing;
    if (!timing.passed || !timing.took ||
        std::abs(timing.took->in(quantity::kSecond)-kHeatShortcutTime) > kHeatShortcutSlack) {
        return;
    }
    if (const auto passed = volumePassed(*timing.passed)) {
        notes.push_back(
            {Say::HeatInputShortcut, {heatFigure(twoMinuteShortcut(passed->value, input.fuel->gross))}});
    }
}

/// A timing that is not to be trusted passes nothing; one of a cold appliance fails nothing for its excess.
void weighHeatTiming(Finding& finding, const Finding& timing, bool cold) {
    const bool doubtful = cold || says(timing, Say::RateAboveMeter) || says(timing, Say::RateBelowMeterRange);
    const bool excess = cold && finding.why.say == Say::HeatInputOverRated;
    if (!doubtful || !(finding.outcome == rulebook::Outcome::Pass || excess)) {
        return;
    }
    finding.notes.insert(finding.notes.begin(), finding.why);
    concludeAtLimit(finding, timing.why);
}

}  // namespace

JudgedHeatInput judgeHeatInput(const HeatInputCase& input, const RulesInForce& rules) {
    JudgedHeatInput judged;
    judged.correction = input.correction;
    auto& finding = judged.finding;
    if (!input.rate.rate) {
        concludeOpen(finding, input.rate.finding.why);
        return judged;
    }
    if (!input.fuel || !(input.fuel->gross > GrossHeatValue{})) {
        concludeOpen(finding, {Say::HeatInputNoCalorific});
        return judged;
    }
    judged.gross = grossHeatInput(*input.rate.rate, {input.fuel->gross, input.calorificU}, input.correction);
    if (const auto ratio = grossToNet(*input.fuel)) {
        if (const auto net = netHeatInput(*judged.gross, *ratio)) {
            judged.net = *net;
        }
    }
    addHeatNotes(judged, input);
    const auto& plate = input.plate;
    if (!plate.heatInput) {
        concludeOpen(finding, {plate.heatInput.unreadable ? Say::ReadingUnusable
                               : plate.kindNotSaid        ? Say::HeatInputPlateKindNotSaid
                                                          : Say::HeatInputNoPlate});
        return judged;
    }
    const auto deviation = heatDeviationOf(judged, *plate.heatInput);
    if (!deviation) {
        concludeOpen(finding, {Say::ReadingMissing});
        return judged;
    }
    finding.notes.insert(finding.notes.begin(), heatAgainst(judged, *plate.heatInput));
    judgeHeatDeviation(finding, *deviation, input, rules);
    weighHeatTiming(finding, input.rate.finding, input.timing.warm == false);
    return judged;
}

}  // namespace hearth::burner
