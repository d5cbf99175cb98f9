// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/power_cut_vfs.h"

#include "tests/core/store/faults/power_cut_disk.h"

#include <cassert>
#include <new>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

// Everything is done for real as well, so that a run without a cut goes on as it would. The order of things
// is SQLite's own: also whether it syncs the folder is seen (by the one system call that it makes for that),
// not assumed.

namespace hearth::store::power_cut {
namespace {

PowerCutDisk* plugged = nullptr;  // NOLINT: SQLite's callbacks have nowhere else to look
sqlite3_vfs* below = nullptr;     // NOLINT
sqlite3_vfs cutVfs;               // NOLINT
std::string folderOpened;         // NOLINT: since the last call; SQLite opens a folder only to sync it
using OpenFolder = int (*)(const char*, int*);
OpenFolder openFolderBelow = nullptr;  // NOLINT

struct CutFile {
    sqlite3_file base;
    const char* name;  // SQLite keeps it for as long as the file is open
    sqlite3_file* real;
};
CutFile& asCut(sqlite3_file* file) {
    return *reinterpret_cast<CutFile*>(file);
}
sqlite3_file* down(sqlite3_file* file) {
    return asCut(file).real;
}

int openFolder(const char* path, int* descriptor) {
    const int opened = openFolderBelow(path, descriptor);
    folderOpened = std::filesystem::path(path).parent_path().string();
    return opened;
}

void tellOfFolder() {
    if (!folderOpened.empty()) {
        plugged->folderSynced(folderOpened);
        folderOpened.clear();
    }
}

int cutClose(sqlite3_file* file) {
    return down(file)->pMethods->xClose(down(file));
}
int cutRead(sqlite3_file* file, void* data, int size, sqlite3_int64 at) {
    return down(file)->pMethods->xRead(down(file), data, size, at);
}
int cutWrite(sqlite3_file* file, const void* data, int size, sqlite3_int64 at) {
    if (asCut(file).name != nullptr) {
        plugged->written(
            asCut(file).name,
            {static_cast<std::size_t>(at),
             std::string(static_cast<const char*>(data), static_cast<std::size_t>(size)), false});
    }
    return down(file)->pMethods->xWrite(down(file), data, size, at);
}
int cutTruncate(sqlite3_file* file, sqlite3_int64 size) {
    if (asCut(file).name != nullptr) {
        plugged->written(asCut(file).name, {static_cast<std::size_t>(size), {}, true});
    }
    return down(file)->pMethods->xTruncate(down(file), size);
}
int cutSync(sqlite3_file* file, int flags) {
    folderOpened.clear();
    const int done = down(file)->pMethods->xSync(down(file), flags);
    if (done == SQLITE_OK && asCut(file).name != nullptr) {
        plugged->synced(asCut(file).name);
        tellOfFolder();
    }
    return done;
}
int cutSize(sqlite3_file* file, sqlite3_int64* size) {
    return down(file)->pMethods->xFileSize(down(file), size);
}
int cutLock(sqlite3_file* file, int level) {
    return down(file)->pMethods->xLock(down(file), level);
}
int cutUnlock(sqlite3_file* file, int level) {
    return down(file)->pMethods->xUnlock(down(file), level);
}
int cutCheckLock(sqlite3_file* file, int* held) {
    return down(file)->pMethods->xCheckReservedLock(down(file), held);
}
int cutControl(sqlite3_file* file, int what, void* data) {
    return down(file)->pMethods->xFileControl(down(file), what, data);
}
int cutSectorSize(sqlite3_file* file) {
    return down(file)->pMethods->xSectorSize(down(file));
}
int cutCharacteristics(sqlite3_file* file) {
    return down(file)->pMethods->xDeviceCharacteristics(down(file));
}

const sqlite3_io_methods kCutMethods = {
    1,         cutClose,     cutRead,    cutWrite,      cutTruncate,        cutSync, cutSize, cutLock,
    cutUnlock, cutCheckLock, cutControl, cutSectorSize, cutCharacteristics, nullptr, nullptr, nullptr,
    nullptr,   nullptr,      nullptr};

int cutOpen(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    auto* cut = new (file) CutFile{};
    cut->real = reinterpret_cast<sqlite3_file*>(cut + 1);
    cut->name = name;  // none: a file that SQLite removes itself
    const bool isNew = name != nullptr && access(name, F_OK) != 0;
    const int opened = below->xOpen(below, name, cut->real, flags, outFlags);
    cut->base.pMethods = cut->real->pMethods != nullptr ? &kCutMethods : nullptr;
    if (opened == SQLITE_OK && isNew) {
        plugged->made(name);
    }
    return opened;
}

int cutDelete(sqlite3_vfs* /*vfs*/, const char* name, int syncFolder) {
    folderOpened.clear();
    const int done = below->xDelete(below, name, syncFolder);
    if (done == SQLITE_OK) {
        plugged->removed(name);
        tellOfFolder();
    }
    return done;
}

void plugOut() {
    sqlite3_vfs_unregister(&cutVfs);
    below->xSetSystemCall(below, "openDirectory", nullptr);
    sqlite3_vfs_register(below, 1);
    below = nullptr;
}

}  // namespace

void plugIn(PowerCutDisk* disk) {
    plugged = disk;
    if (disk == nullptr) {
        plugOut();
        return;
    }
    assert(below == nullptr);
    below = sqlite3_vfs_find(nullptr);
    openFolderBelow = reinterpret_cast<OpenFolder>(below->xGetSystemCall(below, "openDirectory"));
    below->xSetSystemCall(below, "openDirectory", reinterpret_cast<sqlite3_syscall_ptr>(openFolder));
    cutVfs = *below;
    cutVfs.zName = "power cut";
    cutVfs.pNext = nullptr;
    cutVfs.szOsFile = static_cast<int>(sizeof(CutFile)) + below->szOsFile;
    cutVfs.xOpen = cutOpen;
    cutVfs.xDelete = cutDelete;
    sqlite3_vfs_register(&cutVfs, 1);
}

}  // namespace hearth::store::power_cut

// What the store does to files without SQLite: the linker turns its calls to here (--wrap).
// NOLINTBEGIN(bugprone-reserved-identifier)
extern "C" {
int __real_fsync(int descriptor);
int __real_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags);

int __wrap_fsync(int descriptor) {
    const int done = __real_fsync(descriptor);
    auto* disk = hearth::store::power_cut::plugged;
    if (done == 0 && disk != nullptr) {
        std::error_code gone;
        const auto path =
            std::filesystem::read_symlink("/proc/self/fd/" + std::to_string(descriptor), gone).string();
        if (std::filesystem::is_directory(path, gone)) {
            disk->folderSynced(path);
        } else {
            disk->synced(path);
        }
    }
    return done;
}

int __wrap_renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) {
    const int done = __real_renameat2(fromFolder, from, toFolder, to, flags);
    auto* disk = hearth::store::power_cut::plugged;
    if (done == 0 && disk != nullptr) {
        disk->renamed(from, to);
    }
    return done;
}
}
// NOLINTEND(bugprone-reserved-identifier)
