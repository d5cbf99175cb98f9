// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/register/doings.h"

#include <optional>
#include <string>
#include <vector>

namespace hearth::store {

/// A picture or paper that is to be kept. The caller has read it (exchange::readPicture): the store keeps
/// bytes and asks no questions about what they show.
struct NewAttachment {
    std::string ownerTable;  // "premises", "appliances", "visits", "situations", "firm" …
    UuidBytes owner{};
    std::string name;
    std::string mediaType;
    std::string bytes;
    std::string thumbnail;   // a small PNG; empty where there is none to make
    bool placeKept = false;  // where it was taken was left in on purpose
    std::string note;
};

/// Photographs and papers of whatever the register holds. Bytes lie apart under their digest: the same
/// picture is kept once, and a list reads none of them.
class Attachments {
  public:
    /// The greatest size of one, in bytes: a telephone's photograph has about 4 MB, a scanned sheet 1 MB.
    static constexpr std::size_t kMostBytes = std::size_t{20} * 1024 * 1024;

    Attachments() = default;
    Attachments(const Attachments&) = delete;
    Attachments& operator=(const Attachments&) = delete;
    virtual ~Attachments() = default;

    /// Errors: AttachmentTooLarge; NotFound when the owner is not there.
    [[nodiscard]] virtual Result<reg::AttachmentId> attach(const NewAttachment& attachment) = 0;
    /// Keeps a picture as the firm's and makes it the logo, as one action; `ownerTable` and `owner` are not
    /// read. The one before stays kept: records that were issued with it show it. Firm::logo without a value
    /// takes it away. Errors: AttachmentTooLarge.
    [[nodiscard]] virtual Result<reg::AttachmentId> attachLogo(const NewAttachment& picture) = 0;
    /// In the order they came.
    [[nodiscard]] virtual Result<std::vector<reg::Attachment>> attachmentsOf(
        const UuidBytes& owner) const = 0;
    /// The bytes as they were kept. Errors: AttachmentAltered when they are not what was kept; NotFound.
    [[nodiscard]] virtual Result<std::string> attachmentBytes(reg::AttachmentId id) const = 0;
    /// A small PNG; empty where none was made.
    [[nodiscard]] virtual Result<std::string> thumbnailOf(reg::AttachmentId id) const = 0;
    /// Name and note only.
    [[nodiscard]] virtual Result<void> describeAttachment(reg::AttachmentId id, const std::string& name,
                                                          const std::string& note) = 0;
    /// Whose records show the picture, below them its note; nothing: none. Errors: NotFound.
    [[nodiscard]] virtual Result<void> showInRecords(reg::AttachmentId id,
                                                     const std::optional<reg::VisitId>& visit) = 0;
    /// Takes it away from its owner; undo brings it back: the bytes stay until dropUnusedBytes().
    [[nodiscard]] virtual Result<void> detach(reg::AttachmentId id) = 0;
    /// Removes bytes that no attachment names any more and no issued record shows, and readings that no trace
    /// names, and gives how many bytes that were. What was detached in this session can't be brought back after it.
    [[nodiscard]] virtual Result<std::int64_t> dropUnusedBytes() = 0;
};

}  // namespace hearth::store
