// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/stages.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <cmath>

namespace hearth::tightness {

using rulebook::Comparison;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// The entry of a rule, laid under the finding; nothing, with the finding closed, when the rule book has no
/// value.
const Entry* needed(Finding& finding, Rule rule, const RulesInForce& rules) {
    const Entry* entry = rules.known(rule);
    if (entry == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return nullptr;
    }
    restOn(finding, *entry);
    return entry;
}

bool isLongEnough(quantity::Duration took, const Entry& least) {
    return rulebook::holds(took.in(quantity::kSecond), Comparison::AtLeast,
                           rulebook::durationOf(least)->in(quantity::kSecond));
}

/// The stage's time against its least; false, with the finding closed, when it is missing or too short.
bool timeHolds(Finding& finding, const Given<quantity::Duration>& took, Rule rule, Say tooShort,
               const RulesInForce& rules) {
    if (auto absent = absence(took)) {
        concludeOpen(finding, *absent);
        return false;
    }
    const Entry* least = needed(finding, rule, rules);
    if (least == nullptr) {
        return false;
    }
    if (!isLongEnough(*took, *least)) {
        concludeOpen(finding, {tooShort, {figureOf(*took), limitOf(*least)}});
        return false;
    }
    return true;
}

bool letByPressureHolds(Finding& finding, const Reading& start, const RulesInForce& rules) {
    const Entry* band = needed(finding, Rule::LetByPressure, rules);
    if (band == nullptr) {
        return false;
    }
    if (!rulebook::pressureRangeOf(*band)->contains(start.pressure)) {
        const auto range = rangeOf(*band);
        concludeOpen(finding, {Say::LetByPressureOutside,
                               {figureOf(start), quantity::Figure{range->least, range->unit},
                                quantity::Figure{range->most, range->unit}}});
        return false;
    }
    return true;
}

Sentence atLimit(const Change& change, const Entry& limit) {
    return {Say::AtLimit, {figureOf(change), limitOf(limit), uncertaintyOf(change)}};
}

/// What a stage that needs a gauge and two readings lacks.
std::optional<Sentence> lackOf(const Stage& stage, const std::optional<Gauge>& gauge) {
    if (!gauge) {
        return Sentence{Say::GaugeNotChosen};
    }
    return absence(stage.start, stage.end);
}

void concludeLetByFall(Finding& finding, const Change& fall, const Change& rise, const Entry& threshold,
                       const Reading& start) {
    switch (standing(fall, *rulebook::pressureChangeOf(threshold))) {
        case Standing::Beyond:
            concludeAtLimit(finding, {Say::LetByFall, {figureOf(fall)}});
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, atLimit(fall, threshold));
            break;
        case Standing::Within:
            concludeWithin(finding, {Say::LetByNone, {figureOf(rise), figureOf(start)}});
            break;
    }
}

}  // namespace

Finding letBy(const Stage& stage, const std::optional<Gauge>& gauge, const RulesInForce& rules) {
    Finding finding{FindingKind::LetBy};
    if (auto lack = lackOf(stage, gauge)) {
        concludeOpen(finding, *lack);
        return finding;
    }
    const auto fall = changeBetween(*gauge, *stage.start, *stage.end);
    const auto rise = fall.reversed();
    finding.measured = figureOf(rise);
    const Entry* threshold = movementThreshold(*gauge, rules);
    if (threshold == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    restOn(finding, *threshold);
    const auto stands = standing(rise, *rulebook::pressureChangeOf(*threshold));
    if (stands == Standing::Beyond) {
        // A valve that lets by is not excused by a short stage or an odd pressure.
        concludeBeyond(finding, *threshold, {Say::LetByFound, {figureOf(rise), limitOf(*threshold)}});
        return finding;
    }
    if (!letByPressureHolds(finding, *stage.start, rules) ||
        !timeHolds(finding, stage.took, Rule::LetByTime, Say::LetByTooShort, rules)) {
        return finding;
    }
    if (stands == Standing::AtLimit) {
        concludeAtLimit(finding, atLimit(rise, *threshold));
        return finding;
    }
    concludeLetByFall(finding, fall, rise, *threshold, *stage.start);
    return finding;
}

Finding settling(const Stage& stage, const std::optional<Gauge>& gauge, const RulesInForce& rules) {
    Finding finding{FindingKind::Settling};
    if (auto lack = lackOf(stage, gauge)) {
        concludeOpen(finding, *lack);
        return finding;
    }
    const auto fall = changeBetween(*gauge, *stage.start, *stage.end);
    finding.measured = figureOf(fall);
    const Entry* steady = rules.known(Rule::SettleMovement);
    if (steady == nullptr) {
        steady = movementThreshold(*gauge, rules);
    }
    if (steady == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    restOn(finding, *steady);
    if (!timeHolds(finding, stage.took, Rule::SettleTime, Say::SettleTooShort, rules)) {
        return finding;
    }
    const auto moved = fall.fall < quantity::PressureChange{} ? fall.reversed() : fall;
    switch (standing(moved, *rulebook::pressureChangeOf(*steady))) {
        case Standing::Beyond:
            concludeAtLimit(finding, {Say::NotSettled, {figureOf(fall), limitOf(*steady)}});
            break;
        case Standing::AtLimit:
            concludeAtLimit(finding, atLimit(moved, *steady));
            break;
        case Standing::Within:
            concludeWithin(finding, {Say::Settled, {figureOf(fall)}});
            break;
    }
    return finding;
}

namespace {

/// Below the band: only down to the edition's least, and only where it is said why more could not be reached.
void concludeLowPressure(Finding& finding, const Reading& start, bool reasonGiven, const Entry& band,
                         const RulesInForce& rules) {
    const auto range = rangeOf(band);
    const quantity::Figure lowEnd{range->least, range->unit};
    const Entry* least = rules.known(Rule::TestPressureLeast);
    if (least == nullptr) {
        restOn(finding, band);
        concludeOpen(finding, {Say::TestPressureLow, {figureOf(start), lowEnd}});
        return;
    }
    restOn(finding, *least);
    restOn(finding, band);
    const bool above = rulebook::holds(start.pressure.in(quantity::kMillibar), Comparison::AtLeast,
                                       rulebook::gaugePressureOf(*least)->in(quantity::kMillibar));
    if (!above) {
        concludeOpen(finding, {Say::TestPressureLow, {figureOf(start), limitOf(*least)}});
    } else if (!reasonGiven) {
        concludeOpen(finding, {Say::TestPressureLowUnexplained, {figureOf(start), lowEnd}});
    } else {
        concludeWithin(finding, {Say::TestPressureLowAccepted, {figureOf(start), limitOf(*least)}});
    }
}

}  // namespace

Finding testPressure(const Given<Reading>& start, bool reasonGiven, const RulesInForce& rules) {
    Finding finding{FindingKind::TestPressure};
    if (auto absent = absence(start)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    finding.measured = figureOf(*start);
    const Entry* band = rules.known(Rule::TestPressure);
    if (band == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    const auto range = *rulebook::pressureRangeOf(*band);
    if (!range.contains(start->pressure) && start->pressure < range.least) {
        concludeLowPressure(finding, *start, reasonGiven, *band, rules);
        return finding;
    }
    restOn(finding, *band);
    if (range.contains(start->pressure)) {
        concludeWithin(finding, {Say::TestPressureGood, {figureOf(*start)}});
    } else {
        const auto shown = rangeOf(*band);
        concludeOpen(finding,
                     {Say::TestPressureHigh, {figureOf(*start), quantity::Figure{shown->most, shown->unit}}});
    }
    return finding;
}

Finding testTime(const Given<quantity::Duration>& took, const RulesInForce& rules) {
    Finding finding{FindingKind::TestTime};
    if (took) {
        finding.measured = figureOf(*took);
    }
    if (timeHolds(finding, took, Rule::TestTime, Say::TestTooShort, rules)) {
        concludeWithin(finding, {Say::TestLongEnough, {figureOf(*took), limitOf(finding.limits.front())}});
    }
    return finding;
}

}  // namespace hearth::tightness
