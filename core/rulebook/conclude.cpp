// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <utility>

namespace hearth::rulebook {

namespace {

/// What to say of a limit that nobody has confirmed.
std::optional<Say> unconfirmed(Provenance provenance) {
    switch (provenance) {
        case Provenance::Memory:
            return Say::LimitFromMemory;
        case Provenance::Secondary:
            return Say::LimitSecondary;
        case Provenance::CommonPractice:
            return Say::LimitCommonPractice;
        default:
            return std::nullopt;
    }
}

/// The same of several: first what is to be checked against a standard, and of that what was not even read.
std::optional<Say> unconfirmed(const std::vector<Entry>& limits) {
    for (const auto provenance : {Provenance::Memory, Provenance::Secondary, Provenance::CommonPractice}) {
        const bool any = std::any_of(limits.begin(), limits.end(),
                                     [&](const Entry& entry) { return entry.provenance == provenance; });
        if (any) {
            return unconfirmed(provenance);
        }
    }
    return std::nullopt;
}

}  // namespace

Finding noVerdict(FindingKind kind, Sentence why) {
    Finding finding{kind};
    concludeOpen(finding, std::move(why));
    return finding;
}

Finding plainFinding(FindingKind kind, Outcome outcome, Say say) {
    Finding finding{kind};
    finding.outcome = outcome;
    finding.why = {say};
    return finding;
}

void restOn(Finding& finding, const Entry& entry) {
    if (finding.limits.empty()) {
        finding.limit = figureOf(entry);
        finding.comparison = entry.comparison;
    }
    finding.limits.push_back(entry);
}

void concludeWithin(Finding& finding, Sentence why) {
    if (finding.limits.empty()) {
        concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    finding.outcome = Outcome::Pass;
    for (const auto& entry : finding.limits) {
        finding.outcome = graver(finding.outcome, decide(true, entry.provenance));
    }
    if (const auto doubt = unconfirmed(finding.limits)) {
        finding.why = {*doubt};
        finding.notes.insert(finding.notes.begin(), std::move(why));
    } else {
        finding.why = std::move(why);
    }
}

void concludeBeyond(Finding& finding, const Entry& decisive, Sentence why) {
    finding.outcome = decide(false, decisive.provenance);
    finding.why = std::move(why);
    if (const auto doubt = unconfirmed(decisive.provenance)) {
        finding.notes.push_back({*doubt});
    }
}

void concludeAtLimit(Finding& finding, Sentence why) {
    finding.outcome = Outcome::LookAgain;
    finding.why = std::move(why);
}

void concludeOpen(Finding& finding, Sentence why) {
    finding.outcome = Outcome::NoVerdict;
    finding.why = std::move(why);
}

bool says(const Finding& finding, Say say) {
    return finding.why.say == say || std::any_of(finding.notes.begin(), finding.notes.end(),
                                                 [&](const Sentence& note) { return note.say == say; });
}

}  // namespace hearth::rulebook
