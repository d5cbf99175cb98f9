// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <sodium.h>
#include <span>
#include <string>
#include <vector>

/// Plain files read and written by the system's own calls, every answer looked at. Everything throws Failure.
namespace hearth::store {

using Byte = unsigned char;

/// What a system call's error means to a person: StoreFull, StoreReadOnly, StoreFolderUnusable (no such
/// folder or file), StoreFailed with the system's words.
[[nodiscard]] Error systemError(int systemError, const std::filesystem::path& path);

/// A file that is read from its beginning to its end.
class InFile {
  public:
    explicit InFile(const std::filesystem::path& path);
    ~InFile();
    InFile(const InFile&) = delete;
    InFile& operator=(const InFile&) = delete;

    /// Fills `bytes` unless the file ends before; gives how many there were.
    [[nodiscard]] std::size_t read(std::span<Byte> bytes);
    /// What comes now is read from the medium, as far as the system lets us ask for that.
    void forgetCached();

  private:
    std::filesystem::path m_path;
    int m_descriptor;
};

/// A file that is written from its beginning. It is made anew, for its owner's eyes.
class OutFile {
  public:
    explicit OutFile(const std::filesystem::path& path);
    ~OutFile();
    OutFile(const OutFile&) = delete;
    OutFile& operator=(const OutFile&) = delete;

    void write(std::span<const Byte> bytes);
    /// All of it on the medium, and closed.
    void finish();

  private:
    std::filesystem::path m_path;
    int m_descriptor;
};

/// SHA-256 of a file's bytes, and how many there are.
struct FileDigest {
    std::string sha256;  // hexadecimal
    std::uintmax_t size = 0;
    bool operator==(const FileDigest&) const = default;
};
/// The digest of what comes in pieces.
class PieceDigest {
  public:
    PieceDigest();
    void take(std::span<const Byte> piece);
    [[nodiscard]] FileDigest finish();

  private:
    crypto_hash_sha256_state m_state{};
    std::uintmax_t m_size = 0;
};
[[nodiscard]] FileDigest digestOfFile(const std::filesystem::path& path);

/// Copies the bytes, waits for the medium, and reads the copy again: StoreFailed when it is not the same.
void copyChecked(const std::filesystem::path& from, const std::filesystem::path& to);

/// The names in a folder; none when it can't be read.
[[nodiscard]] std::vector<std::string> entriesOf(const std::filesystem::path& folder);

}  // namespace hearth::store
