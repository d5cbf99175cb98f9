// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/public_key.h"
#include "core/store/lines.h"
#include "core/store/signing_key.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

using KeyId = Id<struct SigningKeyTag>;

/// A key of the firm's, as it may be shown to anybody.
struct KeyLine {
    KeyId id;
    record::PublicKey publicKey{};
    std::string by;  // who made it
    Instant from{};
    std::optional<Instant> until;  // when a newer one took its place
    int signatures = 0;
    bool operator==(const KeyLine&) const = default;
};

/// A key that was opened with its passphrase: it signs for as long as the program holds it.
struct OpenedKey {
    KeyId id;
    SigningSecret secret;
};

struct RecordSignature {
    std::string bytes;  // 64, detached, over the PDF as issued
    KeyLine key;
    Instant at{};
};

/// The firm's own key and what it signed. Issuing signs at once while a key is opened; else the record waits.
class Signing {
  public:
    virtual ~Signing() = default;

    /// Newest first; the first is the one that signs.
    [[nodiscard]] virtual Result<std::vector<KeyLine>> signingKeys() const = 0;
    /// Makes a key that only this passphrase opens, the first or in place of the one before: that one's
    /// signatures hold on. Takes most of a second and 256 MiB. Errors: PassphraseShort.
    [[nodiscard]] virtual Result<void> makeSigningKey(const std::string& passphrase) = 0;
    /// The newest key, opened. As long. Errors: SigningKeyMissing, KeyPassphraseWrong.
    [[nodiscard]] virtual Result<OpenedKey> openSigningKey(const std::string& passphrase) const = 0;
    /// From now on what is issued is signed with it; nothing: locked again.
    virtual void signWith(const std::optional<OpenedKey>& key) = 0;
    [[nodiscard]] virtual bool canSign() const = 0;

    [[nodiscard]] virtual Result<int> waitingForSignature() const = 0;
    /// Signs records that wait, the oldest first, each held against its digests before; gives how many were
    /// signed. Errors: SigningLocked, RecordAltered, RecordChainBroken.
    [[nodiscard]] virtual Result<int> signWaiting(int most) = 0;
    /// Nothing: not signed yet.
    [[nodiscard]] virtual Result<std::optional<RecordSignature>> signatureOf(RecordId id) const = 0;
};

}  // namespace hearth::store
