// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/files.h"

#include <QByteArray>
#include <QProcess>
#include <QProcessEnvironment>
#include <QStringList>

#include <stdexcept>
#include <string>

namespace hearth::testing {

/// The real program, run to its end in a home of its own.
class Program {
  public:
    struct Run {
        int exitCode = -1;
        std::string out;
        std::string error;
    };

    Program() { setHome(m_home.path()); }

    /// Where the program keeps the person's stores.
    [[nodiscard]] std::filesystem::path dataFolder() const { return m_home / "data" / "hearthledger"; }
    [[nodiscard]] const TempDir& home() const { return m_home; }
    [[nodiscard]] QProcessEnvironment& environment() { return m_environment; }

    [[nodiscard]] Run run(const QStringList& arguments,
                          const QString& program = QStringLiteral(HEARTH_PROGRAM)) const {
        QProcess process;
        process.setProcessEnvironment(m_environment);
        process.start(program, arguments);
        if (!process.waitForFinished(60000)) {
            process.kill();
            process.waitForFinished();
            throw std::runtime_error("the program did not end");
        }
        if (process.exitStatus() != QProcess::NormalExit) {
            throw std::runtime_error("the program crashed: " + process.readAllStandardError().toStdString());
        }
        return {process.exitCode(), process.readAllStandardOutput().toStdString(),
                process.readAllStandardError().toStdString()};
    }
    /// Words separated by blanks.
    [[nodiscard]] Run run(const std::string& line) const {
        return run(QString::fromStdString(line).split(QLatin1Char(' '), Qt::SkipEmptyParts));
    }

  private:
    void setHome(const std::filesystem::path& home) {
        m_environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "QT_SCALE_FACTOR"}) {
            m_environment.remove(QString::fromLatin1(name));
        }
        const QString path = QString::fromStdString(home.string());
        m_environment.insert(QStringLiteral("HOME"), path);
        m_environment.insert(QStringLiteral("XDG_DATA_HOME"), path + QStringLiteral("/data"));
        m_environment.insert(QStringLiteral("XDG_CONFIG_HOME"), path + QStringLiteral("/config"));
    }

    TempDir m_home;
    QProcessEnvironment m_environment;
};

}  // namespace hearth::testing
