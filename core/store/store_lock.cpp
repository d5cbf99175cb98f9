// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/store_lock.h"

#include "core/store/bridge.h"

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
    return fail(ErrorCode::StoreReadOnly, {store.string()});
}

}  // namespace hearth::store
