// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

class QApplication;
class QGuiApplication;

/// Which of Qt's platforms the process runs on; decided before the application object is made.
namespace hearth::app {

/// A display is named in the environment, or a platform was chosen on purpose.
[[nodiscard]] bool hasDisplay();

/// For commands and the door without a display: fonts and pictures, no window, no display asked for anything.
[[nodiscard]] std::unique_ptr<QGuiApplication> makeWithoutWindow(int& argc, char** argv);

/// For the window. Qt ends the process where the display that is named can't be reached (a stale DISPLAY, no
/// right to it); then the program is started again without one, which leads to the door without a display.
[[nodiscard]] std::unique_ptr<QApplication> makeWithWindow(int& argc, char** argv);

}  // namespace hearth::app
