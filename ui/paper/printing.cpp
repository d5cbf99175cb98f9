// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/printing.h"

#include "ui/paper/layout.h"
#include "ui/paper/page.h"

#include <QApplication>
#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>

#include <algorithm>

namespace hearth::ui::paper {

namespace {

/// Looking for printers can take half a minute on some networks, so none is made before somebody wants to
/// print. The dialog may come back with another paper or margins; the record's own are put back, since its
/// layout is for that paper.
void setPaper(QPrinter& printer, PaperSize size) {
    printer.setPageSize(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setFullPage(true);
    printer.setPageMargins(QMarginsF(0, 0, 0, 0));
}

/// Pages chosen in the dialog, from 0; all where none were chosen.
struct PageRange {
    int first;
    int last;
};
PageRange chosenPages(const QPrinter& printer, int count) {
    if (printer.printRange() != QPrinter::PageRange || printer.fromPage() <= 0) {
        return {0, count - 1};
    }
    const int first = std::min(printer.fromPage(), count) - 1;
    const int last = std::clamp(printer.toPage(), first + 1, count) - 1;
    return {first, last};
}

Result<bool> paintOn(QPrinter& printer, const LaidOut& laid) {
    const auto failed = [&printer] {
        return fail(ErrorCode::PrinterFailed,
                    {printer.printerName().toStdString(),
                     printer.printerState() == QPrinter::Error ? "error" : "aborted"});
    };
    QPainter painter;
    if (!painter.begin(&printer)) {
        return failed();
    }
    const double scale = printer.resolution() / kMmPerInch;
    const PageRange range = chosenPages(printer, static_cast<int>(laid.pages.size()));
    const int copies = printer.supportsMultipleCopies() ? 1 : std::max(1, printer.copyCount());
    bool isFirst = true;
    for (int copy = 0; copy < copies; ++copy) {
        for (int index = range.first; index <= range.last; ++index) {
            if (!isFirst && !printer.newPage()) {
                return failed();
            }
            isFirst = false;
            painter.save();
            painter.scale(scale, scale);
            paintPage(painter, laid.pages[static_cast<std::size_t>(index)]);
            painter.restore();
        }
    }
    if (!painter.end() || printer.printerState() == QPrinter::Error) {
        return failed();
    }
    return true;
}

class AskingPrinting : public Printing {
  public:
    explicit AskingPrinting(AskHowToPrint ask) : m_ask(std::move(ask)) {}

    Result<bool> print(const record::Document& document, const PageOptions& options) override {
        const LaidOut laid = layOut(document, options);
        if (!laid.missingLetters.isEmpty()) {
            return fail(ErrorCode::LetterMissingInFont, {laid.missingLetters.toStdString()});
        }
        QPrinter printer(QPrinter::HighResolution);
        printer.setDocName(QString::fromStdString(document.number + " " + document.title).trimmed());
        printer.setCreator(QStringLiteral("Hearthledger " HEARTH_VERSION));
        setPaper(printer, options.size);
        printer.setFromTo(1, static_cast<int>(laid.pages.size()));
        printer.setPrintRange(QPrinter::AllPages);
        if (!m_ask(printer)) {
            return false;
        }
        setPaper(printer, options.size);
        return paintOn(printer, laid);
    }

  private:
    AskHowToPrint m_ask;
};

bool askByDialog(QPrinter& printer) {
    QPrintDialog dialog(&printer, QApplication::activeWindow());
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    return dialog.exec() == QDialog::Accepted;
}

}  // namespace

std::unique_ptr<Printing> printingThatAsks(AskHowToPrint ask) {
    return std::make_unique<AskingPrinting>(std::move(ask));
}

std::unique_ptr<Printing> systemPrinting() {
    return printingThatAsks(askByDialog);
}

}  // namespace hearth::ui::paper
