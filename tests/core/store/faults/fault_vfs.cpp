// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/fault_vfs.h"

#include <cassert>
#include <new>
#include <sqlite3.h>

namespace hearth::store {
namespace {

// SQLite's interface to the disk: "The OS Backend (VFS) To SQLite", sqlite.org/vfs.html. Ours hands
// everything to the real one unless the plan says no.

struct Plan {
    int failAt = 0;  // 0: never
    FaultyDisk::Fault fault = FaultyDisk::Fault::Once;
    int steps = 0;
    bool happened = false;
};
Plan plan;                       // NOLINT: SQLite's callbacks have nowhere else to look
sqlite3_vfs* realVfs = nullptr;  // NOLINT
sqlite3_vfs ours;                // NOLINT

/// Counts a step; true when it must fail.
bool fails(bool isWrite) {
    ++plan.steps;
    if (plan.failAt == 0) {
        return false;
    }
    const bool now = plan.steps == plan.failAt;
    const bool after = plan.steps > plan.failAt;
    const bool failing = now || (after && plan.fault == FaultyDisk::Fault::Dead) ||
                         (after && plan.fault == FaultyDisk::Fault::Full && isWrite);
    if (plan.fault == FaultyDisk::Fault::Full && !isWrite) {
        return false;
    }
    plan.happened = plan.happened || failing;
    return failing;
}

bool isDead() {
    return plan.happened && plan.fault == FaultyDisk::Fault::Dead;
}

struct FaultyFile {
    sqlite3_file base;
    sqlite3_file* real;
};
sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<FaultyFile*>(file)->real;
}

int closeFile(sqlite3_file* file) {
    return realOf(file)->pMethods->xClose(realOf(file));
}
int readFile(sqlite3_file* file, void* data, int size, sqlite3_int64 at) {
    return isDead() ? SQLITE_IOERR_READ : realOf(file)->pMethods->xRead(realOf(file), data, size, at);
}
int writeFile(sqlite3_file* file, const void* data, int size, sqlite3_int64 at) {
    const bool wasDead = isDead();
    if (!fails(true)) {
        return realOf(file)->pMethods->xWrite(realOf(file), data, size, at);
    }
    if (plan.fault == FaultyDisk::Fault::Full) {
        return SQLITE_FULL;
    }
    if (!wasDead) {  // torn
        static_cast<void>(realOf(file)->pMethods->xWrite(realOf(file), data, size / 2, at));
    }
    return SQLITE_IOERR_WRITE;
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    return fails(false) ? SQLITE_IOERR_TRUNCATE : realOf(file)->pMethods->xTruncate(realOf(file), size);
}
int syncFile(sqlite3_file* file, int flags) {
    return fails(false) ? SQLITE_IOERR_FSYNC : realOf(file)->pMethods->xSync(realOf(file), flags);
}
int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkLock(sqlite3_file* file, int* held) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), held);
}
int control(sqlite3_file* file, int what, void* data) {
    return realOf(file)->pMethods->xFileControl(realOf(file), what, data);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

const sqlite3_io_methods kMethods = {1,        closeFile,  readFile,        writeFile,  truncateFile,
                                     syncFile, fileSize,   lockFile,        unlockFile, checkLock,
                                     control,  sectorSize, characteristics, nullptr,    nullptr,
                                     nullptr,  nullptr,    nullptr,         nullptr};

int openFile(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    auto* faulty = new (file) FaultyFile{};
    faulty->real = reinterpret_cast<sqlite3_file*>(faulty + 1);
    if (isDead()) {
        return SQLITE_CANTOPEN;
    }
    const int opened = realVfs->xOpen(realVfs, name, faulty->real, flags, outFlags);
    faulty->base.pMethods = faulty->real->pMethods != nullptr ? &kMethods : nullptr;
    return opened;
}
int removeFile(sqlite3_vfs* /*vfs*/, const char* name, int syncFolder) {
    return fails(false) ? SQLITE_IOERR_DELETE : realVfs->xDelete(realVfs, name, syncFolder);
}

}  // namespace

FaultyDisk::FaultyDisk() {
    assert(realVfs == nullptr);
    realVfs = sqlite3_vfs_find(nullptr);
    ours = *realVfs;
    ours.zName = "faulty";
    ours.pNext = nullptr;
    ours.szOsFile = static_cast<int>(sizeof(FaultyFile)) + realVfs->szOsFile;
    ours.xOpen = openFile;
    ours.xDelete = removeFile;
    plan = {};
    sqlite3_vfs_register(&ours, 1);
}

FaultyDisk::~FaultyDisk() {
    sqlite3_vfs_unregister(&ours);
    sqlite3_vfs_register(realVfs, 1);
    realVfs = nullptr;
    plan = {};
}

void FaultyDisk::failAt(int step, Fault fault) {
    plan = {step, fault, 0, false};
}

bool FaultyDisk::heal() {
    const bool happened = plan.happened;
    plan = {};
    return happened;
}

int FaultyDisk::steps() const {
    return plan.steps;
}

}  // namespace hearth::store
