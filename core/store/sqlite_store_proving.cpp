// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/proof_repository.h"
#include "core/store/record_repository.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<record::Proof> SqliteStore::proveFile(const std::string& bytes) const {
    return guarded([&] { return store::proveFile(m_db, bytes); });
}
Result<record::Proof> SqliteStore::proveClaim(const record::Claim& claim) const {
    return guarded([&] { return store::proveClaim(m_db, claim); });
}
Result<void> SqliteStore::voidRecord(RecordId id, const std::string& why) {
    return changing([&] { store::voidRecord(m_session, id, why); });
}
Result<std::vector<RecordLine>> SqliteStore::recordsChosen(const RecordChoice& choice) const {
    return guarded([&] { return chosenRecords(m_db, choice); });
}
Result<void> SqliteStore::noteSending(RecordId id, const record::Sending& sending) {
    return changing([&] { store::noteSending(m_session, id, sending); });
}
Result<std::vector<record::Sending>> SqliteStore::sendings(RecordId id) const {
    return guarded([&] { return sendingsOf(m_db, id); });
}
Result<std::vector<record::CopyHolder>> SqliteStore::holdersToTell(RecordId id) const {
    return guarded([&] { return holdersOfEarlier(m_db, id); });
}

}  // namespace hearth::store
