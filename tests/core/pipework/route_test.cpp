// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/route.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/pipework/samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>
#include <numeric>

namespace hearth::pipework {
namespace {

using quantity::kCubicMetrePerHour;
using quantity::kMillibar;
using rulebook::Outcome;
using samples::after;
using samples::drawing;
using samples::fromMeter;

DropConditions conditionsOf(const rulebook::RulesInForce& rules) {
    return *dropConditions(rules, FittingsEdition::From2015);
}

double inMbar(const std::optional<quantity::PressureChange>& drop) {
    return drop ? drop->in(kMillibar) : -1.0;
}

/// Meter - 22 mm 4 m - tee: 15 mm 3 m to a hob of 1.0, 22 mm 5 m to a boiler of 3.0 m3/h.
std::vector<TreeSection> houseSections() {
    return {fromMeter("copper_22", 4.0), drawing(after(0, "copper_15", 3.0), 1.0, 0.9),
            drawing(after(0, "copper_22", 5.0), 3.0, 2.8)};
}

TEST(Routes, flowsAreTheSumOfWhatHangsBelow) {
    const auto flows = flowsBySection(samples::treeOf(houseSections()), FlowBasis::Design);
    ASSERT_EQ(flows.size(), 3U);
    EXPECT_NEAR(flows[0]->in(kCubicMetrePerHour), 4.0, 1e-12);
    EXPECT_NEAR(flows[1]->in(kCubicMetrePerHour), 1.0, 1e-12);
    auto open = houseSections();
    open[1].demand.reset();
    EXPECT_FALSE(flowsBySection(samples::treeOf(open), FlowBasis::Design)[0])
        << "an end of which nothing is said";
}

// A law: the drop of a route is the sum of its sections', whatever the tree.
TEST(Routes, areTheSumOfTheirSections) {
    std::mt19937 random(20261125);
    const auto rules = samples::rulesOf(samples::shippedBook());
    for (int round = 0; round < 60; ++round) {
        const auto tree =
            samples::treeOf(samples::randomSections(random, 2 + static_cast<std::size_t>(round % 12)));
        const auto report = pressureDrops(tree, FlowBasis::Design, conditionsOf(rules));
        for (const auto& route : report.routes) {
            if (!route.drop) {
                continue;  // beyond what the law holds for
            }
            double sum = 0.0;
            for (const auto section : tree.route(route.end)) {
                sum += inMbar(report.sections[section].drop);
            }
            EXPECT_NEAR(inMbar(route.drop), sum, 1e-9);
        }
    }
}

TEST(Routes, measuredDrawsLessThanDesign) {
    const auto tree = samples::treeOf(houseSections());
    const auto rules = samples::rulesOf(samples::shippedBook());
    EXPECT_TRUE(hasMeasuredFlow(tree));
    const auto design = pressureDrops(tree, FlowBasis::Design, conditionsOf(rules));
    const auto measured = pressureDrops(tree, FlowBasis::Measured, conditionsOf(rules));
    ASSERT_TRUE(design.complete && measured.complete);
    for (std::size_t i = 0; i < design.routes.size(); ++i) {
        EXPECT_LT(inMbar(measured.routes[i].drop), inMbar(design.routes[i].drop));
    }
    auto section = houseSections()[0];
    EXPECT_EQ(sectionDrop(section, std::nullopt, conditionsOf(rules)).lack, DropLack::Flow);
    section.length.reset();
    EXPECT_EQ(sectionDrop(section, quantity::Flow(1.0, kCubicMetrePerHour), conditionsOf(rules)).lack,
              DropLack::Length);
}

// Source: BS 6891: 1 mbar from meter to appliance (gas register's magazine, July 2021). The method of
// proportional lengths gives, for 22 mm at 4.6 m3/h over 9 m of the published table, 1 mbar: half the length
// is half of it.
TEST(Routes, areJudgedAgainstOneMillibar) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto conditions = conditionsOf(rules);
    const auto outcomeOf = [&](double metres) {
        const auto tree = samples::treeOf({drawing(fromMeter("copper_22", metres), 4.6)});
        const auto report = pressureDrops(tree, FlowBasis::Design, conditions);
        return judgeRoutes(tree, report, conditions, rules).front().outcome;
    };
    EXPECT_EQ(outcomeOf(4.5), Outcome::Pass);
    EXPECT_EQ(outcomeOf(18.0), Outcome::Fail);
    testing::Agreement agreement("Pressure drop in proportion to length (22 mm, 4.6 m3/h)",
                                 "BS 6891 discharge table, handout, with the program's caution of 0.95",
                                 "mbar", 0.13);
    for (const double metres : {4.5, 9.0}) {
        const auto tree = samples::treeOf({drawing(fromMeter("copper_22", metres), 4.6)});
        agreement.hold(std::to_string(metres),
                       inMbar(pressureDrops(tree, FlowBasis::Design, conditions).routes[0].drop),
                       metres / 9.0);
    }
}

// Fittings only add: without them a drop never passes, and one beyond the limit is beyond it all the same.
TEST(Routes, withoutTheirFittingsAreALeast) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    auto sections = houseSections();
    const auto whole = pressureDrops(samples::treeOf(sections), FlowBasis::Design, conditionsOf(rules));
    sections[2].fittingsSaid = false;
    auto tree = samples::treeOf(sections);
    auto report = pressureDrops(tree, FlowBasis::Design, conditionsOf(rules));
    ASSERT_EQ(report.routes.size(), 2U);
    EXPECT_FALSE(report.complete);
    EXPECT_FALSE(report.routes[0].unsaid);
    EXPECT_EQ(report.routes[1].unsaid, 2U);
    EXPECT_NEAR(inMbar(report.routes[1].drop), inMbar(whole.routes[1].drop), 1e-12);
    auto findings = judgeRoutes(tree, report, conditionsOf(rules), rules);
    EXPECT_EQ(findings[0].outcome, Outcome::Pass);
    EXPECT_EQ(findings[1].outcome, Outcome::NoVerdict);
    EXPECT_EQ(findings[1].why.say, rulebook::Say::PipeDropLeast);
    ASSERT_EQ(findings[1].why.arguments.size(), 4U);
    EXPECT_EQ(findings[1].why.arguments[2], rulebook::Argument(std::string("3")));

    sections[2].length = quantity::Length(40.0, quantity::kMetre);
    tree = samples::treeOf(sections);
    report = pressureDrops(tree, FlowBasis::Design, conditionsOf(rules));
    findings = judgeRoutes(tree, report, conditionsOf(rules), rules);
    EXPECT_EQ(findings[1].outcome, Outcome::Fail);
    EXPECT_TRUE(rulebook::says(findings[1], rulebook::Say::PipeFittingsUnsaid));

    // The section that lacks them weighs on all that hangs below it.
    sections = houseSections();
    sections[0].fittingsSaid = false;
    report = pressureDrops(samples::treeOf(sections), FlowBasis::Design, conditionsOf(rules));
    EXPECT_EQ(report.routes[0].unsaid, 0U);
    EXPECT_EQ(report.routes[1].unsaid, 0U);
}

TEST(Routes, withoutADemandOrASizeHaveNoVerdict) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto conditions = conditionsOf(rules);
    for (const auto& sections : {std::vector<TreeSection>{fromMeter("copper_22", 4.0)},
                                 std::vector<TreeSection>{drawing(TreeSection{}, 1.0)}}) {
        const auto tree = samples::treeOf(sections);
        const auto report = pressureDrops(tree, FlowBasis::Design, conditions);
        EXPECT_FALSE(report.complete);
        for (const auto& finding : judgeRoutes(tree, report, conditions, rules)) {
            EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
        }
    }
    EXPECT_EQ(dropGasUnknown(FlowBasis::Design).outcome, Outcome::NoVerdict);
    EXPECT_FALSE(dropConditions(samples::rulesOf(samples::shippedBook(), rulebook::Gas::LpgAir),
                                FittingsEdition::From2015));
}

}  // namespace
}  // namespace hearth::pipework
