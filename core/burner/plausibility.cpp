// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/plausibility.h"

#include "core/burner/flue_figures.h"
#include "core/burner/flue_gas.h"
#include "core/burner/ratio.h"
#include "core/gas/named_gases.h"
#include "core/rulebook/against.h"

#include <algorithm>
#include <cmath>

namespace hearth::burner {

using quantity::kPercent;
using quantity::Share;
using quantity::Uncertain;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// O2 and CO2 in per cent.
struct FluePair {
    Uncertain oxygen;
    Uncertain carbonDioxide;
};

/// Distance from the line, percentage points, with the displays' uncertainty; its sign does not matter.
Uncertain gapOf(const FluePair& pair, const FuelLine& fuel) {
    const double most = fuel.co2Max.in(kPercent);
    const auto sum = pair.carbonDioxide + pair.oxygen * (fuel.co2Max / kOxygenInAir);
    return {std::abs(sum.value - most), sum.u};
}

/// Whether the pair could be this fuel's; `tolerance` in percentage points.
bool fitsLine(double oxygen, double carbonDioxide, const FuelLine& fuel, double tolerance) {
    const auto off = offLine(Share(oxygen, kPercent), Share(carbonDioxide, kPercent), fuel.co2Max);
    return off && std::abs(off->in(kPercent)) <= tolerance;
}

/// What would make the pair fit, likeliest first.
std::vector<Sentence> causesOf(const FluePair& pair, const FuelLine& fuel, double tolerance) {
    std::vector<Sentence> causes;
    const double oxygen = pair.oxygen.value;
    const double carbonDioxide = pair.carbonDioxide.value;
    for (const auto gas : {rulebook::Gas::NaturalGas, rulebook::Gas::Propane, rulebook::Gas::Butane}) {
        const auto other = usualFuelLine(gas);
        if (gas != fuel.gas && other && fitsLine(oxygen, carbonDioxide, *other, tolerance)) {
            causes.push_back({Say::PlausibleOtherFuel, {gas}});
        }
    }
    for (const double shift : {0.1, 10.0}) {
        const auto figure = [](double percent) { return percentFigure(Share(percent, kPercent), 2); };
        if (fitsLine(oxygen * shift, carbonDioxide, fuel, tolerance)) {
            causes.push_back({Say::PlausibleSlipOxygen, {figure(oxygen), figure(oxygen * shift)}});
        }
        if (fitsLine(oxygen, carbonDioxide * shift, fuel, tolerance)) {
            causes.push_back(
                {Say::PlausibleSlipCarbonDioxide, {figure(carbonDioxide), figure(carbonDioxide * shift)}});
        }
    }
    if (fitsLine(carbonDioxide, oxygen, fuel, tolerance)) {
        causes.push_back({Say::PlausibleSwapped});
    }
    if (causes.empty()) {
        causes.push_back({Say::PlausibleUnexplained});
    }
    return causes;
}

/// What no fuel's line can hold, whatever the tolerance.
std::optional<Sentence> impossibleOf(const FluePair& pair, const FuelLine& fuel, double tolerance) {
    if (pair.oxygen.value - expanded(pair.oxygen) > kOxygenInAir.in(kPercent)) {
        return Sentence{Say::PlausibleOxygenAboveAir, {percentFigure(Share(pair.oxygen.value, kPercent), 1)}};
    }
    if (pair.carbonDioxide.value - expanded(pair.carbonDioxide) > fuel.co2Max.in(kPercent) + tolerance) {
        return Sentence{
            Say::PlausibleCarbonDioxideAbove,
            {percentFigure(Share(pair.carbonDioxide.value, kPercent), 1), percentFigure(fuel.co2Max, 1)}};
    }
    return std::nullopt;
}

void judgeGap(Finding& finding, const FluePair& pair, const FuelLine& fuel, const rulebook::Entry& limit) {
    const auto gap = gapOf(pair, fuel);
    finding.measured = percentFigure(Share(gap.value, kPercent), 2);
    judgeAgainst(
        finding, limit, gap,
        {Say::PlausibleFits,
         Say::AtLimit,
         Say::PlausibleGap,
         {*finding.measured, *rulebook::figureOf(limit), percentFigure(Share(expanded(gap), kPercent), 2)}});
}

void noteTemperatures(Finding& finding, const PlausibilityInput& input) {
    if (input.flue && input.air && *input.flue <= *input.air) {
        finding.notes.push_back(
            {Say::PlausibleFlueNotHotter, {degreesFigure(*input.flue), degreesFigure(*input.air)}});
        finding.outcome = graver(finding.outcome, Outcome::LookAgain);
    }
}

/// Half of what a reading's last digit, or the display's step, is worth.
double halfStep(const ShareReading& reading, Share step) {
    return std::max(step, reading.digit).in(quantity::kOne) / 2.0;
}

bool couldBeRatio(const quantity::Decimal& printed, const ShareReading& carbonMonoxide,
                  const ShareReading& carbonDioxide, const Analyser& analyser) {
    constexpr double kForgiven = 1e-9;  // binary fractions
    const double co = carbonMonoxide.value.in(quantity::kOne);
    const double co2 = carbonDioxide.value.in(quantity::kOne);
    const double coHalf = halfStep(carbonMonoxide, analyser.carbonMonoxideStep);
    const double co2Half = halfStep(carbonDioxide, analyser.carbonDioxideStep);
    const double half = printed.lastDigit() / 2.0 + kForgiven;
    const double least = (co - coHalf) / (co2 + co2Half);
    if (printed.toDouble() + half < least) {
        return false;
    }
    return co2 <= co2Half || printed.toDouble() - half <= (co + coHalf) / (co2 - co2Half);
}

}  // namespace

Result<Share> offLine(Share oxygen, Share carbonDioxide, Share co2Max) {
    const auto onLine = carbonDioxideFromOxygen(oxygen, co2Max);
    if (!onLine) {
        return onLine;
    }
    if (carbonDioxide < Share{}) {
        return outOfRange(carbonDioxide.in(kPercent), "0", "");
    }
    return carbonDioxide - *onLine;
}

std::optional<FuelLine> usualFuelLine(rulebook::Gas gas) {
    const auto* named = gas::usualGas(gas);
    const auto burning = named == nullptr ? std::nullopt : gas::stoichiometry(named->composition);
    return burning ? std::optional(FuelLine{gas, burning->co2Max}) : std::nullopt;
}

Finding plausibility(const PlausibilityInput& input, const rulebook::RulesInForce& rules) {
    Finding finding{FindingKind::CombustionPlausible};
    const auto& readings = input.readings;
    if (auto absent = rulebook::absence(readings.oxygen, readings.carbonDioxide)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    if (readings.oxygen->value < Share{} || readings.carbonDioxide->value < Share{}) {
        concludeAtLimit(finding, {Say::CombustionBelowNought});
        return finding;
    }
    const auto* limit = rules.known(Rule::CombustionPlausibleGap);
    const auto shown = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    if (!shown) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    const double tolerance = Share(shown->value.toDouble(), quantity::shareUnit(shown->unit)).in(kPercent);
    // What the displays round counts; what the sensors may be wrong by is in the tolerance already.
    const Analyser displays{input.analyser.carbonMonoxideStep,
                            input.analyser.carbonDioxideStep,
                            input.analyser.oxygenStep,
                            {},
                            {},
                            {},
                            {},
                            {}};
    const FluePair pair{oxygenRead(*readings.oxygen, displays),
                        carbonDioxideRead(*readings.carbonDioxide, displays)};
    judgeGap(finding, pair, input.fuel, *limit);
    if (auto impossible = impossibleOf(pair, input.fuel, tolerance)) {
        finding.notes.clear();
        concludeAtLimit(finding, *std::move(impossible));
    }
    if (says(finding, Say::PlausibleFits)) {
        finding.notes.push_back({Say::PlausibleCannotSee});
        if (input.analyser.computesCarbonDioxide == true) {
            finding.notes.push_back({Say::PlausibleComputed});
        }
    } else {
        finding.outcome = Outcome::LookAgain;  // also when the firm has confirmed the entry
        for (auto& cause : causesOf(pair, input.fuel, tolerance)) {
            finding.notes.push_back(std::move(cause));
        }
    }
    noteTemperatures(finding, input);
    return finding;
}

Finding ratioAgrees(const rulebook::Given<quantity::Decimal>& printed, const FlueReadings& readings,
                    const Analyser& analyser) {
    Finding finding{FindingKind::RatioAgrees};
    if (auto absent = rulebook::absence(printed, readings.carbonMonoxide, readings.carbonDioxide)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    finding.measured = quantity::Figure{*printed, quantity::UnitCode::None};
    const auto computed = ratioOf(readings.carbonMonoxide->value, readings.carbonDioxide->value);
    if (!computed) {
        concludeOpen(finding, {readings.carbonDioxide->value == Share{} ? Say::CombustionNoFlueGas
                                                                        : Say::CombustionBelowNought});
        return finding;
    }
    const bool agrees = couldBeRatio(*printed, *readings.carbonMonoxide, *readings.carbonDioxide, analyser);
    finding.outcome = agrees ? Outcome::Pass : Outcome::LookAgain;
    finding.why = {agrees ? Say::PlausibleRatioAgrees : Say::PlausibleRatioDiffers,
                   {*finding.measured, ratioFigure(*computed)}};
    return finding;
}

}  // namespace hearth::burner
