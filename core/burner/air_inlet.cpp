// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/air_inlet.h"

#include "core/burner/flue_figures.h"
#include "core/rulebook/against.h"

#include <algorithm>

namespace hearth::burner {

using quantity::kPercent;
using quantity::Share;
using quantity::Uncertain;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

namespace {

/// One of the two readings with what judges it.
struct InletReading {
    FindingKind kind;
    Rule rule;
    Share step;
    std::optional<Share> accuracy;
    Say good;
    Say bad;
};

Uncertain readAtInlet(const ShareReading& reading, const InletReading& what, bool zeroed) {
    const double value = reading.value.in(kPercent);
    const double step = std::max(what.step, reading.digit).in(kPercent);
    if (!zeroed) {
        return quantity::readOff(value, step, what.accuracy.value_or(Share{}).in(kPercent));
    }
    // Twice read: in fresh air and here.
    return quantity::readOff(value, step) - quantity::readOff(0.0, step);
}

/// What to do when products get into the air, in the order of the procedure.
void addRemedy(Finding& finding) {
    finding.notes.push_back({Say::CombustionCheckFlue});
    finding.notes.push_back({Say::CombustionStillBeyond});
}

Finding judgeInlet(const rulebook::Given<ShareReading>& reading, const InletReading& what,
                   const Analyser& analyser, const rulebook::RulesInForce& rules) {
    Finding finding{what.kind};
    if (auto absent = rulebook::absence(reading)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    if (reading->value < Share{}) {
        concludeOpen(finding, {Say::CombustionBelowNought});
        return finding;
    }
    const bool zeroed = analyser.zeroedOutdoors == true;
    const auto measured = readAtInlet(*reading, what, zeroed);
    const auto* limit = rules.find(what.rule);
    const auto shown = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    finding.measured = percentRead(*reading);
    judgeAgainst(finding, limit, measured,
                 {what.good,
                  Say::AtLimit,
                  what.bad,
                  {*finding.measured, shown.value_or(quantity::Figure{}),
                   percentFigure(Share(expanded(measured), kPercent), 2)}});
    if (finding.outcome == Outcome::Fail) {
        addRemedy(finding);
    }
    if (!zeroed) {
        if (finding.outcome == Outcome::Pass) {
            concludeAtLimit(finding, {Say::AnalyserNotZeroed});
        } else {
            finding.notes.push_back({Say::AnalyserNotZeroed});
        }
    }
    return finding;
}

}  // namespace

AirInletFindings airInlet(const FlueReadings& readings, const Analyser& analyser,
                          const rulebook::RulesInForce& rules) {
    const InletReading oxygen{FindingKind::AirInletOxygen, Rule::AirInletOxygen,    analyser.oxygenStep,
                              analyser.oxygenAccuracy,     Say::AirInletOxygenGood, Say::AirInletOxygenLow};
    const InletReading carbonDioxide{FindingKind::AirInletCarbonDioxide, Rule::AirInletCarbonDioxide,
                                     analyser.carbonDioxideStep,         analyser.carbonDioxideAccuracy,
                                     Say::AirInletCarbonDioxideGood,     Say::AirInletCarbonDioxideHigh};
    return {judgeInlet(readings.oxygen, oxygen, analyser, rules),
            judgeInlet(readings.carbonDioxide, carbonDioxide, analyser, rules)};
}

Result<Share> recirculation(Share atInlet, Share inProducts) {
    if (inProducts <= Share{}) {
        return outOfRange(inProducts.in(kPercent), "0", "");
    }
    if (atInlet < Share{} || atInlet > inProducts) {
        return outOfRange(atInlet.in(kPercent), "0",
                          quantity::Decimal::rounded(inProducts.in(kPercent), 2).text());
    }
    return Share(atInlet / inProducts, quantity::kOne);
}

}  // namespace hearth::burner
