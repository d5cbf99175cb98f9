// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_lock.h"

#include "core/store/bridge.h"

#include <sys/statvfs.h>
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

}  // namespace

Result<StoreLock> StoreLock::take(const std::filesystem::path& store) {
    auto file = std::make_unique<QLockFile>(toQt(store.string() + ".lock"));
    file->setStaleLockTime(0);  // a lock never grows stale by age, only when its program is gone
    if (file->tryLock(0)) {
        return StoreLock(std::move(file));
    }
    if (file->error() == QLockFile::LockFailedError) {
        return fail(ErrorCode::StoreLocked, {store.string(), holderOf(*file)});
    }
    const bool isFull = file->error() == QLockFile::UnknownError && hasNoRoom(store.parent_path());
    return fail(isFull ? ErrorCode::StoreFull : ErrorCode::StoreReadOnly, {store.string()});
}

}  // namespace hearth::store
