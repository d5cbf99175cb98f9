// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/printing.h"

#include "ui/paper/layout.h"
#include "ui/paper/page.h"

#include <QApplication>
#include <QGroupBox>
#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QRadioButton>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::paper {

namespace {

struct Asking {
    Q_DECLARE_TR_FUNCTIONS(Printing)
};

QPageSize pageSizeOf(PaperSize size) {
    return QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter);
}

/// The dialog may come back with another paper or margins, as the printer's own habit is; what the printer
/// was said to hold is put back.
void setPaper(QPrinter& printer, PaperSize sheet) {
    printer.setPageSize(pageSizeOf(sheet));
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

/// What was asked for, as far as it went.
class Job {
  public:
    Job(QPrinter& printer, PaperSize sheet)
        : m_printer(printer), m_sheet(pageSizeOf(sheet).size(QPageSize::Millimeter)) {}

    /// All copies of it, each beginning on a sheet of its own. False: the printer failed.
    bool paint(const LaidOut& laid) {
        const PageRange range = chosenPages(m_printer, static_cast<int>(laid.pages.size()));
        const int copies = m_printer.supportsMultipleCopies() ? 1 : std::max(1, m_printer.copyCount());
        for (int copy = 0; copy < copies; ++copy) {
            // A second side that belongs to what was printed before stays empty.
            if (m_printer.duplex() != QPrinter::DuplexNone && m_pages % 2 == 1 && !turn()) {
                return false;
            }
            for (int index = range.first; index <= range.last; ++index) {
                if (!turn()) {
                    return false;
                }
                paintOne(laid, laid.pages[static_cast<std::size_t>(index)]);
            }
        }
        return true;
    }

    /// Gives it to the queue, where there is something to give.
    bool end() { return m_pages == 0 || (m_painter.end() && m_printer.printerState() != QPrinter::Error); }

  private:
    bool turn() {
        const bool turned = m_pages == 0 ? m_painter.begin(&m_printer) : m_printer.newPage();
        m_pages += turned ? 1 : 0;
        return turned;
    }

    void paintOne(const LaidOut& laid, const Page& page) {
        const double dots = m_printer.resolution() / kMmPerInch;
        const Fit fit = fitOn(laid.size, m_sheet);
        m_painter.save();
        m_painter.scale(dots, dots);
        m_painter.translate(fit.at);
        m_painter.scale(fit.scale, fit.scale);
        paintPage(m_painter, page);
        m_painter.restore();
    }

    QPrinter& m_printer;
    QSizeF m_sheet;
    QPainter m_painter;
    int m_pages = 0;  // begun
};

Error printerFailed(const QPrinter& printer) {
    return {ErrorCode::PrinterFailed,
            {printer.printerName().toStdString(),
             printer.printerState() == QPrinter::Error ? "error" : "aborted"}};
}

std::optional<Error> whyNot(const LaidOut& laid) {
    if (laid.missingLetters.isEmpty()) {
        return std::nullopt;
    }
    return Error{ErrorCode::LetterMissingInFont, {laid.missingLetters.toStdString()}};
}

class AskingPrinting : public Printing {
  public:
    explicit AskingPrinting(AskHowToPrint ask) : m_ask(std::move(ask)) {}

    Result<bool> print(const record::Document& document, const PageOptions& options,
                       PaperSize sheet) override {
        const LaidOut laid = layOut(document, options);
        if (const auto why = whyNot(laid)) {
            return tl::unexpected<Error>(*why);
        }
        QPrinter printer(QPrinter::HighResolution);
        const QString name = QString::fromStdString(document.number + " " + document.title).trimmed();
        printer.setFromTo(1, static_cast<int>(laid.pages.size()));
        if (!isWanted(printer, name, sheet, Pages::MayChoose)) {
            return false;
        }
        Job job(printer, sheet);
        const bool painted = job.paint(laid);
        return job.end() && painted ? Result<bool>(true) : tl::unexpected<Error>(printerFailed(printer));
    }

    PrintedParts printMany(const PrintJob& wanted) override {
        PrintedParts printed;
        QPrinter printer(QPrinter::HighResolution);
        PaperSize sheet = wanted.sheet;
        printed.wanted = isWanted(printer, wanted.name, sheet, Pages::All);
        if (!printed.wanted) {
            return printed;
        }
        Job job(printer, sheet);
        while (!printed.failure) {
            const auto part = wanted.next();
            if (!part) {
                printed.failure = part.error();
            } else if (!*part) {
                break;
            } else {
                const LaidOut laid = layOut((*part)->document, (*part)->options);
                printed.failure = whyNot(laid);
                if (!printed.failure && !job.paint(laid)) {
                    printed.failure = printerFailed(printer);
                    printed.parts = 0;
                } else if (!printed.failure) {
                    ++printed.parts;
                }
            }
        }
        if (!job.end()) {
            printed.failure = printerFailed(printer);
            printed.parts = 0;
        }
        return printed;
    }

  private:
    /// Looking for printers can take half a minute on some networks, so none is made before somebody wants to
    /// print.
    bool isWanted(QPrinter& printer, const QString& name, PaperSize& sheet, Pages pages) {
        printer.setDocName(name);
        printer.setCreator(QStringLiteral("Hearthledger " HEARTH_VERSION));
        printer.setPrintRange(QPrinter::AllPages);
        setPaper(printer, sheet);
        const bool wanted = m_ask(printer, sheet, pages);
        setPaper(printer, sheet);
        return wanted;
    }

    AskHowToPrint m_ask;
};

/// What the printer holds, as a tab beside the dialog's own: what those say of paper is the queue's habit,
/// not the person's wish.
class PaperTab : public QWidget {
  public:
    explicit PaperTab(PaperSize sheet)
        : m_a4(new QRadioButton(Asking::tr("A&4 (210 mm × 297 mm)"))),
          m_letter(new QRadioButton(Asking::tr("&Letter (8½ in × 11 in)"))) {
        setWindowTitle(Asking::tr("Paper in the printer"));
        auto* group = new QGroupBox(Asking::tr("What was made for another paper is printed smaller"), this);
        auto* choices = new QVBoxLayout(group);
        m_a4->setObjectName(QStringLiteral("sheetA4"));
        m_letter->setObjectName(QStringLiteral("sheetLetter"));
        (sheet == PaperSize::A4 ? m_a4 : m_letter)->setChecked(true);
        choices->addWidget(m_a4);
        choices->addWidget(m_letter);
        auto* lines = new QVBoxLayout(this);
        lines->addWidget(group);
        lines->addStretch(1);
    }
    [[nodiscard]] PaperSize chosen() const {
        return m_letter->isChecked() ? PaperSize::Letter : PaperSize::A4;
    }

  private:
    QRadioButton* m_a4;
    QRadioButton* m_letter;
};

bool askByDialog(QPrinter& printer, PaperSize& sheet, Pages pages) {
    QPrintDialog dialog(&printer, QApplication::activeWindow());
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, pages == Pages::MayChoose);
    auto* tab = new PaperTab(sheet);  // the dialog's, once it has it
    dialog.setOptionTabs({tab});
    const bool wanted = dialog.exec() == QDialog::Accepted;
    sheet = tab->chosen();
    return wanted;
}

}  // namespace

Fit fitOn(const QSizeF& page, const QSizeF& sheet) {
    const double scale = std::min({1.0, sheet.width() / page.width(), sheet.height() / page.height()});
    const QSizeF left = sheet - page * scale;
    return {scale, {left.width() / 2, left.height() / 2}};
}

std::unique_ptr<Printing> printingThatAsks(AskHowToPrint ask) {
    return std::make_unique<AskingPrinting>(std::move(ask));
}

std::unique_ptr<Printing> systemPrinting() {
    return printingThatAsks(askByDialog);
}

}  // namespace hearth::ui::paper
