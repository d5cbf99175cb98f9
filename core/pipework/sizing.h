// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/route.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Which pipes to enlarge, and to what, so that every route passes with the least metal.
namespace hearth::pipework {

struct SizeChange {
    std::size_t section = 0;
    const Tube* from = nullptr;
    const Tube* to = nullptr;
};

enum class SizingOutcome {
    Unknown,  // a route's drop is not known: nothing can be said
    PassesAlready,
    Enlarged,     // `changes` make every route pass
    NotPossible,  // not with the sizes and the equivalent lengths that are known
};

struct Sizing {
    SizingOutcome outcome = SizingOutcome::Unknown;
    std::vector<SizeChange> changes;  // in the order of the tree
    double extraMass = 0.0;           // kg of metal more than now
    bool leastProved = false;         // no cheaper set of changes passes; else a good one
    DropReport after;                 // with the changes
};

/// How many combinations are kept for a part of the tree before the search thins them out: proved to be the
/// least up to about a dozen sections, in practice for most trees of a house.
inline constexpr std::size_t kSizingKeeps = 4096;

/// Mass of one metre, kg: wall thickness x (outside - wall) x pi x density; copper 8960, steel 7850,
/// polyethylene 950 kg/m3. A measure of cost, no more. Nothing for a tube without dimensions. Source:
/// textbook (densities). Checked: sizing_test.cpp.
[[nodiscard]] std::optional<double> massPerMetre(const Tube& tube);

/// Sizes that a tube may be enlarged to: larger nominal sizes of its family with a larger bore, the
/// standard's common wall of each, in rising order. Source: the tables of tubes(). Checked: sizing_test.cpp.
[[nodiscard]] std::vector<const Tube*> largerSizes(const Tube& tube);

/// Least extra metal such that every route's drop, with twice its uncertainty, stays below `limit` (at it is
/// not enough). A section keeps its size or takes one of largerSizes(), with the fittings that it has; a size
/// for which an equivalent length is missing is not offered. Exact where `leastProved` says so: from the ends
/// to the meter it keeps, for each part of the tree, every combination that no other beats in both drop and
/// mass; beyond `keeps` of them only a spread of these, and then steps back what is larger than need be.
/// Source: textbook (dynamic programming). Checked: sizing_test.cpp (every combination of small trees).
[[nodiscard]] Sizing enlarge(const Tree& tree, FlowBasis basis, const DropConditions& conditions,
                             quantity::PressureChange limit, std::size_t keeps = kSizingKeeps);

/// What to say of it: one sentence a change. Source: none needed: words what enlarge() found. Checked:
/// sizing_test.cpp.
[[nodiscard]] std::vector<rulebook::Sentence> sizingAdvice(const Tree& tree, const Sizing& sizing);

}  // namespace hearth::pipework
