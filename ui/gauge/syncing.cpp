// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/syncing.h"

#include <QFile>

#include <cerrno>
#include <condition_variable>
#include <fcntl.h>
#include <mutex>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace hearth::ui::gauge {

namespace {

bool syncData(int descriptor) {
    // Some file systems of networks know no such thing; they have written it by then.
    return ::fdatasync(descriptor) == 0 || errno == EINVAL || errno == EROFS;
}

void syncFolder(const QByteArray& folder) {
    const int descriptor = ::open(folder.constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor >= 0) {
        static_cast<void>(::fsync(descriptor));  // without it the file may lose its name, never its bytes
        ::close(descriptor);
    }
}

std::int64_t sizeOf(int descriptor) {
    struct stat seen {};
    return ::fstat(descriptor, &seen) == 0 ? std::int64_t{seen.st_size} : 0;
}

}  // namespace

/// Lives until both the owner and the thread have let it go.
struct Syncing::State {
    ~State() {
        if (descriptor >= 0) {
            ::close(descriptor);
        }
    }
    int descriptor = -1;
    QByteArray folder;
    Sync sync;

    std::mutex mutex;
    std::condition_variable wakes;
    bool isAsked = false;
    bool isOver = false;
    bool hasFailed = false;
    int times = 0;
    std::int64_t onDisk = 0;
};

Syncing::Syncing(int descriptor, const QString& folder, Sync sync) : m_state(std::make_shared<State>()) {
    m_state->descriptor = ::fcntl(descriptor, F_DUPFD_CLOEXEC, 0);
    m_state->folder = QFile::encodeName(folder);
    m_state->sync = sync ? std::move(sync) : Sync(syncData);
    std::thread([state = m_state] { work(state); }).detach();
}

Syncing::~Syncing() {
    const std::lock_guard lock(m_state->mutex);
    m_state->isOver = true;
    m_state->wakes.notify_one();
}

void Syncing::work(const std::shared_ptr<State>& state) {
    syncFolder(state->folder);
    std::unique_lock lock(state->mutex);
    for (;;) {
        state->wakes.wait(lock, [&] { return state->isAsked || state->isOver; });
        if (!state->isAsked) {
            return;  // what was asked before the end is still done
        }
        state->isAsked = false;
        lock.unlock();
        const auto size = sizeOf(state->descriptor);
        const bool isDone = state->sync(state->descriptor);
        lock.lock();
        state->hasFailed = !isDone;
        state->onDisk = isDone ? size : state->onDisk;
        ++state->times;
    }
}

void Syncing::ask() {
    const std::lock_guard lock(m_state->mutex);
    m_state->isAsked = true;
    m_state->wakes.notify_one();
}

std::int64_t Syncing::onDisk() const {
    const std::lock_guard lock(m_state->mutex);
    return m_state->onDisk;
}

bool Syncing::hasFailed() const {
    const std::lock_guard lock(m_state->mutex);
    return m_state->hasFailed;
}

int Syncing::times() const {
    const std::lock_guard lock(m_state->mutex);
    return m_state->times;
}

}  // namespace hearth::ui::gauge
