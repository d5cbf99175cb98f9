// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_header.h"

#include <array>
#include <cerrno>
#include <cstddef>
#include <cstring>
#include <fstream>
#include <string_view>
#include <system_error>

namespace hearth::store {
namespace {

constexpr std::size_t kHeaderSize = 100;
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};

std::int32_t bigEndianAt(const std::array<char, kHeaderSize>& header, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < sizeof value; ++i) {
        value = (value << 8U) | static_cast<unsigned char>(header.at(at + i));
    }
    return static_cast<std::int32_t>(value);
}

}  // namespace

Result<FileHeader> readFileHeader(const std::filesystem::path& path) {
    std::error_code problem;
    const auto status = std::filesystem::status(path, problem);
    if (status.type() == std::filesystem::file_type::not_found) {
        return fail(ErrorCode::StoreMissing, {path.string()});
    }
    if (status.type() != std::filesystem::file_type::regular) {
        return fail(ErrorCode::StoreNotOurs, {path.string()});
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return fail(ErrorCode::StoreFailed, {path.string(), std::strerror(errno)});
    }
    std::array<char, kHeaderSize> header{};
    file.read(header.data(), static_cast<std::streamsize>(header.size()));
    const bool isSqlite = file.gcount() == static_cast<std::streamsize>(header.size()) &&
                          std::string_view(header.data(), kMagic.size()) == kMagic;
    if (!isSqlite || bigEndianAt(header, kApplicationIdAt) != kApplicationId) {
        return fail(ErrorCode::StoreNotOurs, {path.string()});
    }
    return FileHeader{bigEndianAt(header, kUserVersionAt)};
}

std::filesystem::path journalOf(const std::filesystem::path& path) {
    return path.string() + "-journal";
}

bool hasJournal(const std::filesystem::path& path) {
    std::error_code problem;
    const auto size = std::filesystem::file_size(journalOf(path), problem);
    return !problem && size > 0;
}

}  // namespace hearth::store
