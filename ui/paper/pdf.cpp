// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/language.h"
#include "core/record/pairing.h"
#include "ui/paper/layout.h"
#include "ui/paper/page.h"
#include "ui/paper/pdf_language.h"

#include <QBuffer>
#include <QPageSize>
#include <QPdfWriter>

namespace hearth::ui::paper {

namespace {

constexpr int kDotsPerInch = 600;

QString metadataTitle(const record::Document& document) {
    const QString title = QString::fromStdString(std::string(record::parted(document.title).first));
    return document.number.empty() ? title
                                   : QString::fromStdString(document.number) + QStringLiteral(" · ") + title;
}

/// "en", "cy"; the first of two.
QByteArray languageTag(const record::Document& document) {
    return QByteArray::fromStdString(std::string(record::mainLanguage(document.language))).replace('_', '-');
}

void prepare(QPdfWriter& writer, const record::Document& document, PaperSize size) {
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setPageSize(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setResolution(kDotsPerInch);
    writer.setTitle(metadataTitle(document));
    writer.setCreator(QStringLiteral("Hearthledger " HEARTH_VERSION));
}

}  // namespace

Result<QByteArray> toPdf(const record::Document& document, const PageOptions& options) {
    const LaidOut laid = layOut(document, options);
    if (!laid.missingLetters.isEmpty()) {
        return fail(ErrorCode::LetterMissingInFont, {laid.missingLetters.toStdString()});
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) {
        return fail(ErrorCode::PdfNotWritten, {document.number, buffer.errorString().toStdString()});
    }
    {
        QPdfWriter writer(&buffer);
        prepare(writer, document, sizeOf(document, options));
        QPainter painter;
        if (!painter.begin(&writer)) {
            return fail(ErrorCode::PdfNotWritten, {document.number, "painter"});
        }
        painter.scale(kDotsPerInch / kMmPerInch, kDotsPerInch / kMmPerInch);
        for (std::size_t i = 0; i < laid.pages.size(); ++i) {
            if (i > 0 && !writer.newPage()) {
                return fail(ErrorCode::PdfNotWritten, {document.number, "page"});
            }
            paintPage(painter, laid.pages[i]);
        }
        if (!painter.end()) {
            return fail(ErrorCode::PdfNotWritten, {document.number, "end"});
        }
    }
    if (!bytes.endsWith("%%EOF\n")) {
        return fail(ErrorCode::PdfNotWritten, {document.number, "trailer"});
    }
    if (!nameLanguage(bytes, languageTag(document))) {
        return fail(ErrorCode::PdfNotWritten, {document.number, "language"});
    }
    return bytes;
}

QImage toImage(const Layout& layout, int page, double dotsPerInch) {
    const double scale = dotsPerInch / kMmPerInch;
    const QSizeF size = layout.pageSize() * scale;
    QImage image(size.toSize(), QImage::Format_RGB32);
    image.fill(look::colour(look::Role::Sheet, look::Scheme::Light));
    QPainter painter(&image);
    painter.scale(scale, scale);
    layout.paint(painter, page);
    return image;
}

}  // namespace hearth::ui::paper
