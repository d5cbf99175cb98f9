// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/start.h"

#include "app/commands.h"
#include "app/no_display.h"
#include "app/platform.h"
#include "app/run_window.h"
#include "app/window.h"
#include "resources/resources.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QFile>

namespace hearth::app {
namespace {

QStringList argumentsOf(int argc, char** argv) {
    QStringList arguments;
    for (int i = 1; i < argc; ++i) {
        arguments.append(QFile::decodeName(argv[i]));
    }
    return arguments;
}

void name(QCoreApplication& application) {
    application.setApplicationName(QStringLiteral("hearthledger"));
    application.setApplicationVersion(QStringLiteral(HEARTH_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("hearthledger"));
    initResources();
    ui::look::loadFonts();
}

int runWithoutWindow(int& argc, char** argv, const CommandLine& line, const Console& console) {
    const auto application = makeWithoutWindow(argc, argv);
    name(*application);
    const QString language = line.language.value_or(QStringLiteral("en"));
    const WindowLanguage translated(language);  // what commands share with the window counts as it does
    const ui::words::Words words(language);
    const SystemClock clock;
    const Desk desk{clock, console, words};
    return static_cast<int>(line.verb == Verb::Window ? showWithoutDisplay(desk) : runCommand(line, desk));
}

}  // namespace

int start(int argc, char** argv) {
    const Console console;
    const auto line = parseCommandLine(argumentsOf(argc, argv));
    if (!line) {
        console.complain(usageText(line.error()));
        return static_cast<int>(Exit::Usage);
    }
    if (line->verb == Verb::Help) {
        console.say(helpText(line->words.value(0)));
        return static_cast<int>(Exit::Done);
    }
    if (line->verb == Verb::Version) {
        console.say(QStringLiteral("Hearthledger " HEARTH_VERSION));
        return static_cast<int>(Exit::Done);
    }
    if (line->verb != Verb::Window || !hasDisplay()) {
        return runWithoutWindow(argc, argv, *line, console);
    }
    const auto application = makeWithWindow(argc, argv);
    name(*application);
    return static_cast<int>(runWindow(*line, console));
}

}  // namespace hearth::app
