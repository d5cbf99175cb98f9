// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/logo.h"

#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/paper.h"

#include <QBuffer>
#include <QFile>
#include <QPainter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

using hearth::testing::withoutTimes;

/// A field of a colour that nothing else on the page has, with clear edges, as a logo cut out of its ground has.
std::string picture(int width, int height, const char* format) {
    QImage image(width, height, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.fillRect(image.rect().adjusted(width / 10, height / 10, -width / 10, -height / 10),
                     QColor(230, 0, 230));
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format);
    return bytes.toStdString();
}

record::Document withLogo(const std::string& bytes) {
    record::Document document = hearth::testing::usualDocument();
    document.logo = record::Logo{"digest", "image/png", bytes};
    return document;
}

bool isLogo(QRgb colour) {
    return qRed(colour) > 180 && qGreen(colour) < 60 && qBlue(colour) > 180;
}

/// The box of all points of the logo of a page, in millimetres.
QRectF logoOn(const record::Document& document, int page) {
    constexpr double kDots = 100;
    const QImage image = toImage(Layout(document, {}), page, kDots);
    QRect box;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (isLogo(image.pixel(x, y))) {
                box |= QRect(x, y, 1, 1);
            }
        }
    }
    return QRectF(box.x() * 25.4 / kDots, box.y() * 25.4 / kDots, box.width() * 25.4 / kDots,
                  box.height() * 25.4 / kDots);
}

TEST(HeadLogo, KeepsItsProportionsWithinItsBox) {
    struct Case {
        int width;
        int height;
        double wide;
        double high;
    };
    for (const auto& [width, height, wide, high] : {Case{400, 100, 34, 8.5}, Case{100, 100, 15, 15},
                                                    Case{30, 300, 1.5, 15}, Case{3400, 1500, 34, 15}}) {
        const HeadLogo logo = headLogo(withLogo(picture(width, height, "PNG")));
        EXPECT_NEAR(logo.size.width(), wide, 1e-9) << width;
        EXPECT_NEAR(logo.size.height(), high, 1e-9) << width;
        EXPECT_FALSE(logo.image.hasAlphaChannel());
        EXPECT_LE(logo.image.width(), 402);  // 34 mm at 300 dots to the inch
        EXPECT_EQ(QColor(logo.image.pixel(0, 0)), QColor(Qt::white)) << "what is clear is paper";
    }
}

TEST(HeadLogo, IsNoneWhereThereIsNoPicture) {
    EXPECT_TRUE(headLogo(hearth::testing::usualDocument()).image.isNull());
    EXPECT_TRUE(headLogo(withLogo("")).image.isNull());
    EXPECT_TRUE(headLogo(withLogo("no picture")).image.isNull());
    // Then the page is the same to the byte.
    EXPECT_TRUE(withoutTimes(*toPdf(withLogo("no picture"), {})) ==
                withoutTimes(*toPdf(hearth::testing::usualDocument(), {})));
}

TEST(HeadLogo, StandsOnTheFirstPageClearOfEveryText) {
    for (const char* format : {"PNG", "JPG"}) {
        for (const auto& [width, height] : {std::pair(400, 100), std::pair(100, 100), std::pair(60, 400)}) {
            const record::Document document = withLogo(picture(width, height, format));
            const Layout layout(document, {});
            const QRectF logo = logoOn(document, 0);
            EXPECT_GT(logo.width(), 1) << format;
            for (const auto& run : layout.runs(0)) {
                EXPECT_FALSE(run.box.intersects(logo)) << run.text.toStdString();
            }
            for (int page = 1; page < layout.pageCount(); ++page) {
                EXPECT_EQ(logoOn(document, page).width(), 0) << "page " << page;
            }
        }
    }
}

TEST(HeadLogo, KeepsThePdfValidAndTheSameToTheByte) {
    // ISO 19005-1 level B, as Apache PDFBox Preflight 2.0.27 reads it.
    QTemporaryDir folder;
    for (const char* format : {"PNG", "JPG"}) {
        const record::Document document = withLogo(picture(300, 120, format));
        const auto pdf = toPdf(document, {});
        ASSERT_TRUE(pdf.has_value());
        EXPECT_TRUE(withoutTimes(*pdf) == withoutTimes(*toPdf(document, {})));
        EXPECT_FALSE(withoutTimes(*pdf) == withoutTimes(*toPdf(hearth::testing::usualDocument(), {})));
        EXPECT_FALSE(pdf->contains("DCTDecode")) << "no JPEG marks around the letters of a logo";
        QFile file(folder.filePath(QStringLiteral("logo.pdf")));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(*pdf);
        file.close();
        const QString said = hearth::testing::preflight(file.fileName());
        EXPECT_TRUE(said.contains(QStringLiteral("is a valid PDF/A-1b file"))) << said.toStdString();
    }
}

}  // namespace
}  // namespace hearth::ui::paper
