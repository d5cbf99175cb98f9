// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/furniture.h"
#include "ui/paper/layout.h"

#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <cmath>
#include <future>
#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

using testing::longestDocument;
using testing::pdfText;
using testing::run;
using testing::sampleDigest;
using testing::shortDocument;
using testing::usualDocument;
using testing::withoutTimes;

PageOptions options(PaperSize size = PaperSize::A4, Stamp stamp = Stamp::None) {
    return {size, stamp, sampleDigest()};
}

class PdfTest : public ::testing::Test {
  protected:
    /// Writes the document's PDF and gives its path.
    QString written(const record::Document& document, const PageOptions& how, const QString& name) {
        const auto pdf = toPdf(document, how);
        EXPECT_TRUE(pdf.has_value());
        QFile file(m_folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(pdf.value_or(QByteArray())), pdf.value_or(QByteArray()).size());
        return file.fileName();
    }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }

  private:
    QTemporaryDir m_folder;
};

QString squeezed(QString text) {
    static const QRegularExpression blanks(QStringLiteral("[\\s\\x{00A0}\\x{2028}]+"));
    return text.remove(blanks);
}

record::Document demonstration() {
    record::Document document = usualDocument();
    document.banner = "Demonstration: not a real record";
    document.title = "A title with < & > \" and ŵ";
    document.supersedes = "replaces QKD-000016 revision 1: the pressure was typed wrongly";
    return document;
}

TEST_F(PdfTest, isValidPdfA) {
    // ISO 19005-1 level B, as Apache PDFBox Preflight 2.0.27 reads it.
    const std::pair<QString, QString> files[] = {
        {QStringLiteral("usual"), written(demonstration(), options(), QStringLiteral("usual.pdf"))},
        {QStringLiteral("copy"),
         written(shortDocument(), options(PaperSize::Letter, Stamp::Copy), QStringLiteral("copy.pdf"))},
        {QStringLiteral("longest"), written(longestDocument(), options(), QStringLiteral("longest.pdf"))},
    };
    for (const auto& [name, file] : files) {
        const QString said = testing::preflight(file);
        EXPECT_TRUE(said.contains(QStringLiteral("is a valid PDF/A-1b file")))
            << name.toStdString() << ": " << said.toStdString();
    }
}

TEST_F(PdfTest, theValidatorCanSayNo) {
    QFile file(path(QStringLiteral("broken.pdf")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    auto pdf = *toPdf(shortDocument(), options());
    file.write(pdf.replace("/OutputIntents", "/NoOutIntents"));
    file.close();
    EXPECT_FALSE(testing::preflight(file.fileName()).contains(QStringLiteral("is a valid PDF/A-1b file")));
}

TEST_F(PdfTest, everyTextIsFoundInTheOrderOfReading) {
    for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
        const record::Document document = usualDocument();
        const QString file = written(document, options(size), QStringLiteral("order.pdf"));
        const QString all = squeezed(pdfText(file));
        qsizetype from = 0;
        for (const QString& text : testing::textsOf(document)) {
            const qsizetype at = all.indexOf(squeezed(text), from);
            EXPECT_GE(at, from) << text.toStdString();
            from = std::max(from, at + squeezed(text).size());
        }
    }
}

/// Takes head and foot of every page away: what is left is the record's own text.
QString bodyText(const QString& file, const record::Document& document, const PageOptions& how, int pages) {
    const TypeSetter type;
    const Furniture furniture(document, how, type, sheetOf(sizeOf(document, how)));
    const auto textOf = [](const std::vector<Item>& items) {
        QString all;
        for (const Item& item : items) {
            const auto* text = std::get_if<TextItem>(&item);
            all += text != nullptr ? text->text : QString();
        }
        return squeezed(all);
    };
    QString body;
    for (int page = 0; page < pages; ++page) {
        QString text = squeezed(pdfText(file, page + 1));
        const QString head = textOf(furniture.head(page, pages));
        const QString foot = textOf(furniture.foot());
        EXPECT_TRUE(text.startsWith(head)) << "page " << page + 1;
        EXPECT_TRUE(text.endsWith(foot)) << "page " << page + 1;
        body += text.mid(head.size(), text.size() - head.size() - foot.size());
    }
    return body;
}

TEST_F(PdfTest, theLongestTextsAreWholeOverPages) {
    const record::Document document = longestDocument();
    const QString file = written(document, options(), QStringLiteral("longest.pdf"));
    const int pages = Layout(document, options()).pageCount();
    const QString body = bodyText(file, document, options(), pages);
    for (const QString& text : testing::textsOf(document)) {
        EXPECT_TRUE(body.contains(squeezed(text))) << text.left(60).toStdString();
    }
}

TEST_F(PdfTest, allFontsAreEmbedded) {
    const auto ran =
        run(QStringLiteral("pdffonts"), {written(usualDocument(), options(), QStringLiteral("fonts.pdf"))});
    ASSERT_TRUE(ran.started);
    const QStringList lines = QString::fromUtf8(ran.out).split(u'\n', Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 4) << ran.out.toStdString();  // two lines of heads, two faces
    for (const QString& line : lines.mid(2)) {
        EXPECT_TRUE(line.contains(QStringLiteral("HearthSans"))) << line.toStdString();
        EXPECT_TRUE(QRegularExpression(QStringLiteral("yes +(yes|no) +yes")).match(line).hasMatch())
            << line.toStdString();
    }
}

TEST_F(PdfTest, aLetterOfAnotherFontIsEmbeddedToo) {
    record::Document document = shortDocument();
    document.firm = "Жар Heating";  // DejaVu, which the tests' machine has, knows it; Hearth Sans does not
    const QString file = written(document, options(), QStringLiteral("fallback.pdf"));
    EXPECT_TRUE(pdfText(file).contains(QStringLiteral("Жар Heating")))
        << pdfText(file).left(80).toStdString();
    // Two fonts in turns: in the order of reading whichever font comes first.
    document.firm = "Ink Жар ink Пар";
    const QString turns = pdfText(written(document, options(), QStringLiteral("turns.pdf")));
    EXPECT_TRUE(squeezed(turns).startsWith(QStringLiteral("InkЖарinkПар"))) << turns.left(80).toStdString();
    EXPECT_TRUE(testing::preflight(file).contains(QStringLiteral("is a valid PDF/A-1b file")));
}

TEST_F(PdfTest, aLetterThatNoFontHasIsNamedAndNothingIsMade) {
    record::Document document = shortDocument();
    document.blocks.emplace_back(record::Paragraph{"", "before \U0010F123 after", false});
    const auto pdf = toPdf(document, options());
    ASSERT_FALSE(pdf.has_value());
    EXPECT_EQ(pdf.error().code, ErrorCode::LetterMissingInFont);
    EXPECT_EQ(pdf.error().details, std::vector<std::string>{"\U0010F123"});
}

TEST_F(PdfTest, theCodeSaysNumberRevisionAndDigest) {
    const QString file = written(shortDocument(), options(), QStringLiteral("code.pdf"));
    ASSERT_EQ(run(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("150"),
                                               QStringLiteral("-png"), file, path(QStringLiteral("code"))})
                  .exitCode,
              0);
    const auto ran = run(QStringLiteral("zbarimg"),
                         {QStringLiteral("-q"), QStringLiteral("--raw"), path(QStringLiteral("code-1.png"))});
    EXPECT_EQ(QString::fromUtf8(ran.out).trimmed().toStdString(), "QKD-000017 1 " + sampleDigest());
}

TEST_F(PdfTest, carriesItsTitleAndPaper) {
    const auto infoOf = [this](const PageOptions& how) {
        const QString file = written(usualDocument(), how, QStringLiteral("info.pdf"));
        return QString::fromUtf8(run(QStringLiteral("pdfinfo"), {file}).out);
    };
    const QString a4 = infoOf(options());
    EXPECT_TRUE(a4.contains(QStringLiteral("QKD-000017 · Gas tightness and purge record")))
        << a4.toStdString();
    EXPECT_TRUE(a4.contains(QStringLiteral("(A4)"))) << a4.toStdString();
    EXPECT_TRUE(QRegularExpression(QStringLiteral("Pages: +2\\n")).match(a4).hasMatch());
    EXPECT_TRUE(infoOf(options(PaperSize::Letter)).contains(QStringLiteral("(letter)")));
}

TEST_F(PdfTest, theSameRecordGivesTheSameBytesButForTimes) {
    const QByteArray once = withoutTimes(*toPdf(usualDocument(), options()));
    EXPECT_EQ(withoutTimes(*toPdf(usualDocument(), options())), once);
    record::Document other = usualDocument();
    other.number = "QKD-000018";
    EXPECT_NE(withoutTimes(*toPdf(other, options())), once);
}

TEST_F(PdfTest, isMadeOutsideTheWindowsThreadToo) {
    const QByteArray here = withoutTimes(*toPdf(usualDocument(), options()));
    auto there = std::async(std::launch::async, [] { return *toPdf(usualDocument(), options()); });
    EXPECT_EQ(withoutTimes(there.get()), here);
}

TEST_F(PdfTest, isSmall) {
    EXPECT_LT(toPdf(usualDocument(), options())->size(), 60 * 1024);  // the goal is 300 KB
}

/// Greys of squares of 8 dots: edges that fall differently between two renderers even out, a missing word
/// does not.
std::vector<double> squares(const QImage& image, int columns, int rows) {
    std::vector<double> greys;
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            int sum = 0;
            for (int dot = 0; dot < 64; ++dot) {
                sum += qGray(image.pixel(column * 8 + dot % 8, row * 8 + dot / 8));
            }
            greys.push_back(sum / 64.0);
        }
    }
    return greys;
}

struct Difference {
    double mean = 0;
    double worst = 0;
};

Difference differenceOf(const QImage& a, const QImage& b) {
    const int columns = std::min(a.width(), b.width()) / 8;
    const int rows = std::min(a.height(), b.height()) / 8;
    const auto left = squares(a, columns, rows);
    const auto right = squares(b, columns, rows);
    Difference difference;
    for (std::size_t i = 0; i < left.size(); ++i) {
        const double by = std::abs(left[i] - right[i]);
        difference.mean += by / static_cast<double>(left.size());
        difference.worst = std::max(difference.worst, by);
    }
    return difference;
}

/// How much darker than white a page is, in the mean.
double inkOf(const QImage& image) {
    QImage blank = image;
    blank.fill(Qt::white);
    return differenceOf(image, blank).mean;
}

TEST_F(PdfTest, previewAndPdfAreTheSamePicture) {
    constexpr int kDotsPerInch = 150;
    const Layout layout(demonstration(), options());
    const QString file = written(demonstration(), options(), QStringLiteral("picture.pdf"));
    ASSERT_EQ(
        run(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QString::number(kDotsPerInch),
                                         QStringLiteral("-gray"), file, path(QStringLiteral("picture"))})
            .exitCode,
        0);
    QImage first;
    for (int page = 0; page < layout.pageCount(); ++page) {
        const QImage pdf(path(QStringLiteral("picture-%1.pgm").arg(page + 1)));
        const QImage preview = toImage(layout, page, kDotsPerInch);
        ASSERT_FALSE(pdf.isNull());
        EXPECT_NEAR(pdf.width(), preview.width(), 1);
        EXPECT_NEAR(pdf.height(), preview.height(), 2);
        const Difference difference = differenceOf(pdf, preview);
        // Edges differ between two renderers, so the more letters the more: a share of the page's ink.
        EXPECT_LT(difference.mean, 0.15 * inkOf(preview))
            << "page " << page + 1 << ", ink " << inkOf(preview);
        EXPECT_LT(difference.worst, 60.0) << "page " << page + 1;
        if (page == 0) {
            first = preview;
        } else {
            EXPECT_GT(differenceOf(first, preview).worst, 100.0);  // another page is another picture
        }
    }
}

TEST_F(PdfTest, aMissingWordWouldBeSeen) {
    constexpr int kDotsPerInch = 150;
    record::Document altered = demonstration();
    std::get<record::Headline>(altered.blocks.front()).sentence = "Tight: no perceptible movement in two";
    const Difference difference = differenceOf(toImage(Layout(demonstration(), options()), 0, kDotsPerInch),
                                               toImage(Layout(altered, options()), 0, kDotsPerInch));
    EXPECT_GT(difference.worst, 60.0);
}

}  // namespace
}  // namespace hearth::ui::paper
