// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/backup_runner.h"

#include <chrono>

namespace hearth::ui::shell {

namespace {
constexpr std::chrono::minutes kLookAgain{15};
constexpr std::chrono::minutes kFirstLook{1};  // not while a person waits for the window
}  // namespace

BackupRunner::BackupRunner(store::Store& store, QObject* parent) : QObject(parent), m_store(store) {
    connect(&m_timer, &QTimer::timeout, this, [this] {
        m_timer.setInterval(kLookAgain);
        startIfDue(store::BackupOccasion::DayGoesOn);
    });
}

BackupRunner::~BackupRunner() {
    finish();
}

void BackupRunner::keepUp() {
    m_timer.start(kFirstLook);
}

bool BackupRunner::start(const store::BackupJob& job) {
    if (isBusy()) {
        return false;
    }
    m_outcome = std::make_shared<store::BackupOutcome>();
    m_thread.reset(QThread::create([job, outcome = m_outcome] { *outcome = store::runBackup(job); }));
    connect(m_thread.get(), &QThread::finished, this, &BackupRunner::take);
    m_thread->start(QThread::LowPriority);
    Q_EMIT started();
    return true;
}

bool BackupRunner::startIfDue(store::BackupOccasion occasion) {
    const auto job = m_store.backupDue(occasion);
    return job && *job && start(**job);
}

void BackupRunner::finish() {
    if (isBusy()) {
        m_thread->wait();
        take();
    }
}

void BackupRunner::take() {
    if (!isBusy() || !m_thread->wait()) {  // finish() was quicker than the thread's own word
        return;
    }
    m_thread.reset();
    // What can't be noted in the store it remembers for as long as it is open.
    static_cast<void>(m_store.noteBackup(*m_outcome));
    Q_EMIT done(*m_outcome);
}

}  // namespace hearth::ui::shell
