// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/verification.h"

#include "core/store/letting_go.h"
#include "core/store/migrations.h"
#include "core/store/record_repository.h"
#include "core/store/sealing.h"
#include "core/store/series.h"

namespace hearth::store {
namespace {

using record::ChainHeader;

[[noreturn]] void broken(const std::string& record) {
    throw Failure(ErrorCode::RecordChainBroken, {record});
}

/// A header with the digest that stands beside it.
struct StoredHeader {
    UuidBytes id{};
    ChainHeader header;
    std::string digest;
};

std::vector<StoredHeader> headersOf(const Connection& db, const std::string& series) {
    return db.all("SELECT " + std::string(kHeaderColumns) +
                      ", h.id, h.digest FROM record_headers AS h WHERE h.series = ? ORDER BY h.number",
                  {series}, [](const Columns& columns) {
                      return StoredHeader{columns.uuid(kHeaderColumnCount), headerOf(columns),
                                          columns.text(kHeaderColumnCount + 1)};
                  });
}

std::string payload(const Connection& db, std::string_view sql, const RecordLine& line, const char* part) {
    const auto bytes =
        db.first(sql, {line.id.bytes}, [](const Columns& columns) { return columns.bytes(0); });
    if (!bytes) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, part});
    }
    return *bytes;
}

record::Standing standingOf(const RecordLine& line) {
    return {line.visit,    line.premises, line.address,
            line.customer, line.outcome,  line.supersedes ? line.supersedes->text() : std::string(),
            line.reason};
}

/// The last record of a series and its number as the series itself noted them: an end that was cut off is
/// found.
void verifyEnd(const Series& series, const std::vector<StoredHeader>& headers) {
    const std::string head =
        headers.empty() ? series.followsHead : record::headerDigest(headers.back().header);
    if (series.lastNumber != static_cast<int>(headers.size()) || series.head != head) {
        broken(record::recordNumber(series.letters, series.lastRecord));
    }
}

void verifySeries(const Connection& db, const Series& series) {
    const auto stored = headersOf(db, series.letters);
    std::vector<ChainHeader> headers;
    for (const auto& one : stored) {
        if (one.digest != record::headerDigest(one.header)) {
            broken(one.header.record);
        }
        headers.push_back(one.header);
    }
    valueOrThrow(record::verifyChain(headers, series.followsHead));
    verifyEnd(series, stored);
}

/// A series that follows another names one of that one's headers.
void verifyFollows(const Connection& db, const Series& series) {
    if (series.followsHead.empty()) {
        return;
    }
    if (db.number("SELECT count(*) FROM record_headers WHERE digest = ?", {series.followsHead}) != 1) {
        broken(record::recordNumber(series.letters, 1));
    }
}

void verifyRecord(const Connection& db, const UuidBytes& id, const std::string& record) {
    const auto line = findRecord(db, RecordId{id});
    if (!line) {
        throw Failure(ErrorCode::RecordAltered, {record, "snapshot"});
    }
    if (line->letGo) {
        verifyLetGo(db, *line);
        return;
    }
    static_cast<void>(verifiedSnapshot(db, *line));
    static_cast<void>(verifiedPdf(db, *line));
}

/// The same; where not even the file's pages hold together, the record that they were for is named.
void verifyNamed(const Connection& db, const UuidBytes& id, const std::string& record) {
    try {
        verifyRecord(db, id, record);
    } catch (const Failure& failure) {
        if (failure.error().code == ErrorCode::StoreDamaged) {
            throw Failure(ErrorCode::RecordAltered, {record, "pdf"});
        }
        throw;
    }
}

}  // namespace

void verifyLink(const Connection& db, const RecordLine& line) {
    const ChainHeader& header = line.header;
    const std::string digest = db.text("SELECT digest FROM record_headers WHERE id = ?", {line.id.bytes});
    const std::string before =
        header.number == 1 ? db.text("SELECT follows_head FROM series WHERE series = ?", {header.series})
                           : db.text("SELECT digest FROM record_headers WHERE series = ? AND number = ?",
                                     {header.series, std::int64_t{header.number - 1}});
    if (digest != record::headerDigest(header) || before != header.previous) {
        broken(header.record);
    }
}

std::string verifiedSnapshot(const Connection& db, const RecordLine& line) {
    auto json = payload(db, "SELECT json FROM record_snapshots WHERE record = ?", line, "snapshot");
    if (record::sha256(json) != line.header.snapshotDigest) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, "snapshot"});
    }
    const auto standing = record::standingFromJson(json);
    if (!standing || *standing != standingOf(line)) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, "snapshot"});
    }
    return json;
}

std::string verifiedPdf(const Connection& db, const RecordLine& line) {
    auto pdf = payload(db, "SELECT pdf FROM record_pdfs WHERE record = ?", line, "pdf");
    if (record::sha256(pdf) != line.header.pdfDigest) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, "pdf"});
    }
    return pdf;
}

void verifyLetGo(const Connection& db, const RecordLine& line) {
    const auto left = db.number(
        "SELECT (SELECT length(json) FROM record_snapshots WHERE record = ?) + "
        "coalesce((SELECT length(pdf) FROM record_pdfs WHERE record = ?), -1)",
        {line.id.bytes, line.id.bytes});
    const auto logged = db.number(
        "SELECT count(*) FROM changes WHERE table_name = ? AND row_id = ? AND field = ? AND after = ? "
        "AND by = ? AND premises = ? AND visit = ?",
        {std::string(kErasedTable), line.id.text(), std::string(kErasedField),
         erasedDetail(line.letGo->keptUntil, line.letGo->rule), line.letGo->by, line.premises.bytes,
         line.visit.bytes});
    const auto before = db.first("SELECT id FROM record_headers WHERE record = ? AND revision = ?",
                                 {line.header.record, std::int64_t{line.header.revision - 1}},
                                 [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
    const bool saysNothing = line.address.empty() && line.customer.empty() && line.reason.empty() &&
                             line.outcome == rulebook::Outcome::NoVerdict;
    if (left != 0 || logged != 1 || before != line.supersedes || !saysNothing) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, "erasure"});
    }
}

std::vector<std::string> recordsOutOfTime(const Connection& db) {
    return db.all(
        "SELECT h.record FROM record_headers AS h JOIN record_headers AS ahead "
        "ON ahead.series = h.series AND ahead.number = h.number - 1 WHERE h.issued_at < ahead.issued_at "
        "ORDER BY h.series, h.number",
        {}, [](const Columns& columns) { return columns.text(0); });
}

void verifyAll(Connection& db) {
    const ReadScope oneState(db);
    for (const auto& series : allSeries(db)) {
        verifyFollows(db, series);
        verifySeries(db, series);
    }
    const auto records =
        db.all("SELECT id, record FROM record_headers ORDER BY issued_at, id", {},
               [](const Columns& columns) { return std::pair(columns.uuid(0), columns.text(1)); });
    for (const auto& [id, record] : records) {
        verifyNamed(db, id, record);
    }
    constexpr int kSealed = 3;  // the schema from which on the change log has seals
    if (schemaOf(db) >= kSealed) {
        verifySeals(db);
    }
}

}  // namespace hearth::store
