// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/sizing.h"

#include "core/quantity/units.h"
#include "tests/core/pipework/samples.h"

#include <gtest/gtest.h>
#include <limits>

namespace hearth::pipework {
namespace {

using quantity::kMillibar;
using samples::after;
using samples::drawing;
using samples::fromMeter;

const quantity::PressureChange kOneMillibar{1.0, kMillibar};

DropConditions sizingConditions(const rulebook::RulesInForce& rules) {
    return *dropConditions(rules, FittingsEdition::From2015);
}

bool passesAll(const DropReport& report) {
    return report.complete &&
           std::all_of(report.routes.begin(), report.routes.end(), [](const RouteDrop& route) {
               return (*route.drop + 2.0 * route.uncertainty).in(kMillibar) < 1.0;
           });
}

/// The least extra mass over every combination of sizes; infinity when none passes.
double leastByTrying(const Tree& tree, const DropConditions& conditions) {
    const auto sections = tree.sections();
    std::vector<std::vector<const Tube*>> choices;
    for (const auto& section : sections) {
        choices.push_back(largerSizes(*section.tube));
        choices.back().insert(choices.back().begin(), section.tube);
    }
    std::vector<std::size_t> at(sections.size(), 0);
    double best = std::numeric_limits<double>::infinity();
    while (true) {
        Tree tried = tree;
        double mass = 0.0;
        for (std::size_t i = 0; i < at.size(); ++i) {
            const auto* tube = choices[i][at[i]];
            tried.replace(i, resized(sections[i], *tube));
            mass += (*massPerMetre(*tube) - *massPerMetre(*sections[i].tube)) *
                    sections[i].length->in(quantity::kMetre);
        }
        if (mass < best && passesAll(pressureDrops(tried, FlowBasis::Design, conditions))) {
            best = mass;
        }
        std::size_t digit = 0;
        while (digit < at.size() && ++at[digit] == choices[digit].size()) {
            at[digit++] = 0;
        }
        if (digit == at.size()) {
            return best;
        }
    }
}

// Source: textbook: pi (outside - wall) wall density; copper 8960 kg/m3: 15 x 0.7 is 0.2819 kg/m.
TEST(Sizing, massIsThatOfTheWall) {
    EXPECT_NEAR(*massPerMetre(*tubeByCode("copper_15")), 3.14159265358979 * 0.0143 * 0.0007 * 8960, 1e-6);
    EXPECT_FALSE(massPerMetre(*tubeByCode("corrugated")));
}

TEST(Sizing, offersLargerTubesOfTheSameKindInOrder) {
    const auto sizes = largerSizes(*tubeByCode("copper_15"));
    ASSERT_FALSE(sizes.empty());
    double last = 13.6;
    for (const auto* tube : sizes) {
        EXPECT_EQ(tube->family, TubeFamily::Copper);
        EXPECT_GT(tube->bore(), last);
        last = tube->bore();
    }
}

TEST(Sizing, leavesWhatPasses) {
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto sizing = enlarge(samples::treeOf({drawing(fromMeter("copper_22", 3.0), 2.0)}),
                                FlowBasis::Design, sizingConditions(rules), kOneMillibar);
    EXPECT_EQ(sizing.outcome, SizingOutcome::PassesAlready);
    EXPECT_TRUE(sizing.changes.empty());
    EXPECT_EQ(enlarge(samples::treeOf({fromMeter("copper_22", 3.0)}), FlowBasis::Design,
                      sizingConditions(rules), kOneMillibar)
                  .outcome,
              SizingOutcome::Unknown);
}

// A law: the answer passes, and no other choice of sizes passes with less copper.
TEST(Sizing, findsTheLeastCopperOfAllCombinations) {
    std::mt19937 random(7);
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto conditions = sizingConditions(rules);
    int enlarged = 0;
    for (int round = 0; round < 12; ++round) {
        const auto tree = samples::treeOf(samples::randomSections(random, 3));
        const auto sizing = enlarge(tree, FlowBasis::Design, conditions, kOneMillibar);
        const double least = leastByTrying(tree, conditions);
        if (sizing.outcome == SizingOutcome::Enlarged) {
            ++enlarged;
            EXPECT_TRUE(passesAll(sizing.after));
            EXPECT_TRUE(sizing.leastProved);
            EXPECT_NEAR(sizing.extraMass, least, 1e-9);
            EXPECT_FALSE(sizingAdvice(tree, sizing).empty());
        } else if (sizing.outcome == SizingOutcome::PassesAlready) {
            EXPECT_EQ(least, 0.0);
        } else {
            EXPECT_EQ(least, std::numeric_limits<double>::infinity());
        }
    }
    EXPECT_GT(enlarged, 2);
}

// Beyond what can be proved the answer still passes.
TEST(Sizing, stillPassesWhenItKeepsFewCombinations) {
    std::mt19937 random(11);
    const auto rules = samples::rulesOf(samples::shippedBook());
    const auto conditions = sizingConditions(rules);
    for (int round = 0; round < 10; ++round) {
        const auto tree = samples::treeOf(samples::randomSections(random, 14));
        const auto sizing = enlarge(tree, FlowBasis::Design, conditions, kOneMillibar, 8);
        if (sizing.outcome == SizingOutcome::Enlarged) {
            EXPECT_TRUE(passesAll(sizing.after));
        }
    }
}

}  // namespace
}  // namespace hearth::pipework
