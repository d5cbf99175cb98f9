// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/printing.h"

#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/furniture.h"

#include <QFile>
#include <QPrinter>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

using testing::longestDocument;
using testing::pdfText;
using testing::sampleDigest;
using testing::shortDocument;
using testing::usualDocument;

PageOptions copyOptions() {
    return {PaperSize::A4, Stamp::Copy, sampleDigest()};
}

/// Qt loads its printer plugin into the process when the first QPrinter is made.
bool hasPrinterBeenMade() {
    QFile maps(QStringLiteral("/proc/self/maps"));
    return maps.open(QIODevice::ReadOnly) && maps.readAll().contains("printersupport.so");
}

class PrintingTest : public ::testing::Test {
  protected:
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("printed.pdf"));

    /// A person who prints into a file, having changed what the dialog lets them change.
    [[nodiscard]] AskHowToPrint intoFile(std::function<void(QPrinter&)> changes = {}) const {
        return [this, changes](QPrinter& printer) {
            printer.setOutputFormat(QPrinter::PdfFormat);
            printer.setOutputFileName(file);
            if (changes) {
                changes(printer);
            }
            return true;
        };
    }
};

// First: whether a printer was made can be asked once only in a process.
TEST_F(PrintingTest, noPrinterIsMadeBeforeSomebodyPrints) {
    const auto system = systemPrinting();
    const auto printing = printingThatAsks([](QPrinter&) { return false; });
    EXPECT_TRUE(toPdf(usualDocument(), copyOptions()).has_value());
    EXPECT_FALSE(toImage(Layout(usualDocument(), copyOptions()), 0, 72).isNull());
    EXPECT_FALSE(hasPrinterBeenMade());
    EXPECT_EQ(printing->print(usualDocument(), copyOptions()), Result<bool>(false));
    EXPECT_TRUE(hasPrinterBeenMade());
}

TEST_F(PrintingTest, printsWhatThePdfShows) {
    EXPECT_EQ(printingThatAsks(intoFile())->print(usualDocument(), copyOptions()), Result<bool>(true));
    const QString text = pdfText(file);
    EXPECT_TRUE(text.contains(QStringLiteral("Tight: no perceptible movement in two minutes.")));
    EXPECT_TRUE(text.contains(QStringLiteral("COPY")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 2 of 2")));
}

TEST_F(PrintingTest, thePaperOfTheRecordStandsWhateverTheDialogSaid) {
    const auto changes = [](QPrinter& printer) {
        printer.setPageSize(QPageSize(QPageSize::A5));
        printer.setPageOrientation(QPageLayout::Landscape);
        printer.setFullPage(false);
        printer.setPageMargins(QMarginsF(30, 30, 30, 30));
    };
    EXPECT_EQ(printingThatAsks(intoFile(changes))->print(usualDocument(), copyOptions()), Result<bool>(true));
    const auto info = testing::run(QStringLiteral("pdfinfo"), {file});
    EXPECT_TRUE(info.out.contains("(A4)")) << info.out.toStdString();
    EXPECT_TRUE(info.out.contains("Page rot:        0")) << info.out.toStdString();
    // The title stands where it stands in the layout, at the left margin.
    const auto boxes =
        testing::run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), file, QStringLiteral("-")});
    const auto match = QRegularExpression(QStringLiteral("xMin=\"([0-9.]+)\"[^>]*>Gas<"))
                           .match(QString::fromUtf8(boxes.out));
    ASSERT_TRUE(match.hasMatch()) << boxes.out.left(400).toStdString();
    EXPECT_NEAR(match.captured(1).toDouble(), sheetOf(PaperSize::A4).left / 25.4 * 72, 1.5);
}

TEST_F(PrintingTest, printsTheChosenPagesOnly) {
    const auto changes = [](QPrinter& printer) {
        printer.setPrintRange(QPrinter::PageRange);
        printer.setFromTo(2, 3);
    };
    EXPECT_EQ(printingThatAsks(intoFile(changes))->print(longestDocument(), copyOptions()),
              Result<bool>(true));
    const QString text = pdfText(file);
    EXPECT_FALSE(text.contains(QStringLiteral("page 1 of")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 2 of")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 3 of")));
    EXPECT_FALSE(text.contains(QStringLiteral("page 4 of")));
}

TEST_F(PrintingTest, cancelledIsNotAFailure) {
    const auto printed =
        printingThatAsks([](QPrinter&) { return false; })->print(shortDocument(), copyOptions());
    ASSERT_TRUE(printed.has_value());
    EXPECT_FALSE(*printed);
}

TEST_F(PrintingTest, aPrinterThatFailsIsSaid) {
    const auto toNowhere = [this](QPrinter& printer) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder.filePath(QStringLiteral("no/such/folder/printed.pdf")));
        return true;
    };
    const auto printed = printingThatAsks(toNowhere)->print(shortDocument(), copyOptions());
    ASSERT_FALSE(printed.has_value());
    EXPECT_EQ(printed.error().code, ErrorCode::PrinterFailed);
    EXPECT_EQ(printed.error().details.size(), 2U);
}

TEST_F(PrintingTest, aLetterThatNoFontHasIsNamedBeforeAnybodyIsAsked) {
    record::Document document = shortDocument();
    document.firm = "\U0010F123";
    bool asked = false;
    const auto printed = printingThatAsks([&asked](QPrinter&) {
                             asked = true;
                             return true;
                         })->print(document, copyOptions());
    ASSERT_FALSE(printed.has_value());
    EXPECT_EQ(printed.error().code, ErrorCode::LetterMissingInFont);
    EXPECT_FALSE(asked);
}

}  // namespace
}  // namespace hearth::ui::paper
