// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/hand_repository.h"

#include "core/store/bin_repository.h"
#include "core/store/edit.h"

namespace hearth::store {
namespace {

/// Records of a kind that were issued of the visit, whatever became of them; the next is one more.
constexpr std::string_view kIssued =
    "(SELECT count(*) FROM record_snapshots AS s JOIN record_headers AS h ON h.id = s.record"
    " WHERE s.visit = ? AND h.kind = ?)";

std::vector<reg::HandSignature> waitingFor(const Connection& db, reg::VisitId visit,
                                           const std::string& recordKind, reg::Signer signer) {
    return valuesWhere<reg::HandSignature>(
        db,
        "WHERE t.visit = ? AND t.record_kind = ? AND t.signer = ? AND t.issue = 1 + " + std::string(kIssued),
        {visit.bytes, recordKind, std::string(reg::codeOf(signer)), visit.bytes, recordKind});
}

}  // namespace

void sign(Session& session, const reg::HandSignature& signature) {
    if (!reg::strokesFromText(signature.strokes)) {
        throw Failure(ErrorCode::StrokesUnreadable, {});
    }
    Edit edit(session);
    const auto visit = valueWithId<reg::Visit>(session.db, signature.visit.bytes);
    refuseBinned(session.db, {visit.id.bytes, visit.premises.bytes, visit.installation.bytes});
    reg::HandSignature kept = signature;
    const auto before = waitingFor(session.db, visit.id, kept.recordKind, kept.signer);
    kept.id = before.empty() ? reg::HandSignatureId{session.newId()} : before.front().id;
    kept.issue = 1 + static_cast<int>(session.db.number("SELECT " + std::string(kIssued),
                                                        {visit.id.bytes, kept.recordKind}));
    edit.put(kept);
    edit.commit();
}

void unsign(Session& session, reg::VisitId visit, const std::string& recordKind, reg::Signer signer) {
    Edit edit(session);
    for (const auto& waiting : waitingFor(session.db, visit, recordKind, signer)) {
        edit.remove(tableOf<reg::HandSignature>(), waiting.id.bytes);
    }
    edit.commit();
}

std::vector<reg::HandSignature> readSignatures(const Connection& db, reg::VisitId visit) {
    return valuesWhere<reg::HandSignature>(
        db,
        "WHERE t.visit = ? AND t.issue = 1 + (SELECT count(*) FROM record_snapshots AS s JOIN record_headers "
        "AS h ON h.id = s.record WHERE s.visit = t.visit AND h.kind = t.record_kind)"
        " ORDER BY t.record_kind, t.signer, t.id",
        {visit.bytes});
}

}  // namespace hearth::store
