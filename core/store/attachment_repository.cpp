// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/attachment_repository.h"

#include "core/record/snapshot.h"
#include "core/store/bin_repository.h"
#include "core/store/edit.h"
#include "core/store/register_repository.h"
#include "core/store/trace_repository.h"

#include <algorithm>
#include <array>

namespace hearth::store {
namespace {

/// The tables that an attachment may belong to. A name from outside never reaches SQL.
constexpr std::array<std::string_view, 12> kOwners{
    "firm",        "parties", "premises",   "installations",   "appliances", "engineers",
    "instruments", "visits",  "situations", "access_attempts", "letters",    "earlier_checks"};

bool isThere(const Connection& db, const std::string& table, const UuidBytes& owner) {
    if (std::find(kOwners.begin(), kOwners.end(), table) == kOwners.end()) {
        return false;
    }
    return db.number("SELECT count(*) FROM " + table + " WHERE id = ?", {owner}) > 0;
}

reg::Attachment attachmentWithId(const Connection& db, reg::AttachmentId id) {
    return valueWithId<reg::Attachment>(db, id.bytes);
}

Cell blobOrNull(const std::string& bytes) {
    return bytes.empty() ? Cell() : Cell(Blob{bytes});
}

void refuseTooLarge(const NewAttachment& attachment) {
    constexpr std::size_t kMegabyte = std::size_t{1024} * 1024;
    if (attachment.bytes.size() > Attachments::kMostBytes) {
        throw Failure(ErrorCode::AttachmentTooLarge,
                      {attachment.name, std::to_string(attachment.bytes.size() / kMegabyte),
                       std::to_string(Attachments::kMostBytes / kMegabyte)});
    }
}

/// Keeps the bytes under their digest, and the row that names them.
reg::Attachment putAttachment(Edit& edit, const NewAttachment& attachment) {
    Session& session = edit.session();
    const std::string digest = record::sha256(attachment.bytes);
    session.db.run(
        "INSERT INTO attachment_bytes (digest, bytes, thumbnail) VALUES (?, ?, ?) "
        "ON CONFLICT (digest) DO NOTHING",
        {digest, Blob{attachment.bytes}, blobOrNull(attachment.thumbnail)});
    reg::Attachment row;
    row.id = reg::AttachmentId{session.newId()};
    row.ownerTable = attachment.ownerTable;
    row.owner = attachment.owner;
    row.name = attachment.name;
    row.mediaType = attachment.mediaType;
    row.size = static_cast<int>(attachment.bytes.size());
    row.digest = digest;
    row.addedAt = session.clock.now();
    row.addedBy = session.actor;
    row.placeKept = attachment.placeKept;
    row.note = attachment.note;
    edit.put(row);
    return row;
}

}  // namespace

reg::AttachmentId attachWithin(Edit& edit, const NewAttachment& attachment) {
    refuseTooLarge(attachment);
    if (!isThere(edit.session().db, attachment.ownerTable, attachment.owner)) {
        throw Failure(ErrorCode::NotFound, {attachment.ownerTable, uuidText(attachment.owner)});
    }
    return putAttachment(edit, attachment).id;
}

reg::AttachmentId attach(Session& session, const NewAttachment& attachment) {
    refuseTooLarge(attachment);
    Edit edit(session);
    const auto id = attachWithin(edit, attachment);
    edit.commit();
    return id;
}

reg::AttachmentId attachLogo(Session& session, const NewAttachment& picture) {
    refuseTooLarge(picture);
    Edit edit(session);
    FirmRow firm = readFirmRow(session.db);
    NewAttachment ofFirm = picture;
    ofFirm.ownerTable = "firm";
    ofFirm.owner = firm.id.bytes;
    const reg::Attachment row = putAttachment(edit, ofFirm);
    firm.firm.logo = row.id;
    edit.put(firm);
    edit.commit();
    return row.id;
}

std::string bytesOfDigest(const Connection& db, const std::string& digest) {
    auto bytes = db.first("SELECT bytes FROM attachment_bytes WHERE digest = ?", {digest},
                          [](const Columns& columns) { return columns.bytes(0); });
    return bytes && record::sha256(*bytes) == digest ? std::move(*bytes) : std::string();
}

std::vector<reg::Attachment> readAttachments(const Connection& db, const UuidBytes& owner, Binned binned) {
    return valuesWhere<reg::Attachment>(
        db, "WHERE t.owner = ? AND " + shown("t.id", binned) + " ORDER BY t.added_at, t.id", {owner});
}

std::string readAttachmentBytes(const Connection& db, reg::AttachmentId id) {
    const auto attachment = attachmentWithId(db, id);
    const auto bytes = db.first("SELECT bytes FROM attachment_bytes WHERE digest = ?", {attachment.digest},
                                [](const Columns& columns) { return columns.bytes(0); });
    if (!bytes || record::sha256(*bytes) != attachment.digest) {
        throw Failure(ErrorCode::AttachmentAltered, {attachment.name});
    }
    return *bytes;
}

std::string readThumbnail(const Connection& db, reg::AttachmentId id) {
    return db
        .first(
            "SELECT b.thumbnail FROM attachments AS a JOIN attachment_bytes AS b ON b.digest = a.digest "
            "WHERE a.id = ?",
            {id.bytes},
            [](const Columns& columns) { return columns.isNull(0) ? std::string() : columns.bytes(0); })
        .value_or("");
}

void describeAttachment(Session& session, reg::AttachmentId id, const std::string& name,
                        const std::string& note) {
    Edit edit(session);
    auto attachment = attachmentWithId(session.db, id);
    attachment.name = name;
    attachment.note = note;
    edit.put(attachment);
    edit.commit();
}

void showInRecords(Session& session, reg::AttachmentId id, const std::optional<reg::VisitId>& visit) {
    Edit edit(session);
    auto attachment = attachmentWithId(session.db, id);
    if (visit) {
        static_cast<void>(valueWithId<reg::Visit>(session.db, visit->bytes));
    }
    attachment.inRecordOf = visit;
    edit.put(attachment);
    edit.commit();
}

void detach(Session& session, reg::AttachmentId id) {
    Edit edit(session);
    const auto attachment = attachmentWithId(session.db, id);
    edit.remove(tableOf<reg::Attachment>(), attachment.id.bytes);
    edit.commit();
}

std::int64_t dropUnusedBytes(Session& session) {
    constexpr std::string_view kUnused =
        " FROM attachment_bytes WHERE NOT EXISTS (SELECT 1 FROM attachments AS a WHERE a.digest = "
        "attachment_bytes.digest) AND NOT EXISTS (SELECT 1 FROM record_pictures AS p WHERE p.digest = "
        "attachment_bytes.digest)";
    Transaction transaction(session.db);
    const std::int64_t freed =
        session.db.number("SELECT coalesce(sum(length(bytes)), 0)" + std::string(kUnused));
    session.db.run("DELETE" + std::string(kUnused));
    const std::int64_t readings = dropUnusedReadings(session.db);
    transaction.commit();
    session.undoable.clear();  // what was detached could come back without its bytes
    return freed + readings;
}

std::vector<std::string> alteredAttachments(const Connection& db) {
    std::vector<std::string> altered;
    const auto all =
        db.all("SELECT DISTINCT digest, name FROM attachments GROUP BY digest", {},
               [](const Columns& columns) { return std::pair(columns.text(0), columns.text(1)); });
    // One at a time: a firm's pictures together may not fit into memory.
    for (const auto& [digest, name] : all) {
        const auto bytes = db.first("SELECT bytes FROM attachment_bytes WHERE digest = ?", {digest},
                                    [](const Columns& columns) { return columns.bytes(0); });
        if (!bytes || record::sha256(*bytes) != digest) {
            altered.push_back(name);
        }
    }
    return altered;
}

}  // namespace hearth::store
