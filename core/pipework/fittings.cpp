// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/fittings.h"

#include "core/quantity/units.h"
#include "core/rulebook/values.h"

#include <algorithm>

namespace hearth::pipework {

using quantity::Length;
using rulebook::Rule;

namespace {

constexpr double kOldLargest = 28.0;  // mm: the sizes that the editions before 2015 give one figure for
constexpr std::array kNewSizes{15.0, 22.0, 28.0, 35.0};

using FittingRules = std::array<Rule, kFittingKinds>;
constexpr FittingRules kOldFittingRules{Rule::FittingOldElbow, Rule::FittingOldBend, Rule::FittingOldBend45,
                                        Rule::FittingOldTee};
constexpr std::array<FittingRules, kNewSizes.size()> kNewFittingRules{{
    {Rule::Fitting15Elbow, Rule::Fitting15Bend, Rule::Fitting15Bend45, Rule::Fitting15Tee},
    {Rule::Fitting22Elbow, Rule::Fitting22Bend, Rule::Fitting22Bend45, Rule::Fitting22Tee},
    {Rule::Fitting28Elbow, Rule::Fitting28Bend, Rule::Fitting28Bend45, Rule::Fitting28Tee},
    {Rule::Fitting35Elbow, Rule::Fitting35Bend, Rule::Fitting35Bend45, Rule::Fitting35Tee},
}};

/// Which row of the edition's table the tube has.
std::optional<std::size_t> fittingRow(const Tube& tube, FittingsEdition edition) {
    if (tube.family != TubeFamily::Copper || tube.nominal <= 0.0) {
        return std::nullopt;
    }
    if (edition == FittingsEdition::Before2015) {
        return tube.nominal <= kOldLargest ? std::optional<std::size_t>(0) : std::nullopt;
    }
    const auto* found = std::find(kNewSizes.begin(), kNewSizes.end(), tube.nominal);
    return found == kNewSizes.end() ? std::nullopt
                                    : std::optional(static_cast<std::size_t>(found - kNewSizes.begin()));
}

const FittingRules& fittingRules(FittingsEdition edition, std::size_t row) {
    return edition == FittingsEdition::Before2015 ? kOldFittingRules : kNewFittingRules.at(row);
}

}  // namespace

std::string_view fittingsStandard(FittingsEdition edition) {
    return edition == FittingsEdition::Before2015 ? "BS 6891:2005" : "BS 6891:2015";
}

std::optional<Rule> fittingRule(const Tube& tube, FittingKind kind, FittingsEdition edition) {
    const auto row = fittingRow(tube, edition);
    return row ? std::optional(fittingRules(edition, *row).at(static_cast<std::size_t>(kind))) : std::nullopt;
}

FittingTable::FittingTable(FittingsEdition edition, const rulebook::RulesInForce& rules)
    : m_edition(edition) {
    const std::size_t rows = edition == FittingsEdition::Before2015 ? 1 : kNewSizes.size();
    for (std::size_t row = 0; row < rows; ++row) {
        const auto& named = fittingRules(edition, row);
        std::transform(named.begin(), named.end(), m_sizes.at(row).begin(),
                       [&](Rule rule) { return rules.find(rule); });
    }
}

const FittingEntries* FittingTable::of(const Tube& tube) const {
    const auto row = fittingRow(tube, m_edition);
    return row ? &m_sizes.at(*row) : nullptr;
}

FittingsLength fittingsLength(const TreeSection& section, const FittingTable& table) {
    FittingsLength result;
    result.said = section.fittingsSaid;
    if (!result.said) {
        result.length = Length{};
        return result;
    }
    if (section.typedFittings) {
        result.typed = true;
        if (*section.typedFittings >= Length{}) {
            result.length = section.typedFittings;
        }
        return result;
    }
    const auto& has = section.fittings;
    if (has.none()) {
        result.length = Length{};
        return result;
    }
    const auto* entries = section.tube == nullptr ? nullptr : table.of(*section.tube);
    if (entries == nullptr) {
        return result;
    }
    const std::array counts{has.elbows, has.bends, has.bends45, has.tees};
    Length sum;
    for (std::size_t kind = 0; kind < kFittingKinds; ++kind) {
        if (counts.at(kind) == 0) {
            continue;
        }
        const auto* entry = entries->at(kind);
        const auto each = entry == nullptr ? std::nullopt : rulebook::lengthOf(*entry);
        if (!each || counts.at(kind) < 0) {
            return result;
        }
        sum = sum + *each * counts.at(kind);
        result.used.at(kind) = entry;
    }
    result.length = sum;
    return result;
}

TreeSection resized(const TreeSection& section, const Tube& tube) {
    TreeSection changed = section;
    if (section.typedFittings && section.tube != nullptr && section.tube->hasDimensions()) {
        changed.typedFittings = *section.typedFittings * (tube.bore() / section.tube->bore());
    }
    changed.tube = &tube;
    return changed;
}

}  // namespace hearth::pipework
