// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/hand_repository.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<void> SqliteStore::sign(const reg::HandSignature& signature) {
    return changing([&] { store::sign(m_session, signature); });
}
Result<void> SqliteStore::unsign(reg::VisitId visit, const std::string& recordKind, reg::Signer signer) {
    return changing([&] { store::unsign(m_session, visit, recordKind, signer); });
}

}  // namespace hearth::store
