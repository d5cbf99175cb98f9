// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace hearth::app {

/// The whole program: reads the command line, chooses between window, command and the door without a display,
/// and gives the exit code (see Exit).
[[nodiscard]] int start(int argc, char** argv);

}  // namespace hearth::app
