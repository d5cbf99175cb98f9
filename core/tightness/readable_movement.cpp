// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/readable_movement.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "core/rulebook/values.h"
#include "core/tightness/figures.h"

#include <array>
#include <cmath>

namespace hearth::tightness {

using quantity::PressureChange;
using rulebook::Entry;
using rulebook::Finding;
using rulebook::FindingKind;
using rulebook::Rule;
using rulebook::RulesInForce;
using rulebook::Say;
using rulebook::Sentence;

namespace {

/// A row of the table; `decimals` counts for electronic gauges alone. Narrower ranges come first.
struct GaugeRow {
    LargerGaugeKind kind;
    int decimals;
    double widest;  // mbar
    GaugeRules rules;
};

constexpr std::array kGaugeTable{
    GaugeRow{LargerGaugeKind::Water, 0, 120, {Rule::ReadableWater, Rule::LongestWater}},
    GaugeRow{LargerGaugeKind::DenseFluid, 0, 200, {Rule::ReadableDense, Rule::LongestDense}},
    GaugeRow{LargerGaugeKind::Mercury, 0, 1000, {Rule::ReadableMercury, Rule::LongestMercury}},
    GaugeRow{LargerGaugeKind::Electronic, 1, 200, {Rule::ReadableOneDecimal, Rule::LongestOneDecimal}},
    GaugeRow{
        LargerGaugeKind::Electronic, 1, 2000, {Rule::ReadableOneDecimalWide, Rule::LongestOneDecimalWide}},
    GaugeRow{LargerGaugeKind::Electronic, 2, 200, {Rule::ReadableTwoDecimals, Rule::LongestTwoDecimals}},
    GaugeRow{LargerGaugeKind::Electronic, 0, 20000, {Rule::ReadableNoDecimal, Rule::LongestNoDecimal}},
};

/// What is not said of the gauge, or that the table does not have it.
std::optional<Sentence> gaugeLack(const std::optional<LargerGauge>& gauge) {
    if (!gauge) {
        return Sentence{Say::GaugeNotChosen};
    }
    const bool electronic = gauge->kind == LargerGaugeKind::Electronic;
    if (!gauge->range || (electronic && !gauge->decimals)) {
        return Sentence{Say::ReadingMissing};
    }
    return gaugeRules(*gauge) ? std::nullopt : std::optional(Sentence{Say::ReadableMovementNotTabled});
}

}  // namespace

std::optional<GaugeRules> gaugeRules(const LargerGauge& gauge) {
    const bool electronic = gauge.kind == LargerGaugeKind::Electronic;
    if (!gauge.range || *gauge.range <= PressureChange{} || (electronic && !gauge.decimals)) {
        return std::nullopt;
    }
    for (const auto& row : kGaugeTable) {
        const bool same = row.kind == gauge.kind && (!electronic || row.decimals == *gauge.decimals);
        if (same &&
            rulebook::holds(gauge.range->in(quantity::kMillibar), rulebook::Comparison::AtMost, row.widest)) {
            return row.rules;
        }
    }
    return std::nullopt;
}

Gauge asGauge(const LargerGauge& gauge, PressureChange readable) {
    if (gauge.kind != LargerGaugeKind::Electronic) {
        return {GaugeKind::Water, readable, gauge.repeatability, std::nullopt};
    }
    Gauge display{GaugeKind::Electronic, std::nullopt, gauge.repeatability, std::nullopt};
    if (gauge.decimals) {
        display.resolution = PressureChange(std::pow(10.0, -*gauge.decimals), quantity::kMillibar);
    }
    return display;
}

Readable readableMovement(const std::optional<LargerGauge>& gauge, const RulesInForce& rules) {
    Readable readable;
    auto& finding = readable.finding;
    if (auto lack = gaugeLack(gauge)) {
        concludeOpen(finding, *lack);
        return readable;
    }
    const Entry* entry = rules.find(gaugeRules(*gauge)->readable);
    if (entry != nullptr) {
        restOn(finding, *entry);
        readable.movement = rulebook::pressureChangeOf(*entry);
    }
    if (!readable.movement) {
        concludeOpen(finding, {Say::LimitMissing});
        return readable;
    }
    readable.entry = entry;
    concludeWithin(finding, {Say::ReadableMovementIs, {limitOf(*entry)}});
    return readable;
}

Finding longestTest(const std::optional<LargerGauge>& gauge, const std::optional<quantity::Duration>& needed,
                    const RulesInForce& rules) {
    Finding finding{FindingKind::LongestTest};
    if (auto lack = gaugeLack(gauge)) {
        concludeOpen(finding, *lack);
        return finding;
    }
    const Entry* longest = rules.find(gaugeRules(*gauge)->longest);
    if (longest != nullptr) {
        restOn(finding, *longest);
    }
    if (!needed) {
        concludeOpen(finding, {Say::ReadingMissing});
        return finding;
    }
    finding.measured = minutesOf(*needed);
    const auto most = longest == nullptr ? std::nullopt : rulebook::durationOf(*longest);
    if (!most) {
        concludeOpen(finding, {Say::LongestUnknown, {*finding.measured}});
        return finding;
    }
    const std::vector<rulebook::Argument> arguments{*finding.measured, limitOf(*longest)};
    if (rulebook::holds(needed->in(quantity::kSecond), rulebook::Comparison::AtMost,
                        most->in(quantity::kSecond))) {
        concludeWithin(finding, {Say::LongestKept, arguments});
    } else {
        // It says nothing against the pipework: on this gauge the test is none.
        concludeOpen(finding, {Say::LongestBeyond, arguments});
    }
    return finding;
}

}  // namespace hearth::tightness
