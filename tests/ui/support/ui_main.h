// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "resources/resources.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QtGlobal>

#include <gtest/gtest.h>

namespace hearth::testing {

/// Runs a test binary that shows windows: our fonts and look, no screen.
///
///     int main(int argc, char** argv) { return hearth::testing::runWindowTests(argc, argv); }
inline int runWindowTests(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application(argc, argv);
    initResources();
    ui::look::loadFonts();
    QApplication::setFont(ui::look::font(ui::look::TypeRole::Body));
    QApplication::setPalette(ui::look::palette(ui::look::Scheme::Light));
    application.setStyleSheet(ui::look::styleSheet(ui::look::Scheme::Light));
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}

}  // namespace hearth::testing
