// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::store {

/// What a disk can do to us, made to order. While it lives, every file that SQLite opens in this process goes
/// through it. It counts what changes the disk: writes, cuts, syncs and removals of files.
class FaultyDisk {
  public:
    enum class Fault {
        Once,  // that one step fails, and the disk works again
        Dead,  // the step is half done, and nothing works after it, as when the power goes
        Full,  // no write works from then on; syncs and removals do
    };

    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    /// The step, from 1, that fails next; counting begins anew.
    void failAt(int step, Fault fault);
    /// The disk works again. True when the fault has happened.
    bool heal();
    [[nodiscard]] int steps() const;
};

}  // namespace hearth::store
