// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "core/judging/readings.h"
#include "core/pipework/route.h"

#include <optional>
#include <vector>

/// Pressure drops: what a question on pipes and a visit's pipework have in common, and the visit's.
namespace hearth::judging {

/// A route's finding at one of the flows; `end` is the section in the tree.
struct RouteJudged {
    pipework::FlowBasis basis = pipework::FlowBasis::Design;
    std::size_t end = 0;
    rulebook::Finding finding;
};
struct PipesWorked {
    std::optional<pipework::DropReport> design;
    std::optional<pipework::DropReport> measured;  // where anything was measured
    std::vector<RouteJudged> routes;               // design first, each in the report's order
};
[[nodiscard]] PipesWorked workPipes(const pipework::Tree& tree, const pipework::DropConditions& conditions,
                                    const rulebook::RulesInForce& rules);

/// Standard uncertainties of what was read to a last digit.
[[nodiscard]] quantity::Length lengthUncertainty(quantity::Length digit);
[[nodiscard]] quantity::Flow flowUncertainty(quantity::Flow digit);

/// The pipes of a visit, one section of the tree for each of the list, in its order. The demand of an
/// appliance at an end is its heat input by the gas's calorific value (a net input by the net one), and what
/// was timed at the meter on this visit, or typed as the gas rate; a capped end draws nothing. Fittings that
/// are not said, or can't be read, make a drop a least value. The equivalent lengths are those in force now:
/// an old pipe's fittings are no shorter.
struct VisitPipes {
    bool isAsked = false;                // what hangs at some end was said: somebody wants the drops
    bool isOrdered = true;               // the list is a tree from the meter
    std::optional<pipework::Tree> tree;  // of an ordered list that is not empty
    bool isGasKnown = true;
    PipesWorked worked;
};
[[nodiscard]] VisitPipes visitPipes(const reg::VisitFile& file, const rulebook::RuleBook& book);
/// The tree alone. Errors: a list that is none, see pipework::Tree::make().
[[nodiscard]] Result<pipework::Tree> treeOf(const reg::VisitFile& file, const rulebook::RuleBook& book);

/// The findings on the drop to each end, for a visit whose pipes say what hangs at one of them; at the
/// measured flow only where every flow on the way was measured.
[[nodiscard]] std::vector<Judged> judgePipes(const reg::VisitFile& file, const rulebook::RuleBook& book);

}  // namespace hearth::judging
