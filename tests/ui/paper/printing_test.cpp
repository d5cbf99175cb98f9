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
        return [this, changes](QPrinter& printer, PaperSize&, Pages) {
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
    const auto printing = printingThatAsks([](QPrinter&, PaperSize&, Pages) { return false; });
    EXPECT_TRUE(toPdf(usualDocument(), copyOptions()).has_value());
    EXPECT_FALSE(toImage(Layout(usualDocument(), copyOptions()), 0, 72).isNull());
    EXPECT_FALSE(hasPrinterBeenMade());
    EXPECT_EQ(printing->print(usualDocument(), copyOptions(), PaperSize::A4), Result<bool>(false));
    EXPECT_TRUE(hasPrinterBeenMade());
}

TEST_F(PrintingTest, printsWhatThePdfShows) {
    EXPECT_EQ(printingThatAsks(intoFile())->print(usualDocument(), copyOptions(), PaperSize::A4),
              Result<bool>(true));
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
    EXPECT_EQ(printingThatAsks(intoFile(changes))->print(usualDocument(), copyOptions(), PaperSize::A4),
              Result<bool>(true));
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
    EXPECT_EQ(printingThatAsks(intoFile(changes))->print(longestDocument(), copyOptions(), PaperSize::A4),
              Result<bool>(true));
    const QString text = pdfText(file);
    EXPECT_FALSE(text.contains(QStringLiteral("page 1 of")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 2 of")));
    EXPECT_TRUE(text.contains(QStringLiteral("page 3 of")));
    EXPECT_FALSE(text.contains(QStringLiteral("page 4 of")));
}

/// Places of words as pdftotext -bbox sees them: their box in millimetres.
struct Word {
    QString text;
    QRectF box;
};
std::vector<Word> wordsOf(const QString& file) {
    const auto ran =
        testing::run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), file, QStringLiteral("-")});
    static const QRegularExpression one(QStringLiteral(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    std::vector<Word> words;
    auto matches = one.globalMatch(QString::fromUtf8(ran.out));
    while (matches.hasNext()) {
        const auto match = matches.next();
        const auto mm = [&match](int i) { return match.captured(i).toDouble() / 72 * 25.4; };
        words.push_back({match.captured(5), QRectF(QPointF(mm(1), mm(2)), QPointF(mm(3), mm(4)))});
    }
    return words;
}

QString unspaced(QString text) {
    return text.remove(QRegularExpression(QStringLiteral("\\s")));
}
/// What all words together cover.
QRectF extentOf(const std::vector<Word>& words) {
    QRectF extent;
    for (const Word& word : words) {
        extent |= word.box;
    }
    return extent;
}

TEST_F(PrintingTest, aRecordOnOtherPaperIsMadeSmallerAndNothingIsCut) {
    const std::pair<PaperSize, PaperSize> ways[] = {{PaperSize::A4, PaperSize::Letter},
                                                    {PaperSize::Letter, PaperSize::A4}};
    for (const auto& [laidOutFor, sheet] : ways) {
        PageOptions how = copyOptions();
        how.size = laidOutFor;
        ASSERT_TRUE(printingThatAsks(intoFile())->print(longestDocument(), how, laidOutFor));
        const auto own = wordsOf(file);
        const QString text = unspaced(pdfText(file));
        ASSERT_TRUE(printingThatAsks(intoFile())->print(longestDocument(), how, sheet));
        const QSizeF size = sheetOf(sheet).size;
        const auto info = testing::run(QStringLiteral("pdfinfo"), {file});
        EXPECT_TRUE(info.out.contains(sheet == PaperSize::A4 ? "(A4)" : "(letter)"))
            << info.out.toStdString();
        const auto other = wordsOf(file);
        ASSERT_GT(own.size(), 500U);
        EXPECT_EQ(unspaced(pdfText(file)), text);
        const double scale = sheet == PaperSize::Letter ? 279.4 / 297 : 210 / 215.9;
        EXPECT_NEAR(extentOf(other).width(), extentOf(own).width() * scale, 0.3);
        EXPECT_NEAR(extentOf(other).height(), extentOf(own).height() * scale, 0.3);
        EXPECT_NEAR(extentOf(other).center().x(), size.width() / 2, 1.0);
        EXPECT_TRUE(QRectF(QPointF(0, 0), size).adjusted(4, 4, -4, -4).contains(extentOf(other)))
            << "not even what a printer can't reach";
    }
}

TEST_F(PrintingTest, thePersonSaysWhatPaperThePrinterHolds) {
    const auto saysLetter = [this](QPrinter& printer, PaperSize& sheet, Pages) {
        EXPECT_EQ(sheet, PaperSize::A4);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(QPageSize(QPageSize::A5));  // what the queue says is not asked
        sheet = PaperSize::Letter;
        return true;
    };
    ASSERT_TRUE(printingThatAsks(saysLetter)->print(usualDocument(), copyOptions(), PaperSize::A4));
    EXPECT_TRUE(testing::run(QStringLiteral("pdfinfo"), {file}).out.contains("(letter)"));
}

TEST(FitOn, staysAsItIsWhereItFits) {
    EXPECT_EQ(fitOn({210, 297}, {210, 297}).scale, 1.0);
    EXPECT_EQ(fitOn({210, 297}, {210, 297}).at, QPointF(0, 0));
    const Fit larger = fitOn({210, 297}, {300, 400});
    EXPECT_EQ(larger.scale, 1.0);
    EXPECT_EQ(larger.at, QPointF(45, 51.5));
    // 279.4 / 297, and what is left of 215.9 in halves: by hand
    const Fit smaller = fitOn({210, 297}, {215.9, 279.4});
    EXPECT_NEAR(smaller.scale, 0.940741, 1e-6);
    EXPECT_NEAR(smaller.at.x(), 9.172222, 1e-6);
    EXPECT_NEAR(smaller.at.y(), 0, 1e-9);
}

/// So many parts by number, then the end or a failure.
NextPrintPart partsUntil(int count, int& asked, std::optional<Error> failure = {}) {
    return [count, &asked, failure]() -> Result<std::optional<PrintPart>> {
        if (asked == count) {
            return failure ? Result<std::optional<PrintPart>>(tl::unexpected<Error>(*failure)) : std::nullopt;
        }
        PrintPart part{shortDocument(), copyOptions()};
        part.document.number = "QKD-00010" + std::to_string(asked++);
        return part;
    };
}

TEST_F(PrintingTest, manyAreOneJob) {
    int asked = 0;
    int dialogs = 0;
    QString name;
    const auto ask = [&](QPrinter& printer, PaperSize&, Pages pages) {
        ++dialogs;
        name = printer.docName();
        EXPECT_EQ(pages, Pages::All);
        EXPECT_EQ(asked, 0) << "nothing is read before somebody wants to print";
        PaperSize sheet = PaperSize::A4;
        return intoFile()(printer, sheet, pages);
    };
    const auto printed =
        printingThatAsks(ask)->printMany({QStringLiteral("Records"), PaperSize::A4, partsUntil(3, asked)});
    EXPECT_EQ(printed.parts, 3);
    EXPECT_FALSE(printed.failure);
    EXPECT_EQ(dialogs, 1);
    EXPECT_EQ(name, QStringLiteral("Records"));
    const QString text = pdfText(file);
    EXPECT_EQ(text.count(QStringLiteral("page 1 of 1")), 3);
    EXPECT_LT(text.indexOf(QStringLiteral("QKD-000100")), text.indexOf(QStringLiteral("QKD-000102")));
}

TEST_F(PrintingTest, whatFailsAmongManyComesAfterWholeOnes) {
    int asked = 0;
    const auto printed =
        printingThatAsks(intoFile())
            ->printMany(
                {{}, PaperSize::A4, partsUntil(2, asked, Error{ErrorCode::RecordAltered, {"QKD-000102"}})});
    EXPECT_EQ(printed.parts, 2);
    ASSERT_TRUE(printed.failure);
    EXPECT_EQ(printed.failure->code, ErrorCode::RecordAltered);
    EXPECT_EQ(pdfText(file).count(QStringLiteral("page 1 of 1")), 2);
}

TEST_F(PrintingTest, withNothingToPrintThereIsNoJob) {
    int asked = 0;
    const auto printed = printingThatAsks(intoFile())->printMany({{}, PaperSize::A4, partsUntil(0, asked)});
    EXPECT_EQ(printed.parts, 0);
    EXPECT_FALSE(printed.failure);
    EXPECT_FALSE(QFile::exists(file));
    const auto declined = printingThatAsks([](QPrinter&, PaperSize&, Pages) {
                              return false;
                          })->printMany({{}, PaperSize::A4, partsUntil(3, asked)});
    EXPECT_FALSE(declined.wanted);
    EXPECT_EQ(asked, 0);
}

TEST_F(PrintingTest, aQueueThatFailsHasPrintedNone) {
    const auto toNowhere = [this](QPrinter& printer, PaperSize&, Pages) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder.filePath(QStringLiteral("no/such/folder/printed.pdf")));
        return true;
    };
    int asked = 0;
    const auto printed = printingThatAsks(toNowhere)->printMany({{}, PaperSize::A4, partsUntil(3, asked)});
    EXPECT_EQ(printed.parts, 0);
    ASSERT_TRUE(printed.failure);
    EXPECT_EQ(printed.failure->code, ErrorCode::PrinterFailed);
}

TEST_F(PrintingTest, cancelledIsNotAFailure) {
    const auto printed = printingThatAsks([](QPrinter&, PaperSize&, Pages) {
                             return false;
                         })->print(shortDocument(), copyOptions(), PaperSize::A4);
    ASSERT_TRUE(printed.has_value());
    EXPECT_FALSE(*printed);
}

TEST_F(PrintingTest, aPrinterThatFailsIsSaid) {
    const auto toNowhere = [this](QPrinter& printer, PaperSize&, Pages) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder.filePath(QStringLiteral("no/such/folder/printed.pdf")));
        return true;
    };
    const auto printed = printingThatAsks(toNowhere)->print(shortDocument(), copyOptions(), PaperSize::A4);
    ASSERT_FALSE(printed.has_value());
    EXPECT_EQ(printed.error().code, ErrorCode::PrinterFailed);
    EXPECT_EQ(printed.error().details.size(), 2U);
}

TEST_F(PrintingTest, aLetterThatNoFontHasIsNamedBeforeAnybodyIsAsked) {
    record::Document document = shortDocument();
    document.firm = "\U0010F123";
    bool asked = false;
    const auto printed = printingThatAsks([&asked](QPrinter&, PaperSize&, Pages) {
                             asked = true;
                             return true;
                         })->print(document, copyOptions(), PaperSize::A4);
    ASSERT_FALSE(printed.has_value());
    EXPECT_EQ(printed.error().code, ErrorCode::LetterMissingInFont);
    EXPECT_FALSE(asked);
}

}  // namespace
}  // namespace hearth::ui::paper
