// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/plain_file.h"

#include "core/store/failure.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace hearth::store {
namespace {

constexpr std::size_t kPieceSize = 65536;

[[noreturn]] void systemFailed(const std::filesystem::path& path, int problem) {
    throw Failure(systemError(problem, path));
}

/// Hands every piece of a file to `take`.
template <class Take>
void eachPiece(InFile& file, Take take) {
    std::vector<Byte> piece(kPieceSize);
    for (std::size_t got = file.read(piece); got > 0; got = file.read(piece)) {
        take(std::span<const Byte>(piece.data(), got));
    }
}

}  // namespace

Error systemError(int systemError, const std::filesystem::path& path) {
    switch (systemError) {
        case ENOSPC:
        case EDQUOT:
        case EFBIG:
            return {ErrorCode::StoreFull, {path.string()}};
        case EROFS:
        case EACCES:
        case EPERM:
            return {ErrorCode::StoreReadOnly, {path.string()}};
        case ENOENT:
        case ENOTDIR:
        case ENODEV:
            return {ErrorCode::StoreFolderUnusable, {path.string()}};
        default:
            return {ErrorCode::StoreFailed, {path.string(), std::strerror(systemError)}};
    }
}

InFile::InFile(const std::filesystem::path& path)
    : m_path(path), m_descriptor(open(path.c_str(), O_RDONLY | O_CLOEXEC)) {
    if (m_descriptor < 0) {
        systemFailed(m_path, errno);
    }
}

InFile::~InFile() {
    close(m_descriptor);
}

std::size_t InFile::read(std::span<Byte> bytes) {
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t got = ::read(m_descriptor, bytes.data() + done, bytes.size() - done);
        if (got == 0) {
            break;
        }
        if (got > 0) {
            done += static_cast<std::size_t>(got);
        } else if (errno != EINTR) {
            systemFailed(m_path, errno);
        }
    }
    return done;
}

void InFile::forgetCached() {
    static_cast<void>(posix_fadvise(m_descriptor, 0, 0, POSIX_FADV_DONTNEED));  // a wish, no more
}

OutFile::OutFile(const std::filesystem::path& path)
    : m_path(path),
      m_descriptor(open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR)) {
    if (m_descriptor < 0) {
        systemFailed(m_path, errno);
    }
}

OutFile::~OutFile() {
    if (m_descriptor >= 0) {
        close(m_descriptor);
    }
}

void OutFile::write(std::span<const Byte> bytes) {
    while (!bytes.empty()) {
        const ssize_t put = ::write(m_descriptor, bytes.data(), bytes.size());
        if (put >= 0) {
            bytes = bytes.subspan(static_cast<std::size_t>(put));
        } else if (errno != EINTR) {
            systemFailed(m_path, errno);
        }
    }
}

void OutFile::finish() {
    if (fsync(m_descriptor) != 0) {
        systemFailed(m_path, errno);
    }
    const int descriptor = m_descriptor;
    m_descriptor = -1;
    if (close(descriptor) != 0) {  // a network drive may say only now that it has no room
        systemFailed(m_path, errno);
    }
}

PieceDigest::PieceDigest() {
    crypto_hash_sha256_init(&m_state);
}

void PieceDigest::take(std::span<const Byte> piece) {
    crypto_hash_sha256_update(&m_state, piece.data(), piece.size());
    m_size += piece.size();
}

FileDigest PieceDigest::finish() {
    std::array<Byte, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256_final(&m_state, digest.data());
    std::array<char, 2 * crypto_hash_sha256_BYTES + 1> hex{};
    sodium_bin2hex(hex.data(), hex.size(), digest.data(), digest.size());
    return {hex.data(), m_size};
}

FileDigest digestOfFile(const std::filesystem::path& path) {
    InFile file(path);
    file.forgetCached();
    PieceDigest hasher;
    eachPiece(file, [&](std::span<const Byte> piece) { hasher.take(piece); });
    return hasher.finish();
}

void copyChecked(const std::filesystem::path& from, const std::filesystem::path& to) {
    InFile source(from);
    OutFile target(to);
    PieceDigest hasher;
    eachPiece(source, [&](std::span<const Byte> piece) {
        hasher.take(piece);
        target.write(piece);
    });
    target.finish();
    if (digestOfFile(to) != hasher.finish()) {
        throw Failure(ErrorCode::StoreFailed, {to.string(), "differs"});
    }
}

std::vector<std::string> entriesOf(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    std::error_code problem;
    for (std::filesystem::directory_iterator at(folder, problem), end; !problem && at != end;
         at.increment(problem)) {
        names.push_back(at->path().filename().string());
    }
    return names;
}

}  // namespace hearth::store
