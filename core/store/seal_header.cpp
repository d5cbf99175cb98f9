// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/seal_header.h"

#include "core/store/failure.h"

#include <algorithm>

namespace hearth::store {
namespace {

// More than any machine of today would ask for; a file that says so is no file of ours.
constexpr std::uint64_t kMostOperations = 64;
constexpr std::uint64_t kMostMemory = std::uint64_t{2} << 30U;

static_assert(crypto_pwhash_SALTBYTES == 16 && crypto_box_PUBLICKEYBYTES == 32 &&
              crypto_sign_PUBLICKEYBYTES == 32 && crypto_sign_SECRETKEYBYTES == 64 &&
              crypto_box_SEALBYTES == 48 && crypto_secretstream_xchacha20poly1305_HEADERBYTES == 24);

/// Puts one thing after the other into a header.
class HeaderWriter {
  public:
    explicit HeaderWriter(SealHeaderBytes& bytes) : m_bytes(bytes) {}
    template <class Number>
    void number(Number value) {
        constexpr unsigned kBits = 8;
        for (std::size_t i = 0; i < sizeof value; ++i) {
            m_bytes.at(m_at++) = static_cast<Byte>(value >> (kBits * i));
        }
    }
    template <std::size_t kSize>
    void field(const std::array<Byte, kSize>& value) {
        std::copy(value.begin(), value.end(), m_bytes.begin() + static_cast<std::ptrdiff_t>(m_at));
        m_at += kSize;
    }
    [[nodiscard]] std::size_t at() const { return m_at; }

  private:
    SealHeaderBytes& m_bytes;
    std::size_t m_at = 0;
};

class HeaderReader {
  public:
    explicit HeaderReader(std::span<const Byte> bytes) : m_bytes(bytes) {}
    template <class Number>
    Number number() {
        constexpr unsigned kBits = 8;
        Number value = 0;
        for (std::size_t i = 0; i < sizeof value; ++i) {
            value = static_cast<Number>(value | (Number{m_bytes[m_at++]} << (kBits * i)));
        }
        return value;
    }
    template <std::size_t kSize>
    void field(std::array<Byte, kSize>& value) {
        std::copy_n(m_bytes.begin() + static_cast<std::ptrdiff_t>(m_at), kSize, value.begin());
        m_at += kSize;
    }

  private:
    std::span<const Byte> m_bytes;
    std::size_t m_at = 0;
};

HeaderCheck headerCheck(std::span<const Byte> bytes) {
    HeaderCheck check{};
    crypto_generichash(check.data(), check.size(), bytes.data(), kCheckedSize, nullptr, 0);
    return check;
}

/// All that is signed, in its place.
SealHeaderBytes signedBytes(const SealHeader& header) {
    SealHeaderBytes bytes{};
    HeaderWriter out(bytes);
    out.field(kSealMagic);
    out.number(kSealVersion);
    out.number(kSealChunkSize);
    out.number(header.cost.operations);
    out.number(header.cost.memory);
    out.field(header.salt);
    out.field(header.sealKey);
    out.field(header.signKey);
    out.field(header.sealedKey);
    out.field(header.streamStart);
    return bytes;
}

[[noreturn]] void headerDamaged(const std::filesystem::path& path) {
    throw Failure(ErrorCode::BackupDamaged, {path.string(), "header"});
}

}  // namespace

SealHeaderBytes bytesOf(const SealHeader& header) {
    SealHeaderBytes bytes = signedBytes(header);
    std::copy(header.signature.begin(), header.signature.end(), bytes.begin() + kSignedSize);
    const auto check = headerCheck(bytes);
    std::copy(check.begin(), check.end(), bytes.begin() + kCheckedSize);
    return bytes;
}

HeaderCheck checkIn(const SealHeaderBytes& bytes) {
    HeaderCheck check{};
    std::copy_n(bytes.begin() + kCheckedSize, kSealCheckSize, check.begin());
    return check;
}

SealHeader parseSealHeader(std::span<const Byte> bytes, const std::filesystem::path& path) {
    if (bytes.size() < kSealMagic.size() ||
        !std::equal(kSealMagic.begin(), kSealMagic.end(), bytes.begin())) {
        throw Failure(ErrorCode::StoreNotOurs, {path.string()});
    }
    if (bytes.size() < kSealHeaderSize) {
        headerDamaged(path);
    }
    HeaderReader in(bytes);
    std::array<Byte, kSealMagic.size()> magic{};
    in.field(magic);
    const auto version = in.number<std::uint32_t>();
    if (version > kSealVersion) {
        throw Failure(ErrorCode::BackupNewer, {path.string(), std::to_string(version)});
    }
    SealHeader header;
    const auto chunkSize = in.number<std::uint32_t>();
    header.cost.operations = in.number<std::uint64_t>();
    header.cost.memory = in.number<std::uint64_t>();
    in.field(header.salt);
    in.field(header.sealKey);
    in.field(header.signKey);
    in.field(header.sealedKey);
    in.field(header.streamStart);
    in.field(header.signature);
    HeaderCheck check{};
    in.field(check);
    if (check != headerCheck(bytes) || version != kSealVersion || chunkSize != kSealChunkSize ||
        header.cost.operations < crypto_pwhash_OPSLIMIT_MIN || header.cost.operations > kMostOperations ||
        header.cost.memory < crypto_pwhash_MEMLIMIT_MIN || header.cost.memory > kMostMemory) {
        headerDamaged(path);
    }
    return header;
}

void signHeader(SealHeader& header, const SecretBytes<crypto_sign_SECRETKEYBYTES>& key) {
    const auto bytes = signedBytes(header);
    crypto_sign_detached(header.signature.data(), nullptr, bytes.data(), kSignedSize, key.data());
}

bool isSignedBy(const SealHeader& header, const std::array<Byte, crypto_sign_PUBLICKEYBYTES>& key) {
    const auto bytes = signedBytes(header);
    return crypto_sign_verify_detached(header.signature.data(), bytes.data(), kSignedSize, key.data()) == 0;
}

}  // namespace hearth::store
