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

QPageSize pdfPageSize(PaperSize size) {
    return QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter);
}

void prepare(QPdfWriter& writer, const record::Document& document, PaperSize size) {
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setPageSize(pdfPageSize(size));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setResolution(kDotsPerInch);
    writer.setTitle(metadataTitle(document));
    writer.setCreator(QStringLiteral("Hearthledger " HEARTH_VERSION));
}

/// Puts documents one after the other into a buffer.
class PdfPainter {
  public:
    explicit PdfPainter(QBuffer& buffer) : m_writer(&buffer) {}

    Result<void> add(const record::Document& document, const PageOptions& options) {
        const LaidOut laid = layOut(document, options);
        if (!laid.missingLetters.isEmpty()) {
            return fail(ErrorCode::LetterMissingInFont, {laid.missingLetters.toStdString()});
        }
        const PaperSize size = sizeOf(document, options);
        if (m_count == 0) {
            prepare(m_writer, document, size);
            if (!m_painter.begin(&m_writer)) {
                return fail(ErrorCode::PdfNotWritten, {document.number, "painter"});
            }
            m_painter.scale(kDotsPerInch / kMmPerInch, kDotsPerInch / kMmPerInch);
        } else {
            m_writer.setPageSize(pdfPageSize(size));
        }
        for (const auto& page : laid.pages) {
            if (m_count++ > 0 && !m_writer.newPage()) {
                return fail(ErrorCode::PdfNotWritten, {document.number, "page"});
            }
            paintPage(m_painter, page);
        }
        return {};
    }
    [[nodiscard]] bool end() { return m_painter.isActive() && m_painter.end(); }
    [[nodiscard]] int pages() const { return m_count; }

  private:
    QPdfWriter m_writer;
    QPainter m_painter;
    int m_count = 0;
};

}  // namespace

Result<PdfOfMany> toPdfOfMany(std::span<const record::Document> documents, const PageOptions& options) {
    PdfOfMany made;
    const std::string number = documents.empty() ? std::string() : documents.front().number;
    QBuffer buffer(&made.bytes);
    if (!buffer.open(QIODevice::WriteOnly)) {
        return fail(ErrorCode::PdfNotWritten, {number, buffer.errorString().toStdString()});
    }
    {
        PdfPainter painter(buffer);
        for (const auto& document : documents) {
            made.firstPages.push_back(painter.pages());
            if (const auto added = painter.add(document, options); !added) {
                return tl::unexpected<Error>(added.error());
            }
        }
        if (!painter.end()) {
            return fail(ErrorCode::PdfNotWritten, {number, "end"});
        }
    }
    if (!made.bytes.endsWith("%%EOF\n")) {
        return fail(ErrorCode::PdfNotWritten, {number, "trailer"});
    }
    if (!nameLanguage(made.bytes, languageTag(documents.front()))) {
        return fail(ErrorCode::PdfNotWritten, {number, "language"});
    }
    return made;
}

Result<QByteArray> toPdf(const record::Document& document, const PageOptions& options) {
    return toPdfOfMany({&document, 1}, options).map([](PdfOfMany&& made) { return std::move(made.bytes); });
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
