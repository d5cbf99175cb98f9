// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <string_view>

/// The public half of a key that records are signed with (Ed25519, RFC 8032), for people without this
/// program.
namespace hearth::record {

using PublicKey = std::array<unsigned char, 32>;

/// As a file of its own: PEM of a SubjectPublicKeyInfo (RFC 8410), which `openssl pkey -pubin` reads.
[[nodiscard]] std::string publicKeyPem(const PublicKey& key);
/// SHA-256 in lower-case hexadecimal of the key's DER form: what
/// `openssl pkey -pubin -in KEY.pem -outform DER | sha256sum` gives.
[[nodiscard]] std::string keyFingerprint(const PublicKey& key);
/// Whether a detached signature of 64 bytes over `bytes` was made with the secret half.
[[nodiscard]] bool signatureHolds(std::string_view bytes, std::string_view signature, const PublicKey& key);

}  // namespace hearth::record
