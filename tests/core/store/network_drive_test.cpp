// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/network_drive.h"

#include "tests/support/files.h"

#include <gtest/gtest.h>

namespace hearth::store {
namespace {

// The numbers as statfs(2) of the Linux man-pages lists them.
TEST(NetworkFileSystem, isKnownByItsNumber) {
    const std::pair<std::uint32_t, const char*> numbers[] = {
        {0x6969, "NFS"},     {0x517b, "SMB"},     {0xff534d42, "SMB"},
        {0xfe534d42, "SMB"}, {0x5346414f, "AFS"}, {0x73757245, "Coda"},
        {0x01021997, "9P"},  {0x564c, "NCP"},     {0x7461636f, "OCFS2"},
    };
    for (const auto& [number, name] : numbers) {
        EXPECT_EQ(networkFileSystem(number), name) << std::hex << number;
    }
    const std::uint32_t local[] = {0xef53,     0x9123683e, 0x58465342, 0x01021994, 0x4d44,
                                   0x5346544e, 0xf2f52010, 0x794c7630, 0x65735546, 0};
    for (const auto number : local) {
        EXPECT_EQ(networkFileSystem(number), "") << std::hex << number;
    }
}

TEST(NetworkFileSystem, isKnownByItsType) {
    EXPECT_EQ(networkFileSystem("nfs4"), "NFS");
    EXPECT_EQ(networkFileSystem("cifs"), "SMB");
    EXPECT_EQ(networkFileSystem("fuse.sshfs"), "SSH");
    EXPECT_NE(networkFileSystem("fuse.gvfsd-fuse"), "");
    for (const char* local : {"ext4", "btrfs", "fuseblk", "vfat", "exfat", "fuse.ntfs-3g", "tmpfs", ""}) {
        EXPECT_EQ(networkFileSystem(local), "") << local;
    }
}

// The example of proc(5), and lines made after it.
constexpr std::string_view kMounts =
    "36 35 98:0 /mnt1 /mnt2 rw,noatime master:1 - ext3 /dev/root rw,errors=continue\n"
    "40 35 0:45 / /srv/office rw,nosuid - fuse.sshfs x@office:/ rw,user_id=1000\n"
    "41 35 0:46 / /media/x/with\\040space rw shared:1 master:2 - vfat /dev/sdb1 rw\n"
    "42 35 0:47 / /broken\n"
    "43 35 0:45 / /srv/again rw - fuse.rclone r: rw\n";

TEST(MountInfo, saysTheTypeOfADevice) {
    EXPECT_EQ(typeInMountInfo(kMounts, "98:0"), "ext3");
    EXPECT_EQ(typeInMountInfo(kMounts, "0:45"), "fuse.rclone");
    EXPECT_EQ(typeInMountInfo(kMounts, "0:46"), "vfat");
    EXPECT_EQ(typeInMountInfo(kMounts, "0:47"), "");
    EXPECT_EQ(typeInMountInfo(kMounts, "9:9"), "");
    EXPECT_EQ(typeInMountInfo("", "0:45"), "");
}

TEST(NetworkDrive, isNoneHere) {
    const hearth::testing::TempDir folder;
    EXPECT_EQ(networkDriveOf(folder.path()), "");
    EXPECT_EQ(networkDriveOf(folder / "not there"), "");
}

}  // namespace
}  // namespace hearth::store
