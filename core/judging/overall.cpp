// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/judge.h"

#include <algorithm>
#include <array>

namespace hearth::judging {

using rulebook::FindingKind;
using rulebook::graver;
using rulebook::Outcome;

namespace {

/// Without these there is no headline.
constexpr std::array kNeeded{FindingKind::EditionChoice, FindingKind::Scope,        FindingKind::LetBy,
                             FindingKind::Settling,      FindingKind::TestPressure, FindingKind::TestTime,
                             FindingKind::Tightness};
/// These decide as they are.
constexpr std::array kDecisive{FindingKind::EditionChoice, FindingKind::Scope,    FindingKind::LetBy,
                               FindingKind::TestPressure,  FindingKind::TestTime, FindingKind::Tightness,
                               FindingKind::IsolatedRetest};
/// These say nothing of the installation's tightness, but cast doubt on a pass: the gauge, and a smell on
/// arrival that the test did not explain.
constexpr std::array kDoubting{FindingKind::GaugeZero, FindingKind::GaugeCalibration,
                               FindingKind::SmellOnArrival};

template <std::size_t N>
bool isOneOf(const std::array<FindingKind, N>& kinds, FindingKind kind) {
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

Outcome shareOf(const rulebook::Finding& finding) {
    if (isOneOf(kDecisive, finding.kind)) {
        return finding.outcome;
    }
    const bool doubts = isOneOf(kDoubting, finding.kind) && finding.outcome != Outcome::Pass;
    return doubts ? Outcome::LookAgain : Outcome::Pass;
}

}  // namespace

Outcome overall(const std::vector<Judged>& findings) {
    const bool complete = std::all_of(kNeeded.begin(), kNeeded.end(), [&](FindingKind kind) {
        return std::any_of(findings.begin(), findings.end(),
                           [&](const Judged& judged) { return judged.finding.kind == kind; });
    });
    Outcome outcome = complete ? Outcome::Pass : Outcome::NoVerdict;
    for (const auto& judged : findings) {
        outcome = graver(outcome, shareOf(judged.finding));
    }
    return outcome;
}

Outcome overall(const std::vector<Judged>& findings, reg::TestId test) {
    std::vector<Judged> ofTest;
    std::copy_if(findings.begin(), findings.end(), std::back_inserter(ofTest), [&](const Judged& judged) {
        return judged.subject == reg::subject(test) || judged.subject.kind == reg::SubjectKind::Visit;
    });
    return overall(ofTest);
}

}  // namespace hearth::judging
