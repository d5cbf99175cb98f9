// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/room_co.h"

#include "core/air/co_guidelines.h"
#include "core/air/co_means.h"
#include "core/air/cohb.h"
#include "core/air/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace hearth::air {

using quantity::Duration;
using quantity::kPpm;
using quantity::Share;
using quantity::UnitCode;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// What has been said stays as the first note behind what is graver.
void sayFirst(Finding& finding, Sentence sentence) {
    finding.notes.insert(finding.notes.begin(), std::move(finding.why));
    finding.why = std::move(sentence);
}

std::optional<Share> indoorPeak(const CoSeries& series) {
    std::optional<Share> peak;
    for (const auto& reading : series.readings) {
        if (reading.place != CoPlace::Outside) {
            peak = std::max(peak.value_or(reading.level), reading.level);
        }
    }
    return peak;
}

Finding backgroundFinding(const CoSeries& series) {
    const auto outside = readingsAt(series, CoPlace::Outside);
    if (outside.empty()) {
        return rulebook::noVerdict(FindingKind::RoomCoBackground, {Say::CoBackgroundMissing});
    }
    Finding finding{FindingKind::RoomCoBackground};
    const auto& first = outside.front();
    finding.measured = ppmFigure(first.level);
    const auto read = coMeasured(first.level, series, UnitCode::Ppm);
    const bool late = std::any_of(series.readings.begin(), series.readings.end(), [&](const auto& reading) {
        return reading.place != CoPlace::Outside && reading.at < first.at;
    });
    finding.why = {Say::CoBackgroundNoted, {*finding.measured}};
    finding.outcome = Outcome::Pass;
    // More, or less, than nought by more than the instrument may be off.
    if (std::abs(read.value) > quantity::expanded(read)) {
        rulebook::concludeAtLimit(finding, {Say::CoBackgroundRaised, {*finding.measured}});
    }
    if (late) {
        finding.outcome = Outcome::LookAgain;
        sayFirst(finding, {Say::CoBackgroundLate});
    }
    return finding;
}

/// How long the room must be sampled for: of what is known the longer while the appliance is not said.
std::optional<Duration> samplingTime(const RoomCoInput& input, const RulesInForce& rules) {
    std::optional<Duration> longest;
    for (const auto& [rule, flueless] :
         {std::pair{Rule::RoomCoTimeFlued, false}, std::pair{Rule::RoomCoTimeFlueless, true}}) {
        const auto* entry = rules.known(rule);
        if (input.flueless.value_or(flueless) != flueless) {
            continue;
        }
        const auto time = entry == nullptr ? std::nullopt : rulebook::durationOf(*entry);
        if (!time) {
            return std::nullopt;
        }
        longest = std::max(longest.value_or(*time), *time);
    }
    return longest;
}

}  // namespace

CoTrend roomTrend(const RoomCoInput& input, const RulesInForce& rules) {
    CoTrend told;
    bool any = false;
    for (const auto place : kCoIndoors) {
        const auto readings = readingsAt(input.series, place);
        if (readings.empty()) {
            continue;
        }
        const auto all = readings.back().at - readings.front().at;
        const auto trend = trendOf(readings, input.series.digit, samplingTime(input, rules).value_or(all));
        if (!any || trend.trend == Trend::Rising) {
            told = trend;
        }
        any = true;
    }
    return told;
}

namespace {

void noteTrend(Finding& finding, const CoTrend& trend) {
    const auto say = trend.trend == Trend::Rising    ? Say::CoTrendRising
                     : trend.trend == Trend::Steady  ? Say::CoTrendSteady
                     : trend.trend == Trend::Falling ? Say::CoTrendFalling
                                                     : Say::CoTrendUnknown;
    if (say == Say::CoTrendUnknown) {
        finding.notes.push_back({say});
        return;
    }
    finding.notes.push_back(
        {say, {ppmFigure(trend.change), figureOf(trend.over), ppmFigure(trend.uncertainty)}});
}

void noteAlarm(Finding& finding, Share peak) {
    const CoAlarmRow* highest = nullptr;
    for (const auto& row : coAlarmRows()) {
        if (row.by && peak >= Share(row.ppm, kPpm)) {
            highest = &row;
        }
    }
    if (highest != nullptr) {
        finding.notes.push_back(
            {Say::CoAlarmWithin,
             {ppmFigure(peak), ppmFigure(Share(highest->ppm, kPpm)), figureOf(*highest->by)}});
    }
}

/// A cooker's peak that the firm's own copy allows, fallen since to where no action is needed; concludes
/// the finding.
bool isShortPeak(Finding& finding, const RoomCoInput& input, Share peak, Trend trend,
                 const RulesInForce& rules) {
    const auto* mostEntry = rules.known(Rule::RoomCoCookerPeakMost);
    const auto* quietEntry = rules.known(Rule::RoomCoNoActionMost);
    const auto most = coLimit(mostEntry);
    const auto quiet = coLimit(quietEntry);
    const bool calm = trend == Trend::Falling || trend == Trend::Steady;
    if (input.cooker != true || !most || !quiet || !calm || peak <= *quiet || peak > *most) {
        return false;
    }
    Share latest;
    for (const auto place : kCoIndoors) {
        const auto readings = readingsAt(input.series, place);
        latest = readings.empty() ? latest : std::max(latest, readings.back().level);
    }
    if (latest > *quiet) {
        return false;
    }
    rulebook::restOn(finding, *mostEntry);
    rulebook::restOn(finding, *quietEntry);
    rulebook::concludeAtLimit(finding,
                              {Say::CoShortPeak, {ppmFigure(peak), ppmFigure(*most), ppmFigure(latest)}});
    return true;
}

/// By the action levels of the firm's own copy of the standard.
void judgeByActionLevels(Finding& finding, const RoomCoInput& input, Share peak, const CoTrend& trend,
                         const RulesInForce& rules) {
    if (isShortPeak(finding, input, peak, trend.trend, rules)) {
        return;
    }
    const auto* leave = rules.known(Rule::RoomCoLeaveFrom);
    if (const auto from = coLimit(leave); from && peak >= *from) {
        rulebook::restOn(finding, *leave);
        rulebook::concludeBeyond(finding, *leave, {Say::CoLeave, {ppmFigure(peak), limitFigure(*leave)}});
        return;
    }
    const auto* quiet = rules.find(Rule::RoomCoNoActionMost);
    if (!coLimit(quiet)) {
        if (quiet != nullptr) {
            rulebook::restOn(finding, *quiet);
        }
        rulebook::concludeOpen(finding, {Say::CoLevelsMissing, {ppmFigure(peak)}});
        return;
    }
    const auto limit = limitFigure(*quiet);
    rulebook::judgeAgainst(
        finding, quiet, coMeasured(peak, input.series, limit.unit),
        {Say::CoNoAction, Say::CoNearAction, Say::CoInvestigate, {ppmFigure(peak), limit}});
    if (finding.outcome == Outcome::Pass && trend.trend == Trend::Rising) {
        finding.outcome = Outcome::LookAgain;
        finding.why = {Say::CoStillRising};  // "not rising" must not be said
    } else if (finding.outcome == Outcome::Pass && trend.trend == Trend::Unknown) {
        finding.outcome = Outcome::LookAgain;
        finding.why = {Say::CoTrendUnknown};
    }
}

Finding levelOfRoom(const RoomCoInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::RoomCoLevel};
    const auto highest = peakOf(input.series);
    const auto indoors = indoorPeak(input.series);
    const Share danger = dangerFrom(rules);
    if (highest && *highest >= danger) {
        finding.measured = ppmFigure(*highest);
        finding.limit = ppmFigure(danger);
        finding.comparison = rulebook::Comparison::Below;
        if (const auto* entry = rules.known(Rule::RoomCoDangerFrom)) {
            finding.limits.push_back(*entry);
        }
        finding.outcome = Outcome::Fail;
        finding.why = {Say::CoDanger, {*finding.measured, *finding.limit}};
    } else if (!indoors) {
        const bool unreadable = input.series.someUnreadable;
        rulebook::concludeOpen(finding, {unreadable ? Say::ReadingUnusable : Say::CoRoomMissing});
        return finding;
    } else {
        finding.measured = ppmFigure(*indoors);
        const auto trend = roomTrend(input, rules);
        judgeByActionLevels(finding, input, *indoors, trend, rules);
        const auto* raised = rules.known(Rule::RoomCoRaisedFrom);
        if (const auto from = coLimit(raised); from && *indoors >= *from) {
            finding.limits.push_back(*raised);
            const Sentence warning{Say::CoRaised, {ppmFigure(*indoors), limitFigure(*raised)}};
            if (finding.outcome == Outcome::Fail) {
                finding.notes.push_back(warning);
            } else {
                sayFirst(finding, warning);
                finding.outcome = rulebook::graver(finding.outcome, Outcome::LookAgain);
            }
        }
        noteTrend(finding, trend);
    }
    if (indoors) {
        noteAlarm(finding, *indoors);
    }
    if (const auto gap = gapIn(input.series)) {
        finding.notes.push_back({*gap});
        finding.outcome = rulebook::graver(finding.outcome, Outcome::NoVerdict);
    }
    return finding;
}

// --- how it was sampled ---

Finding samplingFinding(const RoomCoInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::RoomCoSampling};
    if (input.series.readAtDistance) {
        finding.notes.push_back({Say::CoReadAtDistance});
    }
    const auto room = readingsAt(input.series, CoPlace::Room);
    if (const auto absent = rulebook::absence(input.height, input.distance); absent || room.empty()) {
        rulebook::concludeOpen(finding, absent.value_or(Sentence{Say::CoRoomMissing}));
        return finding;
    }
    const auto time = samplingTime(input, rules);
    const auto* heightEntry = rules.known(Rule::RoomCoSampleHeight);
    const auto* distanceEntry = rules.known(Rule::RoomCoSampleDistance);
    const auto height = heightEntry == nullptr ? std::nullopt : rulebook::lengthOf(*heightEntry);
    const auto distance = distanceEntry == nullptr ? std::nullopt : rulebook::lengthOf(*distanceEntry);
    if (!time || !height || !distance) {
        rulebook::concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    rulebook::restOn(finding, *heightEntry);
    rulebook::restOn(finding, *distanceEntry);
    finding.limit.reset();  // three things are asked for
    for (const auto rule : {Rule::RoomCoTimeFlued, Rule::RoomCoTimeFlueless}) {
        const auto* entry = rules.known(rule);
        if (entry != nullptr && rulebook::durationOf(*entry) == time) {
            rulebook::restOn(finding, *entry);
        }
    }
    const auto sampled = room.back().at - room.front().at;
    std::vector<Sentence> slips;
    if (!rulebook::holds(input.height->in(quantity::kMetre), rulebook::Comparison::Equals,
                         height->in(quantity::kMetre))) {
        slips.push_back({Say::CoSamplingHeight, {figureOf(*input.height), figureOf(*height)}});
    }
    if (*input.distance < *distance) {
        slips.push_back({Say::CoSamplingNearAppliance, {figureOf(*input.distance), figureOf(*distance)}});
    }
    if (sampled < *time) {
        slips.push_back({Say::CoSamplingShort, {figureOf(sampled), figureOf(*time)}});
    }
    if (slips.empty()) {
        rulebook::concludeWithin(
            finding,
            {Say::CoSamplingWithin, {figureOf(*input.height), figureOf(*input.distance), figureOf(sampled)}});
        return finding;
    }
    rulebook::concludeAtLimit(finding, slips.front());
    finding.notes.insert(finding.notes.end(), slips.begin() + 1, slips.end());
    return finding;
}

/// The strongest of the places.
Finding bloodOfRoom(const CoSeries& series, const RulesInForce& rules) {
    auto strongest = bloodWarning({}, rules);
    const auto strength = [](const Finding& finding) {
        return finding.outcome == Outcome::Fail ? 2 : finding.outcome == Outcome::LookAgain ? 1 : 0;
    };
    for (const auto place : kCoIndoors) {
        const auto readings = readingsAt(series, place);
        auto one = bloodWarning(readings, rules);
        if (!readings.empty() && strength(one) >= strength(strongest)) {
            strongest = std::move(one);
        }
    }
    return strongest;
}

}  // namespace

std::vector<Finding> roomCo(const RoomCoInput& input, const RulesInForce& rules) {
    std::vector<Finding> findings{backgroundFinding(input.series), levelOfRoom(input, rules)};
    for (auto mean : {coMeanFinding(FindingKind::RoomCoShortMean, Rule::RoomCoShortLimit, kCoShortExposure,
                                    input.series, rules),
                      coMeanFinding(FindingKind::RoomCoLongMean, Rule::RoomCoLongLimit, kCoLongExposure,
                                    input.series, rules)}) {
        if (mean) {
            findings.push_back(std::move(*mean));
        }
    }
    findings.push_back(samplingFinding(input, rules));
    findings.push_back(bloodOfRoom(input.series, rules));
    return findings;
}

Share dangerFrom(const RulesInForce& rules) {
    const Share most(100.0, kPpm);
    const Share usual(20.0, kPpm);
    return std::min(most, coLimit(rules.known(Rule::RoomCoDangerFrom)).value_or(usual));
}

}  // namespace hearth::air
