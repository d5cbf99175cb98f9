// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/proof_repository.h"

#include "core/store/record_repository.h"
#include "core/store/signature_repository.h"
#include "core/store/verification.h"

namespace hearth::store {
namespace {

using record::Claim;
using record::KeptFacts;

/// Below this a file of the same length is another one; two PDFs of one program share less.
constexpr double kAlmostTheSame = 0.9;

std::string keptPdf(const Connection& db, RecordId id) {
    return db
        .first("SELECT pdf FROM record_pdfs WHERE record = ?", {id.bytes},
               [](const Columns& columns) { return columns.bytes(0); })
        .value_or(std::string());
}

/// Whether a check throws what such a check may throw.
template <class Check>
bool holdsIn(Check check) {
    try {
        check();
        return true;
    } catch (const Failure& failure) {
        const auto code = failure.error().code;
        if (code != ErrorCode::RecordAltered && code != ErrorCode::RecordChainBroken) {
            throw;
        }
        return false;
    }
}

std::optional<record::LaterRevision> newestAfter(const Connection& db, const RecordLine& line) {
    if (!line.supersededBy) {
        return std::nullopt;
    }
    const auto newest = newestOfNumber(db, line.header.record);
    const auto later = newest ? findRecord(db, *newest) : std::nullopt;
    if (!later) {
        throw Failure(ErrorCode::RecordAltered, {line.header.record, "snapshot"});
    }
    return record::LaterRevision{{later->header.record, later->header.revision}, later->header.issuedAt};
}

std::optional<record::KeyWord> keyWordOn(const Connection& db, const RecordLine& line,
                                         const std::string& pdf) {
    const auto signature = readSignature(db, line.id);
    if (!signature) {
        return std::nullopt;
    }
    const auto& key = signature->key;
    return record::KeyWord{record::keyFingerprint(key.publicKey), instantText(key.from),
                           key.until ? instantText(*key.until) : std::string(), instantText(signature->at),
                           record::signatureHolds(pdf, signature->bytes, key.publicKey)};
}

/// `shown`: the file that was shown; null where only a code or number was.
KeptFacts factsOf(const Connection& db, const RecordLine& line, const std::string* shown) {
    KeptFacts facts;
    facts.id = line.id.bytes;
    facts.header = line.header;
    facts.chainHolds = holdsIn([&] { verifyLink(db, line); });
    if (line.letGo) {  // what it said is gone; its digests stay, and still tell what was issued
        facts.erasedAt = instantText(line.letGo->at);
    }
    facts.snapshotHolds = line.letGo || holdsIn([&] { static_cast<void>(verifiedSnapshot(db, line)); });
    facts.pdfHolds = line.letGo || holdsIn([&] { static_cast<void>(verifiedPdf(db, line)); });
    facts.supersededBy = newestAfter(db, line);
    facts.voided = line.voided;
    if (!line.letGo || shown != nullptr) {
        facts.signature = keyWordOn(db, line, shown ? *shown : keptPdf(db, line.id));
    }
    return facts;
}

/// The number as it was issued; somebody may have left out zeros and what the firm puts before the letters.
std::string numberOf(const Connection& db, const std::string& typed) {
    if (newestOfNumber(db, typed)) {
        return typed;
    }
    for (const auto& number : db.all("SELECT DISTINCT record FROM record_headers", {},
                                     [](const Columns& columns) { return columns.text(0); })) {
        if (record::meansNumber(typed, number)) {
            return number;
        }
    }
    return typed;
}

std::optional<RecordId> recordOf(const Connection& db, const record::RecordName& asked) {
    const record::RecordName name{numberOf(db, asked.number), asked.revision};
    if (name.revision == 0) {
        return newestOfNumber(db, name.number);
    }
    return db.first("SELECT id FROM record_headers WHERE record = ? AND revision = ?",
                    {name.number, std::int64_t{name.revision}},
                    [](const Columns& columns) { return RecordId{columns.uuid(0)}; });
}

using Ids = std::vector<RecordId>;

RecordId recordIn(const Columns& columns) {
    return RecordId{columns.uuid(0)};
}

struct Likest {
    std::optional<RecordId> id;
    double likeness = 0;
};

Likest likestOf(const Connection& db, const Ids& ids, const std::string& bytes) {
    Likest likest;
    for (const auto& id : ids) {
        const double alike = record::likeness(keptPdf(db, id), bytes);
        if (!likest.id || alike > likest.likeness) {
            likest = {id, alike};
        }
    }
    return likest;
}

/// The record that a file was, if it was one: the very file, one that it names, or one that it almost is.
std::optional<RecordId> recordBehind(const Connection& db, const std::string& bytes,
                                     const std::string& digest) {
    const auto same = db.first("SELECT id FROM record_headers WHERE pdf_digest = ?", {digest}, recordIn);
    if (same) {
        return same;
    }
    const auto sameLength = likestOf(db,
                                     db.all("SELECT record FROM record_pdfs WHERE length(pdf) = ?",
                                            {static_cast<std::int64_t>(bytes.size())}, recordIn),
                                     bytes);
    if (sameLength.id && sameLength.likeness >= kAlmostTheSame) {
        return sameLength.id;
    }
    Ids named;
    for (const auto& number : record::numbersNamedIn(bytes)) {
        const auto revisions = db.all("SELECT id FROM record_headers WHERE record = ? ORDER BY revision DESC",
                                      {number}, recordIn);
        named.insert(named.end(), revisions.begin(), revisions.end());
    }
    return likestOf(db, named, bytes).id;
}

}  // namespace

record::Proof proveFile(Connection& db, const std::string& bytes) {
    const ReadScope oneState(db);
    Claim claim{Claim::By::Pdf, {}, record::sha256(bytes)};
    const auto id = recordBehind(db, bytes, claim.digest);
    const auto line = id ? findRecord(db, *id) : std::nullopt;
    if (!line) {
        return record::proofOf(claim, std::nullopt);
    }
    claim.name = {line->header.record, line->header.revision};
    KeptFacts facts = factsOf(db, *line, &bytes);
    if (!line->letGo) {
        facts.differsAt = record::firstDifference(bytes, keptPdf(db, *id));
    }
    return record::proofOf(claim, facts);
}

record::Proof proveClaim(Connection& db, const Claim& claim) {
    const ReadScope oneState(db);
    const auto id = recordOf(db, claim.name);
    const auto line = id ? findRecord(db, *id) : std::nullopt;
    return line ? record::proofOf(claim, factsOf(db, *line, nullptr)) : record::proofOf(claim, std::nullopt);
}

}  // namespace hearth::store
