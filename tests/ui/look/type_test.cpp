// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look/look.h"

#include <QFile>
#include <QFontDatabase>
#include <QFontInfo>
#include <QGuiApplication>
#include <QRawFont>

#include <gtest/gtest.h>

namespace hearth::ui::look {
namespace {

/// What records need; the list: Latin-1, Latin Extended-A, Welsh, Polish, the signs of measurement.
QString neededLetters() {
    QString letters;
    for (char16_t letter = 0x20; letter < 0x180; ++letter) {
        if (letter < 0x7F || letter >= 0xA0) {
            letters += QChar(letter);
        }
    }
    return letters +
           QStringLiteral(
               "ŴŵŶŷẀẁẂẃẄẅỲỳ–—‘’“”…·×−±≤≥°²³₀₁₂₃₄₅₆₇₈₉½¼¾€→←↑↓•‹›„‚\u2010\u2011\u2007\u2009\u202F\uFFFD");
}

class TypeTest : public ::testing::TestWithParam<QString> {
  protected:
    [[nodiscard]] QByteArray bytes() const {
        QFile file(QStringLiteral(":/fonts/") + GetParam());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
};

TEST_P(TypeTest, hasEveryLetterThatRecordsNeed) {
    const QRawFont font(bytes(), 20);
    ASSERT_TRUE(font.isValid());
    for (const QChar letter : neededLetters()) {
        EXPECT_TRUE(font.supportsCharacter(letter)) << "U+" << std::hex << static_cast<int>(letter.unicode());
    }
}

TEST_P(TypeTest, isSmallUnhintedAndNamedByUs) {
    const QByteArray data = bytes();
    EXPECT_LT(data.size(), 60 * 1024);
    const QRawFont font(data, 20);
    EXPECT_EQ(font.familyName(), family());
    for (const char* table : {"fpgm", "prep", "cvt ", "GSUB"}) {
        EXPECT_TRUE(font.fontTable(table).isEmpty()) << table;
    }
    EXPECT_FALSE(font.fontTable("kern").isEmpty());
    const QString original = QStringLiteral("Open Sans");
    QByteArray asStored;  // the name table holds UTF-16, high byte first
    for (const QChar letter : original) {
        asStored += char(letter.row());
        asStored += char(letter.cell());
    }
    EXPECT_FALSE(data.contains(asStored));
}

TEST_P(TypeTest, hasFiguresOfOneWidth) {
    const QRawFont font(bytes(), 2048);
    const auto glyphs = font.glyphIndexesForString(QStringLiteral("0123456789"));
    const auto advances = font.advancesForGlyphIndexes(glyphs, QRawFont::UseDesignMetrics);
    for (const QPointF& advance : advances) {
        EXPECT_DOUBLE_EQ(advance.x(), advances.front().x());
    }
}

TEST_P(TypeTest, setsSubscriptsLowAndPlain) {
    const QRawFont font(bytes(), 1000);
    const auto glyphs = font.glyphIndexesForString(QStringLiteral("2₂²"));
    const QRectF figure = font.boundingRect(glyphs[0]);
    const QRectF below = font.boundingRect(glyphs[1]);
    const QRectF above = font.boundingRect(glyphs[2]);
    EXPECT_GT(below.bottom(), figure.bottom());  // y grows downwards
    EXPECT_GT(below.top(), figure.top());
    EXPECT_LT(above.bottom(), figure.bottom());
    EXPECT_NEAR(below.height(), above.height(), 1.0);
}

INSTANTIATE_TEST_SUITE_P(Faces, TypeTest,
                         ::testing::Values(QStringLiteral("HearthSans-Regular.ttf"),
                                           QStringLiteral("HearthSans-Bold.ttf")));

TEST(Type, theBundledFamilyIsTheOneThatIsFound) {
    ASSERT_TRUE(loadFonts());
    EXPECT_TRUE(loadFonts());
    EXPECT_TRUE(QFontDatabase::families().contains(family()));
    for (int role = 0; role <= static_cast<int>(TypeRole::BigFigure); ++role) {
        EXPECT_EQ(QFontInfo(font(static_cast<TypeRole>(role))).family(), family());
    }
    EXPECT_NE(QRawFont::fromFont(font(TypeRole::Body)), QRawFont::fromFont(font(TypeRole::Heading)));
    EXPECT_EQ(font(TypeRole::Body).pixelSize(), 13);
}

TEST(Type, growsWithTheScaleThatTheApplicationNames) {
    qGuiApp->setProperty("hearthFontScale", 1.25);
    EXPECT_EQ(font(TypeRole::Title).pixelSize(), 25);
    qGuiApp->setProperty("hearthFontScale", QVariant());
    EXPECT_EQ(font(TypeRole::Title).pixelSize(), 20);
}

}  // namespace
}  // namespace hearth::ui::look
