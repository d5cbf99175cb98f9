// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/public_key.h"

#include "core/record/snapshot.h"

#include <sodium.h>

namespace hearth::record {
namespace {

/// SEQUENCE { SEQUENCE { OID 1.3.101.112 } BIT STRING } before the 32 bytes. Source: RFC 8410, section 4 and
/// the example of section 10.1.
constexpr std::array<unsigned char, 12> kDerHead{0x30, 0x2a, 0x30, 0x05, 0x06, 0x03,
                                                 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};

std::string derOf(const PublicKey& key) {
    std::string der(kDerHead.begin(), kDerHead.end());
    der.append(key.begin(), key.end());
    return der;
}

const unsigned char* asBytes(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

}  // namespace

std::string publicKeyPem(const PublicKey& key) {
    const std::string der = derOf(key);
    std::array<char, 64> base64{};  // 44 bytes make 60 letters and the closing 0
    sodium_bin2base64(base64.data(), base64.size(), asBytes(der), der.size(), sodium_base64_VARIANT_ORIGINAL);
    return std::string("-----BEGIN PUBLIC KEY-----\n") + base64.data() + "\n-----END PUBLIC KEY-----\n";
}

std::string keyFingerprint(const PublicKey& key) {
    return sha256(derOf(key));
}

bool signatureHolds(std::string_view bytes, std::string_view signature, const PublicKey& key) {
    return signature.size() == crypto_sign_BYTES &&
           crypto_sign_verify_detached(asBytes(signature), asBytes(bytes), bytes.size(), key.data()) == 0;
}

}  // namespace hearth::record
