// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/gas_rate.h"

#include "core/burner/entry_units.h"
#include "core/burner/figures.h"
#include "core/burner/flue_figures.h"
#include "core/burner/validity.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hearth::burner {

using quantity::Duration;
using quantity::Flow;
using quantity::Share;
using quantity::Uncertain;
using quantity::Volume;
using rulebook::Entry;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

// Guards against a slip of the decimal point or the unit, not limits of any standard.
constexpr double kRateMostFlow = 1000.0;   // m3/h
constexpr double kRateMostVolume = 1.0e6;  // m3
constexpr double kRateMostTime = 86400.0;  // s
constexpr double kRateLeast = 1.0e-6;

constexpr std::array kRateTurns{1.0, 2.0, 5.0, 10.0};  // ft3
constexpr double kRateMostTurns = 1000.0;

/// The meter's accuracy holds from this part of its greatest flow (Gas (Meters) Regulations 1983 reg 3).
constexpr double kRateAccuracyFrom = 1.0 / 50.0;

/// Two readings of one index or pointer, each known within half its last digit.
Result<Measured<Volume>> rateBetween(Volume passed, Volume digit) {
    const double volume = passed.in(quantity::kCubicMetre);
    if (!(volume > 0.0 && volume <= kRateMostVolume && digit.base() >= 0.0)) {
        return outside(volume, kRateLeast, kRateMostVolume, 6);
    }
    const double half = quantity::rectangular(digit.in(quantity::kCubicMetre) / 2.0);
    return measuredIn<Volume>(Uncertain{volume, quantity::together(half, half)}, quantity::kCubicMetre);
}

/// An index is read to some last digit; none would be a reading without any uncertainty.
Result<Measured<Volume>> rateBetweenReadings(Volume passed, Volume digit) {
    if (!(digit > Volume{})) {
        return outside(digit.in(quantity::kCubicMetre), kRateLeast, kRateMostVolume, 6);
    }
    return rateBetween(passed, digit);
}

Result<Measured<Volume>> rateVolumeOf(const IndexReadings& index) {
    Volume passed = index.end - index.start;
    if (index.rolledOverAt) {
        passed = passed + *index.rolledOverAt;
        const double most = index.rolledOverAt->in(quantity::kCubicMetre) / 2.0;
        if (!(passed.in(quantity::kCubicMetre) < most)) {
            return outside(passed.in(quantity::kCubicMetre), kRateLeast, most, 6);
        }
    }
    return rateBetweenReadings(passed, index.digit);
}

Result<Measured<Volume>> rateVolumeOf(const VolumeRead& read) {
    return rateBetweenReadings(read.passed, read.digit);
}

bool isRateTurn(Volume aTurn) {
    const double feet = aTurn.in(quantity::kCubicFoot);
    return std::any_of(kRateTurns.begin(), kRateTurns.end(),
                       [&](double turn) { return std::abs(feet - turn) < 1e-6; });
}

Result<Measured<Volume>> rateVolumeOf(const DialTurns& dial) {
    if (!isRateTurn(dial.aTurn)) {
        return outside(dial.aTurn.in(quantity::kCubicFoot), kRateTurns.front(), kRateTurns.back(), 3);
    }
    if (!(dial.turns >= 1.0 && dial.turns <= kRateMostTurns)) {
        return outside(dial.turns, 1.0, kRateMostTurns, 3);
    }
    return rateBetween(dial.aTurn * dial.turns, dial.division);
}

/// sqrt(2) byHand / sqrt(3): start and stop.
double rateTimingSlip(Duration byHand) {
    const double slip = quantity::rectangular(byHand.in(quantity::kSecond));
    return quantity::together(slip, slip);
}

}  // namespace

Result<Measured<Volume>> volumePassed(const Passed& passed) {
    return std::visit([](const auto& read) { return rateVolumeOf(read); }, passed);
}

Result<Measured<Flow>> gasRate(const Measured<Volume>& passed, const Timing& timing) {
    const double seconds = timing.took.in(quantity::kSecond);
    if (!(seconds > 0.0 && seconds <= kRateMostTime)) {
        return outside(seconds, kRateLeast, kRateMostTime, 6);
    }
    const auto volume = passed.in(quantity::kCubicMetre);
    if (!(volume.value > 0.0)) {
        return outside(volume.value, kRateLeast, kRateMostVolume, 6);
    }
    const Uncertain took{seconds, rateTimingSlip(timing.byHand)};
    const auto rate = measuredIn<Flow>(volume / took, quantity::kCubicMetrePerSecond);
    const double hourly = rate.value.in(quantity::kCubicMetrePerHour);
    if (!(hourly <= kRateMostFlow)) {
        return outside(hourly, kRateLeast, kRateMostFlow, 6);
    }
    return rate;
}

Measured<Flow> withMeterAccuracy(const Measured<Flow>& rate, Share accuracy) {
    const auto flow = rate.in(quantity::kCubicMetrePerSecond);
    const double meter = quantity::rectangular(flow.value * accuracy.in(quantity::kOne));
    return measuredIn<Flow>(Uncertain{flow.value, quantity::together(flow.u, meter)},
                            quantity::kCubicMetrePerSecond);
}

Result<Duration> timeNeeded(Flow rate, Volume digit, Duration byHand, Share aim) {
    const double flow = rate.in(quantity::kCubicMetrePerSecond);
    if (!(flow > 0.0)) {
        return outside(rate.in(quantity::kCubicMetrePerHour), kRateLeast, kRateMostFlow, 6);
    }
    const double wanted = aim.in(quantity::kOne);
    if (!(wanted > 0.0 && wanted < 1.0)) {
        return outside(aim.in(quantity::kPercent), kRateLeast, 100.0, 6);
    }
    const double half = quantity::rectangular(digit.in(quantity::kCubicMetre) / 2.0) / flow;
    const double seconds =
        quantity::kCoverage / wanted * quantity::together(half, half, rateTimingSlip(byHand));
    if (!(seconds <= kRateMostTime)) {
        return outside(seconds, kRateLeast, kRateMostTime, 0);
    }
    return Duration(std::ceil(seconds), quantity::kSecond);
}

namespace {

/// Why nothing can be worked out, in the order in which somebody would put it right.
std::optional<rulebook::Sentence> rateHindrance(const RateInput& input) {
    if (input.hasNoMeter) {
        return rulebook::Sentence{Say::RateNoMeter};
    }
    if (auto absent = rulebook::absence(input.passed, input.took)) {
        return absent;
    }
    if (!(input.took->in(quantity::kSecond) > 0.0)) {
        return rulebook::Sentence{Say::RateTimeWrong};
    }
    if (const auto* dial = std::get_if<DialTurns>(&*input.passed)) {
        if (!isRateTurn(dial->aTurn) || !(dial->turns >= 1.0)) {
            return rulebook::Sentence{Say::RateDialUnknown};
        }
    }
    const auto* index = std::get_if<IndexReadings>(&*input.passed);
    if (index != nullptr && index->end < index->start && !index->rolledOverAt) {
        return rulebook::Sentence{Say::RateIndexBackwards,
                                  {indexFigure(index->start), indexFigure(index->end)}};
    }
    return std::nullopt;
}

/// Whether what was timed is this appliance at its full rate.
std::optional<Say> rateConditions(const RateInput& input) {
    if (input.othersOff == false) {
        return Say::RateOthersOn;
    }
    if (input.atFullRate == false) {
        return Say::RateNotFull;
    }
    if (!input.othersOff || !input.atFullRate || !input.warm) {
        return Say::RateConditionsNotSaid;
    }
    return std::nullopt;
}

Volume rateDigit(const Passed& passed) {
    if (const auto* index = std::get_if<IndexReadings>(&passed)) {
        return index->digit;
    }
    if (const auto* read = std::get_if<VolumeRead>(&passed)) {
        return read->digit;
    }
    return std::get<DialTurns>(passed).division;
}

bool nothingPassed(const Passed& passed) {
    const auto* index = std::get_if<IndexReadings>(&passed);
    const auto* read = std::get_if<VolumeRead>(&passed);
    return (index != nullptr && index->end == index->start) || (read != nullptr && read->passed <= Volume{});
}

void concludeTiming(JudgedRate& judged, const RateInput& input, Duration byHand, const Entry& aim) {
    auto& finding = judged.finding;
    const auto allowed = *shareOf(aim);
    const auto known = judged.rate->relative();
    const auto flow = gasFlowFigure(judged.rate->value);
    finding.measured = percentFigure(known);
    restOn(finding, aim);
    if (rulebook::holds(known.in(quantity::kPercent), rulebook::Comparison::AtMost,
                        allowed.in(quantity::kPercent))) {
        concludeWithin(finding, {Say::RateGood, {flow, percentFigure(known)}});
        return;
    }
    // A coarse timing is no fault of the appliance: whatever the entry's provenance, it fails nothing.
    const auto needed = timeNeeded(judged.rate->value, rateDigit(*input.passed), byHand, allowed);
    if (!needed) {
        concludeAtLimit(finding, {Say::RateTooCoarse, {flow, percentFigure(known)}});
        return;
    }
    concludeAtLimit(finding, {Say::RateCoarse,
                              {flow, percentFigure(known), percentFigure(allowed), secondsFigure(*needed)}});
}

/// Another doubt, graver than the one said so far, which becomes a note.
void concludeRateDoubt(rulebook::Finding& finding, rulebook::Sentence why) {
    finding.notes.insert(finding.notes.begin(), finding.why);
    concludeAtLimit(finding, std::move(why));
}

/// Counts the meter's own accuracy, and says what is known of it at this flow.
void countMeter(JudgedRate& judged, const RateInput& input, Share accuracy) {
    auto& finding = judged.finding;
    const auto flow = gasFlowFigure(judged.rate->value);
    finding.notes.push_back({input.countMeterAccuracy ? Say::RateMeterCounted : Say::RateMeterNotCounted,
                             {percentFigure(accuracy)}});
    if (input.countMeterAccuracy) {
        judged.rate = withMeterAccuracy(*judged.rate, accuracy);
    }
    if (!input.meterMost) {
        return;
    }
    if (judged.rate->value > *input.meterMost) {
        concludeRateDoubt(finding, {Say::RateAboveMeter, {flow, gasFlowFigure(*input.meterMost)}});
    } else if (judged.rate->value < *input.meterMost * kRateAccuracyFrom) {
        concludeRateDoubt(
            finding, {Say::RateBelowMeterRange, {flow, gasFlowFigure(*input.meterMost * kRateAccuracyFrom)}});
    }
}

}  // namespace

JudgedRate judgeRate(const RateInput& input, const RulesInForce& rules) {
    JudgedRate judged;
    auto& finding = judged.finding;
    if (auto hindrance = rateHindrance(input)) {
        concludeOpen(finding, *hindrance);
        return judged;
    }
    const Entry* byHand = rules.known(Rule::TimingByHand);
    const Entry* aim = rules.known(Rule::MeterAccuracy);
    if (byHand == nullptr || aim == nullptr || !shareOf(*aim)) {
        concludeOpen(finding, {Say::LimitMissing});
        return judged;
    }
    const auto slip = *rulebook::durationOf(*byHand);
    const auto passed = volumePassed(*input.passed);
    const auto rate = passed ? gasRate(*passed, {*input.took, slip}) : tl::unexpected(passed.error());
    if (!rate) {
        concludeOpen(finding, {nothingPassed(*input.passed) ? Say::RateNothingPassed : Say::RateAbsurd});
        return judged;
    }
    if (const auto wrong = rateConditions(input)) {
        concludeOpen(finding, {*wrong});
        return judged;
    }
    judged.rate = *rate;
    concludeTiming(judged, input, slip, *aim);
    countMeter(judged, input, *shareOf(*aim));
    if (input.warm == false) {
        concludeRateDoubt(finding, {Say::RateCold});
    }
    return judged;
}

}  // namespace hearth::burner
