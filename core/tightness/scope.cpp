// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/scope.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <array>

namespace hearth::tightness {

using pipework::MeterKind;
using quantity::Figure;
using quantity::UnitCode;
using rulebook::Comparison;
using rulebook::Edition;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Gas;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

namespace {

enum class State { NotAsked, NotKnown, Known };

/// One thing that the scope limits, in the unit that its limit is compared in.
struct Measure {
    Rule rule;
    Say beyond;
    State state = State::NotKnown;
    double value = 0.0;
    Figure shown;
};

Measure volumeMeasure(const ScopeInput& input) {
    Measure measure{Rule::ScopeVolume, Say::ScopeBeyondVolume, State::NotKnown, 0.0, {}};
    if (input.volume) {
        measure.state = State::Known;
        measure.value = input.volume->in(quantity::kCubicMetre);
        measure.shown = shortFigureOf(*input.volume);
    }
    return measure;
}

Measure pipeMeasure(const ScopeInput& input) {
    // Pipes of unknown size do not hide a known one that is too large; only "within" needs all of them.
    const bool any = input.largestNominal > 0.0;
    return {Rule::ScopePipe, Say::ScopeBeyondPipe, any ? State::Known : State::NotKnown, input.largestNominal,
            millimetres(input.largestNominal)};
}

Measure meterMeasure(const ScopeInput& input) {
    Measure measure{Rule::ScopeMeter, Say::ScopeBeyondMeter, State::NotKnown, 0.0, {}};
    if (input.meter == nullptr || input.meter->kind == MeterKind::Other) {
        return measure;
    }
    measure.state = input.meter->kind == MeterKind::None ? State::NotAsked : State::Known;
    measure.value = input.meter->badge;
    measure.shown = {quantity::Decimal::rounded(input.meter->badge, 0), UnitCode::CubicMetrePerHour};
    return measure;
}

Measure pressureMeasure(Rule rule, const Given<quantity::GaugePressure>& pressure) {
    Measure measure{rule, Say::ScopeBeyondPressure, State::NotKnown, 0.0, {}};
    if (pressure) {
        measure.state = State::Known;
        measure.value = pressure->in(quantity::kMillibar);
        measure.shown = figureOf(*pressure);
    }
    return measure;
}

std::array<Measure, 5> measures(const ScopeInput& input) {
    return {volumeMeasure(input), pipeMeasure(input), meterMeasure(input),
            pressureMeasure(Rule::ScopeOperatingPressure, input.operating),
            pressureMeasure(Rule::ScopeSupplyPressure, input.supply)};
}

double limitIn(const Entry& entry) {
    switch (entry.key.rule) {
        case Rule::ScopeVolume:
            return rulebook::volumeOf(entry)->in(quantity::kCubicMetre);
        case Rule::ScopePipe:
            return rulebook::lengthOf(entry)->in(quantity::kMillimetre);
        case Rule::ScopeMeter:
            return rulebook::flowOf(entry)->in(quantity::kCubicMetrePerHour);
        default:
            return rulebook::gaugePressureOf(entry)->in(quantity::kMillibar);
    }
}

bool isBeyond(const Measure& measure, const Entry& limit) {
    return measure.state == State::Known &&
           !rulebook::holds(measure.value, Comparison::AtMost, limitIn(limit));
}

/// What the withdrawn edition would have said, for information.
void noteEdition3(Finding& finding, const ScopeInput& input, const RulesInForce& rules) {
    bool beyond = false;
    for (const auto& measure : measures(input)) {
        const Entry* limit = rules.inEdition(measure.rule, Edition::Up1bEd3);
        if (limit != nullptr && isBeyond(measure, *limit)) {
            finding.notes.push_back({measure.beyond, {measure.shown, limitOf(*limit)}});
            beyond = true;
        }
    }
    if (beyond) {
        finding.notes.push_back({standardInstead(input, rules.gas())});
    }
}

/// How the installation stands against each limit of the edition.
struct Tally {
    bool unread = false;   // the rule book has no value
    bool unknown = false;  // the installation does not say
    const Entry* beyond = nullptr;
    Measure measure{Rule::ScopeVolume, Say::ScopeBeyondVolume, State::NotKnown, 0.0, {}};
};

Tally tallyUp(Finding& finding, const ScopeInput& input, const RulesInForce& rules) {
    Tally tally;
    bool any = false;
    for (const auto& measure : measures(input)) {
        const Entry* limit = rules.find(measure.rule);
        if (limit == nullptr || measure.state == State::NotAsked) {
            continue;  // the standard sets no such limit for this gas, or there is nothing to hold against it
        }
        any = true;
        restOn(finding, *limit);
        if (!limit->isKnown()) {
            tally.unread = true;
        } else if (isBeyond(measure, *limit) && tally.beyond == nullptr) {
            tally.beyond = limit;
            tally.measure = measure;
        } else if (measure.state == State::NotKnown) {
            tally.unknown = true;
        }
    }
    tally.unread = tally.unread || !any;
    tally.unknown = tally.unknown || !input.nominalKnown;
    return tally;
}

}  // namespace

Say standardInstead(const ScopeInput& input, Gas gas) {
    constexpr double kMostVolume = 1.0;     // m3
    constexpr double kMostPipe = 150.0;     // mm
    constexpr double kMostPressure = 40.0;  // mbar
    const auto volume = volumeMeasure(input);
    const auto pressure = pressureMeasure(Rule::ScopeOperatingPressure, input.operating);
    const bool outside = gas != Gas::NaturalGas || volume.value > kMostVolume ||
                         input.largestNominal > kMostPipe || pressure.value > kMostPressure;
    if (outside) {
        return Say::ScopeUseUp1;
    }
    const bool known = volume.state == State::Known && pressure.state == State::Known && input.nominalKnown;
    return known ? Say::ScopeUseUp1a : Say::ScopeUseUp1aOrUp1;
}

Finding scope(const ScopeInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::Scope};
    if (input.volume) {
        finding.measured = shortFigureOf(*input.volume);
    }
    const auto tally = tallyUp(finding, input, rules);
    if (tally.beyond != nullptr) {
        finding.measured = tally.measure.shown;
        finding.limit = limitOf(*tally.beyond);
        concludeBeyond(finding, *tally.beyond, {tally.measure.beyond, {tally.measure.shown, *finding.limit}});
        finding.notes.push_back({standardInstead(input, rules.gas())});
    } else if (tally.unread) {
        const bool fourth = rules.edition() == Edition::Up1bEd4;
        concludeOpen(finding, {fourth ? Say::ScopeEd4NotEntered : Say::LimitMissing});
        noteEdition3(finding, input, rules);
    } else if (tally.unknown) {
        concludeOpen(finding, {Say::ScopeNotKnown});
    } else {
        concludeWithin(finding, {Say::ScopeWithin});
    }
    return finding;
}

}  // namespace hearth::tightness
