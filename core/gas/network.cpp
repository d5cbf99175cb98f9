// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/network.h"

#include "core/gas/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/against.h"
#include "core/rulebook/conclude.h"

#include <utility>
#include <vector>

namespace hearth::gas {

namespace {

using quantity::kMegajoulePerCubicMetre;
using quantity::Uncertain;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;

/// No verdict for a gas that the network's limits do not speak of; nothing for natural gas.
std::optional<Finding> otherGas(FindingKind kind, const RulesInForce& rules) {
    if (rules.gas() == rulebook::Gas::NaturalGas) {
        return std::nullopt;
    }
    return rulebook::noVerdict(kind, {Say::NetworkOtherGas, {rules.gas()}});
}

/// In the entry's own unit: an entry that the firm laid may be in kWh/m3.
template <class Heat>
Uncertain inUnitOf(const Entry& entry, const Stated<Heat>& stated) {
    auto unit = quantity::UnitCode::MegajoulePerCubicMetre;
    if (const auto figure = rulebook::figureOf(entry)) {
        unit = figure->unit;
    } else if (const auto range = rulebook::rangeOf(entry)) {
        unit = range->unit;
    }
    const auto size = quantity::heatValueUnit(unit);
    return quantity::readOff(stated.value.in(size), stated.digit.in(size));
}

quantity::Figure networkLimit(const Entry& entry) {
    return rulebook::figureOf(entry).value_or(quantity::Figure{});
}

/// The ends of the range are shown in the unit that they were entered in.
std::vector<rulebook::Argument> seenArguments(const quantity::Figure& measured, const Entry& entry) {
    const auto range = rulebook::rangeOf(entry).value_or(rulebook::Range{});
    return {measured, quantity::Figure{range.least, range.unit}, quantity::Figure{range.most, range.unit}};
}

}  // namespace

Finding networkWobbe(const rulebook::Given<Stated<GrossWobbe>>& wobbe, const RulesInForce& rules) {
    constexpr auto kKind = FindingKind::NetworkWobbe;
    if (auto other = otherGas(kKind, rules)) {
        return std::move(*other);
    }
    if (const auto missing = rulebook::absence(wobbe)) {
        return rulebook::noVerdict(kKind, *missing);
    }
    const Entry* least = rules.known(Rule::NetworkWobbeLeast);
    const Entry* most = rules.known(Rule::NetworkWobbeMost);
    if (least == nullptr || most == nullptr) {
        return rulebook::noVerdict(kKind, {Say::LimitMissing});
    }
    Finding finding{kKind};
    finding.measured = megajoules(wobbe->value.in(kMegajoulePerCubicMetre));
    const auto low = rulebook::standing(inUnitOf(*least, *wobbe), least->comparison,
                                        networkLimit(*least).value.toDouble());
    const auto high =
        rulebook::standing(inUnitOf(*most, *wobbe), most->comparison, networkLimit(*most).value.toDouble());
    // The nearer end stands first: it gives the limit that is shown.
    const bool isHigh = high == rulebook::Standing::Beyond ||
                        (high == rulebook::Standing::Near && low == rulebook::Standing::Within);
    const Entry& shown = isHigh ? *most : *least;
    rulebook::restOn(finding, shown);
    rulebook::restOn(finding, isHigh ? *least : *most);
    if (low == rulebook::Standing::Beyond || high == rulebook::Standing::Beyond) {
        concludeBeyond(finding, shown,
                       {isHigh ? Say::NetworkWobbeHigh : Say::NetworkWobbeLow,
                        {*finding.measured, networkLimit(shown)}});
    } else if (low == rulebook::Standing::Near || high == rulebook::Standing::Near) {
        concludeAtLimit(finding, {Say::NetworkAtLimit, {*finding.measured, networkLimit(shown)}});
    } else {
        concludeWithin(
            finding, {Say::NetworkWobbeGood, {*finding.measured, networkLimit(*least), networkLimit(*most)}});
    }
    return finding;
}

Finding networkDensity(const rulebook::Given<Stated<double>>& relativeDensity, const RulesInForce& rules) {
    constexpr auto kKind = FindingKind::NetworkDensity;
    if (auto other = otherGas(kKind, rules)) {
        return std::move(*other);
    }
    if (const auto missing = rulebook::absence(relativeDensity)) {
        return rulebook::noVerdict(kKind, *missing);
    }
    const Entry* most = rules.known(Rule::NetworkDensityMost);
    if (most == nullptr) {
        return rulebook::noVerdict(kKind, {Say::LimitMissing});
    }
    Finding finding{kKind};
    finding.measured = densityFigure(relativeDensity->value);
    const Uncertain measured = quantity::readOff(relativeDensity->value, relativeDensity->digit);
    rulebook::judgeAgainst(finding, *most, measured,
                           {Say::NetworkDensityGood,
                            Say::NetworkAtLimit,
                            Say::NetworkDensityHigh,
                            {*finding.measured, networkLimit(*most)}});
    return finding;
}

Finding heatValueSeen(const rulebook::Given<Stated<quantity::GrossHeatValue>>& gross,
                      const RulesInForce& rules) {
    constexpr auto kKind = FindingKind::HeatValueSeen;
    if (auto other = otherGas(kKind, rules)) {
        return std::move(*other);
    }
    if (const auto missing = rulebook::absence(gross)) {
        return rulebook::noVerdict(kKind, *missing);
    }
    const Entry* seen = rules.known(Rule::NetworkHeatValueSeen);
    if (seen == nullptr) {
        return rulebook::noVerdict(kKind, {Say::LimitMissing});
    }
    Finding finding{kKind};
    finding.measured = megajoules(gross->value.in(kMegajoulePerCubicMetre));
    // At an end of what is seen a value is as usual as anywhere in it: `near` says so too.
    rulebook::judgeAgainst(finding, *seen, inUnitOf(*seen, *gross),
                           {Say::HeatValueUsual, Say::HeatValueUsual, Say::HeatValueUnusual,
                            seenArguments(*finding.measured, *seen)});
    if (finding.outcome == Outcome::Fail) {
        finding.outcome = Outcome::LookAgain;
    }
    return finding;
}

}  // namespace hearth::gas
