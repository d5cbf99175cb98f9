// SPDX-License-Identifier: GPL-3.0-or-later
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
Result<std::vector<MayGo>> SqliteStore::mayGo(calendar::Date today) const {
    return guarded([&] { return recordsPastKeeping(m_db, today); });
}

}  // namespace hearth::store
