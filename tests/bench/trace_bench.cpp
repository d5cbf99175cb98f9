// SPDX-License-Identifier: GPL-3.0-or-later
// A gauge's trace: how long its fit takes, and how long a frame of its plots. And a day of carbon monoxide in
// a room: how long it takes from the file to the picture.
#include "core/exchange/co_file.h"
#include "core/judging/trace_seen.h"
#include "tests/bench/figure.h"
#include "tests/core/judging/scenario.h"
#include "tests/core/tightness/trace_simulator.h"
#include "ui/look/look.h"
#include "ui/shell/plot_view.h"
#include "ui/words/room_trace_words.h"
#include "ui/words/trace_words.h"

#include <QApplication>
#include <QPixmap>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <string>
#include <vector>

namespace {

using namespace hearth;
using quantity::Duration;
using quantity::kSecond;

constexpr double kMostForFit = 5.0;     // ms
constexpr double kMostForFrame = 16.0;  // ms
constexpr double kMostForDay = 200.0;   // ms

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

/// A logger's table of a day at one a second, by date and clock: quiet, with one peak of a single second.
std::string dayOfRoom() {
    constexpr int kSeconds = 86400;
    constexpr int kPeakAt = 50000;
    std::string table = "Date time,CO (ppm)\n";
    for (int second = 0; second < kSeconds; ++second) {
        const double level = second == kPeakAt ? 42.5 : 2.0 + 0.5 * ((second / 7 + second / 61) % 5);
        char line[48];
        std::snprintf(line, sizeof line, "2026-11-25 %02d:%02d:%02d,%.1f\n", second / 3600, second / 60 % 60,
                      second % 60, level);
        table += line;
    }
    return table;
}

/// From the file's bytes to the painted plot; the peak must be in it.
double dayTime() {
    const std::string table = dayOfRoom();
    const ui::words::Words words;
    ui::shell::PlotView view(nullptr);
    constexpr int kWide = 900;
    constexpr int kHigh = 400;
    QPixmap frame(kWide, kHigh);
    return medianMilliseconds(11, [&] {
        auto file = exchange::readCoFile(table);
        if (!file || file->readings.size() != 86400) {
            std::abort();
        }
        const auto plots = ui::words::roomTracePlots({{}, std::move(file->readings)}, {}, {}, words);
        const auto& points = plots.plots.front().series.front().points;
        if (std::none_of(points.begin(), points.end(),
                         [](const auto& point) { return point.y == quantity::Decimal(425, 1); })) {
            std::abort();
        }
        view.show(plots);
        view.resize(kWide, kHigh);
        view.render(&frame);
    });
}

}  // namespace

int main(int argc, char** argv) {
    const QApplication app(argc, argv);
    const auto trace = twoMinutes();
    bench::figure("fit of two minutes of a gauge at ten readings a second, in milliseconds of processor time",
                  fitTime(trace), kMostForFit);
    bench::figure("one frame of that trace's plots, in milliseconds of processor time", frameTime(trace),
                  kMostForFrame);
    bench::figure(
        "a day of carbon monoxide at one reading a second, from the file to the picture, in milliseconds of "
        "processor time",
        dayTime(), kMostForDay);
    return 0;
}
