// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

/// Backups that only a passphrase opens, and that are made without it.
///
/// From the passphrase Argon2id makes two key pairs. The store keeps the public half of the first, which
/// seals, and the secret half of the second, which signs: so a backup can be made at any time, nobody can
/// open it with what the store keeps, and nobody who has neither store nor passphrase can make one that
/// passes for the firm's. The passphrase makes both pairs anew: it opens, and it knows the signature.
///
/// Everything is libsodium's: crypto_pwhash, crypto_box_seal, crypto_sign, crypto_secretstream. The form of
/// the file stands in DEVELOPERS.md. Everything throws Failure.
namespace hearth::store {

/// Before anything of libsodium is used; once is enough, from any thread.
void readySodium();
void wipeBytes(void* bytes, std::size_t size);

/// A key, wiped when it goes.
template <std::size_t kSize>
class SecretBytes {
  public:
    SecretBytes() = default;
    SecretBytes(const SecretBytes&) = default;
    SecretBytes& operator=(const SecretBytes&) = default;
    ~SecretBytes() { wipeBytes(m_bytes.data(), kSize); }
    [[nodiscard]] unsigned char* data() { return m_bytes.data(); }
    [[nodiscard]] const unsigned char* data() const { return m_bytes.data(); }
    [[nodiscard]] static constexpr std::size_t size() { return kSize; }
    bool operator==(const SecretBytes&) const = default;

  private:
    std::array<unsigned char, kSize> m_bytes{};
};

/// What it costs to try one passphrase.
struct KeyCost {
    std::uint64_t operations = 0;
    std::uint64_t memory = 0;  // bytes
    bool operator==(const KeyCost&) const = default;
};
/// libsodium's MODERATE: 256 MiB, under a second on a small machine. Source: "The pwhash API"
/// (doc.libsodium.org), "Guidelines for choosing the parameters".
[[nodiscard]] KeyCost usualKeyCost();

/// What the store keeps to seal and to sign.
struct Sealing {
    KeyCost cost;
    std::array<unsigned char, 16> salt{};
    std::array<unsigned char, 32> sealKey{};  // public
    SecretBytes<64> signKey;                  // its last half is the public key
    bool operator==(const Sealing&) const = default;
};
/// Both key pairs of a passphrase.
struct KeyPairs {
    std::array<unsigned char, 32> sealKey{};  // public
    SecretBytes<32> openKey;
    std::array<unsigned char, 32> checkKey{};  // public
    SecretBytes<64> signKey;
};
/// Throws StoreFailed when there is not the memory.
[[nodiscard]] KeyPairs keyPairsOf(const std::string& passphrase, const KeyCost& cost,
                                  const std::array<unsigned char, 16>& salt);
/// With a salt by lot. Throws StoreFailed when there is not the memory.
[[nodiscard]] Sealing sealingFor(const std::string& passphrase, KeyCost cost);
[[nodiscard]] std::string textOf(const Sealing& sealing);
[[nodiscard]] std::optional<Sealing> parseSealing(const std::string& text);

/// The least number of characters of a passphrase.
inline constexpr int kLeastPassphrase = 10;
[[nodiscard]] bool isShortPassphrase(const std::string& passphrase);

/// True when the file says that it is sealed.
[[nodiscard]] bool isSealedFile(const std::filesystem::path& path);

/// Writes `plain` sealed as `sealed`, and reads it again to the end: what came off the medium opens to the
/// very bytes that went in. Throws StoreFull, StoreReadOnly, StoreFailed.
void sealFile(const Sealing& sealing, const std::filesystem::path& plain,
              const std::filesystem::path& sealed);

/// Opens a sealed file into a new one. Throws StoreNotOurs, BackupNewer, BackupDamaged (with what was found:
/// "header", "signature", "content", "end"), PassphraseMissing, PassphraseWrong. What was written until then
/// is for the caller to remove.
void unsealFile(const std::filesystem::path& sealed, const std::string& passphrase,
                const std::filesystem::path& plain);

}  // namespace hearth::store
