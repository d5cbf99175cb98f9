// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/figure.h"
#include "tests/core/judging/scenario.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <ctime>
#include <vector>

namespace {

using hearth::judging::judgeTest;
namespace scenario = hearth::judging::scenario;

/// The verdict of one test is to be there in less than this.
constexpr double kMostMicroseconds = 20.0;

struct Prepared {
    hearth::reg::VisitFile file = scenario::commonPractice("2026-11-10", "ed4");
    hearth::rulebook::RuleBook book = scenario::confirmedBook();
};

void verdictOfOneTest(benchmark::State& state) {
    const Prepared prepared;
    for ([[maybe_unused]] auto step : state) {
        benchmark::DoNotOptimize(judgeTest(prepared.file, prepared.file.tests.front(), prepared.book));
    }
}
BENCHMARK(verdictOfOneTest)->Unit(benchmark::kMicrosecond);

void wholeVisit(benchmark::State& state) {
    const Prepared prepared;
    for ([[maybe_unused]] auto step : state) {
        benchmark::DoNotOptimize(hearth::judging::judge(prepared.file, prepared.book));
    }
}
BENCHMARK(wholeVisit)->Unit(benchmark::kMicrosecond);

/// Median of many short runs, in processor time: neighbours on the machine lengthen the wall clock, not this.
double medianMicroseconds() {
    constexpr int kRuns = 101;
    constexpr int kTimes = 100;
    const Prepared prepared;
    std::vector<double> runs;
    for (int run = 0; run < kRuns; ++run) {
        const auto start = std::clock();
        for (int i = 0; i < kTimes; ++i) {
            benchmark::DoNotOptimize(judgeTest(prepared.file, prepared.file.tests.front(), prepared.book));
        }
        runs.push_back(1e6 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / kTimes);
    }
    std::nth_element(runs.begin(), runs.begin() + kRuns / 2, runs.end());
    return runs[kRuns / 2];
}

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    hearth::bench::figure("verdict of one test, in microseconds of processor time", medianMicroseconds(),
                          kMostMicroseconds);
    return 0;
}
