// SPDX-License-Identifier: GPL-3.0-or-later
// A million findings on CO/CO2 ratios, from readings to outcome, reason and the entry that decided. The goal
// is one second; beside it what the bare formula takes, and how often each asks for memory.
#include "core/burner/ratio.h"
#include "core/rulebook/rules_in_force.h"
#include "tests/bench/figure.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <new>
#include <vector>

namespace {

thread_local long allocations = 0;

}  // namespace

void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size == 0 ? 1 : size)) {
        return memory;
    }
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace {

using namespace hearth;

constexpr int kMillion = 1000000;
constexpr double kMostSeconds = 1.0;

/// Readings that differ from call to call: within, at and beyond the limit.
burner::FlueReadings readingsOf(int i) {
    const quantity::Share co(i % 600, quantity::kPpm);
    const quantity::Share co2(70 + i % 40, quantity::Unit<quantity::ShareDimension>{0.001});
    return {burner::ShareReading{co, {1.0, quantity::kPpm}},
            burner::ShareReading{co2, {0.1, quantity::kPercent}},
            {}};
}

struct Prepared {
    rulebook::RuleBook book = rulebook::RuleBook::shipped();
    rulebook::RulesInForce rules{book, rulebook::Edition::General, rulebook::Gas::NaturalGas,
                                 calendar::fromIso("2026-11-10").value()};
    burner::Analyser analyser;
};

/// As for an appliance's readings: its limit is looked up in the book for each finding.
rulebook::Finding findingOf(const Prepared& prepared, int i) {
    return burner::ratioFinding(rulebook::FindingKind::CombustionRatioMaximum, readingsOf(i),
                                prepared.analyser,
                                prepared.rules.find(rulebook::Rule::CombustionRatioCondensing));
}

double formulaOf(int i) {
    const auto readings = readingsOf(i);
    return *burner::ratioOf(readings.carbonMonoxide->value, readings.carbonDioxide->value);
}

void ratioFinding(benchmark::State& state) {
    const Prepared prepared;
    int i = 0;
    for ([[maybe_unused]] auto step : state) {
        benchmark::DoNotOptimize(findingOf(prepared, i++));
    }
}
BENCHMARK(ratioFinding)->Unit(benchmark::kNanosecond);

void ratioFormula(benchmark::State& state) {
    int i = 0;
    for ([[maybe_unused]] auto step : state) {
        benchmark::DoNotOptimize(formulaOf(i++));
    }
}
BENCHMARK(ratioFormula)->Unit(benchmark::kNanosecond);

struct Million {
    double seconds = 0;  // of processor time
    double allocationsEach = 0;
};

template <class Once>
Million million(Once once) {
    constexpr int kRuns = 5;
    std::vector<double> runs;
    runs.reserve(kRuns);
    const long before = allocations;
    for (int run = 0; run < kRuns; ++run) {
        const auto start = std::clock();
        for (int i = 0; i < kMillion; ++i) {
            benchmark::DoNotOptimize(once(i));
        }
        runs.push_back(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    const double each = static_cast<double>(allocations - before) / kRuns / kMillion;
    std::nth_element(runs.begin(), runs.begin() + kRuns / 2, runs.end());
    return {runs[kRuns / 2], each};
}

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    const Prepared prepared;
    const auto findings = million([&](int i) { return findingOf(prepared, i); });
    const auto formulas = million(formulaOf);
    hearth::bench::figure("a million ratio findings, in seconds of processor time", findings.seconds,
                          kMostSeconds);
    std::printf("  %.1f allocations a finding; the formula alone %.3f s a million, %.1f allocations each\n",
                findings.allocationsEach, formulas.seconds, formulas.allocationsEach);
    return formulas.allocationsEach == 0.0 ? 0 : 1;
}
