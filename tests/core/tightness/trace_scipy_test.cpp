// SPDX-License-Identifier: GPL-3.0-or-later
// The fit against a general-purpose library's on the same traces. The results are committed with the script
// that made them (tests/data/scipy), so that the library need not be installed.
#include "core/quantity/units.h"
#include "core/tightness/trace_fit.h"
#include "tests/core/tightness/samples.h"
#include "tests/core/tightness/trace_simulator.h"
#include "tests/support/agreement.h"
#include "tests/support/files.h"

#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <iomanip>
#include <map>
#include <sstream>

namespace hearth::tightness {
namespace {

using quantity::kLitre;
using quantity::kLitrePerHour;
using quantity::kMillibar;
using quantity::kSecond;

constexpr int kTraces = 40;

struct Watched {
    int seed = 0;
    simulator::Installation of;
    Trace trace;
};

/// Displays whose steps the noise smooths: there a reading is a value, as least squares take it. (Else the
/// fit takes it for an interval, which least squares can't.)
std::vector<Watched> smoothTraces() {
    std::vector<Watched> all;
    for (int seed = 7000; static_cast<int>(all.size()) < kTraces; ++seed) {
        simulator::Random random(static_cast<std::uint64_t>(seed));
        const auto one = simulator::someInstallation(random);
        if (one.noise > 0.6 * one.step && one.step < 0.3) {
            all.push_back({seed, one, simulator::watch(one, random)});
        }
    }
    return all;
}

void writeTo(const std::string& folder, const std::vector<Watched>& all) {
    for (const Watched& one : all) {
        std::ofstream file(folder + "/" + std::to_string(one.seed) + ".csv");
        file << std::setprecision(10) << one.of.litres << ',' << one.of.step << '\n';
        for (const TracePoint& point : one.trace) {
            file << point.at.in(kSecond) << ',' << point.pressure.in(kMillibar) << '\n';
        }
    }
}

struct Theirs {
    double leak = 0;
    double error = 0;
};

std::map<int, Theirs> leaksByScipy() {
    std::istringstream lines(testing::readFile(HEARTH_SOURCE_DIR "/tests/data/scipy/leaks.csv"));
    std::string line;
    std::getline(lines, line);
    std::map<int, Theirs> leaks;
    while (std::getline(lines, line)) {
        std::istringstream parts(line);
        int seed = 0;
        char comma = 0;
        Theirs one;
        parts >> seed >> comma >> one.leak >> comma >> one.error;
        leaks[seed] = one;
    }
    return leaks;
}

// Where the trace tells the leak, ours and theirs are one figure but for a part of the interval: ours
// averages over the settling times that the readings leave open, theirs takes the best one.
TEST(TraceScipy, TheLeakIsThatOfLeastSquares) {
    const auto all = smoothTraces();
    if (const char* folder = std::getenv("HEARTH_TRACES_INTO")) {
        writeTo(folder, all);
    }
    const auto theirs = leaksByScipy();
    ASSERT_EQ(theirs.size(), all.size());
    testing::Agreement agreement(
        "Leak from a trace, in half widths of its interval",
        "scipy.optimize.least_squares 1.10 (Huber's loss); script in tests/data/scipy", "", 0.3);
    int told = 0;
    for (const Watched& one : all) {
        FitInput input;
        input.volume = quantity::Volume(one.of.litres, kLitre);
        input.at = samples::gaugeMillibar(20);
        input.step = samples::millibar(one.of.step);
        const auto fit = fitTrace(one.trace, input);
        ASSERT_TRUE(fit);
        if (!fit->isIdentified) {
            continue;
        }
        ++told;
        const double half = 0.5 * (fit->leak.most - fit->leak.least).in(kLitrePerHour);
        const auto& other = theirs.at(one.seed);
        agreement.hold(std::to_string(one.seed), fit->leak.best.in(kLitrePerHour) / half, other.leak / half);
    }
    EXPECT_GT(told, kTraces / 2);
}

}  // namespace
}  // namespace hearth::tightness
