// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/store/faults/plain_disk.h"

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <dlfcn.h>
#include <string>
#include <string_view>
#include <unistd.h>

namespace hearth::store {
namespace {

struct DiskPlan {
    std::string folder;  // empty: everything works
    int failAt = 0;
    PlainDisk::Fault fault = PlainDisk::Fault::Once;
    std::atomic<int> calls{0};
    std::atomic<bool> happened{false};
};
DiskPlan diskPlan;  // NOLINT: the calls below have nowhere else to look

enum class DiskCall { Write, Other };

/// Counts a call; true when it must fail, with errno set.
bool refuses(const std::string& path, DiskCall call) {
    if (diskPlan.folder.empty() || path.compare(0, diskPlan.folder.size(), diskPlan.folder) != 0) {
        return false;
    }
    // The store's lock is no data: one that this living process could not take back would be its own for
    // good.
    constexpr std::string_view kLock = ".lock";
    if (path.size() > kLock.size() && path.compare(path.size() - kLock.size(), kLock.size(), kLock) == 0) {
        return false;
    }
    const int number = ++diskPlan.calls;
    if (diskPlan.failAt == 0 || number < diskPlan.failAt) {
        return false;
    }
    const bool isFull = diskPlan.fault == PlainDisk::Fault::Full;
    if ((diskPlan.fault == PlainDisk::Fault::Once && number > diskPlan.failAt) ||
        (isFull && call != DiskCall::Write)) {
        return false;
    }
    diskPlan.happened = true;
    errno = isFull ? ENOSPC : EIO;
    return true;
}

std::string pathOf(int descriptor) {
    char link[32];
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", descriptor);
    char path[4096];
    const ssize_t length = readlink(link, path, sizeof path);
    return length > 0 ? std::string(path, static_cast<std::size_t>(length)) : std::string();
}

bool refuses(int descriptor, DiskCall call) {
    return !diskPlan.folder.empty() && refuses(pathOf(descriptor), call);
}

template <class Function>
Function* systems(const char* name) {
    return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

}  // namespace

PlainDisk::PlainDisk(const std::filesystem::path& folder) {
    diskPlan.failAt = 0;
    diskPlan.folder = std::filesystem::canonical(folder).string();
}

PlainDisk::~PlainDisk() {
    heal();
    diskPlan.folder.clear();
}

void PlainDisk::failAt(int call, Fault fault) {
    diskPlan.calls = 0;
    diskPlan.happened = false;
    diskPlan.fault = fault;
    diskPlan.failAt = call;
}

bool PlainDisk::heal() {
    diskPlan.failAt = 0;
    return diskPlan.happened.exchange(false);
}

}  // namespace hearth::store

// The program's own definitions come before the C library's, for SQLite too. (POSIX's signatures.)
using hearth::store::DiskCall;
using hearth::store::refuses;
using hearth::store::systems;

extern "C" {

ssize_t write(int descriptor, const void* bytes, size_t size) {
    static auto* const real = systems<ssize_t(int, const void*, size_t)>("write");
    if (refuses(descriptor, DiskCall::Write)) {
        return -1;
    }
    return real(descriptor, bytes, size);
}

ssize_t pwrite64(int descriptor, const void* bytes, size_t size, off64_t at) {
    static auto* const real = systems<ssize_t(int, const void*, size_t, off64_t)>("pwrite64");
    if (refuses(descriptor, DiskCall::Write)) {
        return -1;
    }
    return real(descriptor, bytes, size, at);
}

int ftruncate64(int descriptor, off64_t size) noexcept {
    static auto* const real = systems<int(int, off64_t)>("ftruncate64");
    return refuses(descriptor, DiskCall::Other) ? -1 : real(descriptor, size);
}

int fsync(int descriptor) {
    static auto* const real = systems<int(int)>("fsync");
    return refuses(descriptor, DiskCall::Other) ? -1 : real(descriptor);
}

int fdatasync(int descriptor) {
    static auto* const real = systems<int(int)>("fdatasync");
    return refuses(descriptor, DiskCall::Other) ? -1 : real(descriptor);
}

int renameat2(int from, const char* old, int to, const char* target, unsigned flags) noexcept {
    static auto* const real = systems<int(int, const char*, int, const char*, unsigned)>("renameat2");
    return refuses(std::string(target), DiskCall::Other) ? -1 : real(from, old, to, target, flags);
}

int unlink(const char* path) noexcept {
    static auto* const real = systems<int(const char*)>("unlink");
    return refuses(std::string(path), DiskCall::Other) ? -1 : real(path);
}

}  // extern "C"
