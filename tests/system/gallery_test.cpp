// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/files.h"

#include <QDir>
#include <QDirIterator>
#include <QImage>
#include <QProcess>

#include <array>
#include <gtest/gtest.h>
#include <set>

/// Every screen and record page is there as a picture, in every look, and none is blank.
namespace {

using hearth::testing::TempDir;

/// Colours in a picture, by every third dot, until there are enough to be sure.
std::size_t coloursOf(const QImage& picture) {
    std::set<QRgb> colours;
    for (int y = 0; y < picture.height() && colours.size() < 64; y += 3) {
        for (int x = 0; x < picture.width(); x += 3) {
            colours.insert(picture.pixel(x, y));
        }
    }
    return colours.size();
}

QStringList namesIn(const QString& folder) {
    return QDir(folder).entryList({QStringLiteral("*.png")});
}

class GalleryTest : public ::testing::Test {
  protected:
    /// Takes all pictures of one scale.
    QString take(const char* scale) {
        const QString folder = QString::fromStdString((m_folder / "gallery").string());
        QProcess gallery;
        gallery.start(QStringLiteral(HEARTH_GALLERY), {folder, QString::fromLatin1(scale)});
        EXPECT_TRUE(gallery.waitForFinished(280000));
        EXPECT_EQ(gallery.exitCode(), 0) << gallery.readAllStandardError().toStdString();
        return folder;
    }

    TempDir m_folder;
};

constexpr std::array kEveryScreen{"first-start",
                                  "set-up-1",
                                  "visits",
                                  "premises",
                                  "records",
                                  "rule-book",
                                  "rule-book-bands",
                                  "firm",
                                  "firm-logo-and-numbers",
                                  "firm-emergency-contacts",
                                  "firm-letters",
                                  "firm-bank-holidays",
                                  "firm-signing",
                                  "firm-what-may-go",
                                  "checks-due",
                                  "due-story",
                                  "due-book",
                                  "due-no-access",
                                  "due-call",
                                  "due-remind",
                                  "due-reminders",
                                  "due-day-sheet",
                                  "due-other-duties",
                                  "due-overview",
                                  "due-news",
                                  "visit-draft-with-logo",
                                  "visit-1-who-and-where",
                                  "visit-2-before-you-start",
                                  "visit-3-pipework",
                                  "visit-4-tightness",
                                  "visit-5-restore",
                                  "visit-6-hand-over",
                                  "visit-7-records",
                                  "visit-tightness-pass",
                                  "visit-tightness-fail",
                                  "visit-tightness-look_again",
                                  "visit-tightness-no_verdict",
                                  "visit-clock-running",
                                  "visit-trace-cools",
                                  "visit-trace-leak-under-warming",
                                  "visit-trace-let-by",
                                  "visit-trace-stuck-gauge",
                                  "visit-gauge-live",
                                  "visit-gauge-set-up",
                                  "visit-room-live",
                                  "visit-room-watched",
                                  "visit-room-set-up",
                                  "visit-room-co-series",
                                  "visit-photographs",
                                  "visit-signatures",
                                  "visit-leak-hunt",
                                  "visit-leisure-vehicle",
                                  "visit-boat",
                                  "visit-catering",
                                  "visit-unvented-cylinder",
                                  "visit-capped",
                                  "premises-appliance-years",
                                  "due-book-doubts",
                                  "emergency-natural-gas",
                                  "emergency-propane",
                                  "keys",
                                  "about"};

void expectWholeAlbum(const QString& folder, int scale) {
    const QStringList names = namesIn(folder);
    for (const char* name : kEveryScreen) {
        EXPECT_TRUE(names.contains(QString::fromLatin1(name) + QStringLiteral(".png")))
            << name << " is missing in " << folder.toStdString();
    }
    for (const auto& name : names) {
        const QImage picture(QDir(folder).filePath(name));
        EXPECT_GE(picture.width(), 600 * scale) << name.toStdString();
        EXPECT_GT(coloursOf(picture), 8U) << name.toStdString() << " is blank";
    }
}

TEST_F(GalleryTest, AllScreensInEveryLook) {
    const QString folder = take("1");
    for (const char* album : {"light-1x", "dark-1x", "contrast-1x", "pseudo-1x"}) {
        expectWholeAlbum(folder + QLatin1Char('/') + QLatin1String(album), 1);
    }
    const QString records = folder + QStringLiteral("/records-1x");
    EXPECT_GE(namesIn(records).size(), 12);
    for (const auto& name : namesIn(records)) {
        EXPECT_GT(coloursOf(QImage(QDir(records).filePath(name))), 8U) << name.toStdString() << " is blank";
    }
    EXPECT_GE(namesIn(folder + QStringLiteral("/records-pseudo-1x")).size(), 12);
}

TEST_F(GalleryTest, TwiceAsFine) {
    const QString folder = take("2");
    for (const char* album : {"light-2x", "dark-2x"}) {
        expectWholeAlbum(folder + QLatin1Char('/') + QLatin1String(album), 2);
    }
}

}  // namespace
