// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/combustion.h"

#include "core/burner/flue_figures.h"
#include "core/burner/ratio.h"
#include "core/rulebook/against.h"

#include <algorithm>
#include <utility>

namespace hearth::burner {

using quantity::Figure;
using quantity::UnitCode;
using rulebook::Comparison;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

/// One rate of the burner: its readings and what its findings are called.
struct Rate {
    const FlueReadings& readings;
    FindingKind ratio;
    FindingKind carbonMonoxide;
    FindingKind carbonDioxide;
    const std::optional<rulebook::Range>& range;

    [[nodiscard]] bool isEntered() const {
        return readings.carbonMonoxide.isEntered() || readings.carbonDioxide.isEntered();
    }
};

/// The limits of one appliance; nothing where neither maker nor rule book has one.
struct Limits {
    std::optional<Entry> ratio;
    std::optional<Entry> carbonMonoxide;
};

std::optional<Entry> limitOfCombustion(const std::optional<Figure>& makers, Rule makersRule,
                                       std::optional<Rule> rule, const CombustionInput& input,
                                       const RulesInForce& rules) {
    if (makers) {
        return makersEntry({makersRule}, *makers, Comparison::AtMost, input.maker.source);
    }
    const Entry* entry = rule ? rules.find(*rule) : nullptr;
    return entry == nullptr ? std::nullopt : std::optional(*entry);
}

Limits limitsOf(const CombustionInput& input, const RulesInForce& rules) {
    const auto ratioRule = input.kind ? ratioRuleOf(*input.kind) : std::nullopt;
    const auto gasRule = input.kind ? carbonMonoxideRuleOf(*input.kind) : std::nullopt;
    return {limitOfCombustion(input.maker.ratioMost, Rule::CombustionRatio, ratioRule, input, rules),
            limitOfCombustion(input.maker.carbonMonoxideMost, Rule::CombustionCarbonMonoxide, gasRule, input,
                              rules)};
}

/// What to do beyond a limit, in the order of the procedure.
void addSteps(Finding& finding, const CombustionInput& input) {
    if (finding.outcome != Outcome::Fail) {
        return;
    }
    const bool flue = !input.kind || hasFlue(*input.kind);
    finding.notes.push_back({flue ? Say::CombustionCheckFlue : Say::CombustionMeasureAgain});
    finding.notes.push_back({Say::CombustionStillBeyond});
}

/// Why a ratio that was read is held against nothing.
Say whyNoLimit(const CombustionInput& input) {
    if (!input.kind) {
        return Say::CombustionKindUnknown;
    }
    return *input.kind == ApplianceKind::Hotplate ? Say::CombustionNotByRatio : Say::CombustionNoLimitForKind;
}

Finding judgeRatio(const Rate& rate, const CombustionInput& input, const std::optional<Entry>& limit) {
    auto finding = ratioFinding(rate.ratio, rate.readings, input.analyser, limit ? &*limit : nullptr);
    if (!limit && finding.measured) {
        concludeOpen(finding, {whyNoLimit(input)});
    }
    addSteps(finding, input);
    return finding;
}

bool isShareUnit(UnitCode unit) {
    return unit == UnitCode::Ppm || unit == UnitCode::Percent;
}

Finding judgeCarbonMonoxide(const Rate& rate, const CombustionInput& input, const Entry& limit) {
    Finding finding{rate.carbonMonoxide};
    if (auto absent = rulebook::absence(rate.readings.carbonMonoxide)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    const auto& reading = *rate.readings.carbonMonoxide;
    if (reading.value < quantity::Share{}) {
        concludeOpen(finding, {Say::CombustionBelowNought});
        return finding;
    }
    finding.measured = ppmRead(reading);
    const auto shown = rulebook::figureOf(limit);
    if (shown && !isShareUnit(shown->unit)) {
        restOn(finding, limit);
        concludeOpen(finding, {Say::CombustionLimitUnit});
        return finding;
    }
    const auto inPpm = carbonMonoxideRead(reading, input.analyser);
    const double scale = shown ? quantity::kPpm.factor / quantity::shareUnit(shown->unit).factor : 1.0;
    judgeAgainst(finding, limit, inPpm * scale,
                 {Say::CarbonMonoxideWithin,
                  Say::CombustionAtLimit,
                  Say::CarbonMonoxideBeyond,
                  {*finding.measured, shown.value_or(Figure{}),
                   ppmFigure(quantity::Share(expanded(inPpm), quantity::kPpm), 1)}});
    addSteps(finding, input);
    return finding;
}

Finding judgeCarbonDioxide(const Rate& rate, const CombustionInput& input) {
    Finding finding{rate.carbonDioxide};
    if (auto absent = rulebook::absence(rate.readings.carbonDioxide)) {
        concludeOpen(finding, *std::move(absent));
        return finding;
    }
    const auto& range = *rate.range;
    const auto entry =
        makersEntry({Rule::CombustionCarbonDioxide}, range, Comparison::Within, input.maker.source);
    finding.measured = percentRead(*rate.readings.carbonDioxide);
    if (!isShareUnit(range.unit)) {
        restOn(finding, entry);
        concludeOpen(finding, {Say::CombustionLimitUnit});
        return finding;
    }
    const double scale = quantity::kPercent.factor / quantity::shareUnit(range.unit).factor;
    judgeAgainst(finding, entry, carbonDioxideRead(*rate.readings.carbonDioxide, input.analyser) * scale,
                 {Say::CarbonDioxideWithin,
                  Say::CarbonDioxideAtEnd,
                  Say::CarbonDioxideBeyond,
                  {*finding.measured, Figure{range.least, range.unit}, Figure{range.most, range.unit}}});
    addSteps(finding, input);
    return finding;
}

void judgeRate(std::vector<Finding>& parts, const Rate& rate, const CombustionInput& input,
               const Limits& limits) {
    parts.push_back(judgeRatio(rate, input, limits.ratio));
    if (limits.carbonMonoxide) {
        parts.push_back(judgeCarbonMonoxide(rate, input, *limits.carbonMonoxide));
    }
    if (rate.range) {
        parts.push_back(judgeCarbonDioxide(rate, input));
    }
}

/// The gravest of the parts speaks for the whole; a rate that is needed and missing leaves it open, unless
/// something has failed already.
Finding overallOf(const std::vector<Finding>& parts, std::optional<Say> missing) {
    Finding overall{FindingKind::Combustion};
    const auto gravest = std::max_element(parts.begin(), parts.end(), [](const auto& a, const auto& b) {
        return a.outcome != b.outcome && graver(a.outcome, b.outcome) == b.outcome;
    });
    if (missing && (gravest == parts.end() || gravest->outcome != Outcome::Fail)) {
        concludeOpen(overall, {*missing});
        return overall;
    }
    for (const auto& limit : gravest->limits) {
        restOn(overall, limit);
    }
    overall.outcome = gravest->outcome;
    overall.measured = gravest->measured;
    if (overall.outcome == Outcome::Pass) {
        overall.why = {Say::CombustionInOrder};
        return overall;
    }
    overall.why = gravest->why;
    overall.notes = gravest->notes;
    if (missing) {
        overall.notes.push_back({*missing});
    }
    return overall;
}

}  // namespace

CombustionFindings combustion(const CombustionInput& input, const RulesInForce& rules) {
    const Rate maximum{input.atMaximum, FindingKind::CombustionRatioMaximum,
                       FindingKind::CarbonMonoxideMaximum, FindingKind::CarbonDioxideMaximum,
                       input.maker.carbonDioxideAtMaximum};
    const Rate minimum{input.atMinimum, FindingKind::CombustionRatioMinimum,
                       FindingKind::CarbonMonoxideMinimum, FindingKind::CarbonDioxideMinimum,
                       input.maker.carbonDioxideAtMinimum};
    const auto limits = limitsOf(input, rules);
    // The maker gives a range for a rate: it is to be read at that rate.
    const bool minimumNeeded = (input.kind && needsBothRates(*input.kind)) || minimum.range;
    std::optional<Say> missing;
    if (!input.kind) {
        missing = Say::CombustionKindUnknown;
    }
    if (minimumNeeded && !minimum.isEntered()) {
        missing = Say::CombustionMinimumMissing;
    }
    if (!maximum.isEntered()) {
        missing = minimumNeeded ? Say::CombustionMaximumMissing : Say::ReadingMissing;
    }
    CombustionFindings findings{Finding{FindingKind::Combustion}, {}};
    judgeRate(findings.parts, maximum, input, limits);
    if (minimumNeeded || minimum.isEntered()) {
        judgeRate(findings.parts, minimum, input, limits);
    }
    findings.overall = overallOf(findings.parts, missing);
    return findings;
}

}  // namespace hearth::burner
