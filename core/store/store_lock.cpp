// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_lock.h"

#include "core/store/bridge.h"

#include <chrono>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/statvfs.h>
#include <system_error>
#include <thread>
#include <unistd.h>
#include <utility>

namespace hearth::store {
namespace {

std::string holderOf(const QLockFile& file) {
    qint64 pid = 0;
    QString host;
    QString program;
    if (!file.getLockInfo(&pid, &host, &program)) {
        return {};
    }
    return fromQt(program) + " " + std::to_string(pid) + "@" + fromQt(host);
}

/// Not even a few words can be written there, or no file can be made.
bool hasNoRoom(const std::filesystem::path& folder) {
    struct statvfs disk {};
    return statvfs(folder.empty() ? "." : folder.c_str(), &disk) == 0 &&
           (disk.f_bavail == 0 || (disk.f_files > 0 && disk.f_favail == 0));
}

/// A lock file that says nothing, left by a program that was killed, or a machine that lost its power,
/// between making it and writing into it. Its maker holds a lock of the system's on it for as long as it
/// lives; the pause is for one that has only just made it.
bool isNobodys(const std::filesystem::path& lock) {
    constexpr auto kLongEnough = std::chrono::seconds(2);
    std::error_code gone;
    const auto made = std::filesystem::last_write_time(lock, gone);
    if (gone || std::filesystem::file_time_type::clock::now() - made < kLongEnough) {
        return false;
    }
    const int descriptor = open(lock.c_str(), O_RDWR | O_CLOEXEC);
    const bool isFree = descriptor >= 0 && flock(descriptor, LOCK_EX | LOCK_NB) == 0;
    const bool isRemoved = isFree && std::filesystem::remove(lock, gone);
    if (descriptor >= 0) {
        close(descriptor);
    }
    return isRemoved;
}

/// A lock file that says nothing is somebody's who will write into it within moments, or nobody's.
bool takesOver(QLockFile& file, const std::filesystem::path& lock) {
    constexpr int kLooks = 30;
    constexpr auto kPause = std::chrono::milliseconds(100);
    for (int look = 0; look < kLooks && holderOf(file).empty(); ++look) {
        if (isNobodys(lock) || !std::filesystem::exists(lock)) {
            return file.tryLock(0);
        }
        std::this_thread::sleep_for(kPause);
    }
    return false;
}

}  // namespace

Result<StoreLock> StoreLock::take(const std::filesystem::path& store) {
    auto file = std::make_unique<QLockFile>(toQt(store.string() + ".lock"));
    file->setStaleLockTime(0);  // a lock never grows stale by age, only when its program is gone
    const std::filesystem::path lock(store.string() + ".lock");
    if (file->tryLock(0) || takesOver(*file, lock)) {
        return StoreLock(std::move(file));
    }
    if (file->error() == QLockFile::LockFailedError) {
        return fail(ErrorCode::StoreLocked, {store.string(), holderOf(*file)});
    }
    const bool isFull = file->error() == QLockFile::UnknownError && hasNoRoom(store.parent_path());
    return fail(isFull ? ErrorCode::StoreFull : ErrorCode::StoreReadOnly, {store.string()});
}

}  // namespace hearth::store
