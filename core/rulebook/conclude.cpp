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
        default:
            return std::nullopt;
    }
}

/// The same of several: memory is the weaker source.
std::optional<Say> unconfirmed(const std::vector<Entry>& limits) {
    std::optional<Say> say;
    for (const auto& entry : limits) {
        const auto one = unconfirmed(entry.provenance);
        if (one && say != Say::LimitFromMemory) {
            say = one;
        }
    }
    return say;
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
