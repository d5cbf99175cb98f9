// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/attachments.h"
#include "core/store/bin_repository.h"
#include "core/store/session.h"

#include <string>
#include <vector>

/// Pictures and papers. Everything throws Failure.
namespace hearth::store {

class Edit;

[[nodiscard]] reg::AttachmentId attach(Session& session, const NewAttachment& attachment);
/// As a part of an action that makes the owner.
[[nodiscard]] reg::AttachmentId attachWithin(Edit& edit, const NewAttachment& attachment);
[[nodiscard]] reg::AttachmentId attachLogo(Session& session, const NewAttachment& picture);
/// The bytes of an issued record's logo; empty where they are gone or are not those any more.
[[nodiscard]] std::string bytesOfDigest(const Connection& db, const std::string& digest);
[[nodiscard]] std::vector<reg::Attachment> readAttachments(const Connection& db, const UuidBytes& owner,
                                                           Binned binned = Binned::LeftOut);
[[nodiscard]] std::string readAttachmentBytes(const Connection& db, reg::AttachmentId id);
[[nodiscard]] std::string readThumbnail(const Connection& db, reg::AttachmentId id);
void describeAttachment(Session& session, reg::AttachmentId id, const std::string& name,
                        const std::string& note);
void showInRecords(Session& session, reg::AttachmentId id, const std::optional<reg::VisitId>& visit);
void detach(Session& session, reg::AttachmentId id);
[[nodiscard]] std::int64_t dropUnusedBytes(Session& session);

/// The names of attachments whose bytes are not what was kept, or are gone.
[[nodiscard]] std::vector<std::string> alteredAttachments(const Connection& db);

}  // namespace hearth::store
