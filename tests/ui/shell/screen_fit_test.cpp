// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/screen_fit.h"

#include <gtest/gtest.h>

namespace hearth::ui::shell {
namespace {

const QRect kMain(0, 0, 1920, 1080);
const QRect kSide(1920, 0, 1280, 1024);

struct Case {
    const char* what;
    QRect wanted;
    QList<QRect> screens;
    QRect expected;
};

class OnScreens : public ::testing::TestWithParam<Case> {};

TEST_P(OnScreens, keepsTheWindowInReach) {
    const Case& c = GetParam();
    EXPECT_EQ(onScreens(c.wanted, c.screens), c.expected) << c.what;
}

INSTANTIATE_TEST_SUITE_P(
    All, OnScreens,
    ::testing::Values(
        Case{"where it was", {100, 100, 1280, 800}, {kMain}, {100, 100, 1280, 800}},
        Case{"on the second screen", {2000, 50, 1000, 800}, {kMain, kSide}, {2000, 50, 1000, 800}},
        Case{"the second screen is gone", {2000, 50, 1000, 800}, {kMain}, {460, 140, 1000, 800}},
        Case{"its head is above the screen", {100, -200, 1000, 800}, {kMain}, {460, 140, 1000, 800}},
        Case{"only a corner is left", {1850, 100, 1000, 800}, {kMain}, {460, 140, 1000, 800}},
        Case{"enough to take hold of", {1790, 100, 1000, 800}, {kMain}, {1790, 100, 1000, 800}},
        Case{"larger than the screen", {0, 0, 3000, 2000}, {kMain}, {0, 0, 1920, 1080}},
        Case{"no screen is known", {5, 5, 100, 100}, {}, {5, 5, 100, 100}}));

/// Whatever was remembered, the window can be taken hold of on some screen and fits on it.
TEST(OnScreens, holdsForEveryPlace) {
    const QList<QRect> screens{kMain, kSide};
    for (int x = -4000; x <= 6000; x += 250) {
        for (int y = -3000; y <= 3000; y += 250) {
            const QRect fitted = onScreens({x, y, 1280, 800}, screens);
            const QRect head(fitted.topLeft(), QSize(fitted.width(), 40));
            const bool inReach =
                head.intersected(kMain).width() >= 120 || head.intersected(kSide).width() >= 120;
            EXPECT_TRUE(inReach) << x << ' ' << y;
            EXPECT_LE(fitted.width(), 1920);
            EXPECT_LE(fitted.height(), 1080);
        }
    }
}

}  // namespace
}  // namespace hearth::ui::shell
