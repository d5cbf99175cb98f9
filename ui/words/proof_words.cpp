// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/proof_words.h"

#include "core/base/clock.h"
#include "ui/words/text_table.h"

namespace hearth::ui::words {
namespace {

using record::Claim;
using record::Mismatch;
using record::Verdict;

using VerdictText = Text<Verdict>;

// %1: the record.
constexpr std::array kVerdicts{
    VerdictText{Verdict::Ours, QT_TRANSLATE_NOOP("Words", "Ours and unchanged: %1.")},
    VerdictText{Verdict::Superseded,
                QT_TRANSLATE_NOOP("Words", "Ours and unchanged, but superseded: %1. Go by %2 instead.")},
    VerdictText{Verdict::Void,
                QT_TRANSLATE_NOOP("Words", "Ours and unchanged, but void: %1 does not count.")},
    VerdictText{Verdict::Changed,
                QT_TRANSLATE_NOOP("Words", "Changed: this is not %1 as it was issued. Don't rely on it.")},
    VerdictText{Verdict::Unprovable,
                QT_TRANSLATE_NOOP("Words",
                                  "Nothing can be said of %1: the chain of records in this store is broken "
                                  "there. Restore a backup, and ask again.")},
    VerdictText{Verdict::NotOurs,
                QT_TRANSLATE_NOOP("Words", "Not ours: this store has issued no such record.")},
};

using MismatchText = Text<Mismatch>;

// %1: the digest that was shown, %2: the one that was issued.
constexpr std::array kMismatches{
    MismatchText{Mismatch::PdfDigest,
                 QT_TRANSLATE_NOOP("Words", "The file's digest is %1; that of the PDF issued is %2.")},
    MismatchText{
        Mismatch::CodeDigest,
        QT_TRANSLATE_NOOP("Words", "The digest in the code is %1; that of the record issued is %2.")},
    MismatchText{Mismatch::KeptPdf,
                 QT_TRANSLATE_NOOP("Words",
                                   "The copy of its PDF in this store was changed: its digest is another. "
                                   "Restore a backup.")},
    MismatchText{Mismatch::KeptSnapshot,
                 QT_TRANSLATE_NOOP("Words",
                                   "What this store keeps of the record was changed: its digest is another. "
                                   "Restore a backup.")},
    MismatchText{Mismatch::Chain,
                 QT_TRANSLATE_NOOP("Words", "Its link to the record issued before it is broken.")},
    MismatchText{Mismatch::Signature,
                 QT_TRANSLATE_NOOP("Words", "The firm's signature does not hold over it.")},
};

QString mismatchText(const Words& words, const record::Proof& proof, Mismatch what) {
    const auto& header = proof.kept->header;
    const std::string& issued = what == Mismatch::PdfDigest ? header.pdfDigest : header.snapshotDigest;
    return words.say(textOf(kMismatches, what), {groupedDigest(proof.claim.digest), groupedDigest(issued)});
}

QString signatureText(const Words& words, const record::KeyWord& key) {
    const QStringList arguments{groupedDigest(key.fingerprint), dayOfInstant(words, key.from),
                                dayOfInstant(words, key.until), dayOfInstant(words, key.signedAt)};
    return key.until.empty()
               ? words.say(QT_TRANSLATE_NOOP("Words",
                                             "Signed on %4 with the firm's key, in use since %2. Its "
                                             "fingerprint: %1."),
                           arguments)
               : words.say(QT_TRANSLATE_NOOP("Words",
                                             "Signed on %4 with a key that the firm used from %2 to %3. Its "
                                             "fingerprint: %1."),
                           arguments);
}

/// What happened to it since it was issued.
void addHistory(const Words& words, const record::KeptFacts& kept, QStringList& details) {
    details << words.say(QT_TRANSLATE_NOOP("Words", "Issued on %1."),
                         {dayOfInstant(words, kept.header.issuedAt)});
    if (kept.supersededBy) {
        details << words.say(
            QT_TRANSLATE_NOOP("Words", "Superseded by %1, issued on %2."),
            {recordName(words, kept.supersededBy->name), dayOfInstant(words, kept.supersededBy->issuedAt)});
    }
    if (kept.voided) {
        const QString by = kept.voided->by.empty() ? words.say(QT_TRANSLATE_NOOP("Words", "somebody unnamed"))
                                                   : qstring(kept.voided->by);
        details << words.say(QT_TRANSLATE_NOOP("Words", "Declared void on %1 by %2: %3"),
                             {dayOfInstant(words, kept.voided->at), by, qstring(kept.voided->why)});
    }
}

void addSignature(const Words& words, const record::Proof& proof, QStringList& details) {
    if (!proof.kept->signature) {
        details << words.say(QT_TRANSLATE_NOOP("Words", "It has not been signed with the firm's key."));
    } else if (proof.kept->signature->holds) {
        details << signatureText(words, *proof.kept->signature);
    }
}

}  // namespace

QString recordName(const Words& words, const record::RecordName& name) {
    return name.revision == 0 ? qstring(name.number)
                              : words.say(QT_TRANSLATE_NOOP("Words", "%1 revision %2"),
                                          {qstring(name.number), QString::number(name.revision)});
}

QString dayOfInstant(const Words& words, const std::string& instant) {
    Instant at{};
    return parseInstant(instant, at) ? words.date(FixedClock(at).today("Europe/London")) : qstring(instant);
}

QString groupedDigest(const std::string& digest) {
    constexpr qsizetype kGroup = 4;
    const QString letters = qstring(digest);
    QStringList groups;
    for (qsizetype i = 0; i < letters.size(); i += kGroup) {
        groups << letters.mid(i, kGroup);
    }
    return groups.join(u' ');
}

ProofText proofText(const Words& words, const record::Proof& proof) {
    ProofText text;
    if (!proof.kept) {
        text.headline = words.say(textOf(kVerdicts, proof.verdict));
        text.details << words.say(
            QT_TRANSLATE_NOOP("Words",
                              "If it should be one of the firm's, ask again on the computer that issued it: "
                              "each has letters of its own before its numbers."));
        return text;
    }
    const auto& header = proof.kept->header;
    const auto& later = proof.kept->supersededBy;
    text.headline =
        words.say(textOf(kVerdicts, proof.verdict), {recordName(words, {header.record, header.revision}),
                                                     later ? recordName(words, later->name) : QString()});
    for (const auto what : proof.mismatches) {
        text.details << mismatchText(words, proof, what);
    }
    if (proof.verdict == Verdict::Changed && proof.kept->differsAt) {
        text.details << words.say(QT_TRANSLATE_NOOP("Words", "The first byte that differs is number %1."),
                                  {QString::number(*proof.kept->differsAt + 1)});
    }
    addHistory(words, *proof.kept, text.details);
    if (proof.kept->erasedAt.empty()) {
        addSignature(words, proof, text.details);
    } else {
        text.details << words.say(
            QT_TRANSLATE_NOOP("Words",
                              "What it said was erased on %1, when its keeping was over. Its "
                              "digests stay, and what was shown was held against them."),
            {dayOfInstant(words, proof.kept->erasedAt)});
    }
    return text;
}

}  // namespace hearth::ui::words
