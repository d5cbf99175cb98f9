// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace hearth::store {

/// What a disk can do to plain files and to SQLite's alike: in this program the system's calls that change a
/// disk (write, pwrite, ftruncate, fsync, fdatasync, renameat2, unlink) go through it. Only files in `folder`
/// are counted, but for the store's lock.
class PlainDisk {
  public:
    enum class Fault {
        Once,  // that one call fails with EIO, and the disk works again
        Full,  // no write works from that call on
        Dead,  // nothing that changes the disk works from that call on
    };

    explicit PlainDisk(const std::filesystem::path& folder);
    ~PlainDisk();
    PlainDisk(const PlainDisk&) = delete;
    PlainDisk& operator=(const PlainDisk&) = delete;

    /// The call, from 1, that fails next; counting begins anew.
    void failAt(int call, Fault fault);
    /// The disk works again. True when the fault has happened.
    bool heal();
};

}  // namespace hearth::store
