// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/signature_repository.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<std::vector<KeyLine>> SqliteStore::signingKeys() const {
    return guarded([&] { return readKeys(m_db); });
}
Result<void> SqliteStore::makeSigningKey(const std::string& passphrase) {
    if (isShortPassphrase(passphrase)) {
        return fail(ErrorCode::PassphraseShort, {std::to_string(kLeastPassphrase)});
    }
    return changing([&] { keepKey(m_session, newSealedKey(passphrase, usualKeyCost())); });
}
Result<OpenedKey> SqliteStore::openSigningKey(const std::string& passphrase) const {
    return guarded([&] { return openNewestKey(m_db, passphrase); });
}
void SqliteStore::signWith(const std::optional<OpenedKey>& key) {
    m_session.signer = key;
}
Result<int> SqliteStore::waitingForSignature() const {
    return guarded([&] { return waitingCount(m_db); });
}
Result<int> SqliteStore::signWaiting(int most) {
    return changing([&] { return store::signWaiting(m_session, most); });
}
Result<std::optional<RecordSignature>> SqliteStore::signatureOf(RecordId id) const {
    return guarded([&] { return readSignature(m_db, id); });
}

}  // namespace hearth::store
