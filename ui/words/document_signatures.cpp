// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"
#include "core/record/signers.h"
#include "ui/words/document_parts.h"

#include <QStringList>

/// The signatures at a record's end: drawn by hand, on the paper copy, a typed name, or nobody there.
namespace hearth::ui::words {

namespace {

using record::RecordKind;
using record::Signature;
using reg::Item;
using reg::SignedWay;

bool isSafetyRecord(RecordKind kind) {
    return kind == RecordKind::LandlordSafety || kind == RecordKind::OwnerSafety;
}

bool isOfPipework(RecordKind kind) {
    return kind == RecordKind::TightnessAndPurge || kind == RecordKind::LargerPipework;
}

/// `isTyped`: a name stands for the signature.
std::string engineerCaption(const DocumentPage& page, bool isTyped) {
    if (isOfPipework(page.input().kind)) {
        return isTyped ? page.text(QT_TRANSLATE_NOOP("Words", "Tested and signed by (name typed)"))
                       : page.text(QT_TRANSLATE_NOOP("Words", "Tested and signed by"));
    }
    if (isSafetyRecord(page.input().kind)) {
        return isTyped ? numbered(page, "(viii)",
                                  QT_TRANSLATE_NOOP("Words", "Checked and signed by (name typed)"))
                       : numbered(page, "(viii)", QT_TRANSLATE_NOOP("Words", "Checked and signed by"));
    }
    return isTyped ? page.text(QT_TRANSLATE_NOOP("Words", "Signed by the engineer (name typed)"))
                   : page.text(QT_TRANSLATE_NOOP("Words", "Signed by the engineer"));
}

Signature engineerTyped(const DocumentPage& page) {
    const bool isNamed = page.has(page.visit(), Item::SignedByEngineer);
    return {engineerCaption(page, true),
            isNamed ? utf8(page.value(page.visit(), Item::SignedByEngineer)) : absentCell(),
            utf8(page.words().date(page.file().visit.date))};
}

Signature receivedTyped(const DocumentPage& page) {
    const bool received = page.has(page.visit(), Item::ReceivedBy);
    return {page.text(QT_TRANSLATE_NOOP("Words", "Received by (not required)")),
            received ? utf8(page.value(page.visit(), Item::ReceivedBy)) : absentCell(),
            received ? utf8(page.words().date(page.file().visit.date))
                     : page.text(QT_TRANSLATE_NOOP("Words", "no name given"))};
}

/// The receipt of a notice: who signed for it, or that nobody was there and where the copy lies.
Signature noticeTyped(const DocumentPage& page) {
    Signature receipt;
    receipt.caption = page.text(QT_TRANSLATE_NOOP("Words", "Received and understood by"));
    receipt.name = absentCell();
    receipt.detail = page.text(QT_TRANSLATE_NOOP("Words", "not entered"));
    if (page.file().situations.empty()) {
        return receipt;
    }
    const auto on = reg::subject(page.file().situations.front().id);
    if (page.has(on, Item::SituationReceivedBy)) {
        receipt.name = utf8(page.value(on, Item::SituationReceivedBy));
        receipt.detail = utf8(page.words().date(page.file().visit.date));
    } else if (page.has(on, Item::SituationCopyLeft)) {
        receipt.detail = page.text(QT_TRANSLATE_NOOP("Words", "not present, copy left: %1"),
                                   {page.value(on, Item::SituationCopyLeft)});
    }
    return receipt;
}

QString momentOf(const DocumentPage& page, Instant at) {
    return page.words().date(FixedClock(at).today("Europe/London")) + QStringLiteral(", ") +
           qstring(wallTimeText(at));
}

/// As whom the receiver signed; empty where nobody said.
QString roleOf(const DocumentPage& page, const reg::HandSignature& given) {
    const auto role = reg::roleKindFromCode(given.role);
    return role ? page.words().role(*role).toLower() : QString();
}

/// Puts what was given by hand in place of the typed name.
void takeHand(const DocumentPage& page, const reg::HandSignature& given, Signature& signature) {
    QStringList detail{roleOf(page, given)};
    const QString moment = momentOf(page, given.at);
    if (given.way == SignedWay::NotPresent) {
        signature.name = given.name.empty() ? absentCell() : given.name;
        detail << (given.copyLeft.empty() ? page.say(QT_TRANSLATE_NOOP("Words", "not present, copy left"))
                                          : page.say(QT_TRANSLATE_NOOP("Words", "not present, copy left: %1"),
                                                     {qstring(given.copyLeft)}))
               << moment;
    } else {
        signature.name = given.name.empty() ? signature.name : given.name;
        signature.strokes = given.way == SignedWay::Drawn ? given.strokes : std::string();
        detail << (given.way == SignedWay::OnPaper
                       ? page.say(QT_TRANSLATE_NOOP("Words", "signed on the paper copy"))
                       : QString())
               << moment;
    }
    detail.removeAll(QString());
    signature.detail = utf8(detail.join(QStringLiteral(", ")));
}

const reg::HandSignature* givenBy(const DocumentPage& page, reg::Signer signer) {
    const auto* given = record::signatureOf(page.file(), page.input().kind, signer);
    return given != nullptr && reg::isSigned(*given) ? given : nullptr;
}

Signature engineerSignature(const DocumentPage& page) {
    Signature signature = engineerTyped(page);
    if (const auto* given = givenBy(page, reg::Signer::Engineer)) {
        signature.caption = engineerCaption(page, false);
        takeHand(page, *given, signature);
    }
    const reg::Engineer* engineer = page.file().engineer();
    if (engineer != nullptr && !engineer->cardNumber.empty()) {
        signature.detail = page.text(QT_TRANSLATE_NOOP("Words", "card %1, %2"),
                                     {qstring(engineer->cardNumber), qstring(signature.detail)});
    }
    return signature;
}

Signature receiverSignature(const DocumentPage& page) {
    const bool isNotice = page.input().kind == RecordKind::WarningNotice;
    Signature signature = isNotice ? noticeTyped(page) : receivedTyped(page);
    if (const auto* given = givenBy(page, reg::Signer::Receiver)) {
        takeHand(page, *given, signature);
    }
    return signature;
}

}  // namespace

record::Signatures signaturesOf(const DocumentPage& page) {
    record::Signatures block;
    for (const auto signer : record::signersOf(page.input().kind)) {
        block.signatures.push_back(signer == reg::Signer::Engineer ? engineerSignature(page)
                                                                   : receiverSignature(page));
    }
    return block;
}

}  // namespace hearth::ui::words
