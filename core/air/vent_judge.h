// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/known_rules.h"
#include "core/air/ventilation.h"
#include "core/quantity/uncertain.h"
#include "core/rulebook/finding.h"

#include <optional>
#include <vector>

/// What rooms, compartments and boiler rooms share: the area there held against the area needed.
namespace hearth::air {

/// The free area there, as if straight to outside, in cm2 with its uncertainty: vents through an inside wall
/// count by the factor of the rule book. Nothing while an area or a destination is missing.
/// Formula: A = sum of A_outside + sum of A_inside / f; uncertainties independent.
/// Valid for: f >= 1 (assert).
/// Source: gas-safety page on BS 5440-2 (50 % larger through an inside wall); GUM 5.1.2. Checked:
/// vent_judge_test.cpp.
[[nodiscard]] std::optional<quantity::Uncertain> areaThere(const std::vector<Vent>& vents, double wallFactor);

/// What of the vents is missing to say the area there.
/// Source: common practice, no source (bookkeeping). Checked: vent_judge_test.cpp.
[[nodiscard]] std::vector<rulebook::Sentence> lackOfVents(const std::vector<Vent>& vents);

struct Counted {
    /// Nothing while something is missing.
    std::optional<quantity::Uncertain> there;
    std::vector<rulebook::Sentence> missing;
};
/// The vents' area with the rule book's factor for inside walls, which `known` then keeps; adds to `steps`
/// what each of those counts as. A factor below 1 is none.
/// Source: see areaThere. Checked: vent_judge_test.cpp.
[[nodiscard]] Counted countVents(const std::vector<Vent>& vents, KnownRules& known,
                                 std::vector<rulebook::Sentence>& steps);

/// Vents at one level; those whose level is not said are at none.
/// Source: common practice, no source (bookkeeping). Checked: vent_judge_test.cpp.
[[nodiscard]] std::vector<Vent> ventsAt(const std::vector<Vent>& vents, VentLevel level);

/// The state of the vents: blocked, closable, with a fly-screen, without a sleeve.
/// Source: gas-safety page on BS 5440-2; Approved Document J. Checked: vent_judge_test.cpp.
[[nodiscard]] rulebook::Finding ventState(const std::vector<Vent>& vents);

/// The first sentence says why there is no verdict, the others are notes.
/// Source: common practice, no source (bookkeeping). Checked: vent_judge_test.cpp.
void concludeLacking(rulebook::Finding& finding, const std::vector<rulebook::Sentence>& missing);

/// Concludes a finding by a needed area that was computed from the entries: within the uncertainty of it, or
/// exactly at it, is to be looked at again. Nought needed holds without a vent.
/// Source: JCGM 106:2012 8.3 (as core/rulebook/against.h). Checked: vent_judge_test.cpp.
void judgeArea(rulebook::Finding& finding, const std::vector<rulebook::Entry>& entries, quantity::Area needed,
               const quantity::Uncertain& there);

/// Of several entries the one that is known least well: it decides, so that its mark shows.
/// Source: design of the rule book (provenance). Checked: vent_judge_test.cpp.
[[nodiscard]] const rulebook::Entry& leastKnown(const std::vector<rulebook::Entry>& entries);

}  // namespace hearth::air
