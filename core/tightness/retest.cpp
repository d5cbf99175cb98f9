// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/retest.h"

#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"
#include "core/tightness/grounds.h"
#include "core/tightness/stages.h"

namespace hearth::tightness {

using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

namespace {

/// Takes over a condition's limits, and its "no verdict" when it has none.
bool holdsFor(Finding& finding, const Finding& condition) {
    for (const auto& limit : condition.limits) {
        restOn(finding, limit);
    }
    if (condition.outcome == Outcome::NoVerdict) {
        concludeOpen(finding, condition.why);
        return false;
    }
    return true;
}

}  // namespace

Finding isolatedRetest(const Stage& stage, const std::optional<Gauge>& gauge, bool lowPressureExplained,
                       const rulebook::RulesInForce& rules) {
    constexpr auto kKind = FindingKind::IsolatedRetest;
    if (!gauge) {
        return rulebook::noVerdict(kKind, {Say::GaugeNotChosen});
    }
    if (auto absent = absence(stage.start, stage.end)) {
        return rulebook::noVerdict(kKind, *absent);
    }
    const Movement movement{changeBetween(*gauge, *stage.start, *stage.end),
                            movementThreshold(*gauge, rules)};
    if (movement.threshold == nullptr) {
        return rulebook::noVerdict(kKind, {Say::LimitMissing});
    }
    if (auto rise = byRise(kKind, movement)) {
        return *rise;
    }
    Finding finding{kKind};
    finding.measured = figureOf(movement.change);
    restOn(finding, *movement.threshold);
    const auto stands = standing(movement);
    if (stands == Standing::Beyond) {
        concludeBeyond(finding, *movement.threshold, fallSentence(Say::RetestMoved, movement));
        return finding;
    }
    if (!holdsFor(finding, testPressure(stage.start, lowPressureExplained, rules)) ||
        !holdsFor(finding, testTime(stage.took, rules))) {
        return finding;
    }
    if (stands == Standing::AtLimit) {
        concludeAtLimit(finding, atLimitSentence(movement.change, limitOf(*movement.threshold)));
    } else {
        concludeWithin(finding, {Say::RetestClear, {figureOf(movement.change)}});
    }
    return finding;
}

}  // namespace hearth::tightness
