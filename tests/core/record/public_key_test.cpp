// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/public_key.h"

#include "tests/support/files.h"

#include <gmock/gmock.h>

namespace hearth::record {
namespace {

std::string bytesOfHex(const std::string& hex) {
    std::string bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        bytes += static_cast<char>(std::stoi(hex.substr(i, 2), nullptr, 16));
    }
    return bytes;
}

PublicKey keyOfHex(const std::string& hex) {
    PublicKey key{};
    const std::string bytes = bytesOfHex(hex);
    std::copy(bytes.begin(), bytes.end(), key.begin());
    return key;
}

// Source: RFC 8410, section 10.1: a public key in PEM, and the same in hexadecimal in section 10.3's dump
// (from memory of the dump; the PEM is held by openssl below).
const PublicKey kRfcKey = keyOfHex("19bf44096984cdfe8541bac167dc3b96c85086aa30b6b6cb0c5c38ad703166e1");

TEST(PublicKey, isTheRfcsPem) {
    EXPECT_EQ(publicKeyPem(kRfcKey),
              "-----BEGIN PUBLIC KEY-----\n"
              "MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=\n"
              "-----END PUBLIC KEY-----\n");
}

TEST(PublicKey, hasTheFingerprintThatOpensslSees) {
    const hearth::testing::TempDir folder;
    hearth::testing::writeFile(folder / "key.pem", publicKeyPem(kRfcKey));
    const auto digest = hearth::testing::runCommand(
        "openssl pkey -pubin -in " + (folder / "key.pem").string() + " -outform DER | sha256sum");
    EXPECT_EQ(digest.text, keyFingerprint(kRfcKey) + "  -\n");
}

// Source: RFC 8032, section 7.1, tests 1 to 3.
struct RfcTest {
    const char* key;
    const char* message;
    const char* signature;
};
constexpr RfcTest kRfcTests[] = {
    {"d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f"
     "0595bbe2465"
     "5141438e7a100b"},
    {"3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2ea"
     "eb4302aeeb0"
     "0d291612bb0c00"},
    {"fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e"
     "9716ed28dc0"
     "27beceea1ec40a"},
};

TEST(Signature, holdsAsInTheRfcAndOverNothingElse) {
    for (const auto& test : kRfcTests) {
        const auto key = keyOfHex(test.key);
        const std::string message = bytesOfHex(test.message);
        std::string signature = bytesOfHex(test.signature);
        ASSERT_EQ(signature.size(), 64U);
        EXPECT_TRUE(signatureHolds(message, signature, key));
        EXPECT_FALSE(signatureHolds(message + "x", signature, key));
        EXPECT_FALSE(signatureHolds(message, signature, kRfcKey));
        EXPECT_FALSE(signatureHolds(message, signature + "x", key));
        EXPECT_FALSE(signatureHolds(message, "", key));
        signature[5] = static_cast<char>(signature[5] ^ 1);
        EXPECT_FALSE(signatureHolds(message, signature, key));
    }
}

}  // namespace
}  // namespace hearth::record
