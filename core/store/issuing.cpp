// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/issuing.h"

#include "core/record/check_dates.h"
#include "core/record/number_form.h"
#include "core/store/bin_repository.h"
#include "core/store/due_index.h"
#include "core/store/letting_go.h"
#include "core/store/record_repository.h"
#include "core/store/register_repository.h"
#include "core/store/search_index.h"
#include "core/store/series.h"
#include "core/store/signature_repository.h"
#include "core/store/verification.h"
#include "core/store/trace_repository.h"

#include <algorithm>
#include <utility>

namespace hearth::store {
namespace {

using record::ChainHeader;

RecordLine recordToSupersede(const Connection& db, RecordId id) {
    auto line = findRecord(db, id);
    if (!line) {
        throw Failure(ErrorCode::NotFound, {"record", id.text()});
    }
    refuseSuperseded(db, *line);
    if (line->voided) {
        throw Failure(ErrorCode::RecordVoid, {line->header.record});
    }
    refuseLetGo(*line);
    verifyLink(db, *line);
    return std::move(*line);
}

/// The last header is the one that the series remembers; else the next number is not known, and taking one
/// could give it out twice.
void checkEnd(const Connection& db, const Series& series) {
    const auto last =
        db.number("SELECT coalesce(max(number), 0) FROM record_headers WHERE series = ?", {series.letters});
    const auto head =
        db.text("SELECT digest FROM record_headers WHERE series = ? AND number = ?", {series.letters, last});
    if (last != series.lastNumber || (last > 0 && head != series.head)) {
        throw Failure(ErrorCode::RecordChainBroken,
                      {record::recordNumber(series.letters, series.lastRecord)});
    }
}

/// The header but for the digests, and the series moved on: a revision keeps its record's number, and takes
/// the next place in the chain.
ChainHeader nextHeader(Session& session, Series& series, const IssueRequest& request) {
    ChainHeader header;
    header.series = series.letters;
    header.number = ++series.lastNumber;
    if (request.supersedes) {
        const RecordLine before = recordToSupersede(session.db, *request.supersedes);
        header.record = before.header.record;
        header.revision = before.header.revision + 1;
    } else {
        const auto form = valueOrThrow(record::numberFormFrom(readFirm(session.db).numberForm));
        header.record = record::recordNumber(form, series.letters, ++series.lastRecord);
    }
    header.kind = record::kindCode(request.kind);
    header.issuedAt = instantText(session.clock.now());
    header.previous = series.head;
    return header;
}

record::Snapshot numbered(const IssueRequest& request, const ChainHeader& header) {
    record::Snapshot snapshot = request.snapshot;
    snapshot.document.number = header.record;
    snapshot.document.revision = header.revision;
    snapshot.document.kind = header.kind;
    snapshot.outcome = request.outcome;
    snapshot.supersedes = request.supersedes ? request.supersedes->text() : std::string();
    snapshot.reason = request.reason;
    return snapshot;
}

void keepHeader(Connection& db, RecordId id, const ChainHeader& header, const std::string& digest) {
    db.run(
        "INSERT INTO record_headers (id, series, number, record, revision, kind, issued_at, snapshot_digest, "
        "pdf_digest, "
        "previous, digest) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {id.bytes, header.series, std::int64_t{header.number}, header.record, std::int64_t{header.revision},
         header.kind, header.issuedAt, header.snapshotDigest, header.pdfDigest, header.previous, digest});
}

void keepPayloads(Connection& db, RecordId id, const record::Standing& standing, const std::string& json,
                  const std::string& pdf) {
    const auto supersedes = uuidFromText(standing.supersedes);
    db.run(
        "INSERT INTO record_snapshots (record, json, visit, premises, address, customer, outcome, "
        "supersedes, reason) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        {id.bytes, Blob{json}, standing.visit.bytes, standing.premises.bytes, standing.address,
         standing.customer, std::string(rulebook::outcomeText(standing.outcome)),
         supersedes ? Cell(*supersedes) : Cell(), standing.reason});
    db.run("INSERT INTO record_pdfs (record, pdf) VALUES (?, ?)", {id.bytes, Blob{pdf}});
}

/// The pictures that the record shows: their bytes are not to go while it says something.
void keepPictures(Connection& db, RecordId id, const record::Document& document) {
    for (const auto& digest : record::pictureDigests(document)) {
        db.run("INSERT INTO record_pictures (record, digest) VALUES (?, ?)", {id.bytes, digest});
    }
}

/// What was seen on no pipe is never part of what is handed over; readings may have been taken from it.
void refuseSimulated(const Connection& db, reg::VisitId visit) {
    for (const auto& trace : readTraces(db, visit)) {
        if (trace.source.isSimulated) {
            throw Failure(ErrorCode::TraceSimulated, {trace.source.name});
        }
    }
}

}  // namespace

RecordId issueRecord(Session& session, const IssueRequest& request, const Render& render) {
    Transaction transaction(session.db);
    const auto& visit = request.snapshot.file.visit;
    refuseBinned(session.db, {visit.id.bytes, visit.premises.bytes, visit.installation.bytes});
    refuseSimulated(session.db, visit.id);
    Series series = seriesToIssueIn(session);
    checkEnd(session.db, series);
    ChainHeader header = nextHeader(session, series, request);
    const record::Snapshot snapshot = numbered(request, header);
    const std::string json = record::canonicalJson(snapshot);
    header.snapshotDigest = record::sha256(json);
    const std::string pdf = valueOrThrow(render(snapshot.document, header.snapshotDigest));
    header.pdfDigest = record::sha256(pdf);
    series.head = record::headerDigest(header);

    const RecordId id{session.newId()};
    keepHeader(session.db, id, header, series.head);
    keepPayloads(session.db, id, record::standingOf(snapshot), json, pdf);
    keepPictures(session.db, id, snapshot.document);
    signIssued(session, id, pdf);
    refreshSearch(session.db, Indexed::Record, id.bytes);
    keepRecordChecks(session.db, id, request.supersedes, visit.premises.bytes, header.kind,
                     record::checksStatedBy(request.kind, request.snapshot.file));
    advance(session.db, series);
    transaction.commit();
    session.undoable.clear();
    return id;
}

}  // namespace hearth::store
