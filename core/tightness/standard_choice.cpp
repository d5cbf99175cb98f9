// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/standard_choice.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <array>
#include <utility>

namespace hearth::tightness {

using rulebook::Entry;
using rulebook::Finding;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

/// How the installation stands to one limit of a larger standard.
struct Measured {
    Rule rule;
    Say beyond;
    std::optional<double> value;  // in the unit that the limit is compared in
    bool whole = true;            // false: the value is a least one, some of it is not known
    quantity::Figure shown;
};

std::array<Measured, 3> up1aMeasures(const ScopeInput& input) {
    const bool pipe = input.largestNominal > 0.0;
    std::array measures{
        Measured{Rule::Up1aVolume, Say::ScopeBeyondVolume, std::nullopt, true, {}},
        Measured{Rule::Up1aPipe, Say::ScopeBeyondPipe,
                 pipe ? std::optional(input.largestNominal) : std::nullopt, input.nominalKnown,
                 millimetres(input.largestNominal)},
        Measured{Rule::Up1aOperatingPressure, Say::ScopeBeyondPressure, std::nullopt, true, {}}};
    if (input.volume) {
        measures[0].value = input.volume->in(quantity::kCubicMetre);
        measures[0].shown = shortFigureOf(*input.volume);
    }
    if (input.operating) {
        measures[2].value = input.operating->in(quantity::kMillibar);
        measures[2].shown = figureOf(*input.operating);
    }
    return measures;
}

std::optional<double> up1aLimit(const Entry& entry) {
    if (entry.key.rule == Rule::Up1aVolume) {
        const auto volume = rulebook::volumeOf(entry);
        return volume ? std::optional(volume->in(quantity::kCubicMetre)) : std::nullopt;
    }
    if (entry.key.rule == Rule::Up1aPipe) {
        const auto length = rulebook::lengthOf(entry);
        return length ? std::optional(length->in(quantity::kMillimetre)) : std::nullopt;
    }
    const auto pressure = rulebook::gaugePressureOf(entry);
    return pressure ? std::optional(pressure->in(quantity::kMillibar)) : std::nullopt;
}

enum class Fit { Inside, Outside, Unread, Unknown };

/// Beyond one limit is outside, whatever else is not known. Lays under the finding what decided.
Fit fitUp1a(Finding& finding, const ScopeInput& input, const RulesInForce& rules) {
    if (rules.find(Rule::Up1aVolume) == nullptr) {
        return Fit::Outside;  // the standard is for natural gas alone
    }
    auto fit = Fit::Inside;
    for (const auto& measured : up1aMeasures(input)) {
        const Entry* limit = rules.known(measured.rule);
        const auto most = limit == nullptr ? std::nullopt : up1aLimit(*limit);
        if (most && measured.value &&
            !rulebook::holds(*measured.value, rulebook::Comparison::AtMost, *most)) {
            finding.limits.clear();
            restOn(finding, *limit);
            finding.measured = measured.shown;
            finding.notes.push_back({measured.beyond, {measured.shown, limitOf(*limit)}});
            return Fit::Outside;
        }
        if (!most) {
            fit = Fit::Unread;
            continue;
        }
        restOn(finding, *limit);
        if ((!measured.value || !measured.whole) && fit == Fit::Inside) {
            fit = Fit::Unknown;
        }
    }
    return fit;
}

void chooseUp1(StandardChosen& chosen, const ScopeInput& input, const RulesInForce& rules) {
    auto& finding = chosen.finding;
    const Entry* limit = rules.known(Rule::Up1SupplyPressure);
    const auto most = limit == nullptr ? std::nullopt : rulebook::gaugePressureOf(*limit);
    if (!most) {
        concludeOpen(finding, {Say::LimitMissing});
        return;
    }
    restOn(finding, *limit);
    if (!input.supply) {
        concludeOpen(finding, {Say::ScopeNotKnown});
        return;
    }
    if (!rulebook::holds(input.supply->in(quantity::kMillibar), rulebook::Comparison::AtMost,
                         most->in(quantity::kMillibar))) {
        finding.measured = figureOf(*input.supply);
        finding.limit = limitOf(*limit);
        concludeBeyond(finding, *limit, {Say::StandardBeyondUp1, {*finding.measured, *finding.limit}});
        return;
    }
    chosen.standard = TestStandard::Up1;
    concludeWithin(finding, {Say::ScopeUseUp1});
}

/// Too large for the small standard, as `small` says.
void chooseLarger(StandardChosen& chosen, const Finding& small, const ScopeInput& input,
                  const RulesInForce& rules) {
    auto& finding = chosen.finding;
    finding.measured = small.measured;
    finding.notes.push_back(small.why);
    const auto fit = fitUp1a(finding, input, rules);
    for (const auto& entry : small.limits) {
        if (entry.isKnown()) {
            restOn(finding, entry);  // what takes the installation out of the small standard counts too
        }
    }
    switch (fit) {
        case Fit::Inside:
            chosen.standard = TestStandard::Up1a;
            concludeWithin(finding, {Say::ScopeUseUp1a});
            break;
        case Fit::Outside:
            chooseUp1(chosen, input, rules);
            break;
        case Fit::Unread:
            concludeOpen(finding, {Say::LimitMissing});
            break;
        case Fit::Unknown:
            concludeOpen(finding, {Say::ScopeUseUp1aOrUp1});
            break;
    }
}

}  // namespace

StandardChosen standardFor(const ScopeInput& input, const RulesInForce& rules) {
    StandardChosen chosen;
    const auto small = scope(input, rules);
    if (small.outcome == Outcome::Fail) {
        chooseLarger(chosen, small, input, rules);
        return chosen;
    }
    auto& finding = chosen.finding;
    finding.measured = small.measured;
    for (const auto& entry : small.limits) {
        restOn(finding, entry);
    }
    if (small.outcome == Outcome::NoVerdict) {
        finding.notes = small.notes;
        concludeOpen(finding, small.why);
        return chosen;
    }
    chosen.standard = TestStandard::Up1b;
    concludeWithin(finding, {Say::StandardUp1b});
    return chosen;
}

}  // namespace hearth::tightness
