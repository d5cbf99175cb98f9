// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/privacy_repository.h"

#include "core/store/attachment_repository.h"
#include "core/store/change_log.h"
#include "core/store/doings_repository.h"
#include "core/store/edit.h"
#include "core/store/kept_repository.h"
#include "core/store/letting_go.h"
#include "core/store/record_repository.h"
#include "core/store/sealing.h"
#include "core/store/search_index.h"

#include <algorithm>

namespace hearth::store {
namespace {

/// Issued records whose snapshot names the person: their text holds the person's key.
std::vector<RecordLine> recordsNaming(const Connection& db, reg::PartyId id) {
    const auto ids = db.all(
        "SELECT s.record FROM record_snapshots AS s JOIN record_headers AS h ON h.id = s.record "
        "WHERE s.premises IN (SELECT premises FROM roles WHERE party = ?) AND instr(s.json, ?) > 0 "
        "ORDER BY h.issued_at, h.id",
        {id.bytes, Blob{id.text()}}, [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
    std::vector<RecordLine> records;
    for (const auto& record : ids) {
        if (auto line = findRecord(db, record)) {
            records.push_back(std::move(*line));
        }
    }
    return records;
}

int countOfLog(const Connection& db, const std::string& table, const std::string& row) {
    return static_cast<int>(
        db.number("SELECT count(*) FROM changes WHERE table_name = ? AND row_id = ? AND erased_at IS NULL",
                  {table, row}));
}

/// What says something in a person's row beside its key and kind.
int fieldsThatSay(const reg::Party& party) {
    const Table& table = tableOf<reg::Party>();
    const Cells cells = cellsOf(party);
    int said = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const bool isKept = table.columns[i].name == "id" || table.columns[i].name == "kind";
        said += !isKept && cells[i] != table.empty[i] ? 1 : 0;
    }
    return said;
}

void refuseStanding(const Connection& db, const reg::Party& party) {
    for (const auto& held : readRoles(db, party.id, Binned::Included)) {
        if (!held.role.until) {
            throw Failure(ErrorCode::ErasureHoldsRole, {party.name, held.address.line1});
        }
    }
}

}  // namespace

void eraseLabels(Edit& edit, const UuidBytes& row, std::vector<std::string>& erased) {
    Connection& db = edit.session().db;
    for (auto binned : valuesWhere<reg::Binned>(db, "WHERE t.row = ?", {row})) {
        erased.push_back(binned.id.text());
        if (edit.rowOf(*tableNamed(binned.table), row)) {
            binned.label.clear();
            edit.put(binned);
        } else {
            edit.erase(tableOf<reg::Binned>(), binned.id.bytes);
        }
    }
}

PersonFile heldAbout(const Session& session, reg::PartyId id) {
    const Connection& db = session.db;
    PersonFile file;
    file.party = valueWithId<reg::Party>(db, id.bytes);
    file.roles = readRoles(db, id, Binned::Included);
    file.letters = readLetters(db, id, Binned::Included);
    file.records = recordsNaming(db, id);
    file.attachments = readAttachments(db, id.bytes, Binned::Included);
    file.changes = changesOf(db, tableOf<reg::Party>().name, id.text());
    file.madeAt = session.clock.now();
    return file;
}

Erasure erasureOf(const Session& session, reg::PartyId id) {
    const Connection& db = session.db;
    Erasure erasure;
    erasure.party = valueWithId<reg::Party>(db, id.bytes);
    refuseStanding(db, erasure.party);
    erasure.fields = fieldsThatSay(erasure.party);
    erasure.logLines = countOfLog(db, "parties", id.text());
    for (const auto& letter : readLetters(db, id, Binned::Included)) {
        if (!isOver(session, letter)) {
            erasure.stays.push_back({Stays::What::Letter, letter.kind, keptUntil(letter)});
            continue;
        }
        ++erasure.letters;
        erasure.logLines += countOfLog(db, "letters", letter.id.text());
    }
    for (const auto& attachment : readAttachments(db, id.bytes, Binned::Included)) {
        ++erasure.attachments;
        erasure.logLines += countOfLog(db, "attachments", attachment.id.text());
    }
    for (const auto& record : recordsNaming(db, id)) {
        erasure.stays.push_back({Stays::What::Record, record.header.record, keptUntil(record.header)});
    }
    return erasure;
}

Erasure erasePerson(Session& session, reg::PartyId id) {
    // Otherwise what was erased would stand in the file's free pages.
    session.db.script("PRAGMA secure_delete = ON");
    Transaction whole(session.db);
    Erasure erasure = erasureOf(session, id);
    Edit edit(session, Edit::Binned::MayChange);
    reg::Party nobody;
    nobody.id = id;
    nobody.kind = erasure.party.kind;
    edit.put(nobody);
    std::vector<std::string> labels;
    eraseLabels(edit, id.bytes, labels);
    std::vector<std::string> letters;
    for (const auto& letter : readLetters(session.db, id, Binned::Included)) {
        if (isOver(session, letter)) {
            edit.put(withoutTexts(letter));
            letters.push_back(letter.id.text());
            eraseLabels(edit, letter.id.bytes, labels);
        }
    }
    std::vector<std::string> attachments;
    for (const auto& attachment : readAttachments(session.db, id.bytes, Binned::Included)) {
        edit.erase(tableOf<reg::Attachment>(), attachment.id.bytes);
        attachments.push_back(attachment.id.text());
        eraseLabels(edit, attachment.id.bytes, labels);
    }
    edit.commit(Edit::Undoable::No);
    eraseTexts(session, "parties", id.text());
    for (const auto& letter : letters) {
        eraseTexts(session, "letters", letter);
    }
    for (const auto& attachment : attachments) {
        eraseTexts(session, "attachments", attachment);
    }
    for (const auto& label : labels) {
        eraseTexts(session, "bin", label);
    }
    static_cast<void>(dropUnusedBytes(session));
    tightenSearch(session.db);
    whole.commit();
    return erasure;
}

}  // namespace hearth::store
