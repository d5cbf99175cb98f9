// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sending_words.h"

#include "core/record/pairing.h"
#include "ui/words/proof_words.h"
#include "ui/words/text_table.h"

namespace hearth::ui::words {
namespace {

using record::SentBy;
using SentText = Text<SentBy>;

constexpr std::array kSentBy{
    SentText{SentBy::File, QT_TRANSLATE_NOOP("Words", "as a file")},
    SentText{SentBy::Mail, QT_TRANSLATE_NOOP("Words", "by mail")},
    SentText{SentBy::Printed, QT_TRANSLATE_NOOP("Words", "printed")},
    SentText{SentBy::PrintedCopy, QT_TRANSLATE_NOOP("Words", "printed, marked copy")},
    SentText{SentBy::Shown, QT_TRANSLATE_NOOP("Words", "shown")},
    SentText{SentBy::TextMessage, QT_TRANSLATE_NOOP("Words", "text message copied")},
};

/// Of a text in two languages the first: what is sent with the record speaks that.
QString firstOf(const std::string& text) {
    return qstring(std::string(record::parted(text).first));
}

/// The outcome as the page says it first.
QString headlineOf(const record::Document& document) {
    for (const auto& block : document.blocks) {
        if (const auto* headline = std::get_if<record::Headline>(&block)) {
            return firstOf(headline->sentence);
        }
    }
    return {};
}

QString dayOf(const Words& words, Instant at) {
    return dayOfInstant(words, instantText(at));
}

QString inOneLine(const Words& words, const std::string& text) {
    return text.empty() ? words.say(QT_TRANSLATE_NOOP("Words", "nothing"))
                        : qstring(text).split(u'\n', Qt::SkipEmptyParts).join(QStringLiteral(" · "));
}

}  // namespace

SendingText mailText(const Words& words, const record::Document& document, const QString& address) {
    const QString number = recordName(words, {document.number, document.revision});
    SendingText mail;
    mail.subject = words.say(QT_TRANSLATE_NOOP("Words", "%1, %2 (%3)"),
                             {firstOf(document.title), address, qstring(document.number)});
    mail.text =
        words.say(QT_TRANSLATE_NOOP("Words",
                                    "Good day,\n\nattached is our record %1 of %2:\n%3, %4.\n\nIt says: "
                                    "%5\n\nPlease keep it."),
                  {number, firstOf(document.issued), firstOf(document.title), address, headlineOf(document)});
    if (!document.supersedes.empty()) {
        mail.text +=
            QStringLiteral("\n\n") +
            words.say(QT_TRANSLATE_NOOP("Words",
                                        "It takes the place of the one that you have (%1). Please don't "
                                        "go by that any more."),
                      {firstOf(document.supersedes)});
    }
    mail.text += QStringLiteral("\n\n") + firstOf(document.firm) + u'\n';
    return mail;
}

QString textMessage(const Words& words, const record::Document& document, const QString& address) {
    return words.say(QT_TRANSLATE_NOOP("Words", "%1, %2: %3 Record %4 of %5. %6"),
                     {firstOf(document.title), address, headlineOf(document),
                      recordName(words, {document.number, document.revision}), firstOf(document.issued),
                      firstOf(document.firm)});
}

QString sentBy(const Words& words, SentBy by) {
    return words.say(textOf(kSentBy, by));
}

QString sendingLine(const Words& words, const record::Sending& sending) {
    const QStringList arguments{
        dayOf(words, sending.at), sentBy(words, sending.how), qstring(sending.to),
        sending.by.empty() ? words.say(QT_TRANSLATE_NOOP("Words", "nobody named")) : qstring(sending.by)};
    const QString line = sending.to.empty()
                             ? words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 (%4)"), arguments)
                             : words.say(QT_TRANSLATE_NOOP("Words", "%1: %2, to %3 (%4)"), arguments);
    const bool hasFile = sending.how == SentBy::File && !sending.detail.empty();
    return hasFile ? line + QStringLiteral(" · ") + qstring(sending.detail) : line;
}

QString holderLine(const Words& words, const record::CopyHolder& holder) {
    return words.say(QT_TRANSLATE_NOOP("Words", "%1: %2, %3"),
                     {qstring(holder.to), sentBy(words, holder.how), dayOf(words, holder.at)});
}

QString differenceLine(const Words& words, const record::Difference& difference) {
    QStringList where{qstring(difference.part), qstring(difference.caption)};
    where.removeAll(QString());
    const QStringList arguments{where.join(QStringLiteral(" · ")), inOneLine(words, difference.before),
                                inOneLine(words, difference.after)};
    return where.isEmpty() ? words.say(QT_TRANSLATE_NOOP("Words", "%2 → %3"), arguments)
                           : words.say(QT_TRANSLATE_NOOP("Words", "%1: %2 → %3"), arguments);
}

}  // namespace hearth::ui::words
