// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/record/document.h"

#include <QByteArray>
#include <QImage>
#include <QPainter>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

/// A document as data -> layout in millimetres -> one painter for preview, PDF and printer.
namespace hearth::ui::paper {

using PaperSize = record::Paper;
/// Stamped across a reprint's head where true. Not part of the snapshot.
enum class Stamp { None, Copy, Superseded, Void };

struct PageOptions {
    std::optional<PaperSize> size;  // to be laid out for, instead of the document's own
    Stamp stamp = Stamp::None;
    std::string digest;  // of the snapshot; printed (and in the QR) when not empty
};
[[nodiscard]] inline PaperSize sizeOf(const record::Document& document, const PageOptions& options) {
    return options.size.value_or(document.paper);
}

/// Pages laid out in millimetres. Pure of any device: the same layout is painted everywhere.
class Layout {
  public:
    Layout(const record::Document& document, const PageOptions& options);
    ~Layout();
    Layout(const Layout&) = delete;
    Layout& operator=(const Layout&) = delete;
    Layout(Layout&&) noexcept;
    Layout& operator=(Layout&&) noexcept;

    [[nodiscard]] int pageCount() const;
    [[nodiscard]] QSizeF pageSize() const;  // millimetres
    /// Paints page `index` (from 0) with the painter scaled so that one unit is one millimetre.
    void paint(QPainter& painter, int index) const;
    /// Every text run of a page with its box in millimetres: for tests (nothing clipped, nothing
    /// overlapping).
    struct Run {
        QString text;
        QRectF box;
    };
    [[nodiscard]] std::vector<Run> runs(int index) const;
    /// Letters that neither the bundled family nor any system font has; issue is refused with them named.
    [[nodiscard]] QString missingLetters() const;

  private:
    struct Impl;
    std::unique_ptr<Impl> m_impl;
};

/// PDF/A-1b, fonts embedded, text selectable. `created` (ISO 8601 instant) goes into the metadata.
/// Errors: LetterMissingInFont, PdfNotWritten. Works outside the window's thread and without a display.
[[nodiscard]] Result<QByteArray> toPdf(const record::Document& document, const PageOptions& options);

/// Several documents one after the other in one PDF, and on which page, from 0, each begins: their type is
/// put in once, so that a thousand letters take no longer than their pages. Title and language are the
/// first's. Errors: as toPdf(); PdfNotWritten without a document.
struct PdfOfMany {
    QByteArray bytes;
    std::vector<int> firstPages;
};
[[nodiscard]] Result<PdfOfMany> toPdfOfMany(std::span<const record::Document> documents,
                                            const PageOptions& options);

/// One page as an image of `dotsPerInch`.
[[nodiscard]] QImage toImage(const Layout& layout, int page, double dotsPerInch);

/// One of many documents that are printed as one job.
struct PrintPart {
    record::Document document;
    PageOptions options;
};
/// Asked for the next one when it is its turn; nothing: the job ends there. An error ends it too.
using NextPrintPart = std::function<Result<std::optional<PrintPart>>()>;
struct PrintJob {
    QString name;  // what the queue calls it
    PaperSize sheet = PaperSize::A4;
    NextPrintPart next;
};
struct PrintedParts {
    bool wanted = true;            // false: the person would rather not
    int parts = 0;                 // that went to the printer, each whole
    std::optional<Error> failure;  // of the part after those, or of the printer, and then there are none
};

/// Shows the system's print dialog and prints; the only place that makes a QPrinter, and only when called.
/// What was laid out for another paper than the printer holds is made smaller, so that nothing of it is cut.
/// (ui/paper/printing.cpp)
class Printing {
  public:
    virtual ~Printing() = default;
    /// False when the person cancelled. `sheet`: what the printer holds, unless the person says otherwise.
    /// Errors: LetterMissingInFont; PrinterFailed.
    [[nodiscard]] virtual Result<bool> print(const record::Document& document, const PageOptions& options,
                                             PaperSize sheet) = 0;
    /// The job is begun with the first part: without one there is none. Where it is printed on both sides,
    /// each part begins on a sheet of its own.
    [[nodiscard]] virtual PrintedParts printMany(const PrintJob& job) = 0;
};
[[nodiscard]] std::unique_ptr<Printing> systemPrinting();

}  // namespace hearth::ui::paper
