// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pipework/fittings.h"
#include "core/pipework/pressure_drop.h"
#include "core/pipework/tree.h"
#include "core/rulebook/finding.h"
#include "core/rulebook/rules_in_force.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace hearth::pipework {

/// At which flow: every appliance at its largest heat input, or what was measured.
enum class FlowBasis { Design, Measured };

/// What pressure drops are worked out with.
struct DropConditions {
    FlowingGas gas;
    double efficiency = kCautiousEfficiency;
    const rulebook::Entry* efficiencyEntry = nullptr;  // none: kCautiousEfficiency, for want of one
    FittingTable fittings;
};

/// From the rule book: its efficiency where it has one, kCautiousEfficiency otherwise, and one edition's
/// equivalent lengths. `gas` for a gas whose viscosity was typed; nothing when neither it nor flowingGas()
/// knows. The book must outlive it. Source: flowingGas(), core/rulebook. Checked: route_test.cpp.
[[nodiscard]] std::optional<DropConditions> dropConditions(const rulebook::RulesInForce& rules,
                                                           FittingsEdition edition,
                                                           std::optional<FlowingGas> gas = std::nullopt);

/// Why a section has no pressure drop.
enum class DropLack { None, Flow, Size, Length, Fitting, OutsideLaw };

struct SectionDrop {
    std::optional<quantity::Flow> flow;        // all that is drawn below it
    std::optional<quantity::Length> reckoned;  // length with fittings
    std::optional<quantity::PressureChange> drop;
    DropLack lack = DropLack::None;
    bool isLeast = false;  // its fittings are not said: without them
};

/// From the meter to what is drawn at the end of one section.
struct RouteDrop {
    std::size_t end = 0;                           // section
    std::optional<quantity::PressureChange> drop;  // sum over the route; nothing while a part is unknown
    quantity::PressureChange uncertainty;          // standard uncertainty
    std::optional<std::size_t> lacking;            // first section of the route without a drop
    std::optional<std::size_t> unsaid;             // first whose fittings are not said: the drop is a least
};

struct DropReport {
    FlowBasis basis = FlowBasis::Design;
    std::vector<SectionDrop> sections;  // as in the tree
    std::vector<RouteDrop> routes;      // one for each appliance, and for each end of which none is said
    std::optional<std::size_t> worst;   // route with the largest known drop
    bool complete = false;              // there are routes, and the drop of each is known, fittings and all
};

/// The flow through each section: the sum of what hangs below it. Nothing for a section that has an end below
/// it for which no flow is said (or a negative one). In the tree's order. Source: conservation of mass.
/// Checked: route_test.cpp.
[[nodiscard]] std::vector<std::optional<quantity::Flow>> flowsBySection(const Tree& tree, FlowBasis basis);

/// Drop of one section at a flow. Source: pressureDrop(), fittingsLength(). Checked: route_test.cpp.
[[nodiscard]] SectionDrop sectionDrop(const TreeSection& section, std::optional<quantity::Flow> flow,
                                      const DropConditions& conditions);

/// Drops of all sections and routes: the drop of a route is the sum of its sections'. Its uncertainty is of
/// first order, from lengths and demands, each demand counted in all sections that it flows through. Takes
/// time in proportion to the sections. Source: BS 6891 (the method: sum along each route, proportional to
/// length), GUM 5.1.2. Checked: route_test.cpp.
[[nodiscard]] DropReport pressureDrops(const Tree& tree, FlowBasis basis, const DropConditions& conditions);

/// Whether anything was measured at all: a capped end, which draws nothing, was not. Source: definition.
/// Checked: route_test.cpp.
[[nodiscard]] bool hasMeasuredFlow(const Tree& tree);

/// One finding a route, in the report's order: the drop against Rule::PipeDropMost, resting on the equivalent
/// lengths and the efficiency that it was worked out with. A drop without all fittings is a least: it fails
/// where it is beyond the limit already, and has no verdict otherwise. Source: BS 6891, as in
/// core/rulebook/shipped. Checked: route_test.cpp.
[[nodiscard]] std::vector<rulebook::Finding> judgeRoutes(const Tree& tree, const DropReport& report,
                                                         const DropConditions& conditions,
                                                         const rulebook::RulesInForce& rules);

/// For a gas of which density and viscosity are not known: no verdict. Source: none needed: says what is
/// missing. Checked: route_test.cpp.
[[nodiscard]] rulebook::Finding dropGasUnknown(FlowBasis basis);

}  // namespace hearth::pipework
