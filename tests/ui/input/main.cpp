// SPDX-License-Identifier: GPL-3.0-or-later
#include "resources/resources.h"
#include "ui/look/look.h"

#include <QApplication>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    hearth::initResources();
    namespace look = hearth::ui::look;
    look::loadFonts();
    QApplication::setFont(look::font(look::TypeRole::Body));
    QApplication::setPalette(look::palette(look::Scheme::Light));
    application.setStyleSheet(look::styleSheet(look::Scheme::Light));
    return RUN_ALL_TESTS();
}
