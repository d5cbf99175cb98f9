// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/key_words.h"

#include "ui/words/proof_words.h"

namespace hearth::ui::words {
namespace {

QString keyDay(const Words& words, Instant at) {
    return dayOfInstant(words, instantText(at));
}

QString keySpan(const Words& words, const ShownKey& key) {
    return key.until ? words.say(QT_TRANSLATE_NOOP("Words", "from %1 to %2"),
                                 {keyDay(words, key.from), keyDay(words, *key.until)})
                     : words.say(QT_TRANSLATE_NOOP("Words", "in use since %1"), {keyDay(words, key.from)});
}

record::FieldGrid keyGrid(const Words& words, const ShownKey& key) {
    const auto field = [&](const char* caption, const QString& text) {
        return record::CaptionedValue{words.say(caption).toStdString(), {text.toStdString()}, false};
    };
    record::FieldGrid grid;
    grid.title = words
                     .say(key.until ? QT_TRANSLATE_NOOP("Words", "An earlier key")
                                    : QT_TRANSLATE_NOOP("Words", "The key in use"))
                     .toStdString();
    grid.columns = 1;
    grid.fields = {
        field(QT_TRANSLATE_NOOP("Words", "Used"), keySpan(words, key)),
        field(QT_TRANSLATE_NOOP("Words", "Fingerprint (SHA-256)"),
              groupedDigest(record::keyFingerprint(key.publicKey))),
        field(QT_TRANSLATE_NOOP("Words", "Public key (PEM): the line between BEGIN and END PUBLIC KEY"),
              qstring(record::publicKeyPem(key.publicKey)).section(u'\n', 1, 1)),
    };
    return grid;
}

}  // namespace

QString checkCommand() {
    return QStringLiteral(
        "openssl pkeyutl -verify -pubin -inkey KEY.pem -rawin -in RECORD.pdf -sigfile RECORD.pdf.sig");
}

QString signingState(const Words& words, const SigningStanding& standing) {
    if (!standing.hasKey) {
        return words.say(QT_TRANSLATE_NOOP("Words",
                                           "The firm has no key of its own yet. With one, each record is "
                                           "signed, and anybody who has the public "
                                           "key can check it without this program."));
    }
    QString text = standing.isOpen
                       ? words.say(QT_TRANSLATE_NOOP(
                             "Words",
                             "The key is unlocked until the program ends: records are signed as they "
                             "are issued."))
                       : words.say(QT_TRANSLATE_NOOP(
                             "Words", "The key is locked: records can be issued, and wait to be signed."));
    if (standing.waiting > 0) {
        text += u' ' + words.sayCount(QT_TRANSLATE_N_NOOP("Words", "%n record(s) wait(s) for a signature."),
                                      standing.waiting);
    }
    return text;
}

QStringList keyLines(const Words& words, const std::vector<ShownKey>& keys) {
    QStringList lines;
    for (const auto& key : keys) {
        lines << words.sayCount(QT_TRANSLATE_N_NOOP("Words", "Key %1, %n record(s) signed. Fingerprint: %2"),
                                key.signatures,
                                {keySpan(words, key), groupedDigest(record::keyFingerprint(key.publicKey))});
    }
    return lines;
}

record::Document keyDocument(const Words& words, const reg::Firm& firm, const std::vector<ShownKey>& keys,
                             calendar::Date today) {
    record::Document page;
    page.kind = "public_key";
    page.language = words.language().toStdString();
    page.title = words.say(QT_TRANSLATE_NOOP("Words", "Public key for our records")).toStdString();
    page.subtitle = words.say(QT_TRANSLATE_NOOP("Words", "Ed25519 (RFC 8032)")).toStdString();
    page.firm = firm.name;
    page.issued = words.date(today).toStdString();
    page.pageWord = words.say(QT_TRANSLATE_NOOP("Words", "page %1 of %2")).toStdString();
    page.blocks.emplace_back(record::Paragraph{
        {},
        words
            .say(QT_TRANSLATE_NOOP(
                "Words",
                "Each record that we hand out as a PDF is signed with a key that only we have. With the "
                "public key below, the PDF and the small file beside it that ends in .sig, anybody can see "
                "that the record is ours and that not a letter of it was changed."))
            .toStdString(),
        false});
    for (const auto& key : keys) {
        page.blocks.emplace_back(keyGrid(words, key));
    }
    page.blocks.emplace_back(record::Paragraph{
        words.say(QT_TRANSLATE_NOOP("Words", "To check a record without our program")).toStdString(),
        words
            .say(QT_TRANSLATE_NOOP(
                     "Words",
                     "With the free program OpenSSL, version 3: %1\nIt answers “Signature Verified "
                     "Successfully”. Ask us for the key as a file, and compare its fingerprint with this "
                     "page: "
                     "openssl pkey -pubin -in KEY.pem -outform DER | sha256sum"),
                 {checkCommand()})
            .toStdString(),
        false});
    return page;
}

}  // namespace hearth::ui::words
