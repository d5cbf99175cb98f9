// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/durable.h"

#include "core/store/failure.h"
#include "core/store/file_header.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace hearth::store {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void failed(const fs::path& path) {
    throw Failure(ErrorCode::StoreFailed, {path.string(), std::strerror(errno)});
}

void sync(const fs::path& path, int flags) {
    const int descriptor = open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) {
        failed(path);
    }
    // Some file systems of sticks and networks know no sync of a folder; they have written it by then.
    const bool knowsNone = (flags & O_DIRECTORY) != 0;
    const bool synced = fsync(descriptor) == 0 || (knowsNone && errno == EINVAL);
    const int problem = errno;
    close(descriptor);
    if (!synced) {
        errno = problem;
        failed(path);
    }
}

}  // namespace

DraftFile::DraftFile(fs::path path) : m_path(std::move(path)) {
    remove();
}

DraftFile::~DraftFile() {
    remove();
}

void DraftFile::remove() const {
    std::error_code nothingThere;
    fs::remove(m_path, nothingThere);
    fs::remove(journalOf(m_path), nothingThere);
}

void DraftFile::publish(const fs::path& target, Existing existing) const {
    sync(m_path, O_RDONLY);
    const unsigned flags = existing == Existing::Keep ? unsigned{RENAME_NOREPLACE} : 0U;
    if (renameat2(AT_FDCWD, m_path.c_str(), AT_FDCWD, target.c_str(), flags) != 0) {
        failed(target);
    }
    const fs::path folder = target.parent_path();
    sync(folder.empty() ? fs::path(".") : folder, O_RDONLY | O_DIRECTORY);
}

}  // namespace hearth::store
