// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pdf_language.h"

#include <algorithm>

namespace hearth::ui::paper {

namespace {

const QByteArray kCatalogue = QByteArrayLiteral("/Type /Catalog\n");
const QByteArray kStart = QByteArrayLiteral("startxref\n");
constexpr qsizetype kReference = 20;  // bytes of a cross-reference
constexpr qsizetype kOffset = 10;     // digits of its place

/// "en", "cy", "en-GB".
bool isLanguageTag(const QByteArray& tag) {
    return !tag.isEmpty() && std::all_of(tag.begin(), tag.end(), [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') || letter == '-';
    });
}

/// The first of the references, and how many; none where the table is not one section at `table`.
struct References {
    qsizetype first = 0;
    qsizetype count = 0;
};
References referencesAt(const QByteArray& pdf, qsizetype table) {
    const QByteArray head = QByteArrayLiteral("xref\n0 ");
    if (table < 0 || pdf.mid(table, head.size()) != head) {
        return {};
    }
    const qsizetype count = table + head.size();
    const qsizetype end = pdf.indexOf('\n', count);
    bool isNumber = false;
    const qsizetype many = end < 0 ? 0 : pdf.mid(count, end - count).trimmed().toLongLong(&isNumber);
    const bool isWhole = isNumber && many > 0 && end + 1 + many * kReference <= pdf.size();
    return isWhole ? References{end + 1, many} : References{};
}

}  // namespace

bool nameLanguage(QByteArray& pdf, const QByteArray& language) {
    const qsizetype catalogue = pdf.indexOf(kCatalogue);
    const qsizetype start = pdf.lastIndexOf(kStart);
    if (!isLanguageTag(language) || catalogue < 0 || start < 0) {
        return false;
    }
    const qsizetype startEnd = pdf.indexOf('\n', start + kStart.size());
    bool isNumber = false;
    const QByteArray said = pdf.mid(start + kStart.size(), startEnd - start - kStart.size());
    const qsizetype table = said.toLongLong(&isNumber);
    const References references = isNumber ? referencesAt(pdf, table) : References{};
    if (references.count == 0 || catalogue > table) {
        return false;
    }
    const qsizetype at = catalogue + kCatalogue.size();
    const QByteArray entry = "/Lang (" + language + ")\n";
    for (qsizetype i = 0; i < references.count; ++i) {
        const qsizetype place = references.first + i * kReference;
        const qsizetype offset = pdf.mid(place, kOffset).toLongLong();
        if (offset > at) {
            pdf.replace(place, kOffset,
                        QByteArray::number(offset + entry.size()).rightJustified(kOffset, '0'));
        }
    }
    pdf.replace(start + kStart.size(), said.size(), QByteArray::number(table + entry.size()));
    pdf.insert(at, entry);
    return true;
}

}  // namespace hearth::ui::paper
