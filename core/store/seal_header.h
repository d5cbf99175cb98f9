// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/backup_seal.h"
#include "core/store/plain_file.h"

#include <array>
#include <sodium.h>

/// The beginning of a sealed file, of 296 bytes; numbers are little-endian. DEVELOPERS.md tells the form.
namespace hearth::store {

inline constexpr std::array<Byte, 8> kSealMagic{'H', 'L', 'g', 'r', 'S', 'E', 'A', 'L'};
inline constexpr std::uint32_t kSealVersion = 1;
inline constexpr std::uint32_t kSealChunkSize = 65536;
inline constexpr std::size_t kSealKeySize = crypto_secretstream_xchacha20poly1305_KEYBYTES;
inline constexpr std::size_t kSealedKeySize = kSealKeySize + crypto_box_SEALBYTES;
inline constexpr std::size_t kSealCheckSize = 16;

inline constexpr std::size_t kSignedSize = 216;
inline constexpr std::size_t kCheckedSize = kSignedSize + crypto_sign_BYTES;
inline constexpr std::size_t kSealHeaderSize = kCheckedSize + kSealCheckSize;

struct SealHeader {
    KeyCost cost;
    std::array<Byte, crypto_pwhash_SALTBYTES> salt{};
    std::array<Byte, crypto_box_PUBLICKEYBYTES> sealKey{};
    std::array<Byte, crypto_sign_PUBLICKEYBYTES> signKey{};
    std::array<Byte, kSealedKeySize> sealedKey{};  // the file's own key
    std::array<Byte, crypto_secretstream_xchacha20poly1305_HEADERBYTES> streamStart{};
    std::array<Byte, crypto_sign_BYTES> signature{};  // over all that stands before it
};

using SealHeaderBytes = std::array<Byte, kSealHeaderSize>;
using HeaderCheck = std::array<Byte, kSealCheckSize>;

/// With magic, version and size of the pieces before it, and its check (BLAKE2b) behind it.
[[nodiscard]] SealHeaderBytes bytesOf(const SealHeader& header);
/// The check alone: each piece of the file is bound to it.
[[nodiscard]] HeaderCheck checkIn(const SealHeaderBytes& bytes);
/// Reads it. Throws StoreNotOurs, BackupNewer, BackupDamaged ("header"): `path` is for their particulars.
[[nodiscard]] SealHeader parseSealHeader(std::span<const Byte> bytes, const std::filesystem::path& path);

void signHeader(SealHeader& header, const SecretBytes<crypto_sign_SECRETKEYBYTES>& key);
[[nodiscard]] bool isSignedBy(const SealHeader& header,
                              const std::array<Byte, crypto_sign_PUBLICKEYBYTES>& key);

}  // namespace hearth::store
