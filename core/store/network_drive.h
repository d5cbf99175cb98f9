// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

/// A store on a network drive is asking for trouble: SQLite needs locks and syncs that keep their word, and
/// those of network drives often don't.
/// Source: "How To Corrupt An SQLite Database File", section 2.1 (sqlite.org/howtocorrupt.html).
namespace hearth::store {

/// The name of a network file system, by the number that statfs(2) gives ("NFS", "SMB"); empty for a local
/// one and for one that nobody knows. FUSE says nothing by its number: see below. Source: linux/magic.h.
/// Checked: network_drive_test.cpp, against statfs(2).
[[nodiscard]] std::string_view networkFileSystem(std::uint32_t magic);

/// The same by the type's name in /proc/self/mountinfo: "nfs4", "cifs", "fuse.sshfs".
/// Source: common practice, no source: the names that the mount helpers of these file systems use.
[[nodiscard]] std::string_view networkFileSystem(std::string_view type);

/// The type's name of the file system with a device number ("0:45") in the text of /proc/self/mountinfo; the
/// last line wins, as the newest mount does. Source: proc(5), "/proc/[pid]/mountinfo".
[[nodiscard]] std::string typeInMountInfo(std::string_view mountInfo, std::string_view device);

/// The kind of network drive that a file or folder lies on; empty when on none.
[[nodiscard]] std::string networkDriveOf(const std::filesystem::path& path);

}  // namespace hearth::store
