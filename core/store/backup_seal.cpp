// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backup_seal.h"

#include "core/store/bridge.h"
#include "core/store/failure.h"

#include <algorithm>
#include <sodium.h>
#include <sstream>

namespace hearth::store {
namespace {

template <std::size_t kSize>
std::string hexOf(const unsigned char* bytes) {
    std::array<char, 2 * kSize + 1> hex{};
    sodium_bin2hex(hex.data(), hex.size(), bytes, kSize);
    return hex.data();
}

bool bytesOfHex(const std::string& hex, unsigned char* bytes, std::size_t size) {
    std::size_t got = 0;
    const char* end = nullptr;
    return sodium_hex2bin(bytes, size, hex.data(), hex.size(), nullptr, &got, &end) == 0 && got == size &&
           end == hex.data() + hex.size();
}

}  // namespace

void wipeBytes(void* bytes, std::size_t size) {
    sodium_memzero(bytes, size);
}

void readySodium() {
    static const int kReady = sodium_init();
    if (kReady < 0) {
        throw Failure(ErrorCode::StoreFailed, {std::string(), "libsodium"});
    }
}

bool isShortPassphrase(const std::string& passphrase) {
    return toQt(passphrase).toUcs4().size() < kLeastPassphrase;
}

KeyCost usualKeyCost() {
    return {crypto_pwhash_OPSLIMIT_MODERATE, crypto_pwhash_MEMLIMIT_MODERATE};
}

KeyPairs keyPairsOf(const std::string& passphrase, const KeyCost& cost,
                    const std::array<unsigned char, 16>& salt) {
    readySodium();
    // The same letters typed on another machine may come as other code points.
    std::string typed = fromQt(toQt(passphrase).normalized(QString::NormalizationForm_C));
    SecretBytes<crypto_box_SEEDBYTES + crypto_sign_SEEDBYTES> seed;
    const int made =
        crypto_pwhash(seed.data(), decltype(seed)::size(), typed.data(), typed.size(), salt.data(),
                      cost.operations, static_cast<std::size_t>(cost.memory), crypto_pwhash_ALG_ARGON2ID13);
    sodium_memzero(typed.data(), typed.size());
    if (made != 0) {
        throw Failure(ErrorCode::StoreFailed, {std::string(), "memory"});
    }
    KeyPairs pairs;
    crypto_box_seed_keypair(pairs.sealKey.data(), pairs.openKey.data(), seed.data());
    crypto_sign_seed_keypair(pairs.checkKey.data(), pairs.signKey.data(), seed.data() + crypto_box_SEEDBYTES);
    return pairs;
}

Sealing sealingFor(const std::string& passphrase, KeyCost cost) {
    Sealing sealing;
    sealing.cost = cost;
    readySodium();
    randombytes_buf(sealing.salt.data(), sealing.salt.size());
    const auto pairs = keyPairsOf(passphrase, cost, sealing.salt);
    sealing.sealKey = pairs.sealKey;
    sealing.signKey = pairs.signKey;
    return sealing;
}

std::string textOf(const Sealing& sealing) {
    return std::to_string(sealing.cost.operations) + " " + std::to_string(sealing.cost.memory) + " " +
           hexOf<16>(sealing.salt.data()) + " " + hexOf<32>(sealing.sealKey.data()) + " " +
           hexOf<64>(sealing.signKey.data());
}

std::optional<Sealing> parseSealing(const std::string& text) {
    std::istringstream words(text);
    Sealing sealing;
    std::string salt;
    std::string sealKey;
    std::string signKey;
    if (!(words >> sealing.cost.operations >> sealing.cost.memory >> salt >> sealKey >> signKey) ||
        !bytesOfHex(salt, sealing.salt.data(), sealing.salt.size()) ||
        !bytesOfHex(sealKey, sealing.sealKey.data(), sealing.sealKey.size()) ||
        !bytesOfHex(signKey, sealing.signKey.data(), decltype(sealing.signKey)::size())) {
        return std::nullopt;
    }
    return sealing;
}

}  // namespace hearth::store
