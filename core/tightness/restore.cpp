// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/restore.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

namespace hearth::tightness {

using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::noVerdict;
using rulebook::Outcome;
using rulebook::plainFinding;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

/// The reading and the limit; nothing, with the finding closed, when one of them is missing.
const Entry* limitFor(Finding& finding, const Given<Reading>& pressure, Rule rule,
                      const RulesInForce& rules) {
    if (auto absent = absence(pressure)) {
        concludeOpen(finding, *absent);
        return nullptr;
    }
    finding.measured = figureOf(*pressure);
    const Entry* entry = rules.known(rule);
    if (entry == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return nullptr;
    }
    restOn(finding, *entry);
    return entry;
}

}  // namespace

Finding jointsProved(const JointsInput& input) {
    constexpr auto kKind = FindingKind::JointsProved;
    if (input.testPointProved == false || input.disturbed == JointsDisturbed::NotProved) {
        return plainFinding(kKind, Outcome::Fail, Say::JointNotProved);
    }
    if (!input.testPointProved || !input.disturbed || !input.wiped) {
        return noVerdict(kKind, {Say::JointsNotSaid});
    }
    return *input.wiped ? plainFinding(kKind, Outcome::Pass, Say::JointsProvedAndWiped)
                        : plainFinding(kKind, Outcome::LookAgain, Say::JointNotWiped);
}

Finding standingPressure(const Given<Reading>& pressure, const RulesInForce& rules) {
    Finding finding{FindingKind::StandingPressure};
    const Entry* most = limitFor(finding, pressure, Rule::StandingPressureMost, rules);
    if (most == nullptr) {
        return finding;
    }
    const bool within =
        rulebook::holds(pressure->pressure.in(quantity::kMillibar), rulebook::Comparison::AtMost,
                        rulebook::gaugePressureOf(*most)->in(quantity::kMillibar));
    if (within) {
        concludeWithin(finding, {Say::LockUpGood, {figureOf(*pressure), limitOf(*most)}});
    } else {
        concludeBeyond(finding, *most, {Say::LockUpHigh, {figureOf(*pressure), limitOf(*most)}});
    }
    return finding;
}

Finding workingPressure(const Given<Reading>& pressure, const RulesInForce& rules) {
    Finding finding{FindingKind::WorkingPressure};
    const Entry* band = limitFor(finding, pressure, Rule::WorkingPressure, rules);
    if (band == nullptr) {
        return finding;
    }
    const auto range = *rangeOf(*band);
    const std::vector<rulebook::Argument> arguments{figureOf(*pressure),
                                                    quantity::Figure{range.least, range.unit},
                                                    quantity::Figure{range.most, range.unit}};
    if (rulebook::pressureRangeOf(*band)->contains(pressure->pressure)) {
        concludeWithin(finding, {Say::PressureGood, arguments});
    } else {
        concludeBeyond(finding, *band, {Say::PressureOutside, arguments});
    }
    return finding;
}

}  // namespace hearth::tightness
