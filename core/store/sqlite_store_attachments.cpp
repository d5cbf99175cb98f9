// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/attachment_repository.h"
#include "core/store/sqlite_store.h"

namespace hearth::store {

Result<reg::AttachmentId> SqliteStore::attach(const NewAttachment& attachment) {
    return changing([&] { return store::attach(m_session, attachment); });
}
Result<reg::AttachmentId> SqliteStore::attachLogo(const NewAttachment& picture) {
    return changing([&] { return store::attachLogo(m_session, picture); });
}
Result<std::vector<reg::Attachment>> SqliteStore::attachmentsOf(const UuidBytes& owner) const {
    return guarded([&] { return readAttachments(m_db, owner); });
}
Result<std::string> SqliteStore::attachmentBytes(reg::AttachmentId id) const {
    return guarded([&] { return readAttachmentBytes(m_db, id); });
}
Result<std::string> SqliteStore::thumbnailOf(reg::AttachmentId id) const {
    return guarded([&] { return readThumbnail(m_db, id); });
}
Result<void> SqliteStore::describeAttachment(reg::AttachmentId id, const std::string& name,
                                             const std::string& note) {
    return changing([&] { store::describeAttachment(m_session, id, name, note); });
}
Result<void> SqliteStore::showInRecords(reg::AttachmentId id, const std::optional<reg::VisitId>& visit) {
    return changing([&] { store::showInRecords(m_session, id, visit); });
}
Result<void> SqliteStore::detach(reg::AttachmentId id) {
    return changing([&] { store::detach(m_session, id); });
}
Result<std::int64_t> SqliteStore::dropUnusedBytes() {
    return changing([&] { return store::dropUnusedBytes(m_session); });
}

}  // namespace hearth::store
