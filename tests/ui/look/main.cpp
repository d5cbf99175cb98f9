// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"

#include <QGuiApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QGuiApplication application(argc, argv);
    hearth::initResources();
    return RUN_ALL_TESTS();
}
