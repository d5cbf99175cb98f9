// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/text_size.h"

#include "tests/support/files.h"
#include "ui/look/look.h"

#include <QFont>
#include <QSettings>

#include <gtest/gtest.h>
#include <memory>

namespace hearth::ui::shell {
namespace {

class TextSize : public ::testing::Test {
  protected:
    TextSize() { open(); }
    ~TextSize() override { look::useTextPercent(kUsualText); }
    void open() {
        m_settings = std::make_unique<QSettings>(QString::fromStdString((m_folder / "window.ini").string()),
                                                 QSettings::IniFormat);
    }
    /// As the program does when it starts.
    int start() {
        open();
        look::useTextPercent(textPercent(m_settings.get(), QFont(look::family(), 10)));
        return look::textPercentInUse();
    }

    testing::TempDir m_folder;
    std::unique_ptr<QSettings> m_settings;
};

TEST_F(TextSize, FollowsALargeFontOfTheDesktopAndNoSmallOne) {
    const std::pair<double, int> cases[] = {{8, 100}, {11, 100}, {14, 127}, {16.5, 150}, {40, 150}};
    for (const auto& [points, percent] : cases) {
        QFont desktop;
        desktop.setPointSizeF(points);
        EXPECT_EQ(textPercent(m_settings.get(), desktop), percent) << points;
        EXPECT_EQ(textPercent(nullptr, desktop), percent) << points;
    }
    QFont pixels;
    pixels.setPixelSize(20);
    EXPECT_EQ(textPercent(m_settings.get(), pixels), kUsualText);
}

TEST_F(TextSize, StepsUpAndDownAndBackToTheDesktop) {
    EXPECT_EQ(start(), 100);
    EXPECT_TRUE(changeTextPercent(m_settings.get(), 1).contains(QStringLiteral("115")));
    EXPECT_EQ(look::textPercentInUse(), 100) << "what is on the screen stays as it is";
    for (const int expected : {130, 150, 150}) {
        static_cast<void>(changeTextPercent(m_settings.get(), 1));
        EXPECT_EQ(start(), expected);
    }
    for (const int expected : {130, 115, 100, 100}) {
        static_cast<void>(changeTextPercent(m_settings.get(), -1));
        EXPECT_EQ(start(), expected);
    }
    static_cast<void>(changeTextPercent(m_settings.get(), 1));
    static_cast<void>(changeTextPercent(m_settings.get(), 0));
    EXPECT_EQ(start(), 100);
}

TEST_F(TextSize, WhatIsNoSizeIsHeldWithinThem) {
    for (const auto& [kept, percent] : {std::pair{QStringLiteral("9000"), 150},
                                        {QStringLiteral("3"), 100},
                                        {QStringLiteral("-4"), 100},
                                        {QStringLiteral("large"), 100}}) {
        m_settings->setValue(QStringLiteral("look/text_percent"), kept);
        m_settings->sync();
        EXPECT_EQ(start(), percent) << kept.toStdString();
    }
}

TEST_F(TextSize, SaysWhereNothingCanBeKept) {
    EXPECT_EQ(changeTextPercent(nullptr, 1), QStringLiteral("The size of the letters can't be kept here."));
    QSettings nowhere(QStringLiteral("/proc/none/window.ini"), QSettings::IniFormat);
    EXPECT_TRUE(
        changeTextPercent(&nowhere, 1).contains(QStringLiteral("/proc/none/window.ini can't be written")));
}

}  // namespace
}  // namespace hearth::ui::shell
