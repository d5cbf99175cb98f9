// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"

namespace hearth::app {

/// The door for a machine without a display: does the main job on a fresh copy of the demonstration firm, so
/// that every run shows the same whole road: a visit judged, its record issued, the PDF written and named.
/// Says how to open the window.
[[nodiscard]] Exit showWithoutDisplay(const Desk& desk);

}  // namespace hearth::app
