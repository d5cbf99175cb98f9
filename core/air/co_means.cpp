// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/co_means.h"

#include "core/air/co_guidelines.h"
#include "core/air/co_units.h"
#include "core/air/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <utility>

namespace hearth::air {

using quantity::Duration;
using quantity::kHour;
using quantity::kMinute;
using quantity::kPpm;
using quantity::Share;
using quantity::UnitCode;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

double coInUnit(Share share, UnitCode unit) {
    return unit == UnitCode::MilligramPerCubicMetre ? massFromShare(share).milligramsPerCubicMetre
                                                    : share.in(quantity::shareUnit(unit));
}

std::optional<Share> coLimit(const Entry* entry) {
    const auto figure = entry == nullptr ? std::nullopt : rulebook::figureOf(*entry);
    return figure ? coShare(*figure) : std::nullopt;
}

/// A level with the instrument's uncertainty, in an entry's own unit.
quantity::Uncertain coMeasured(Share level, const CoSeries& series, UnitCode unit) {
    return quantity::readOff(coInUnit(level, unit), coInUnit(series.digit, unit),
                             coInUnit(series.accuracy, unit));
}

std::vector<CoReading> mostExposed(const CoSeries& series) {
    std::vector<CoReading> most;
    std::optional<Share> highest;
    for (const auto place : kCoIndoors) {
        auto readings = readingsAt(series, place);
        const auto mean = highestMean(readings, kCoShortExposure);
        if (mean && (!highest || mean->mean > *highest)) {
            highest = mean->mean;
            most = std::move(readings);
        }
    }
    return most;
}

namespace {

/// How grave a mean is before what provenance makes of it.
enum class MeanRank { Open, High, Beyond };
struct JudgedMean {
    Finding finding;
    MeanRank rank = MeanRank::Open;
    CoMean mean;
};

JudgedMean judgeMean(FindingKind kind, Rule rule, Duration window, const std::vector<CoReading>& readings,
                     const CoSeries& series, const RulesInForce& rules) {
    JudgedMean judged{Finding{kind}, MeanRank::Open, *highestMean(readings, window)};
    auto& finding = judged.finding;
    const auto& mean = judged.mean;
    const auto figure = ppmFigure(mean.mean);
    finding.measured = figure;
    const auto* entry = rules.known(rule);
    const auto limit = coLimit(entry);
    if (!limit) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
        return judged;
    }
    const auto limitShown = limitFigure(*entry);
    if (mean.measured >= window) {
        rulebook::judgeAgainst(
            finding, entry, coMeasured(mean.mean, series, limitShown.unit),
            {Say::CoMeanWithin, Say::CoMeanNear, Say::CoMeanBeyond, {figure, limitShown, figureOf(window)}});
        judged.rank = rulebook::says(finding, Say::CoMeanBeyond) ? MeanRank::Beyond : MeanRank::Open;
        return judged;
    }
    rulebook::restOn(finding, *entry);
    const double spent = mean.mean.in(kPpm)*mean.measured.in(kMinute);
    const std::vector<rulebook::Argument> arguments{figure, figureOf(mean.measured), figureOf(window)};
    auto withLimit = arguments;
    withLimit.emplace_back(limitShown);
    if (spent > limit->in(kPpm)*window.in(kMinute)) {
        rulebook::concludeBeyond(
            finding, *entry,
            {Say::CoMeanPartialSpent, {figure, figureOf(mean.measured), figureOf(window), limitShown}});
        judged.rank = MeanRank::Beyond;
    } else if (mean.mean > *limit) {
        rulebook::concludeOpen(finding, {Say::CoMeanPartialHigh, withLimit});
        judged.rank = MeanRank::High;
    } else {
        rulebook::concludeOpen(finding, {Say::CoMeanPartial, arguments});
    }
    return judged;
}

bool isGraverMean(const JudgedMean& a, const JudgedMean& b) {
    if (a.rank != b.rank) {
        return a.rank > b.rank;
    }
    return a.mean.measured != b.mean.measured ? a.mean.measured > b.mean.measured : a.mean.mean > b.mean.mean;
}

/// Guidelines for times up to `most` and above `least` that the readings lasted; the one for exactly `most`
/// is told also where it is kept.
void noteGuidelines(Finding& finding, const std::vector<CoReading>& readings, Duration least, Duration most) {
    const auto whole = meanOf(readings);
    for (const auto& guideline : coGuidelines()) {
        if (guideline.over <= least || guideline.over > most || !whole) {
            continue;
        }
        const auto limit = guideline.ppm > 0.0 ? Share(guideline.ppm, kPpm)
                                               : shareFromMass({guideline.milligramsPerCubicMetre});
        const auto mean = highestMean(readings, guideline.over);
        if (mean->measured >= guideline.over && mean->mean > limit) {
            finding.notes.push_back(
                {Say::CoGuidelineAbove, {ppmFigure(mean->mean), ppmFigure(limit), figureOf(guideline.over)}});
        } else if (guideline.over == most && guideline.ppm > 0.0) {
            finding.notes.push_back({Say::CoGuideline, {ppmFigure(limit), figureOf(guideline.over)}});
        }
    }
}

}  // namespace

std::optional<Finding> coMeanFinding(FindingKind kind, Rule rule, Duration window, const CoSeries& series,
                                     const RulesInForce& rules) {
    std::optional<JudgedMean> gravest;
    std::vector<CoReading> where;
    for (const auto place : kCoIndoors) {
        const auto readings = readingsAt(series, place);
        if (!meanOf(readings)) {
            continue;
        }
        auto judged = judgeMean(kind, rule, window, readings, series, rules);
        if (!gravest || isGraverMean(judged, *gravest)) {
            gravest = std::move(judged);
            where = readings;
        }
    }
    if (!gravest) {
        return std::nullopt;
    }
    auto& finding = gravest->finding;
    constexpr double kMuch = 3.0;  // for a note alone: a third of the time between two readings
    if (gravest->mean.longestGap * kMuch > window) {
        finding.notes.push_back({Say::CoGap, {figureOf(gravest->mean.longestGap)}});
    }
    constexpr double kDay = 24.0;
    const bool isShort = window <= kCoShortExposure;
    noteGuidelines(finding, where, isShort ? Duration() : kCoShortExposure,
                   isShort ? kCoShortExposure : std::max(window, Duration(kDay, kHour)));
    if (const auto gap = gapIn(series); gap && finding.outcome != Outcome::Fail) {
        finding.notes.push_back({*gap});
        finding.outcome = Outcome::NoVerdict;
    }
    return finding;
}

}  // namespace hearth::air
