// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QObject>
#include <QThread>

#include <functional>
#include <memory>
#include <optional>
#include <utility>

namespace hearth::ui::shell {

/// Reads something in a thread of its own, so that the window is painted and keys are answered meanwhile.
/// What is read opens a connection of its own.
template <class Value>
class Beside {
  public:
    using Work = std::function<Result<Value>()>;
    using Done = std::function<void(const Result<Value>&)>;

    /// `done` is called in this thread.
    explicit Beside(Done done) : m_done(std::move(done)) {}
    /// Waits for what is under way, and says nothing of it.
    ~Beside() {
        if (m_thread) {
            m_thread->wait();
        }
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;

    /// While one is under way, this is begun after it, and the result of before is not handed over: it may be
    /// of what has changed since.
    void start(Work work) {
        if (isBusy()) {
            m_next = std::move(work);
            return;
        }
        m_found = std::make_shared<std::optional<Result<Value>>>();
        m_thread.reset(
            QThread::create([work = std::move(work), found = m_found] { found->emplace(work()); }));
        QObject::connect(m_thread.get(), &QThread::finished, &m_here, [this] { take(); });
        m_thread->start(QThread::LowPriority);
    }
    [[nodiscard]] bool isBusy() const { return m_thread != nullptr; }

  private:
    void take() {
        m_thread->wait();
        m_thread.reset();
        if (m_next) {
            start(*std::exchange(m_next, std::nullopt));
            return;
        }
        const auto found = std::exchange(m_found, nullptr);
        m_done(**found);
    }

    Done m_done;
    std::unique_ptr<QThread> m_thread;
    std::shared_ptr<std::optional<Result<Value>>> m_found;
    std::optional<Work> m_next;
    QObject m_here;
};

}  // namespace hearth::ui::shell
