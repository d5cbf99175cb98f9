// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/letting_go.h"
#include "core/store/privacy_repository.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<PersonFile> SqliteStore::heldAbout(reg::PartyId id) const {
    return guarded([&] { return store::heldAbout(m_session, id); });
}
Result<Erasure> SqliteStore::erasureOf(reg::PartyId id) const {
    return guarded([&] { return store::erasureOf(m_session, id); });
}
Result<Erasure> SqliteStore::erase(reg::PartyId id) {
    return changing([&] { return erasePerson(m_session, id); });
}
Result<std::vector<MayGo>> SqliteStore::mayGo(calendar::Date today, int limit) const {
    return guarded([&] { return recordsPastKeeping(m_db, today, limit); });
}
Result<std::vector<LetterMayGo>> SqliteStore::lettersMayGo(calendar::Date today, int limit) const {
    return guarded([&] { return lettersPastKeeping(m_db, today, limit); });
}
Result<void> SqliteStore::letGo(const LettingGo& what) {
    return changing([&] { store::letGo(m_session, what); });
}
Result<void> SqliteStore::hold(RecordId id, const std::string& reason) {
    return changing([&] { holdRecord(m_session, id, reason); });
}
Result<void> SqliteStore::liftHold(RecordId id) {
    return changing([&] { store::liftHold(m_session, id); });
}

}  // namespace hearth::store
