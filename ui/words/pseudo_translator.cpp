// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/pseudo_translator.h"

#include <QStringView>

#include <algorithm>

namespace hearth::ui::words {

namespace {

// Only letters that the bundled family has (Latin-1 and Latin Extended-A).
constexpr QStringView kPlain = u"AaBCcDdEeGgHhIiJjKkLlNnOoRrSsTtUuWwYyZz";
constexpr QStringView kAccented = u"ÀáßĆçĐđÉêĞĝĤĥÎíĴĵĶķĹłÑñÖóŔŕŠşŤťÛúŴŵÝŷŻž";
static_assert(kPlain.size() == kAccented.size());
constexpr qsizetype kLongWord = 20;

/// The length of what must not be touched at `at`: a placeholder (%1, %L1, %n), a tag, an entity; 0 when
/// nothing is.
qsizetype fixedLength(QStringView text, qsizetype at) {
    if (text[at] == u'%') {
        qsizetype end = at + 1;
        if (end < text.size() && text[end] == u'L') {
            ++end;
        }
        if (end < text.size() && text[end] == u'n') {
            return end + 1 - at;
        }
        while (end < text.size() && text[end].isDigit()) {
            ++end;
        }
        return end - at;
    }
    if (text[at] == u'<') {
        const auto end = text.indexOf(u'>', at);
        return end < 0 ? 0 : end + 1 - at;
    }
    return 0;
}

QChar accented(QChar letter) {
    const auto at = kPlain.indexOf(letter);
    return at < 0 ? letter : kAccented[at];
}

}  // namespace

PseudoTranslator::PseudoTranslator(const QTranslator* english, QObject* parent)
    : QTranslator(parent), m_english(english) {}

QString PseudoTranslator::translate(const char* context, const char* source, const char* disambiguation,
                                    int count) const {
    QString english;
    if (m_english != nullptr) {
        english = m_english->translate(context, source, disambiguation, count);
    }
    return pseudo(english.isEmpty() ? QString::fromUtf8(source) : english);
}

QString pseudo(const QString& english) {
    if (english.isEmpty()) {
        return english;
    }
    QString text;
    qsizetype letters = 0;
    for (qsizetype at = 0; at < english.size();) {
        const auto fixed = fixedLength(english, at);
        if (fixed > 0) {
            text += QStringView(english).mid(at, fixed);
            at += fixed;
        } else {
            text += accented(english[at]);
            ++letters;
            ++at;
        }
    }
    const auto padding = std::max<qsizetype>(1, letters * 2 / 5 - 2);  // with the two brackets: 40 %
    QString tail(padding, u'~');
    for (qsizetype at = kLongWord; at + 1 < padding; at += kLongWord + 1) {
        tail[at] = u' ';  // no language has words as long as a sentence's tail
    }
    return u'[' + text + tail + u']';
}

}  // namespace hearth::ui::words
