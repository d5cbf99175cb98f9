// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/ratio.h"

#include "core/burner/flue_figures.h"
#include "core/rulebook/against.h"

namespace hearth::burner {

using rulebook::Finding;
using rulebook::Say;

namespace {

/// Why there is no ratio of these readings, if so.
std::optional<Say> whyNoRatio(const FlueReadings& readings) {
    const auto carbonMonoxide = readings.carbonMonoxide->value;
    const auto carbonDioxide = readings.carbonDioxide->value;
    if (carbonMonoxide < quantity::Share{} || carbonDioxide < quantity::Share{}) {
        return Say::CombustionBelowNought;
    }
    return carbonDioxide == quantity::Share{} ? std::optional(Say::CombustionNoFlueGas) : std::nullopt;
}

}  // namespace

Result<double> ratioOf(quantity::Share carbonMonoxide, quantity::Share carbonDioxide) {
    if (carbonMonoxide < quantity::Share{}) {
        return outOfRange(carbonMonoxide.in(quantity::kPpm), "0", "");
    }
    if (carbonDioxide <= quantity::Share{}) {
        return outOfRange(carbonDioxide.in(quantity::kPercent), "0", "");
    }
    return carbonMonoxide / carbonDioxide;
}

Result<quantity::Uncertain> ratioRead(const ShareReading& carbonMonoxide, const ShareReading& carbonDioxide,
                                      const Analyser& analyser) {
    if (const auto ratio = ratioOf(carbonMonoxide.value, carbonDioxide.value); !ratio) {
        return tl::unexpected(ratio.error());
    }
    constexpr double kPpmInPercent = 10000.0;
    return carbonMonoxideRead(carbonMonoxide, analyser) / kPpmInPercent /
           carbonDioxideRead(carbonDioxide, analyser);
}

Finding ratioFinding(rulebook::FindingKind kind, const FlueReadings& readings, const Analyser& analyser,
                     const rulebook::Entry* limit) {
    Finding finding{kind};
    if (auto absent = rulebook::absence(readings.carbonMonoxide, readings.carbonDioxide)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    if (const auto none = whyNoRatio(readings)) {
        concludeOpen(finding, {*none});
        return finding;
    }
    const auto ratio = *ratioRead(*readings.carbonMonoxide, *readings.carbonDioxide, analyser);
    finding.measured = ratioFigure(ratio.value);
    const auto shown = limit == nullptr ? std::nullopt : rulebook::figureOf(*limit);
    judgeAgainst(
        finding, limit, ratio,
        {Say::CombustionRatioWithin,
         Say::CombustionAtLimit,
         Say::CombustionRatioBeyond,
         {*finding.measured, shown.value_or(quantity::Figure{}), ratioUncertaintyFigure(expanded(ratio))}});
    if (analyser.computesCarbonDioxide == true) {
        finding.notes.push_back({Say::CarbonDioxideComputed});
    }
    return finding;
}

}  // namespace hearth::burner
