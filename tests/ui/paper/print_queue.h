// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <cstdio>

namespace hearth::testing {

/// A CUPS scheduler of our own, in a folder of its own and on a socket of its own, with one queue that writes
/// what it gets into a file. The queue's usual paper is A5, so that what comes out on A4 was asked for.
class PrintQueue {
  public:
    PrintQueue() = default;
    ~PrintQueue();
    PrintQueue(const PrintQueue&) = delete;
    PrintQueue& operator=(const PrintQueue&) = delete;

    /// Empty once it runs; else why it can't.
    [[nodiscard]] QString start();
    [[nodiscard]] static QString name() { return QStringLiteral("pages"); }
    /// What CUPS_SERVER has to say.
    [[nodiscard]] QString server() const { return in(QStringLiteral("socket")); }
    /// What the last job brought out. Waits until it is done.
    [[nodiscard]] QString printed();
    /// Jobs so far.
    [[nodiscard]] int jobs();

  private:
    [[nodiscard]] QString in(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] bool writeConfiguration() const;
    QByteArray ask(const QString& program, const QStringList& arguments);

    // Not below /dev, where tests may have their folders: CUPS takes each file there for a device, and makes
    // none.
    QTemporaryDir m_folder{QStringLiteral(P_tmpdir "/hearthledger-queue-XXXXXX")};
    QProcess m_scheduler;
};

}  // namespace hearth::testing
