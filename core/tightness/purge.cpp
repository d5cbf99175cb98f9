// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/purge.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

namespace hearth::tightness {

using pipework::MeterKind;
using quantity::Volume;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::plainFinding;
using rulebook::Provenance;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

bool isSmall(const TestedPart& part) {
    constexpr double kSmallMeter = 6.0;  // m3/h
    constexpr double kSmallPipe = 28.0;  // mm
    const bool smallMeter =
        part.meter != nullptr && part.meter->badge <= kSmallMeter &&
        (part.meter->kind == MeterKind::Ultrasonic || part.meter->kind == MeterKind::Diaphragm);
    return smallMeter && part.nominalKnown && part.largestNominal <= kSmallPipe;
}

bool exceeds(Volume a, Volume b) {
    return !rulebook::holds(a.in(quantity::kCubicMetre), rulebook::Comparison::AtMost,
                            b.in(quantity::kCubicMetre));
}

Finding notPurged(const PurgeInput& input) {
    constexpr auto kKind = FindingKind::Purge;
    if (*input.done == PurgeDone::No) {
        return plainFinding(kKind, Outcome::Fail, Say::PurgeNotDone);
    }
    // New pipework is full of air: that it needs no purge is to be looked at again.
    const bool existing = input.conduct.work == Work::Existing;
    return plainFinding(kKind, existing ? Outcome::Pass : Outcome::LookAgain, Say::PurgeNotNeeded);
}

/// Whether the method suits the volume; what it says is a note, and what it allows limits the outcome.
struct MethodJudged {
    Outcome outcome = Outcome::NoVerdict;
    rulebook::Sentence say{Say::ReadingMissing};
};

MethodJudged judgeMethod(const PurgeInput& input, Volume volume, const Entry& burnerAbove) {
    if (!input.method) {
        return {};
    }
    const bool burnerNeeded = exceeds(volume, *rulebook::volumeOf(burnerAbove));
    const std::vector<rulebook::Argument> arguments{figureOf(volume), limitOf(burnerAbove)};
    if (*input.method == PurgeMethod::OpenBurner) {
        return {Outcome::Pass, {Say::PurgeOpenBurner, arguments}};
    }
    if (burnerNeeded) {
        return {decide(false, burnerAbove.provenance), {Say::PurgeMethodWrong, arguments}};
    }
    // What was read is that larger volumes need the burner; that smaller ones may do without is from memory
    // until the firm has confirmed the entry.
    const auto provenance =
        burnerAbove.provenance == Provenance::Published ? Provenance::Memory : burnerAbove.provenance;
    return {decide(true, provenance), {Say::PurgeVentilatedPlace, arguments}};
}

/// What of the purge has not been said; appliances that are not connected have no flame to show.
std::optional<rulebook::Sentence> lackOf(const PurgeInput& input) {
    if (auto absent = absence(input.passed)) {
        return absent;
    }
    const bool flameAsked = input.conduct.appliances != Appliances::NoneConnected;
    const bool complete = input.method && (input.steadyFlame || !flameAsked);
    return complete ? std::nullopt : std::optional(rulebook::Sentence{Say::ReadingMissing});
}

void concludePurge(Finding& finding, const PurgeInput& input, Volume needed, const MethodJudged& method) {
    const std::vector<rulebook::Argument> amounts{figureOf(*input.passed), figureOf(needed)};
    if (exceeds(needed, *input.passed)) {
        concludeBeyond(finding, finding.limits.front(), {Say::PurgeShort, amounts});
        finding.notes.push_back(method.say);
        return;
    }
    if (method.outcome == Outcome::Fail) {
        finding.outcome = method.outcome;
        finding.why = method.say;
        return;
    }
    if (input.steadyFlame == false) {
        finding.outcome = Outcome::Fail;
        finding.why = {Say::PurgeNoSteadyFlame};
        return;
    }
    concludeWithin(finding, {Say::PurgeEnough, amounts});
    if (graver(finding.outcome, method.outcome) != finding.outcome) {
        finding.notes.insert(finding.notes.begin(), finding.why);
        finding.why = {Say::LimitFromMemory};
        finding.outcome = method.outcome;
    }
    finding.notes.push_back(method.say);
}

}  // namespace

PurgeNeed purgeNeed(const TestedPart& part, const RulesInForce& rules) {
    if (isSmall(part)) {
        const Entry* entry = rules.find(Rule::PurgeVolumeSmall);
        return {entry == nullptr ? std::nullopt : rulebook::volumeOf(*entry), entry};
    }
    const Entry* entry = rules.find(Rule::PurgeVolumeFactor);
    const auto factor = entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
    if (!factor || !part.volume) {
        return {std::nullopt, entry};
    }
    return {*part.volume * *factor, entry};
}

Finding purge(const PurgeInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::Purge};
    if (!input.done) {
        concludeOpen(finding, {Say::ReadingMissing});
    } else if (*input.done != PurgeDone::Yes) {
        return notPurged(input);
    }
    const auto need = purgeNeed(input.part, rules);
    const Entry* burnerAbove = rules.find(Rule::PurgeOpenBurnerAbove);
    if (need.entry != nullptr) {
        restOn(finding, *need.entry);
    }
    if (burnerAbove != nullptr) {
        restOn(finding, *burnerAbove);
    }
    if (need.volume) {
        finding.limit = figureOf(*need.volume);
        finding.comparison = rulebook::Comparison::AtLeast;
        finding.notes.push_back({Say::PurgeVolumeNeeded, {*finding.limit}});
    }
    if (input.passed) {
        finding.measured = figureOf(*input.passed);
    }
    if (!input.done) {
        return finding;
    }
    const bool entered =
        need.entry != nullptr && need.entry->isKnown() && burnerAbove != nullptr && burnerAbove->isKnown();
    if (!entered) {
        concludeOpen(finding, {Say::LimitMissing});
    } else if (!need.volume || !input.part.volume) {
        concludeOpen(finding, {Say::VolumeUnknown});
    } else if (auto lack = lackOf(input)) {
        concludeOpen(finding, *lack);
    } else {
        concludePurge(finding, input, *need.volume, judgeMethod(input, *input.part.volume, *burnerAbove));
    }
    return finding;
}

}  // namespace hearth::tightness
