// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signing_key.h"

#include "core/store/bridge.h"
#include "core/store/failure.h"

#include <sodium.h>

namespace hearth::store {
namespace {

using BoxKey = SecretBytes<crypto_secretbox_KEYBYTES>;
using Seed = SecretBytes<crypto_sign_SEEDBYTES>;

BoxKey boxKeyOf(const std::string& passphrase, const SealedKey& key) {
    // The same letters typed on another machine may come as other code points.
    std::string typed = fromQt(toQt(passphrase).normalized(QString::NormalizationForm_C));
    BoxKey made;
    const int failed = crypto_pwhash(made.data(), BoxKey::size(), typed.data(), typed.size(), key.salt.data(),
                                     key.cost.operations, static_cast<std::size_t>(key.cost.memory),
                                     crypto_pwhash_ALG_ARGON2ID13);
    wipeBytes(typed.data(), typed.size());
    if (failed != 0) {
        throw Failure(ErrorCode::StoreFailed, {std::string(), "memory"});
    }
    return made;
}

}  // namespace

SealedKey newSealedKey(const std::string& passphrase, const KeyCost& cost) {
    readySodium();
    SealedKey key;
    key.cost = cost;
    randombytes_buf(key.salt.data(), key.salt.size());
    randombytes_buf(key.nonce.data(), key.nonce.size());
    Seed seed;
    randombytes_buf(seed.data(), Seed::size());
    SigningSecret secret;
    crypto_sign_seed_keypair(key.publicKey.data(), secret.data(), seed.data());
    const BoxKey box = boxKeyOf(passphrase, key);
    crypto_secretbox_easy(key.sealed.data(), seed.data(), Seed::size(), key.nonce.data(), box.data());
    return key;
}

std::optional<SigningSecret> openSealedKey(const SealedKey& key, const std::string& passphrase) {
    readySodium();
    const BoxKey box = boxKeyOf(passphrase, key);
    Seed seed;
    if (crypto_secretbox_open_easy(seed.data(), key.sealed.data(), key.sealed.size(), key.nonce.data(),
                                   box.data()) != 0) {
        return std::nullopt;
    }
    SigningSecret secret;
    record::PublicKey made{};
    crypto_sign_seed_keypair(made.data(), secret.data(), seed.data());
    return made == key.publicKey ? std::optional<SigningSecret>(secret) : std::nullopt;
}

std::string signatureOver(std::string_view bytes, const SigningSecret& secret) {
    std::string signature(crypto_sign_BYTES, '\0');
    crypto_sign_detached(reinterpret_cast<unsigned char*>(signature.data()), nullptr,
                         reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), secret.data());
    return signature;
}

}  // namespace hearth::store
