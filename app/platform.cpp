// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/platform.h"

#include <QApplication>
#include <QByteArray>
#include <QString>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <unistd.h>

namespace hearth::app {
namespace {

constexpr std::array<const char*, 3> kDisplayVariables{"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"};

char** g_arguments = nullptr;

/// Nothing that a person could act upon.
bool isNoise(const QMessageLogContext& context, const QString& text) {
    return QByteArray(context.category).startsWith("qt.qpa") ||
           text.contains(QStringLiteral("XDG_RUNTIME_DIR not set"));
}

void withoutNoise(QtMsgType, const QMessageLogContext& context, const QString& text) {
    if (!isNoise(context, text)) {
        std::fputs(qPrintable(text + QLatin1Char('\n')), stderr);
    }
}

/// While the platform is being chosen: what Qt says of its plugins would only confuse, and its last word is
/// abort().
void duringStart(QtMsgType type, const QMessageLogContext& context, const QString& text) {
    if (type == QtFatalMsg) {
        for (const char* name : kDisplayVariables) {
            ::unsetenv(name);
        }
        ::execv("/proc/self/exe", g_arguments);
        std::fputs("hearthledger: the display can't be reached.\n", stderr);
        std::_Exit(3);
    }
    withoutNoise(type, context, text);
}

}  // namespace

bool hasDisplay() {
    for (const char* name : kDisplayVariables) {
        if (!qEnvironmentVariableIsEmpty(name)) {
            return true;
        }
    }
    return false;
}

std::unique_ptr<QGuiApplication> makeWithoutWindow(int& argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(withoutNoise);
    return std::make_unique<QGuiApplication>(argc, argv);
}

std::unique_ptr<QApplication> makeWithWindow(int& argc, char** argv) {
    g_arguments = argv;
    qInstallMessageHandler(duringStart);
    auto application = std::make_unique<QApplication>(argc, argv);
    qInstallMessageHandler(withoutNoise);
    return application;
}

}  // namespace hearth::app
