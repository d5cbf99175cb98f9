// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/network_drive.h"

#include <fstream>
#include <iterator>
#include <linux/magic.h>
#include <sstream>
#include <sys/stat.h>
#include <sys/statfs.h>
#include <sys/sysmacros.h>
#include <utility>

namespace hearth::store {
namespace {

constexpr std::pair<std::uint32_t, std::string_view> kNetworkMagics[] = {
    {NFS_SUPER_MAGIC, "NFS"},   {SMB_SUPER_MAGIC, "SMB"},     {CIFS_SUPER_MAGIC, "SMB"},
    {SMB2_SUPER_MAGIC, "SMB"},  {AFS_SUPER_MAGIC, "AFS"},     {AFS_FS_MAGIC, "AFS"},
    {CODA_SUPER_MAGIC, "Coda"}, {V9FS_MAGIC, "9P"},           {CEPH_SUPER_MAGIC, "Ceph"},
    {NCP_SUPER_MAGIC, "NCP"},   {OCFS2_SUPER_MAGIC, "OCFS2"},
};

constexpr std::pair<std::string_view, std::string_view> kNetworkTypes[] = {
    {"nfs", "NFS"},
    {"nfs4", "NFS"},
    {"cifs", "SMB"},
    {"smb3", "SMB"},
    {"smbfs", "SMB"},
    {"afs", "AFS"},
    {"coda", "Coda"},
    {"9p", "9P"},
    {"ceph", "Ceph"},
    {"ncpfs", "NCP"},
    {"ocfs2", "OCFS2"},
    {"gfs2", "GFS2"},
    {"davfs", "WebDAV"},
    {"fuse.sshfs", "SSH"},
    {"fuse.davfs", "WebDAV"},
    {"fuse.davfs2", "WebDAV"},
    {"fuse.gvfsd-fuse", "network folder of the desktop"},
    {"fuse.kio-fuse", "network folder of the desktop"},
    {"fuse.rclone", "cloud folder"},
    {"fuse.s3fs", "cloud folder"},
    {"fuse.glusterfs", "GlusterFS"},
    {"fuse.ceph", "Ceph"},
    {"fuse.ceph-fuse", "Ceph"},
    {"fuse.curlftpfs", "FTP"},
    {"fuse.smbnetfs", "SMB"},
};

std::string fuseTypeOf(const struct stat& file) {
    std::ifstream mounts("/proc/self/mountinfo");
    const std::string text{std::istreambuf_iterator<char>(mounts), {}};
    return typeInMountInfo(text,
                           std::to_string(major(file.st_dev)) + ":" + std::to_string(minor(file.st_dev)));
}

}  // namespace

std::string_view networkFileSystem(std::uint32_t magic) {
    for (const auto& [number, name] : kNetworkMagics) {
        if (number == magic) {
            return name;
        }
    }
    return {};
}

std::string_view networkFileSystem(std::string_view type) {
    for (const auto& [text, name] : kNetworkTypes) {
        if (text == type) {
            return name;
        }
    }
    return {};
}

std::string typeInMountInfo(std::string_view mountInfo, std::string_view device) {
    std::string found;
    std::istringstream lines{std::string(mountInfo)};
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::string id;
        std::string parent;
        std::string number;
        if (!(words >> id >> parent >> number) || number != device) {
            continue;
        }
        // The optional fields end with a hyphen that stands alone; the type comes after it.
        for (std::string word; words >> word;) {
            if (word == "-") {
                words >> found;
                break;
            }
        }
    }
    return found;
}

std::string networkDriveOf(const std::filesystem::path& path) {
    struct statfs system {};
    struct stat file {};
    if (statfs(path.c_str(), &system) != 0 || stat(path.c_str(), &file) != 0) {
        return {};
    }
    const auto magic = static_cast<std::uint32_t>(system.f_type);
    return std::string(magic == FUSE_SUPER_MAGIC ? networkFileSystem(fuseTypeOf(file))
                                                 : networkFileSystem(magic));
}

}  // namespace hearth::store
