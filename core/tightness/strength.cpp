// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/strength.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <algorithm>
#include <utility>

namespace hearth::tightness {

using quantity::Figure;
using quantity::GaugePressure;
using quantity::PressureChange;
using rulebook::Comparison;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// The rules of one band of operating pressure.
struct StrengthBand {
    Rule factor;
    Rule settle;
    Rule hold;
    Rule fall;
};

constexpr StrengthBand kLowBand{Rule::StrengthOperatingLow, Rule::StrengthSettleLow, Rule::StrengthHoldLow,
                                Rule::StrengthFallLow};
constexpr StrengthBand kMiddleBand{Rule::StrengthOperatingMiddle, Rule::StrengthSettleMiddle,
                                   Rule::StrengthHoldMiddle, Rule::StrengthFallMiddle};
constexpr StrengthBand kHighBand{Rule::StrengthOperatingHigh, Rule::StrengthSettleHigh,
                                 Rule::StrengthHoldHigh, Rule::StrengthFallHigh};

/// The rule's entry, laid under the finding also when it is empty, so that it can be named as missing.
const Entry* strengthEntry(Finding& finding, Rule rule, const RulesInForce& rules) {
    const Entry* entry = rules.find(rule);
    if (entry != nullptr) {
        restOn(finding, *entry);
    }
    return entry != nullptr && entry->isKnown() ? entry : nullptr;
}

/// The band of an operating pressure; nothing while a bound that decides has not been entered.
std::optional<StrengthBand> strengthBand(Finding& finding, GaugePressure operating,
                                         const RulesInForce& rules) {
    for (const auto& [bound, band] :
         {std::pair(Rule::StrengthLowBand, kLowBand), std::pair(Rule::StrengthMiddleBand, kMiddleBand)}) {
        const Entry* entry = strengthEntry(finding, bound, rules);
        const auto most = entry == nullptr ? std::nullopt : rulebook::gaugePressureOf(*entry);
        if (!most) {
            return std::nullopt;
        }
        if (rulebook::holds(operating.in(quantity::kMillibar), Comparison::AtMost,
                            most->in(quantity::kMillibar))) {
            return band;
        }
    }
    return kHighBand;
}

/// A pressure by its factor, with the entry laid under the finding.
std::optional<GaugePressure> pressureBy(Finding& finding, GaugePressure pressure, Rule rule,
                                        const RulesInForce& rules) {
    const Entry* entry = strengthEntry(finding, rule, rules);
    const auto factor = entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
    return factor ? strengthPressureOf(pressure, *factor) : std::nullopt;
}

/// The pressure that is needed; nothing, with the finding closed, while it can't be told.
std::optional<GaugePressure> strengthNeeded(Finding& finding, const StrengthTest& test,
                                            const RulesInForce& rules) {
    if (auto absent = absence(test.operating, test.incidental)) {
        concludeOpen(finding, *absent);
        return std::nullopt;
    }
    if (*test.incidental < *test.operating) {
        concludeOpen(finding, {Say::IncidentalBelowOperating,
                               {figureOf(*test.incidental), figureOf(*test.operating)}});
        return std::nullopt;
    }
    const auto byIncidental = pressureBy(finding, *test.incidental, Rule::StrengthIncidental, rules);
    const auto band = strengthBand(finding, *test.operating, rules);
    const auto byOperating = band ? pressureBy(finding, *test.operating, band->factor, rules) : std::nullopt;
    if (!byIncidental || !byOperating) {
        concludeOpen(finding, {Say::LimitMissing});
        return std::nullopt;
    }
    finding.notes.push_back({Say::StrengthBoth, {figureOf(*byIncidental), figureOf(*byOperating)}});
    return std::max(*byIncidental, *byOperating);
}

/// A time against its least; false, with the finding closed, when it is not known or too short.
bool strengthTimeHolds(Finding& finding, quantity::Duration took, Rule rule, Say tooShort,
                       const RulesInForce& rules) {
    const Entry* entry = strengthEntry(finding, rule, rules);
    const auto least = entry == nullptr ? std::nullopt : rulebook::durationOf(*entry);
    if (!least) {
        concludeOpen(finding, {Say::LimitMissing});
        return false;
    }
    if (!rulebook::holds(took.in(quantity::kSecond), Comparison::AtLeast, least->in(quantity::kSecond))) {
        concludeOpen(finding, {tooShort, {minutesOf(took), limitOf(*entry)}});
        return false;
    }
    return true;
}

/// How far it may fall, with the rule that says so; the gauge's readable movement where none may.
struct AllowedFall {
    PressureChange most;
    bool none = false;
    const Entry* entry = nullptr;
};

std::optional<AllowedFall> allowedFall(Finding& finding, const StrengthTest& test, const Readable& readable,
                                       const RulesInForce& rules) {
    if (!test.operating) {
        return std::nullopt;
    }
    Finding aside{FindingKind::Strength};  // the band's bounds are the pressure's finding's to name
    const auto band = strengthBand(aside, *test.operating, rules);
    const Entry* entry = band ? strengthEntry(finding, band->fall, rules) : nullptr;
    const auto share = entry == nullptr ? std::nullopt : rulebook::factorOf(*entry);
    if (!share) {
        return std::nullopt;
    }
    restOn(finding, *readable.entry);
    if (*share <= 0.0) {
        return AllowedFall{*readable.movement, true, entry};
    }
    const auto needed = strengthNeeded(aside, test, rules);
    return needed ? std::optional(AllowedFall{(*needed - GaugePressure{}) * *share, false, entry})
                  : std::nullopt;
}

Figure shownAllowed(const AllowedFall& allowed) {
    const GaugePressure most = allowed.none ? GaugePressure{} : GaugePressure{} + allowed.most;
    return figureOf(most);
}

/// What is still missing or wrong before it may pass.
std::optional<Sentence> strengthLack(const StrengthTest& test, const StrengthFindings& findings) {
    if (!test.medium) {
        return Sentence{Say::TestMediumUnknown};
    }
    for (const auto* before : {&findings.pressure, &findings.times}) {
        if (before->outcome == Outcome::NoVerdict) {
            return before->why;
        }
    }
    return test.partsOff ? std::nullopt : std::optional(Sentence{Say::ReadingMissing});
}

void concludeHeld(Finding& finding, const StrengthTest& test, const StrengthFindings& findings,
                  const Change& fall, const AllowedFall& allowed) {
    if (auto lack = strengthLack(test, findings)) {
        concludeOpen(finding, *std::move(lack));
        return;
    }
    for (const auto* before : {&findings.pressure, &findings.times}) {
        for (const auto& entry : before->limits) {
            restOn(finding, entry);
        }
    }
    if (!*test.partsOff) {
        concludeAtLimit(finding, {Say::StrengthPartsOn});
        return;
    }
    finding.notes.push_back({Say::StrengthPartsOff});
    if (allowed.none) {
        concludeWithin(finding,
                       {Say::StrengthNoFall, {figureOf(fall), figureOf(GaugePressure{} + allowed.most)}});
    } else {
        concludeWithin(finding, {Say::StrengthFellWithin, {figureOf(fall), shownAllowed(allowed)}});
    }
}

void judgeFall(Finding& finding, const StrengthTest& test, const StrengthFindings& findings,
               const RulesInForce& rules) {
    const auto readable = readableMovement(test.gauge, rules);
    if (!readable.movement) {
        concludeOpen(finding, readable.finding.why);
        return;
    }
    if (auto absent = absence(test.hold.start, test.hold.end)) {
        concludeOpen(finding, *absent);
        return;
    }
    const auto fall =
        changeBetween(asGauge(*test.gauge, *readable.movement), *test.hold.start, *test.hold.end);
    finding.measured = figureOf(fall);
    const auto allowed = allowedFall(finding, test, readable, rules);
    if (!allowed) {
        concludeOpen(finding, {test.operating ? Say::LimitMissing : Say::OperatingPressureUnknown});
        return;
    }
    finding.limit = shownAllowed(*allowed);
    const auto limit = figureOf(GaugePressure{} + allowed->most);
    const Sentence near{Say::AtLimit, {figureOf(fall), limit, uncertaintyOf(fall)}};
    const auto stands = standing(fall, allowed->most);
    if (stands == Standing::Beyond) {
        concludeBeyond(finding, *allowed->entry, {Say::StrengthFell, {figureOf(fall), *finding.limit}});
    } else if (standing(fall.reversed(), *readable.movement) == Standing::Beyond) {
        concludeAtLimit(finding, {Say::RiseDuringTest, {figureOf(fall.reversed())}});
    } else if (stands == Standing::AtLimit) {
        concludeAtLimit(finding, near);
    } else {
        concludeHeld(finding, test, findings, fall, *allowed);
    }
}

}  // namespace

std::optional<GaugePressure> strengthPressureOf(GaugePressure pressure, double factor) {
    const double millibar = pressure.in(quantity::kMillibar);
    const bool valid = millibar > 0.0 && factor > 0.0;
    return valid ? std::optional(GaugePressure(factor * millibar, quantity::kMillibar)) : std::nullopt;
}

Finding strengthPressure(const StrengthTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::StrengthPressure};
    if (test.hold.start) {
        finding.measured = figureOf(*test.hold.start);
    }
    const auto needed = strengthNeeded(finding, test, rules);
    if (!needed) {
        return finding;
    }
    finding.limit = figureOf(*needed);
    finding.comparison = Comparison::AtLeast;
    if (auto absent = absence(test.hold.start)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    const std::vector<rulebook::Argument> arguments{*finding.measured, *finding.limit};
    if (rulebook::holds(test.hold.start->pressure.in(quantity::kMillibar), Comparison::AtLeast,
                        needed->in(quantity::kMillibar))) {
        concludeWithin(finding, {Say::StrengthPressureEnough, arguments});
    } else {
        concludeOpen(finding, {Say::StrengthPressureLow, arguments});
    }
    return finding;
}

Finding strengthTimes(const StrengthTest& test, const RulesInForce& rules) {
    Finding finding{FindingKind::StrengthTimes};
    if (!test.operating) {
        concludeOpen(finding, {Say::OperatingPressureUnknown});
        return finding;
    }
    const auto band = strengthBand(finding, *test.operating, rules);
    if (!band) {
        concludeOpen(finding, {Say::LimitMissing});
    } else if (auto absent = absence(test.settled, test.hold.took)) {
        concludeOpen(finding, *absent);
    } else if (strengthTimeHolds(finding, *test.settled, band->settle, Say::SettleTooShort, rules) &&
               strengthTimeHolds(finding, *test.hold.took, band->hold, Say::TestTooShort, rules)) {
        concludeWithin(finding,
                       {Say::StrengthTimesKept, {minutesOf(*test.settled), minutesOf(*test.hold.took)}});
    }
    finding.limit.reset();  // the first entry is the band's bound, no time
    return finding;
}

StrengthFindings strength(const StrengthTest& test, const RulesInForce& rules) {
    StrengthFindings findings{strengthPressure(test, rules), strengthTimes(test, rules),
                              Finding{FindingKind::Strength}};
    auto& verdict = findings.strength;
    judgeFall(verdict, test, findings, rules);
    if (test.medium == TestMedium::FuelGas && verdict.outcome != Outcome::Fail) {
        verdict.outcome = Outcome::Fail;
        verdict.why = {Say::StrengthMediumWrong};
    }
    return findings;
}

}  // namespace hearth::tightness
