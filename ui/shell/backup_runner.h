// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"

#include <QObject>
#include <QThread>
#include <QTimer>

#include <memory>

namespace hearth::ui::shell {

/// Makes backups beside the work, one at a time in a thread of its own, and keeps in the store what came of
/// each.
class BackupRunner : public QObject {
    Q_OBJECT
  public:
    explicit BackupRunner(store::Store& store, QObject* parent = nullptr);
    /// Waits for one that is being made.
    ~BackupRunner() override;

    /// Looks again and again whether one is due, for as long as the window is open.
    void keepUp();
    /// False when one is being made already.
    bool start(const store::BackupJob& job);
    /// False when none is due, or one is being made already.
    bool startIfDue(store::BackupOccasion occasion);
    [[nodiscard]] bool isBusy() const { return m_thread != nullptr; }
    /// Waits for one that is being made.
    void finish();

  Q_SIGNALS:
    void started();
    void done(const hearth::store::BackupOutcome& outcome);

  private:
    void take();

    store::Store& m_store;
    QTimer m_timer;
    std::unique_ptr<QThread> m_thread;
    std::shared_ptr<store::BackupOutcome> m_outcome;
};

}  // namespace hearth::ui::shell
