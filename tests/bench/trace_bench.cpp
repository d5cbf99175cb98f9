// SPDX-License-Identifier: GPL-3.0-or-later
// A gauge's trace: how long its fit takes, and how long a frame of its plots.
#include "core/judging/trace_seen.h"
#include "tests/bench/figure.h"
#include "tests/core/judging/scenario.h"
#include "tests/core/tightness/trace_simulator.h"
#include "ui/look/look.h"
#include "ui/shell/plot_view.h"
#include "ui/words/trace_words.h"

#include <QApplication>
#include <QPixmap>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <vector>

namespace {

using namespace hearth;
using quantity::Duration;
using quantity::kSecond;

constexpr double kMostForFit = 5.0;     // ms
constexpr double kMostForFrame = 16.0;  // ms

/// Median of some runs, in processor time.
double medianMilliseconds(int runs, const std::function<void()>& work) {
    std::vector<double> took;
    for (int run = 0; run < runs; ++run) {
        const auto start = std::clock();
        work();
        took.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    std::nth_element(took.begin(), took.begin() + runs / 2, took.end());
    return took[static_cast<std::size_t>(runs / 2)];
}

/// Two minutes at ten a second: a leak of 0.6 l/h while the gas warms.
tightness::Trace twoMinutes() {
    tightness::simulator::Installation pipe;
    pipe.leak = 0.6;
    pipe.kelvin = -0.2;
    pipe.length = 120.0;
    tightness::simulator::Random random(3);
    return tightness::simulator::watch(pipe, random);
}

double fitTime(const tightness::Trace& trace) {
    tightness::FitInput input;
    input.volume = quantity::Volume(10.0, quantity::kLitre);
    input.at = trace.front().pressure;
    input.step = quantity::PressureChange(0.01, quantity::kMillibar);
    return medianMilliseconds(21, [&] {
        if (!tightness::fitTrace(trace, input)) {
            std::abort();
        }
    });
}

double frameTime(const tightness::Trace& trace) {
    const auto file = judging::scenario::commonPractice("2026-11-10", "ed4");
    const auto book = judging::scenario::confirmedBook();
    judging::TraceGiven given;
    given.trace = trace;
    given.marks = {{reg::TraceEvent::Timing, 0}};
    const auto seen = judging::seenTrace(file, book, file.tests.front().id, given);
    const ui::words::Words words;
    const std::vector<judging::Judged> none;
    ui::shell::PlotView view(nullptr);
    view.show(ui::words::tracePlots({file, none, words}, seen));
    constexpr int kWide = 900;
    view.resize(kWide, view.heightForWidth(kWide));
    QPixmap frame(view.size());
    return medianMilliseconds(21, [&] { view.render(&frame); });
}

}  // namespace

int main(int argc, char** argv) {
    const QApplication app(argc, argv);
    const auto trace = twoMinutes();
    bench::figure("fit of two minutes of a gauge at ten readings a second, in milliseconds of processor time",
                  fitTime(trace), kMostForFit);
    bench::figure("one frame of that trace's plots, in milliseconds of processor time", frameTime(trace),
                  kMostForFrame);
    return 0;
}
