// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/burner/analyser.h"
#include "core/burner/appliance_kind.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <optional>
#include <string>
#include <vector>

/// Combustion judged by kind of appliance: the maker's figures first, then the kind's own entries.
namespace hearth::burner {

/// What the maker's instructions say of the products; each figure that is there decides before the rule
/// book's. CO in ppm or per cent, CO2 in per cent, the ratio bare.
struct MakersCombustion {
    std::optional<quantity::Figure> carbonMonoxideMost;
    std::optional<quantity::Figure> ratioMost;
    std::optional<rulebook::Range> carbonDioxideAtMaximum;
    std::optional<rulebook::Range> carbonDioxideAtMinimum;
    std::string source;  // where it stands: page, table
};

struct CombustionInput {
    std::optional<ApplianceKind> kind;
    FlueReadings atMaximum;
    FlueReadings atMinimum;
    Analyser analyser;
    MakersCombustion maker;
};

struct CombustionFindings {
    /// The whole: the gravest of the parts; no verdict while a rate that is needed has not been read.
    rulebook::Finding overall;
    /// Ratio, CO, CO2 of each rate that was read or is needed, as far as there is something to hold them
    /// against.
    std::vector<rulebook::Finding> parts;
};

/// A condensing boiler is held to both CO and ratio at both rates; another kind to its ratio (never the
/// boiler's), at maximum rate and, when it was read, at minimum. Beyond a limit the finding says what to do,
/// in the order of the procedure.
/// Source: boiler trade's procedure TB 143 and BS 7967, by the entries (facts: combustion 2.2, 2.3).
/// Checked: tests/core/burner/combustion_test.cpp.
[[nodiscard]] CombustionFindings combustion(const CombustionInput& input,
                                            const rulebook::RulesInForce& rules);

}  // namespace hearth::burner
