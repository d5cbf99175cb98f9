// SPDX-License-Identifier: GPL-3.0-or-later
// A record with photographs, plots and a drawn signature.
#include "tests/ui/paper/programs.h"
#include "tests/ui/paper/sample_documents.h"
#include "ui/paper/layout.h"

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <numeric>

namespace hearth::ui::paper {
namespace {

/// A picture with as much in it as a photograph has; upright or lying, with or without transparency.
std::string photograph(int width, int height, const char* type,
                       QImage::Format format = QImage::Format_RGB32) {
    QImage image(width, height, format);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            image.setPixel(x, y, qRgba((x * 7 + y) % 256, (x ^ y) % 256, (y * 3) % 256, 128 + x % 128));
        }
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    EXPECT_TRUE(buffer.open(QIODevice::WriteOnly));
    EXPECT_TRUE(image.save(&buffer, type, 90));
    return bytes.toStdString();
}

record::Picture picture(const char* of, std::string bytes, const char* type) {
    return {of, "What it shows, in the words of whoever took it.", "digest", type, std::move(bytes)};
}

record::Document documentWithPictures() {
    record::Document document = testing::plotDocument();
    record::Pictures pictures{"Photographs", {}};
    pictures.pictures = {picture("boiler", photograph(3000, 2000, "jpg"), "image/jpeg"),
                         picture("hob", photograph(900, 1600, "png", QImage::Format_ARGB32), "image/png"),
                         picture("fire", "no picture at all", "image/jpeg")};
    document.blocks.insert(document.blocks.end() - 1, pictures);
    document.blocks.back() = record::Signatures{
        {{"Tested by", "R. Alder", "card 0000002", "2.0,12.0 9.0,3.0 14.0,16.0 22.0,6.0;30.0,8.0"},
         {"Received by", "N. Harrow", "tenant"}}};
    return document;
}

PageOptions pictureOptions() {
    return {PaperSize::A4, Stamp::None, testing::sampleDigest()};
}

std::vector<PictureItem> picturesOf(const LaidOut& laid) {
    std::vector<PictureItem> found;
    for (const Page& page : laid.pages) {
        for (const Item& item : page.items) {
            if (const auto* one = std::get_if<PictureItem>(&item)) {
                found.push_back(*one);
            }
        }
    }
    return found;
}

TEST(PicturesOnPaper, areNoFinerThanTheyArePrintedAndKeepTheirShape) {
    const auto found = picturesOf(layOut(documentWithPictures(), pictureOptions()));
    ASSERT_EQ(found.size(), 2U);  // what can't be read has an empty frame
    for (const PictureItem& one : found) {
        EXPECT_TRUE(one.isPhotograph);
        EXPECT_FALSE(one.image.hasAlphaChannel());
        EXPECT_LE(one.image.width() / one.box.width() * kMmPerInch, 151);
        EXPECT_GE(one.image.width() / one.box.width() * kMmPerInch, 140);
    }
    EXPECT_NEAR(found[0].box.width() / found[0].box.height(), 1.5, 0.02);
    EXPECT_NEAR(found[1].box.width() / found[1].box.height(), 9.0 / 16.0, 0.02);
}

TEST(PicturesOnPaper, doNotMakeASmallPictureLargerThanItIs) {
    record::Document document = testing::shortDocument();
    document.blocks.emplace_back(
        record::Pictures{"", {picture("a", photograph(60, 40, "png"), "image/png")}});
    const auto found = picturesOf(layOut(document, pictureOptions()));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].image.width(), 60);
}

TEST(PicturesOnPaper, areJpegInAValidAndSteadyPdf) {
    const auto pdf = toPdf(documentWithPictures(), pictureOptions());
    ASSERT_TRUE(pdf.has_value());
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("pictures.pdf")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(*pdf);
    file.close();
    const QString said = testing::preflight(file.fileName());
    EXPECT_TRUE(said.contains(QStringLiteral("is a valid PDF/A-1b file"))) << said.toStdString();
    const auto listed = testing::run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), file.fileName()});
    ASSERT_TRUE(listed.started);
    const QString text = QString::fromUtf8(listed.out);
    EXPECT_EQ(text.count(QStringLiteral(" jpeg ")), 2) << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("smask"))) << text.toStdString();
    EXPECT_EQ(testing::withoutTimes(*pdf),
              testing::withoutTimes(*toPdf(documentWithPictures(), pictureOptions())));
}

TEST(PicturesOnPaper, leaveARecordWithoutThemSmall) {
    constexpr qsizetype kMost = 150 * 1024;
    for (const auto& document : {testing::plotDocument(), testing::usualDocument()}) {
        EXPECT_LT(toPdf(document, pictureOptions())->size(), kMost);
    }
}

TEST(SignaturesOnPaper, areDrawnAboveTheirLineAsVectors) {
    const LaidOut laid = layOut(documentWithPictures(), pictureOptions());
    int strokes = 0;
    for (const Item& item : laid.pages.back().items) {
        const auto* line = std::get_if<LineItem>(&item);
        strokes += line != nullptr && line->thickness == 0.4 ? 1 : 0;
    }
    EXPECT_EQ(strokes, 2);
}

}  // namespace
}  // namespace hearth::ui::paper
