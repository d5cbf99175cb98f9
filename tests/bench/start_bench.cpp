// SPDX-License-Identifier: GPL-3.0-or-later
// From the start of the process to the first paint: the program's window on the demonstration store, against
// a bare window with as many widgets of the same kinds, the same style sheet and fonts, and the same store
// opened. Prints both and the ratio; fails beyond 1.3.

#include "app/demo.h"
#include "app/window.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "tests/bench/figure.h"
#include "ui/shell/no_dialogs.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QElapsedTimer>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QProcess>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTemporaryDir>
#include <QToolButton>

#include <algorithm>
#include <cstdio>
#include <map>
#include <vector>

namespace {

using namespace hearth;

constexpr int kRuns = 15;
constexpr double kMostRatio = 1.3;

/// Ends the process's measured part: the first paint has been through the event loop.
class FirstPaint : public QObject {
  public:
    explicit FirstPaint(QWidget& window) {
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

/// The nearest class of Qt's own that a widget is.
QString kindOf(const QWidget& widget) {
    const QMetaObject* kind = widget.metaObject();
    while (kind->className()[0] != 'Q') {
        kind = kind->superClass();
    }
    return QString::fromLatin1(kind->className());
}

QWidget* makeKind(const QString& kind, QWidget* parent) {
    static const std::map<QString, QWidget* (*)(QWidget*)> makers{
        {QStringLiteral("QLabel"),
         [](QWidget* p) -> QWidget* { return new QLabel(QStringLiteral("Let-by"), p); }},
        {QStringLiteral("QPushButton"),
         [](QWidget* p) -> QWidget* { return new QPushButton(QStringLiteral("Issue"), p); }},
        {QStringLiteral("QToolButton"), [](QWidget* p) -> QWidget* { return new QToolButton(p); }},
        {QStringLiteral("QLineEdit"),
         [](QWidget* p) -> QWidget* { return new QLineEdit(QStringLiteral("20.50"), p); }},
        {QStringLiteral("QPlainTextEdit"), [](QWidget* p) -> QWidget* { return new QPlainTextEdit(p); }},
        {QStringLiteral("QCheckBox"), [](QWidget* p) -> QWidget* { return new QCheckBox(p); }},
        {QStringLiteral("QComboBox"), [](QWidget* p) -> QWidget* { return new QComboBox(p); }},
        {QStringLiteral("QListWidget"), [](QWidget* p) -> QWidget* { return new QListWidget(p); }},
        {QStringLiteral("QListView"), [](QWidget* p) -> QWidget* { return new QListView(p); }},
        {QStringLiteral("QScrollArea"), [](QWidget* p) -> QWidget* { return new QScrollArea(p); }},
        {QStringLiteral("QAbstractScrollArea"),
         [](QWidget* p) -> QWidget* { return new QAbstractScrollArea(p); }},
        {QStringLiteral("QScrollBar"), [](QWidget* p) -> QWidget* { return new QScrollBar(p); }},
        {QStringLiteral("QStackedWidget"), [](QWidget* p) -> QWidget* { return new QStackedWidget(p); }},
        {QStringLiteral("QFrame"), [](QWidget* p) -> QWidget* { return new QFrame(p); }},
    };
    const auto maker = makers.find(kind);
    return maker == makers.end() ? new QWidget(parent) : maker->second(parent);
}

std::unique_ptr<store::Store> opened(const char* path, const Clock& clock) {
    auto store = store::Store::open(path, store::Access::WriteOrRead, clock);
    return store ? std::move(*store) : nullptr;
}

/// The program's window; then, beyond what is measured, what it is made of.
int runOurs(store::Store& store, const Clock& clock) {
    const app::WindowLanguage language(QStringLiteral("en"));
    const ui::words::Words words;
    ui::shell::NoDialogs dialogs;
    const auto printing = ui::paper::systemPrinting();
    const auto window = app::makeMainWindow(store, {clock, words, dialogs, *printing});
    const FirstPaint paint(*window);
    std::fputs("painted\n", stdout);
    std::fflush(stdout);
    for (const auto* widget : window->findChildren<QWidget*>()) {
        std::printf("%s\n", qPrintable(kindOf(*widget)));
    }
    return 0;
}

int runBare(const QStringList& kinds) {
    QWidget window;
    auto* grid = new QGridLayout(&window);
    int at = 0;
    for (const auto& kind : kinds) {
        grid->addWidget(makeKind(kind, &window), at / 8, at % 8);
        ++at;
    }
    const FirstPaint paint(window);
    std::fputs("painted\n", stdout);
    return 0;
}

int runChild(int argc, char** argv) {
    const QApplication application(argc, argv);
    initResources();
    ui::look::loadFonts();
    app::applyLook(*qApp, ui::look::Scheme::Light);
    const SystemClock clock;
    const auto store = opened(argv[2], clock);
    if (!store) {
        return 1;
    }
    const QStringList kinds =
        QString::fromLatin1(argc > 3 ? argv[3] : "").split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return QByteArray(argv[1]) == "ours" ? runOurs(*store, clock) : runBare(kinds);
}

struct Measured {
    double milliseconds = 0;
    QStringList lines;  // what the child printed after it had painted
};

Measured measure(const QStringList& arguments) {
    QElapsedTimer timer;
    QProcess child;
    timer.start();
    child.start(QCoreApplication::applicationFilePath(), arguments);
    child.waitForReadyRead(30000);
    Measured measured{static_cast<double>(timer.nsecsElapsed()) / 1e6, {}};
    child.waitForFinished(30000);
    measured.lines =
        QString::fromLatin1(child.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    measured.lines.removeFirst();
    return measured;
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

int runParent(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("demonstration.hearth"));
    if (!app::makeDemonstration(path.toStdString(), app::Records::None)) {
        std::fputs("no demonstration store\n", stderr);
        return 1;
    }
    const QString kinds = measure({QStringLiteral("ours"), path}).lines.join(QLatin1Char(' '));
    std::vector<double> ours;
    std::vector<double> bare;
    for (int i = 0; i < kRuns; ++i) {  // by turns, so that the machine's moods meet both
        ours.push_back(measure({QStringLiteral("ours"), path}).milliseconds);
        bare.push_back(measure({QStringLiteral("bare"), path, kinds}).milliseconds);
    }
    const double ratio = median(ours) / median(bare);
    bench::figure("first paint of the window, in times of a bare window's", ratio, kMostRatio);
    std::printf("  %.1f ms; bare window with %lld widgets: %.1f ms\n", median(ours),
                static_cast<long long>(kinds.count(QLatin1Char(' ')) + 1), median(bare));
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return argc > 1 ? runChild(argc, argv) : runParent(argc, argv);
}
