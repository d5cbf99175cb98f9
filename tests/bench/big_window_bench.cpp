// SPDX-License-Identifier: GPL-3.0-or-later
// The window on 100,000 premises (HEARTH_FULL=1; else a tenth) against the window on the demonstration store:
// from the start of the process to the first paint, memory after going through the places; and, on the large
// one, how long each frame of scrolling and each letter of a search keeps the window.

#include "app/demo.h"
#include "app/window.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "tests/bench/figure.h"
#include "tests/bench/store_generator.h"
#include "ui/shell/no_dialogs.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QLineEdit>
#include <QProcess>
#include <QScrollBar>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <map>
#include <vector>

namespace {

using namespace hearth;

constexpr int kRuns = 9;
constexpr double kMostPaint = 1.3;
constexpr double kMostMemory = 1.5;
constexpr double kFrame = 1000.0 / 60;
constexpr double kKey = 16.0;
constexpr double kDuePaint = 100.0;
constexpr int kDuePlace = 2;

/// Waits for the first paint of a window.
class Painted : public QObject {
  public:
    explicit Painted(QWidget& window) {
        window.installEventFilter(this);
        window.resize(1280, 800);
        window.show();
        while (!m_painted) {
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        QApplication::processEvents();
    }

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        m_painted = m_painted || event->type() == QEvent::Paint;
        return false;
    }

  private:
    bool m_painted = false;
};

double timeOf(const std::function<void()>& work) {
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

/// What this thread had of the processor meanwhile, in milliseconds: on a machine that others use too it says
/// what the time on the clock can't.
double processorOf(const std::function<void()>& work) {
    const auto now = [] {
        timespec time{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
    };
    const double begun = now();
    work();
    return now() - begun;
}

/// All that the event loop has to do until the window is as it should be.
void settle(QWidget& window) {
    QApplication::processEvents();
    window.repaint();
}

void press(QWidget& widget, int key, const QString& text = {}, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QKeyEvent down(QEvent::KeyPress, key, with, text);
    QApplication::sendEvent(&widget, &down);
}

struct Frames {
    double middle = 0;
    double worst = 0;
    double processor = 0;  // of the one that took most of it
};
Frames framesOf(std::vector<double> times, const std::vector<double>& processor) {
    std::sort(times.begin(), times.end());
    return {times[times.size() / 2], times.back(), *std::max_element(processor.begin(), processor.end())};
}

Frames scroll(ui::shell::MainWindow& window, const QString& name) {
    auto* list = window.findChild<QAbstractScrollArea*>(name);
    QScrollBar* bar = list->verticalScrollBar();
    std::vector<double> times;
    std::vector<double> processor;
    for (int i = 0; i < 300; ++i) {  // by the wheel, then by dragging the bar through all of it
        const int to = i < 150 ? bar->value() + 60 : static_cast<int>(1LL * bar->maximum() * (i - 149) / 151);
        times.push_back(timeOf([&] {
            processor.push_back(processorOf([&] {
                bar->setValue(to);
                settle(*list);
            }));
        }));
    }
    bar->setValue(0);
    return framesOf(times, processor);
}

Frames typeASearch(ui::shell::MainWindow& window) {
    auto* field = window.findChild<QLineEdit*>(QStringLiteral("searchField"));
    field->setFocus();
    std::vector<double> times;
    std::vector<double> processor;
    for (const char* text : {"tamsin highford", "12 mill lane", "7946 0123", "bgs 000123", "s", "1"}) {
        for (const char letter : std::string(text)) {
            times.push_back(timeOf([&] {
                processor.push_back(processorOf([&] {
                    press(*field, 0, QString(QLatin1Char(letter)));
                    settle(window);
                }));
            }));
        }
        press(*field, Qt::Key_Escape);
        field->setFocus();
        settle(window);
    }
    return framesOf(times, processor);
}

long memoryKilobytes() {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;) {
        if (word == "VmRSS:") {
            long size = 0;
            status >> size;
            return size;
        }
    }
    return 0;
}

/// The program's window as it is started; then, beyond what is measured until here, a walk through it.
int runChild(int argc, char** argv) {
    const QApplication application(argc, argv);
    initResources();
    ui::look::loadFonts();
    app::applyLook(*qApp, ui::look::Scheme::Light);
    const SystemClock clock;
    const auto store = store::Store::open(argv[1], store::Access::WriteOrRead, clock);
    if (!store) {
        return 1;
    }
    const app::WindowLanguage language(QStringLiteral("en"));
    const ui::words::Words words;
    ui::shell::NoDialogs dialogs;
    const auto printing = ui::paper::systemPrinting();
    const auto window = app::makeMainWindow(**store, {clock, words, dialogs, *printing});
    const Painted paint(*window);
    std::fputs("painted\n", stdout);
    std::fflush(stdout);
    double due = 0;
    double dueProcessor = 0;
    for (int place = 0; place < 5; ++place) {
        double processor = 0;
        const double shown = timeOf([&] {
            processor = processorOf([&] {
                window->showPlace(place);
                settle(*window);
            });
        });
        due = place == kDuePlace ? shown : due;
        dueProcessor = place == kDuePlace ? processor : dueProcessor;
    }
    window->showPlace(1);
    settle(*window);
    const Frames scrolling = scroll(*window, QStringLiteral("premisesList"));
    const Frames keys = typeASearch(*window);
    window->showPlace(kDuePlace);
    settle(*window);
    const Frames dueScrolling = scroll(*window, QStringLiteral("dueList"));
    std::printf("%ld\n%f\n%f\n%f\n%f\n%f\n%f\n%f\n%f\n%f\n%f\n%f\n", memoryKilobytes(), scrolling.middle,
                scrolling.worst, keys.middle, keys.worst, due, dueScrolling.middle, dueScrolling.worst,
                scrolling.processor, keys.processor, dueProcessor, dueScrolling.processor);
    return 0;
}

struct Walk {
    double paint = 0;
    std::vector<double> figures;  // memory, scrolling, keys
};

Walk measure(const QString& path) {
    QElapsedTimer timer;
    QProcess child;
    timer.start();
    child.start(QCoreApplication::applicationFilePath(), {path});
    child.waitForReadyRead(60000);
    Walk walk{static_cast<double>(timer.nsecsElapsed()) / 1e6, {}};
    child.waitForFinished(120000);
    const auto lines =
        QString::fromLatin1(child.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (int i = 1; i < lines.size(); ++i) {
        walk.figures.push_back(lines[i].toDouble());
    }
    return walk;
}

double middleOf(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

int runParent(int argc, char** argv) {
    constexpr std::size_t kFigures = 12;
    const QCoreApplication application(argc, argv);
    const QTemporaryDir folder;
    const QString small = folder.filePath(QStringLiteral("demonstration.hearth"));
    if (!app::makeDemonstration(small.toStdString(), app::Records::None)) {
        std::fputs("no demonstration store\n", stderr);
        return 1;
    }
    const auto big =
        QString::fromStdString(bench::bigStoreIn(HEARTH_BENCH_DIR, bench::wantedPremises()).string());
    std::map<bool, std::vector<double>> paints;
    std::map<bool, std::vector<double>> figures;
    for (int i = 0; i < kRuns; ++i) {  // by turns
        for (const bool isBig : {false, true}) {
            const Walk walk = measure(isBig ? big : small);
            if (walk.figures.size() != kFigures) {
                std::fputs("the window was not gone through\n", stderr);
                return 1;
            }
            paints[isBig].push_back(walk.paint);
            figures[isBig] = walk.figures;
        }
    }
    bench::figure("first paint on the large store, in times of that on the demonstration's",
                  middleOf(paints[true]) / middleOf(paints[false]), kMostPaint);
    bench::figure("memory of the window on the large store, in times of that on the demonstration's",
                  figures[true][0] / figures[false][0], kMostMemory);
    bench::figure("the slowest frame of scrolling all premises, in milliseconds", figures[true][2], kFrame);
    bench::figure("the slowest key of a search until it is painted, in milliseconds", figures[true][4], kKey);
    bench::figure("checks due opened for the first time until painted, in milliseconds", figures[true][5],
                  kDuePaint);
    bench::figure("the slowest frame of scrolling checks due, in milliseconds", figures[true][7], kFrame);
    std::printf(
        "  of processor time: premises' frame %.2f ms, key %.2f ms, checks due opened %.2f ms, their "
        "frame %.2f ms\n",
        figures[true][8], figures[true][9], figures[true][10], figures[true][11]);
    std::printf("  checks due: frames in the middle %.2f ms\n", figures[true][6]);
    std::printf(
        "  first paint %.1f ms and %.1f ms; memory %.1f MB and %.1f MB; frames in the middle %.2f ms, keys "
        "%.2f ms\n",
        middleOf(paints[true]), middleOf(paints[false]), figures[true][0] / 1024, figures[false][0] / 1024,
        figures[true][1], figures[true][3]);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return argc > 1 ? runChild(argc, argv) : runParent(argc, argv);
}
