// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/pressures.h"

#include "core/burner/entry_units.h"
#include "core/burner/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/values.h"

namespace hearth::burner {

using quantity::Decimal;
using quantity::PressureChange;
using quantity::Uncertain;
using quantity::UnitCode;
using rulebook::Argument;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

Uncertain inMillibar(const PressureRead& reading) {
    return quantity::readOff(reading.pressure.in(quantity::kMillibar), reading.digit.in(quantity::kMillibar),
                             reading.accuracy.in(quantity::kMillibar));
}

Uncertain pressureDrop(const PressureRead& meter, const PressureRead& inlet, bool sameGauge) {
    const auto without = [&](const PressureRead& reading) {
        return inMillibar(sameGauge ? PressureRead{reading.pressure, reading.digit, {}} : reading);
    };
    return without(meter) - without(inlet);
}

namespace {

Measured<PressureChange> pressureIn(const Uncertain& millibar) {
    return measuredIn<PressureChange>(millibar, quantity::kMillibar);
}

Entry pressureOfMaker(Rule rule, const MakersRange& maker) {
    const auto end = [](quantity::GaugePressure pressure) {
        return Decimal::rounded(pressure.in(quantity::kMillibar), 2);
    };
    return rulebook::makersEntry({rule},
                                 rulebook::Range{end(maker.least), end(maker.most), UnitCode::Millibar},
                                 rulebook::Comparison::Within, maker.source);
}

/// "measured, least, most" in the entry's own unit.
std::vector<Argument> pressureInRange(const quantity::Figure& measured, const Entry& entry) {
    const auto range = rulebook::rangeOf(entry).value_or(rulebook::Range{});
    return {measured, quantity::Figure{range.least, range.unit}, quantity::Figure{range.most, range.unit}};
}

/// A reading against a range: good, near an end, outside.
void judgePressure(Finding& finding, const Entry& entry, const PressureRead& reading, Say good, Say bad) {
    const auto number = inMillibar(reading);
    rulebook::judgeAgainst(
        finding, entry, inUnitOf(entry, pressureIn(number)),
        {good, Say::NearEndOfRange, bad, pressureInRange(millibarFigure(number.value), entry)});
}

}  // namespace

Finding inletPressure(const InletInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::InletPressure};
    if (auto absent = rulebook::absence(input.working)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    finding.measured = millibarFigure(inMillibar(*input.working).value);
    if (input.atFullRate != true) {
        concludeOpen(finding, {Say::InletNotFull});
        return finding;
    }
    const Entry* gas = rules.known(Rule::InletPressure);
    if (!input.maker && gas == nullptr) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    const Entry entry = input.maker ? pressureOfMaker(Rule::InletPressure, *input.maker) : *gas;
    judgePressure(finding, entry, *input.working, Say::PressureGood, Say::PressureOutside);
    if (!input.standing) {
        return finding;
    }
    const auto drawn = pressureDrop(*input.standing, *input.working, true);
    if (drawn.value < -quantity::expanded(drawn)) {
        // Gas that flows can't press more than gas that stands: one of the two was misread.
        const rulebook::Sentence misread{Say::InletStandingBelow,
                                         {millibarFigure(inMillibar(*input.standing).value),
                                          millibarFigure(inMillibar(*input.working).value)}};
        if (finding.outcome == Outcome::Pass) {
            finding.notes.insert(finding.notes.begin(), finding.why);
            concludeAtLimit(finding, misread);
        } else {
            finding.notes.push_back(misread);
        }
    }
    return finding;
}

Finding burnerPressure(const rulebook::Given<PressureRead>& pressure,
                       const std::optional<MakersRange>& maker) {
    Finding finding{FindingKind::BurnerPressure};
    if (auto absent = rulebook::absence(pressure)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    finding.measured = millibarFigure(inMillibar(*pressure).value);
    if (!maker) {
        concludeOpen(finding, {Say::BurnerPressureNoMaker});
        return finding;
    }
    judgePressure(finding, pressureOfMaker(Rule::BurnerPressure, *maker), *pressure, Say::PressureGood,
                  Say::PressureOutside);
    return finding;
}

Finding meterAverage(const MeterAverageInput& input, const RulesInForce& rules) {
    Finding finding{FindingKind::MeterAverage};
    if (auto absent = rulebook::absence(input.average, input.over)) {
        concludeOpen(finding, *absent);
        return finding;
    }
    finding.measured = millibarFigure(inMillibar(*input.average).value);
    const Entry* band = rules.known(Rule::MeterAverage);
    const Entry* time = rules.known(Rule::MeterAverageTime);
    const auto least = time == nullptr ? std::nullopt : rulebook::durationOf(*time);
    if (band == nullptr || !least) {
        concludeOpen(finding, {Say::LimitMissing});
        return finding;
    }
    if (!rulebook::holds(input.over->in(quantity::kSecond), rulebook::Comparison::AtLeast,
                         least->in(quantity::kSecond))) {
        concludeOpen(finding,
                     {Say::MeterAverageTooShort, {secondsFigure(*input.over), secondsFigure(*least)}});
        return finding;
    }
    if (input.load != Load::High) {
        concludeOpen(finding, {Say::InletLoadNotSaid});
        return finding;
    }
    judgePressure(finding, *band, *input.average, Say::MeterAverageInside, Say::MeterAverageOutside);
    finding.limits.push_back(*time);
    // A proposal decides nothing, until the firm has confirmed it from the standard itself.
    if (band->provenance != rulebook::Provenance::Firm) {
        if (finding.outcome == Outcome::Fail || finding.outcome == Outcome::Pass) {
            finding.outcome = Outcome::LookAgain;
        }
        finding.notes.push_back({Say::MeterAverageProposal});
    }
    return finding;
}

}  // namespace hearth::burner
