// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <cstdint>
#include <functional>
#include <memory>

namespace hearth::ui::gauge {

/// Has the system put a file onto the disk, in a thread of its own: a disk that takes its time costs the
/// window no frame. What is written after that is on the disk once onDisk() says so; before that a power cut
/// may cost it, however the program ends. Nothing here waits, not even the end: a disk that never answers
/// keeps a thread and a descriptor, and nothing else.
class Syncing {
  public:
    /// Gives whether it came about, as fdatasync() does.
    using Sync = std::function<bool(int descriptor)>;

    /// The file of that open descriptor, which is doubled; and once its folder, so that its name lasts too.
    Syncing(int descriptor, const QString& folder, Sync sync = {});
    ~Syncing();
    Syncing(const Syncing&) = delete;
    Syncing& operator=(const Syncing&) = delete;

    /// What is in the file by now is to be on the disk soon. Asked while the disk is busy, it is done once
    /// more, however often it was asked.
    void ask();
    /// The file's bytes that are on the disk for certain.
    [[nodiscard]] std::int64_t onDisk() const;
    /// The last time did not come about: the disk is full or broken.
    [[nodiscard]] bool hasFailed() const;
    /// How often it was done, for tests.
    [[nodiscard]] int times() const;

  private:
    struct State;
    static void work(const std::shared_ptr<State>& state);
    std::shared_ptr<State> m_state;
};

}  // namespace hearth::ui::gauge
