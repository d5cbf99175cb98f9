// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/public_key.h"
#include "core/store/backup_seal.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

/// A key pair whose secret half is kept under a passphrase: Argon2id (crypto_pwhash) makes the key of a
/// crypto_secretbox that holds the seed of the pair (crypto_sign). Everything throws Failure.
namespace hearth::store {

struct SealedKey {
    record::PublicKey publicKey{};
    KeyCost cost;
    std::array<unsigned char, 16> salt{};
    std::array<unsigned char, 24> nonce{};
    std::array<unsigned char, 48> sealed{};  // the seed's 32 bytes and 16 that hold them
};

/// The secret half, while the program may sign.
using SigningSecret = SecretBytes<64>;

/// A new pair, by lot.
[[nodiscard]] SealedKey newSealedKey(const std::string& passphrase, const KeyCost& cost);
/// Nothing: that is not the passphrase.
[[nodiscard]] std::optional<SigningSecret> openSealedKey(const SealedKey& key, const std::string& passphrase);
/// 64 bytes.
[[nodiscard]] std::string signatureOver(std::string_view bytes, const SigningSecret& secret);

}  // namespace hearth::store
