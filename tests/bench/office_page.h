// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QString>
#include <QStringList>

namespace hearth::bench {

/// Pages with those texts in a table with lines, of the size that ours have, so many times over, in the flat
/// form of OpenDocument 1.3.
[[nodiscard]] inline bool writeOfficePages(const QString& path, const QStringList& texts, int count) {
    constexpr int kColumns = 4;
    QString table;
    for (int from = 0; from < texts.size(); from += kColumns) {
        table += QStringLiteral("<table:table-row>");
        for (int i = from; i < from + kColumns; ++i) {
            table += QStringLiteral(
                         "<table:table-cell table:style-name=\"cell\"><text:p text:style-name=\"small\">%1"
                         "</text:p></table:table-cell>")
                         .arg(texts.value(i).toHtmlEscaped());
        }
        table += QStringLiteral("</table:table-row>");
    }
    QString body;
    for (int page = 0; page < count; ++page) {
        body += QStringLiteral(
                    "<text:p text:style-name=\"%1\">Record %2</text:p><table:table table:name=\"t%2\">"
                    "<table:table-column table:number-columns-repeated=\"4\"/>%3</table:table>")
                    .arg(page == 0 ? QStringLiteral("first") : QStringLiteral("next"))
                    .arg(page + 1)
                    .arg(table);
    }
    const QString document = QStringLiteral(R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"
 xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"
 office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.text">
<office:automatic-styles>
<style:style style:name="first" style:family="paragraph"/>
<style:style style:name="next" style:family="paragraph"><style:paragraph-properties fo:break-before="page"/></style:style>
<style:style style:name="small" style:family="paragraph"><style:text-properties fo:font-size="9pt"/></style:style>
<style:style style:name="cell" style:family="table-cell"><style:table-cell-properties fo:border="0.5pt solid #000000"/></style:style>
</office:automatic-styles>
<office:body><office:text>%1</office:text></office:body></office:document>
)")
                                 .arg(body);
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(document.toUtf8()) > 0;
}

}  // namespace hearth::bench
