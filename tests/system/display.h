// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/files.h"

#include <QProcess>
#include <QString>

#include <stdexcept>
#include <string>

namespace hearth::testing {

/// An X server of its own with a window manager, without a screen; keys by xdotool.
class Display {
  public:
    Display() {
        // -displayfd: the server takes a free number and says which
        m_server.start(QStringLiteral("Xvfb"),
                       {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                        QStringLiteral("0"), QStringLiteral("1366x900x24"), QStringLiteral("-nolisten"),
                        QStringLiteral("tcp")});
        if (!m_server.waitForReadyRead(30000)) {
            throw std::runtime_error("no X server: " + m_server.errorString().toStdString());
        }
        m_name = QLatin1Char(':') + QString::fromLatin1(m_server.readLine()).trimmed();
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("DISPLAY"), m_name);
        m_manager.setProcessEnvironment(environment);
        m_manager.start(QStringLiteral("openbox"), QStringList{});
        m_manager.waitForStarted();
        // A window that is mapped while the manager starts is shown by neither.
        if (runCommand("export DISPLAY=" + m_name.toStdString() +
                       "; for turn in $(seq 300); do xdotool get_desktop && exit 0; sleep 0.1; done; exit 1")
                .exitCode != 0) {
            throw std::runtime_error("no window manager");
        }
    }
    ~Display() {
        m_manager.kill();
        m_manager.waitForFinished();
        m_server.terminate();
        m_server.waitForFinished();
    }
    Display(const Display&) = delete;
    Display& operator=(const Display&) = delete;

    [[nodiscard]] QString name() const { return m_name; }

    /// `xdotool ARGUMENTS`; what it printed.
    CommandOutput tool(const std::string& arguments) const {
        return runCommand("DISPLAY=" + m_name.toStdString() + " timeout 60 xdotool " + arguments);
    }
    /// Waits until a window of the program is there and has the keyboard.
    [[nodiscard]] bool waitForWindow(const std::string& title) const {
        return tool("search --sync --onlyvisible --name '" + title + "' windowfocus --sync").exitCode == 0;
    }
    void type(const std::string& text) const { tool("type --delay 5 '" + text + "'"); }
    void press(const std::string& keys) const { tool("key --delay 5 " + keys); }
    /// A picture of the screen, for people who look into a failure.
    void photograph(const std::string& path) const {
        static_cast<void>(
            runCommand("DISPLAY=" + m_name.toStdString() + " import -window root '" + path + "'"));
    }

  private:
    QProcess m_server;
    QProcess m_manager;
    QString m_name;
};

}  // namespace hearth::testing
