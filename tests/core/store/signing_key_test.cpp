// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signing_key.h"

#include <gtest/gtest.h>

namespace hearth::store {
namespace {

const KeyCost kCheapKey{1, 8192};  // libsodium's least

TEST(SealedKeys, openWithTheirPassphraseAlone) {
    const auto key = newSealedKey("quiet lamp under stairs", kCheapKey);
    EXPECT_TRUE(openSealedKey(key, "quiet lamp under stairs"));
    EXPECT_FALSE(openSealedKey(key, "quiet lamp under stair"));
    EXPECT_FALSE(openSealedKey(key, ""));
}

TEST(SealedKeys, openHoweverTheLettersWereComposed) {
    const auto key = newSealedKey("t\u0177 gw\u0177n y coed", kCheapKey);
    EXPECT_TRUE(openSealedKey(key, "ty\u0302 gwy\u0302n y coed"));
}

TEST(SealedKeys, areDrawnByLot) {
    const auto one = newSealedKey("quiet lamp under stairs", kCheapKey);
    const auto other = newSealedKey("quiet lamp under stairs", kCheapKey);
    EXPECT_NE(one.publicKey, other.publicKey);
    EXPECT_NE(one.salt, other.salt);
    EXPECT_NE(one.nonce, other.nonce);
}

TEST(SealedKeys, thatWereTamperedWithDoNotOpen) {
    const auto key = newSealedKey("quiet lamp under stairs", kCheapKey);
    for (std::size_t i = 0; i < key.sealed.size(); ++i) {
        auto changed = key;
        changed.sealed[i] ^= 1U;
        EXPECT_FALSE(openSealedKey(changed, "quiet lamp under stairs")) << i;
    }
    auto another = key;
    another.publicKey[0] ^= 1U;
    EXPECT_FALSE(openSealedKey(another, "quiet lamp under stairs")) << "what it signs nobody could check";
}

TEST(SealedKeys, signWhatTheirPublicHalfChecks) {
    const auto key = newSealedKey("quiet lamp under stairs", kCheapKey);
    const auto secret = openSealedKey(key, "quiet lamp under stairs");
    ASSERT_TRUE(secret);
    const auto signature = signatureOver("a PDF", *secret);
    EXPECT_TRUE(record::signatureHolds("a PDF", signature, key.publicKey));
    EXPECT_FALSE(record::signatureHolds("another", signature, key.publicKey));
}

}  // namespace
}  // namespace hearth::store
