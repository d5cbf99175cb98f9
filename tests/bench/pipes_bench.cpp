// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/route.h"
#include "core/quantity/units.h"
#include "core/rulebook/rule_book.h"
#include "tests/bench/figure.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <ctime>
#include <vector>

namespace {

using namespace hearth;

constexpr std::size_t kSections = 1000;
constexpr double kMostMilliseconds = 1.0;

/// A main of 500 sections, and a branch with an appliance off each of them. Invented.
pipework::Tree largeTree() {
    std::vector<pipework::TreeSection> sections;
    for (std::size_t i = 0; i < kSections; ++i) {
        pipework::TreeSection section;
        const bool main = i < kSections / 2;
        section.tube = pipework::tubeByCode(main ? "copper_54" : "copper_15");
        section.length = quantity::Length(main ? 0.2 : 1.5, quantity::kMetre);
        if (main && i > 0) {
            section.after = i - 1;
        }
        if (!main) {
            section.after = i - kSections / 2;
            section.demand = pipework::Demand{quantity::Flow(0.02, quantity::kCubicMetrePerHour), {}, {}, {}};
        }
        sections.push_back(section);
    }
    return pipework::Tree::make(std::move(sections)).value();
}

struct PreparedPipes {
    rulebook::RuleBook book = rulebook::RuleBook::shipped();
    rulebook::RulesInForce rules{book,
                                 rulebook::Edition::General,
                                 rulebook::Gas::NaturalGas,
                                 {std::chrono::year(2026), std::chrono::November, std::chrono::day(25)}};
    pipework::DropConditions conditions =
        *pipework::dropConditions(rules, pipework::FittingsEdition::From2015);
    pipework::Tree tree = largeTree();
};

void thousandSections(benchmark::State& state) {
    const PreparedPipes prepared;
    for ([[maybe_unused]] auto step : state) {
        benchmark::DoNotOptimize(
            pipework::pressureDrops(prepared.tree, pipework::FlowBasis::Design, prepared.conditions));
    }
}
BENCHMARK(thousandSections)->Unit(benchmark::kMicrosecond);

double medianMilliseconds() {
    constexpr int kRuns = 51;
    const PreparedPipes prepared;
    std::vector<double> runs;
    for (int run = 0; run < kRuns; ++run) {
        const auto start = std::clock();
        benchmark::DoNotOptimize(
            pipework::pressureDrops(prepared.tree, pipework::FlowBasis::Design, prepared.conditions));
        runs.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    std::nth_element(runs.begin(), runs.begin() + kRuns / 2, runs.end());
    return runs[kRuns / 2];
}

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    const PreparedPipes prepared;
    const auto report =
        pipework::pressureDrops(prepared.tree, pipework::FlowBasis::Design, prepared.conditions);
    hearth::bench::figure("a pipe tree of 1,000 sections solved, in milliseconds of processor time",
                          medianMilliseconds(), kMostMilliseconds);
    return report.complete ? 0 : 1;  // otherwise nothing was measured
}
