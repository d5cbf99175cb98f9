// SPDX-License-Identifier: GPL-3.0-or-later
// From the commit of a reading to its finding in the margin, painted: store (on the disk), judging, notes,
// layout and paint of the real sheet on a real store. The goal is one frame, 16 ms.
#include "resources/resources.h"
#include "tests/bench/figure.h"
#include "tests/ui/visit/sheet_bench.h"
#include "ui/look/look.h"

#include <QLineEdit>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <vector>

namespace {

using hearth::reg::Item;
using hearth::rulebook::FindingKind;
using hearth::testing::SheetBench;

constexpr double kFrame = 16.0;  // ms

/// A filled sheet with the keyboard in the end reading of the test.
struct Prepared {
    Prepared() {
        bench.fillIn();
        bench.at(Item::TightEnd);
        SheetBench::settle();
    }
    /// Commits a reading as leaving its field would, and does what follows until the window is painted.
    void commitNext() {
        auto& editor = bench.editor(Item::TightEnd);
        qobject_cast<QLineEdit*>(editor.focusTarget())->setText(QStringLiteral("20.4%1").arg(round++ % 10));
        editor.commit();
        QApplication::processEvents();
        bench.place->repaint();
    }
    /// The margin shows what the model found.
    [[nodiscard]] bool shows() const {
        const auto* note = bench.note(FindingKind::Tightness);
        return note != nullptr && note->judged() == *bench.finding(FindingKind::Tightness);
    }
    SheetBench bench;
    int round = 0;
};

void marginFinding(benchmark::State& state) {
    Prepared prepared;
    for ([[maybe_unused]] auto step : state) {
        prepared.commitNext();
        if (!prepared.shows()) {
            state.SkipWithError("the margin does not show the finding");
            break;
        }
    }
}
BENCHMARK(marginFinding)->Unit(benchmark::kMillisecond)->Iterations(100);

struct Medians {
    double wall = 0;       // ms
    double processor = 0;  // ms
    double slowest = 0;    // ms, by the wall
};

Medians measure() {
    constexpr std::size_t kRuns = 101;
    Prepared prepared;
    std::vector<double> wall;
    std::vector<double> processor;
    for (std::size_t run = 0; run < kRuns; ++run) {
        const auto start = std::chrono::steady_clock::now();
        const auto ticks = std::clock();
        prepared.commitNext();
        processor.push_back(1e3 * static_cast<double>(std::clock() - ticks) / CLOCKS_PER_SEC);
        wall.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    std::sort(wall.begin(), wall.end());
    std::sort(processor.begin(), processor.end());
    return {wall[kRuns / 2], processor[kRuns / 2], wall.back()};
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    hearth::initResources();
    hearth::ui::look::loadFonts();
    QApplication::setFont(hearth::ui::look::font(hearth::ui::look::TypeRole::Body));
    QApplication::setPalette(hearth::ui::look::palette(hearth::ui::look::Scheme::Light));
    application.setStyleSheet(hearth::ui::look::styleSheet(hearth::ui::look::Scheme::Light));
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    const Medians medians = measure();
    hearth::bench::figure("margin finding after a commit, in milliseconds (a frame)", medians.wall, kFrame);
    std::printf("  processor %.1f ms, slowest %.1f ms\n", medians.processor, medians.slowest);
    return 0;
}
