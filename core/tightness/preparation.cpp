// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/preparation.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <algorithm>

namespace hearth::tightness {

using rulebook::Edition;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::noVerdict;
using rulebook::Outcome;
using rulebook::plainFinding;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// When to speak of a calibration that runs out: a reminder, not a limit.
constexpr int kSoonDays = 30;

/// How far two displays stand apart; nought where the second was not read.
quantity::PressureChange apart(const Given<Reading>& first, const Given<Reading>& second) {
    if (!first || !second) {
        return {};
    }
    const auto difference = first->pressure - second->pressure;
    return difference < quantity::PressureChange{} ? -difference : difference;
}

/// The second display may have been read once only; what it is held against must be there.
std::optional<Sentence> lackOf(const Displays& displays) {
    if (!displays.secondStart.isEntered() && !displays.secondEnd.isEntered()) {
        return Sentence{Say::ReadingMissing};
    }
    if (displays.secondStart.isEntered()) {
        if (auto absent = absence(displays.firstStart, displays.secondStart)) {
            return absent;
        }
    }
    return displays.secondEnd.isEntered() ? absence(displays.firstEnd, displays.secondEnd) : std::nullopt;
}

}  // namespace

Finding safeToTouch(std::optional<SafeToTouch> answer) {
    constexpr auto kKind = FindingKind::SafeToTouch;
    if (!answer) {
        return noVerdict(kKind, {Say::ReadingMissing});
    }
    switch (*answer) {
        case SafeToTouch::Safe:
            return plainFinding(kKind, Outcome::Pass, Say::SafeToTouchDone);
        case SafeToTouch::VoltageFound:
            return plainFinding(kKind, Outcome::Fail, Say::SafeToTouchVoltage);
        case SafeToTouch::NotDone:
            break;
    }
    return noVerdict(kKind, {Say::SafeToTouchNotDone});
}

Finding openEnds(std::optional<OpenEnds> answer) {
    constexpr auto kKind = FindingKind::OpenEnds;
    if (!answer) {
        return noVerdict(kKind, {Say::ReadingMissing});
    }
    switch (*answer) {
        case OpenEnds::NoneSeen:
            return plainFinding(kKind, Outcome::Pass, Say::NoOpenEnds);
        case OpenEnds::FoundSealed:
            return plainFinding(kKind, Outcome::Pass, Say::OpenEndsSealed);
        case OpenEnds::FoundOpen:
            return plainFinding(kKind, Outcome::Fail, Say::OpenEndsFound);
        case OpenEnds::NotLooked:
            break;
    }
    return noVerdict(kKind, {Say::OpenEndsNotLooked});
}

Finding smellOnArrival(std::optional<bool> smelled) {
    constexpr auto kKind = FindingKind::SmellOnArrival;
    if (!smelled) {
        return noVerdict(kKind, {Say::SmellNotAsked});
    }
    return *smelled ? plainFinding(kKind, Outcome::Fail, Say::SmellOnArrival)
                    : plainFinding(kKind, Outcome::Pass, Say::NoSmellOnArrival);
}

Finding visualInspection(std::optional<Visual> answer) {
    constexpr auto kKind = FindingKind::VisualInspection;
    if (!answer) {
        return noVerdict(kKind, {Say::ReadingMissing});
    }
    switch (*answer) {
        case Visual::Sound:
            return plainFinding(kKind, Outcome::Pass, Say::VisualSound);
        case Visual::Defects:
            return plainFinding(kKind, Outcome::LookAgain, Say::VisualDefects);
        case Visual::NotDone:
            break;
    }
    return noVerdict(kKind, {Say::VisualNotDone});
}

EditionChosen editionFor(std::optional<Edition> said, calendar::Date on) {
    constexpr auto kKind = FindingKind::EditionChoice;
    const auto allowed = rulebook::editionsAllowedOn(on);
    const auto edition = said ? said : allowed.only();
    if (!edition) {
        return {std::nullopt, noVerdict(kKind, {Say::EditionToChoose})};
    }
    if (!allowed.permits(*edition)) {
        return {std::nullopt, noVerdict(kKind, {Say::EditionNotAllowed, {*edition, on}})};
    }
    auto finding = plainFinding(kKind, Outcome::Pass, Say::EditionUsed);
    finding.why.arguments = {*edition};
    return {edition, finding};
}

Finding gaugeZero(std::optional<bool> zeroed) {
    constexpr auto kKind = FindingKind::GaugeZero;
    if (!zeroed) {
        return noVerdict(kKind, {Say::GaugeZeroNotSaid});
    }
    return *zeroed ? plainFinding(kKind, Outcome::Pass, Say::GaugeZeroed)
                   : plainFinding(kKind, Outcome::LookAgain, Say::GaugeNotZeroed);
}

Finding gaugeCalibration(std::optional<calendar::Date> due, calendar::Date on) {
    constexpr auto kKind = FindingKind::GaugeCalibration;
    if (!due) {
        return noVerdict(kKind, {Say::GaugeCalibrationUnknown});
    }
    const bool expired = *due < on;
    auto finding = expired ? plainFinding(kKind, Outcome::Fail, Say::GaugeOutOfCalibration)
                           : plainFinding(kKind, Outcome::Pass, Say::GaugeInCalibration);
    finding.why.arguments = {*due};
    const int days = calendar::daysBetween(on, *due);
    if (!expired && days <= kSoonDays) {
        finding.notes.push_back(
            {Say::GaugeCalibrationSoon,
             {*due, quantity::Figure{quantity::Decimal(days, 0), quantity::UnitCode::None}}});
    }
    return finding;
}

Finding gaugeAccuracy(const Given<quantity::PressureChange>& accuracy, const rulebook::RuleBook& book) {
    Finding finding{FindingKind::GaugeAccuracy};
    if (!accuracy) {
        concludeOpen(finding, {accuracy.unreadable ? Say::ReadingUnusable : Say::GaugeAccuracyUnknown});
        return finding;
    }
    const quantity::Figure shown{quantity::Decimal::rounded(accuracy->in(quantity::kMillibar), 2),
                                 quantity::UnitCode::Millibar};
    finding.measured = shown;
    const auto* limit = book.find({rulebook::Rule::GaugeAccuracy});
    if (limit == nullptr || !limit->isKnown()) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    restOn(finding, *limit);
    const double most = rulebook::pressureChangeOf(*limit)->in(quantity::kMillibar);
    if (rulebook::holds(accuracy->in(quantity::kMillibar), rulebook::Comparison::AtMost, most)) {
        concludeWithin(finding, {Say::GaugeAccurateEnough, {shown, limitOf(*limit)}});
    } else {
        concludeBeyond(finding, *limit, {Say::GaugeTooCoarse, {shown, limitOf(*limit)}});
    }
    return finding;
}

Finding displaysAgree(const Displays& displays, const std::optional<Gauge>& gauge) {
    Finding finding{FindingKind::DisplaysAgree};
    const auto absent = lackOf(displays);
    if (absent || !gauge) {
        concludeOpen(finding, absent.value_or(Sentence{Say::GaugeNotChosen}));
        return finding;
    }
    const auto widest = std::max(apart(displays.firstStart, displays.secondStart),
                                 apart(displays.firstEnd, displays.secondEnd));
    const auto& second = displays.secondStart ? *displays.secondStart : *displays.secondEnd;
    const auto step = gauge->resolution.value_or(second.digit);
    finding.measured = figureOf(Change{widest, {}, std::min(second.digit, step)});
    finding.limit = figureOf(Change{step, {}, step});
    const bool agree = rulebook::holds(widest.in(quantity::kMillibar), rulebook::Comparison::AtMost,
                                       step.in(quantity::kMillibar));
    finding.outcome = agree ? Outcome::Pass : Outcome::LookAgain;
    finding.why = {agree ? Say::DisplaysWithinDigit : Say::DisplaysDiffer,
                   {*finding.measured, *finding.limit}};
    return finding;
}

}  // namespace hearth::tightness
